import type { Status } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { loadingBars } from './loading-bars.ts';
import type { Shape } from './shape.ts';
import { figureText, nameOf, numberAt } from './words.ts';
import { ENGLISH } from '../../words/index.ts';

/** Draws the loading of every supply with its target. */
export function suppliesPicture(schedule: LoadSchedule, words = ENGLISH): Shape {
  const bars = schedule.rows('supplies').flatMap(({ id }) => {
    const status = schedule.value('supplies', id, 'status') as Status | null;
    if (status === null) return [];
    const text = (key: string) => figureText(schedule, 'supplies', id, key, words);
    const loading = numberAt(schedule, 'supplies', id, 'loading');
    const purpose = schedule.value('supplies', id, 'purpose');
    return [{
      name: nameOf(schedule, 'supplies', id), about: typeof purpose === 'string' ? purpose : '', loading, status,
      target: numberAt(schedule, 'supplies', id, 'target'),
      sentence: `${text('demand')} of ${text('usable')}${loading === null ? '' : `, ${text('loading')}`}, target ${text('target')}`,
    }];
  });
  return loadingBars({
    title: 'Loading of the supplies', tick: 'the target', none: 'There are no supplies yet.', bars,
  });
}
