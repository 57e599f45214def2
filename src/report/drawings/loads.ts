import type { LoadSchedule } from '../../load-schedule.ts';
import { plain, quiet, type DrawnNode } from './drawn-node.ts';

/** Areas that are named; more are counted. */
const MOST_AREAS = 3;

/** What hangs on something: how many devices, how many metres of what counts by the metre, in which areas. */
export function loadsNode(schedule: LoadSchedule, devices: readonly number[], about: string): DrawnNode {
  const { words } = schedule;
  let [count, metres, isPartial] = [0, 0, false];
  const areas = new Set<string>();
  for (const id of devices) {
    const qty = schedule.value('devices', id, 'qty');
    if (typeof qty !== 'number') isPartial = true;
    else if (Number.isInteger(qty)) count += qty;
    else metres += qty;
    const area = schedule.value('devices', id, 'area');
    if (typeof area === 'string' && area !== '') areas.add(area);
  }
  const atLeast = isPartial ? '≥\u00a0' : '';
  const counted = [
    ...(count === 0 && metres > 0 ? [] : [atLeast + words.say('{n, plural, one {# device} other {# devices}}', { n: count })]),
    ...(metres === 0 ? [] : [`${atLeast}${words.number(metres, 1)}\u00a0m`]),
  ];
  const named = [...areas].slice(0, MOST_AREAS);
  const more = areas.size - named.length;
  return {
    name: '', symbols: [{ name: 'load' }],
    about: devices.length === 0 ? [quiet(words.say('no devices'))] : [...counted.map(plain), quiet(about)],
    figures: parted([...named, ...more === 0 ? [] : [words.say('{more, plural, one {# more area} other {# more areas}}', { more })]]).map(quiet),
    standing: null, children: [],
  };
}

/** Names in a row, some of which hold commas. */
const parted = (names: readonly string[]): string[] => names.map((name, index) => index < names.length - 1 ? `${name};` : name);
