import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import { STATE_WORDS } from '../../src/findings/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { formatCell, type SheetName } from '../../src/schedule/index.ts';
import { someAction, someContent } from '../engine/random-actions.ts';
import { mountGrid, unmountAll } from './support/mount.ts';
import '../support/seed.ts';
import { ENGLISH } from '../../src/words/index.ts';

afterEach(unmountAll);

/** Every text that is drawn, by place of the row as entered and title of the column. */
function drawnTexts(grid: ScheduleGrid): Map<string, string> {
  const texts = new Map<string, string>();
  const [frozen, rest] = ['.ht_clone_inline_start', '.ht_master']
    .map((body) => [...grid.renderRoot.querySelectorAll<HTMLTableRowElement>(`${body} table.htCore > tbody > tr`)]);
  rest!.forEach((row, index) => {
    const number = frozen![index]!.querySelector('th')!.textContent;
    const { columns } = grid;
    if (!/^\d+$/.test(number)) return;
    for (const cell of [...frozen![index]!.querySelectorAll('td'), ...row.querySelectorAll('td')]) {
      texts.set(`${number} ${columns[Number(cell.getAttribute('aria-colindex')) - 2]!.title}`, cell.textContent);
    }
  });
  return texts;
}

/** What a schedule built afresh from the same content would show. */
function dueTexts(schedule: LoadSchedule, { sheet, columns }: ScheduleGrid): Map<string, string> {
  const afresh = new LoadSchedule(schedule.content());
  const texts = new Map<string, string>();
  afresh.document.rows(sheet).forEach(({ id }, place) => {
    for (const column of columns) {
      const value = afresh.value(sheet, id, column.key);
      const sign = afresh.partialSign(sheet, id, column.key);
      const text = column.role === 'computed' && column.status === true && typeof value === 'string'
        ? STATE_WORDS[value as keyof typeof STATE_WORDS] : formatCell(column, value, ENGLISH, 'show');
      texts.set(`${place + 1} ${column.title}`, sign === '' || text === '' ? text : `${sign}\u202f${text}`);
    }
  });
  afresh.dispose();
  return texts;
}

const views = fc.constantFrom(
  ['devices', 'entered'], ['devices', 'rail'], ['devices', 'branch'], ['supplies', 'entered'], ['branches', 'entered'],
  ['outputs', 'entered'], ['feeds', 'entered'],
) as fc.Arbitrary<[SheetName, 'entered' | 'rail' | 'branch']>;

test('after any actions every text drawn is what a schedule built afresh shows, and none is an error', async () => {
  document.body.style.inlineSize = '3000px';
  const { grid } = await mountGrid({ details: {}, sheets: {} }, { height: 1600 });
  const actionLists = fc.array(someAction, { maxLength: 8 });
  await fc.assert(fc.asyncProperty(someContent, views, actionLists, async (content, view, actions) => {
    const schedule = new LoadSchedule(content);
    [grid.schedule, grid.sheet, grid.grouping] = [schedule, ...view];
    await grid.updateComplete;
    for (const action of [() => { /* as it is opened */ }, ...actions]) {
      action(schedule);
      const [drawn, due] = [drawnTexts(grid), dueTexts(schedule, grid)];
      for (const [place, text] of drawn) {
        expect([place, text]).toEqual([place, due.get(place)]);
        expect(text).not.toMatch(/NaN|Infinity|undefined|null|#[A-Z]/);
      }
      expect(drawn.size > 0 || due.size === 0).toBe(true);
    }
    schedule.dispose();
  }), { numRuns: 25 });
  document.body.style.inlineSize = '';
}, 120_000);
