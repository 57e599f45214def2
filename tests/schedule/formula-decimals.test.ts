import { describe, expect, test } from 'vitest';
import { makeWords } from '../../src/words/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { idAt, scheduleOf, typeFormula, valueAt } from '../support/schedules.ts';

function typed(locale: string, formula: string): { problem: string | undefined; schedule: LoadSchedule } {
  const schedule = scheduleOf({ branches: [{ branch: 'B1', limit: 20 }], feeds: [{ feed: 'F1' }] });
  schedule.speak(makeWords(locale));
  return { problem: typeFormula(schedule, 'feeds', 0, 'rated', formula), schedule };
}

describe('a number in a formula', () => {
  // Each value by hand, the limit of the branch being 20.
  test.each<[locale: string, typed: string, neutral: string, shown: string, value: number]>([
    ['en', '=2.5*branches!B1', '=2.5*[branches.limit@B1]', '=2.5*branches!B1', 50],
    ['de', '=2,5*branches!B1', '=2.5*[branches.limit@B1]', '=2,5*branches!B1', 50],
    ['de', '=2.5*branches!B1', '=2.5*[branches.limit@B1]', '=2,5*branches!B1', 50],
    ['fr', '=SUM(0,5;1,25)', '=SUM(0.5;1.25)', '=SUM(0,5;1,25)', 1.75],
    ['it', '=1,5', '=1.5', '=1,5', 1.5],
    ['de', '=2,5e1', '=2.5e1', '=2,5e1', 25],
    ['de', '=IF("1,5"="1.5";1;2)', '=IF("1,5"="1.5";1;2)', '=IF("1,5"="1.5";1;2)', 2],
    ['de', '=[branches.B1]*0,1', '=[branches.limit@B1]*0.1', '=branches!B1*0,1', 2],
  ])('in %s, %s is %s in files and %s on the screen', (locale, text, neutral, shown, value) => {
    const { problem, schedule } = typed(locale, text);
    expect(problem).toBeUndefined();
    const id = idAt(schedule, 'feeds');
    expect(schedule.formulaText('feeds', id, 'rated', schedule.words)).toBe(shown);
    expect(schedule.content().sheets.feeds).toEqual([{ feed: 'F1', rated: neutral }]);
    expect(valueAt(schedule, 'feeds', 0, 'rated')).toBeCloseTo(value, 12);
  });

  test.each([
    ['en', '=2,5*2'], ['en', '=SUM(1,2)'], ['de', '=SUM(1,2,3)'], ['de', '=SUM(branches!B1,5)'],
  ])('in %s, %s is refused: a comma parts nothing', (locale, text) => {
    expect(typed(locale, text).problem).toMatch(/not a formula/);
  });
});
