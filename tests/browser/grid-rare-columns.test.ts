import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import { shownColumns } from '../../components/grid/shown-columns.ts';
import type { Finding } from '../../src/findings/finding.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { PLAIN_LOOK, type Cells, type Content, type SheetLook } from '../../src/schedule/index.ts';
import { mountElement, part, removeElements, textOf } from './element-mount.ts';
import { paste, putOnClipboard } from './support/clipboard.ts';
import { cellAt, frame, mountGrid, placeOf, unmountAll } from './support/mount.ts';

afterEach(() => {
  unmountAll();
  removeElements();
});

/** Two rails of invention. */
const rails = (...more: Cells[]): Content => ({
  details: {},
  sheets: { supplies: [{ rail: 'L1', rated: 5, target: 0.7 }, { rail: 'L2', rated: 10, fuse: 6 }, ...more] },
});
const keys = (grid: ScheduleGrid) => grid.columns.map(({ key }) => key);
const headings = (grid: ScheduleGrid) =>
  [...grid.renderRoot.querySelectorAll('.ht_clone_top .title')].map((each) => each.textContent);

test('a rare column is out of sight until it is asked for, with its letter kept for it', async () => {
  const { grid, schedule } = await mountGrid(rails(), { sheet: 'supplies' });
  const look = (changed: Partial<SheetLook>) => {
    schedule.setLook('supplies', changed);
    grid.look = schedule.look('supplies');
  };
  expect(keys(grid)).toContain('target');
  expect(keys(grid)).not.toContain('derating');
  const letter = () => cellHeading(grid, 'target');
  const before = letter();
  look({ all: true });
  await grid.updateComplete;
  await frame();
  expect(keys(grid)).toContain('derating');
  expect(headings(grid)).toContain('Derating');
  // The letter of a column is its own, whatever is in sight.
  expect(letter()).toBe(before);
  look({ all: false });
  await grid.updateComplete;
  expect(keys(grid)).not.toContain('derating');
});

function cellHeading(grid: ScheduleGrid, key: string): string {
  const heads = [...grid.renderRoot.querySelectorAll('.ht_clone_top th')];
  return heads.find((each) => Number(each.getAttribute('aria-colindex')) === placeOf(grid, key) + 2)!
    .querySelector('.letter')!.textContent;
}

test('it is in sight where something stands in it, and does not vanish under the hands of who empties it', async () => {
  const { grid, schedule } = await mountGrid(rails({ rail: 'L3', rated: 2, derating: 0.9 }), { sheet: 'supplies' });
  await userEvent.click(cellAt(grid, 2, placeOf(grid, 'derating')));
  await userEvent.keyboard('{Delete}');
  expect(schedule.value('supplies', 2, 'derating')).toBe(1);
  await userEvent.keyboard('85 %{Enter}');
  expect(schedule.value('supplies', 2, 'derating')).toBe(0.85);
});

test('an action that fills it shows it, and the selected cell stays selected', async () => {
  const { grid, schedule } = await mountGrid(rails(), { sheet: 'supplies' });
  await userEvent.click(cellAt(grid, 1, placeOf(grid, 'fuse')));
  schedule.act('edit', [{ op: 'set', sheet: 'supplies', id: 0, key: 'derating', value: 0.9 }]);
  await frame();
  expect(keys(grid)).toContain('derating');
  await userEvent.keyboard('8{Enter}');
  expect(schedule.value('supplies', 1, 'fuse')).toBe(8);
});

test('a cell of a hidden column is shown before it is selected', async () => {
  const { grid } = await mountGrid(rails(), { sheet: 'supplies' });
  expect(grid.goTo(1, 'derating')).toBe(true);
  await userEvent.keyboard('90 %{Enter}');
  expect(cellAt(grid, 1, placeOf(grid, 'derating')).textContent).toBe('90\u202f%');
});

test('one that an open finding names is in sight; one of a note or of an accepted finding need not be', () => {
  const schedule = new LoadSchedule(rails());
  const at = (finding: Partial<Finding>) => {
    const found = { sheet: 'supplies', key: 'derating', severity: 'incomplete', ...finding };
    const asked = { findings: [found], rows: () => schedule.rows('supplies'), value: () => null, look: () => PLAIN_LOOK } as unknown as LoadSchedule;
    return shownColumns(asked, 'supplies').some(({ key }) => key === 'derating');
  };
  const accepted = { rule: 'any', reason: 'any', name: 'any', date: '2026-01-01', value: null };
  expect([at({}), at({ severity: 'note' }), at({ accepted }), at({ sheet: 'runs' })])
    .toEqual([true, false, false, false]);
  schedule.dispose();
});

test('a table without headings lands in the columns that are seen, one with headings in those that it names', async () => {
  const { grid, schedule } = await mountGrid(rails(), { sheet: 'supplies' });
  await putOnClipboard('yes\t60 %\nno\t50 %');
  await userEvent.click(cellAt(grid, 0, placeOf(grid, 'redundant')));
  await paste();
  expect(['redundant', 'target', 'derating'].map((key) => schedule.value('supplies', 0, key))).toEqual([true, 0.6, 1]);
  await putOnClipboard('Rail\tDerating\nL1\t95 %');
  await userEvent.click(cellAt(grid, 0, 0));
  await paste();
  expect(schedule.value('supplies', 0, 'derating')).toBe(0.95);
  expect(keys(grid)).toContain('derating');
});

test('cells copied where it is out of sight go to their own columns where it is not', async () => {
  const from = await mountGrid(rails(), { sheet: 'supplies', height: 250 });
  const to = await mountGrid(rails({ rail: 'L3', rated: 1, derating: 0.9 }), { sheet: 'supplies', height: 250 });
  await userEvent.click(cellAt(from.grid, 0, placeOf(from.grid, 'rated')));
  await userEvent.keyboard('{Shift>}{ArrowRight}{ArrowRight}{ArrowRight}{/Shift}{Control>}c{/Control}');
  await userEvent.click(cellAt(to.grid, 2, placeOf(to.grid, 'rated')));
  await paste();
  expect(['rated', 'derating', 'target'].map((key) => to.schedule.value('supplies', 2, key))).toEqual([5, 0.9, 0.7]);
});

test('the button shows and hides them, sheet by sheet, and a file keeps what is asked for', async () => {
  const element = await mountElement({ content: rails() });
  element.readonly = true;
  part(element, '[data-sheet=supplies]')!.click();
  const heads = () => textOf(element, 'elv-schedule-grid .ht_clone_top thead');
  await expect.poll(heads).toContain('Rated');
  expect(heads()).not.toContain('Worst case');
  part(element, 'elv-schedule-toolbar [popovertarget=columns]')!.click();
  const button = () => part(element, '[data-command=moreColumns]')!;
  await userEvent.click(button());
  await expect.poll(heads).toContain('Worst case');
  expect(button().ariaPressed).toBe('true');
  expect((JSON.parse(element.value) as { view: unknown }).view).toEqual({ rare: ['supplies'] });
  expect([element.dirty, element.schedule.undoLabel]).toEqual([false, undefined]);
  button().focus();
  await userEvent.keyboard('{Shift>}{F7}{/Shift}');
  await expect.poll(heads).not.toContain('Worst case');
  expect(JSON.parse(element.value)).not.toHaveProperty('view');
});
