import type { LoadSchedule } from '../../load-schedule.ts';
import { loadingBars } from './loading-bars.ts';
import type { Shape } from './shape.ts';
import { figureText, nameOf, numberAt, valueText } from './words.ts';
import type { SafeSide } from '../../words/index.ts';

/** Draws how full every bus branch is; the tick stands where its reserve begins. */
export function branchesPicture(schedule: LoadSchedule): Shape {
  const { words } = schedule;
  const bars = schedule.rows('branches').flatMap(({ id }) => {
    const status = schedule.standing('branches', id);
    if (status === null) return [];
    const text = (key: string) => figureText(schedule, 'branches', id, key);
    const reserve = numberAt(schedule, 'branches', id, 'reserve');
    const free = numberAt(schedule, 'branches', id, 'free');
    const count = (key: string, value: number, side?: SafeSide) => valueText('branches', key, value, words, side);
    const left = (beyond: number) => count('nodes', -beyond, 'down');
    const limit = numberAt(schedule, 'branches', id, 'limit');
    const beyond = (numberAt(schedule, 'branches', id, 'nodes') ?? 0) - (limit ?? Infinity);
    const figures = { nodes: text('nodes'), limit: text('limit'), share: text('used') };
    return [{
      name: nameOf(schedule, 'branches', id), about: '', loading: numberAt(schedule, 'branches', id, 'used'), status,
      target: reserve === null ? null : 1 - reserve,
      sentence: limit === null ? words.say('{nodes} nodes, limit not known', figures) : beyond > 0
        ? words.say(
          '{nodes} of {limit} nodes, {share}, {beyond} too many', { ...figures, beyond: count('nodes', beyond) }
        )
        : free !== null && free < 0
          ? words.say(
            '{nodes} of {limit} nodes, {share}, {kept} into the reserve',
            { ...figures, kept: count('free', -free, 'up') }
          )
          : reserve === 0 ? words.say('{nodes} of {limit} nodes, {share}, {left} left', { ...figures, left: left(beyond) })
          : words.say('{nodes} of {limit} nodes, {share}, {left} left; reserve {reserve}', {
            ...figures, left: left(beyond), reserve: text('reserve'),
          }),
    }];
  });
  return loadingBars({
    title: words.say('Nodes on the bus branches'), none: words.say('There are no bus branches yet.'), bars, words,
    key: words.say(
      'The tick marks where the reserve begins; what is beyond 100\u202f% is hatched. On paper at full size 7 mm are 10\u202f%.'
    ),
  });
}
