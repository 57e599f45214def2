import type { PanelChoice } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { BUS_ENDS } from '../../terminals/index.ts';
import { figureText, nameOf, numberAt } from '../pictures/words.ts';
import { missingNode, plain, quiet, type DrawnNode } from './drawn-node.ts';
import type { Piece } from './flow-text.ts';
import { Gathered } from './gathered.ts';

/**
 * The bus branches of a panel as they are cabled: from the port in the panel along each cable to its devices in the
 * order of their distances, with the terminating resistors as far as they are entered; each is made when it is asked
 * for.
 * @param schedule as it is in the panel, see `panelView`
 */
export function* branchTree(schedule: LoadSchedule, panel: PanelChoice): Iterable<DrawnNode> {
  const rows = new Gathered(schedule, panel);
  const atPort = new Set(rows.rows('terminals').map((id) => rows.text('terminals', id, 'inside'))
    .filter((text) => text.endsWith(':R1')).map((text) => text.slice(0, -':R1'.length)));
  const unnamed = rows.on('devices', 'branch', -1).filter((id) => rows.text('devices', id, 'branch') !== '');
  const astray = rows.astray('devices', 'branch', unnamed);
  for (const id of rows.rows('branches')) yield branchNode(rows, id, atPort.has(nameOf(schedule, 'branches', id)));
  for (const [tag, devices] of astray) {
    yield missingNode(tag, devices.map((id) => deviceNode(schedule, id)), schedule.words);
  }
}

function branchNode(rows: Gathered, id: number, isAtPort: boolean): DrawnNode {
  const { schedule } = rows;
  const { words } = schedule;
  const text = (key: string) => figureText(schedule, 'branches', id, key);
  const runs = schedule.members('runs', 'branch', id);
  const devices = schedule.members('devices', 'branch', id);
  const others = devices.filter((each) => !runs.includes(schedule.target('devices', each, 'run')));
  const count = terminatorsOf(schedule, id);
  const isLine = runs.length === 1 && others.length === 0;
  const sign = (isFitted: boolean) => ({ name: 'terminator' as const, figure: isFitted ? '' : '?' });
  const isWhole = count !== null && count >= BUS_ENDS;
  const limit = numberAt(schedule, 'branches', id, 'limit');
  const most = numberAt(schedule, 'branches', id, 'maxCable');
  return {
    row: { sheet: 'branches', id }, name: nameOf(schedule, 'branches', id), standing: schedule.standing('branches', id),
    // Of a bus of several cables it is not known which of them are its ends.
    symbols: [{ name: 'port' }, ...isLine || isAtPort ? [sign(isWhole || isAtPort)] : []],
    about: [
      plain(limit === null ? words.say('{nodes} nodes, limit not known', { nodes: text('nodes') })
        : words.say('{nodes} of {limit} nodes, {share}', { nodes: text('nodes'), limit: text('limit'), share: text('used') })),
      quiet(rows.panel === undefined ? rows.text('branches', id, 'enclosure') : ''),
    ],
    figures: [
      terminatorWords(schedule, id, count),
      plain(most === null ? words.say('cable {length}', { length: text('cableLength') })
        : words.say('cable {length} of {most}', { length: text('cableLength'), most: text('maxCable') })),
    ],
    children: [
      ...runs.map((run): DrawnNode => {
        const node = runNode(schedule, run, devices);
        if (!isLine) return node;
        const end: DrawnNode = {
          name: '', symbols: [sign(isWhole)], about: [quiet(words.say('far end of the line'))],
          figures: [], standing: null, children: [],
        };
        return { ...node, children: [...node.children, end] };
      }),
      ...others.length === 0 ? [] : [{
        name: '', symbols: [{ name: 'unknown' as const }], isLoose: true, standing: null, figures: [],
        about: [quiet(words.say('cable of the bus not entered; in the order of the sheet'))],
        children: others.map((each) => deviceNode(schedule, each)),
      }],
    ],
  };
}

/** How many terminating resistors a branch has: counted, else as it is marked; `null` where neither is entered. */
function terminatorsOf(schedule: LoadSchedule, id: number): number | null {
  const counted = numberAt(schedule, 'branches', id, 'terminators');
  if (counted !== null) return counted;
  const marked = schedule.value('branches', id, 'terminated');
  return marked === true ? BUS_ENDS : null;
}

function terminatorWords(schedule: LoadSchedule, id: number, count: number | null): Piece {
  const { words } = schedule;
  if (count === null) {
    return schedule.value('branches', id, 'terminated') === false ? { text: words.say('not terminated'), look: 'near' }
      : quiet(words.say('terminators not known'));
  }
  if (count > BUS_ENDS) return { text: words.say('{count} terminators, {more} too many', { count, more: count - BUS_ENDS }), look: 'over' };
  if (count === BUS_ENDS) return plain(words.say('terminated at both ends'));
  return { text: words.say('{count} of {ends} terminators', { count, ends: BUS_ENDS }), look: 'near' };
}

function runNode(schedule: LoadSchedule, id: number, devices: readonly number[]): DrawnNode {
  const { words } = schedule;
  const conductor = schedule.value('runs', id, 'conductor');
  const own = devices.filter((each) => schedule.target('devices', each, 'run') === id);
  const distance = (each: number) => numberAt(schedule, 'devices', each, 'distance') ?? Infinity;
  const sorted = own.map((each) => ({ each, at: distance(each) }))
    .sort((one, other) => one.at === other.at ? 0 : one.at - other.at);
  const length = numberAt(schedule, 'runs', id, 'length');
  return {
    row: { sheet: 'runs', id }, name: nameOf(schedule, 'runs', id), standing: null, symbols: [{ name: 'none' }],
    about: [
      plain(length === null ? words.say('length not known') : figureText(schedule, 'runs', id, 'length')),
      quiet(typeof conductor === 'string' ? conductor : ''),
    ],
    figures: [],
    children: sorted.length === 0 ? [{ name: '', symbols: [{ name: 'none' }], about: [quiet(words.say('no devices'))], figures: [], standing: null, children: [] }]
      : sorted.map(({ each }) => deviceNode(schedule, each)),
  };
}

function deviceNode(schedule: LoadSchedule, id: number): DrawnNode {
  const { words } = schedule;
  const text = (key: string) => figureText(schedule, 'devices', id, key);
  const named = (key: string) => {
    const value = schedule.value('devices', id, key);
    return typeof value === 'string' ? value : '';
  };
  const distance = numberAt(schedule, 'devices', id, 'distance');
  return {
    row: { sheet: 'devices', id }, name: nameOf(schedule, 'devices', id), standing: null, symbols: [{ name: 'load' }],
    about: [
      plain(distance === null ? words.say('distance not entered') : text('distance')),
      quiet([text('qty'), named('type')].filter((part) => part !== '').join(' × ')), quiet(named('area')),
      plain(words.say('nodes: {nodes}', { nodes: text('nodes') })),
    ],
    figures: [], children: [],
  };
}
