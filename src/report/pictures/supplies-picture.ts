import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, formatCell } from '../../schedule/index.ts';
import { loadingBars } from './loading-bars.ts';
import type { Shape } from './shape.ts';
import { figureText, nameOf, numberAt } from './words.ts';

/** Draws the loading of every supply with its target. */
export function suppliesPicture(schedule: LoadSchedule): Shape {
  const { words } = schedule;
  const bars = schedule.rows('supplies').flatMap(({ id }) => {
    const status = schedule.standing('supplies', id);
    if (status === null) return [];
    const text = (key: string) => figureText(schedule, 'supplies', id, key);
    const loading = numberAt(schedule, 'supplies', id, 'loading');
    const about = formatCell(columnOf('supplies', 'purpose'), schedule.value('supplies', id, 'purpose'), words, 'show');
    const figures = { amount: text('demand'), most: text('usable'), target: text('target') };
    return [{
      name: nameOf(schedule, 'supplies', id), about, loading, status,
      target: numberAt(schedule, 'supplies', id, 'target'),
      sentence: loading === null ? words.say('{amount} of {most}, target {target}', figures)
        : words.say('{amount} of {most}, {share}, target {target}', { ...figures, share: text('loading') }),
    }];
  });
  return loadingBars({
    title: words.say('Loading of the supplies'), none: words.say('There are no supplies yet.'), bars, words,
    key: words.say(
      'The tick marks the target; what is beyond 100\u202f% is hatched. On paper at full size 7 mm are 10\u202f%.'
    ),
  });
}
