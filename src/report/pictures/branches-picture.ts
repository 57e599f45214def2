import type { Status } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { loadingBars } from './loading-bars.ts';
import type { Shape } from './shape.ts';
import { figureText, nameOf, numberAt, valueText } from './words.ts';
import { ENGLISH } from '../../words/index.ts';

/** Draws how full every bus branch is; the tick stands where its reserve begins. */
export function branchesPicture(schedule: LoadSchedule, words = ENGLISH): Shape {
  const bars = schedule.rows('branches').flatMap(({ id }) => {
    const status = schedule.value('branches', id, 'status') as Status | null;
    if (status === null) return [];
    const text = (key: string) => figureText(schedule, 'branches', id, key, words);
    const reserve = numberAt(schedule, 'branches', id, 'reserve');
    const free = numberAt(schedule, 'branches', id, 'free');
    const count = (key: string, value: number) => valueText('branches', key, value, words);
    const beyond = (numberAt(schedule, 'branches', id, 'points') ?? 0) - (numberAt(schedule, 'branches', id, 'limit') ?? 0);
    const left = beyond > 0 ? `${count('points', beyond)} too many`
      : free !== null && free < 0 ? `${count('free', -free)} into the reserve` : `${text('free')} free`;
    return [{
      name: nameOf(schedule, 'branches', id), about: '', loading: numberAt(schedule, 'branches', id, 'used'), status,
      target: reserve === null ? null : 1 - reserve,
      sentence: `${text('points')} of ${text('limit')} points, ${text('used')}, ${left}`,
    }];
  });
  return loadingBars({
    title: 'Points on the bus branches', tick: 'where the reserve begins', none: 'There are no bus branches yet.', bars,
  });
}
