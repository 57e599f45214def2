import { afterEach, beforeEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { setCells, type Content } from '../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, textOf } from './element-mount.ts';
import { choose } from './support/choose.ts';
import { CountedActions } from './tasks/counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

const CONTENT: Content = {
  details: {},
  sheets: {
    types: [{ type: 'Lamp', draw: 100, nodes: 0 }, { type: 'Strip', draw: 200, nodes: 0 }],
    supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }],
    ways: [{ way: 'F1', rail: 'L1', rated: 4 }, { way: 'F2', rail: 'L1', rated: 4 }],
    runs: [{ run: 'W1', way: 'F1', secondWay: 'F2', length: 20, secondLength: 30 }],
    devices: [
      { ref: 'D1', type: 'Lamp', qty: 1, rail: 'L1' }, { ref: 'D2', type: 'Strip', qty: 1 }, { ref: 'D3', type: 'Lamp', qty: 3, rail: 'L1' },
      { ref: 'D4', type: 'Lamp', qty: 2, run: 'W1', distance: 10 }, { ref: 'D5', type: 'Lamp', qty: 2, run: 'W1' },
    ],
  },
};

/** What has the focus within the area of jobs. */
const focused = (element: LoadScheduleElement) => (part(element, 'elv-rework')!.shadowRoot!.activeElement as HTMLElement | null)?.dataset;
const rowOf = async (act: CountedActions, line: number, keys?: 'Shift') => {
  await expect.poll(() => act.rowHeading(line).textContent).toBeTruthy();
  await act.clickOn(act.rowHeading(line), keys === undefined ? {} : { keys });
};

test('rows that are on no rail stay, and that is said with their names and what to do', async () => {
  const element = await mountElement({ content: CONTENT });
  const act = new CountedActions(element);
  await rowOf(act, 0);
  await rowOf(act, 2, 'Shift');
  await act.press('Alt+Shift+M');
  await act.choose('elv-rework [data-option=to]', 'supplies L2');
  await expect.poll(() => textOf(element, 'elv-rework .outcome')).toBe('2 device rows go to L2, with no run and no way. '
    + '1 selected row is on no rail and stays: D2. Enter the rail in their cells, or share them out.');
  await act.press('Control+Enter');
  await expect.poll(() => element.schedule.rows('devices').slice(0, 3).map(({ cells }) => cells.rail)).toEqual(['L2', undefined, 'L2']);
});

test('Tab from the last field goes to the button, whether or not the job can be carried out yet', async () => {
  const element = await mountElement({ content: CONTENT });
  const act = new CountedActions(element);
  await rowOf(act, 3);
  await act.press('Alt+Shift+X');
  await expect.poll(() => part(element, 'elv-rework')?.hidden).toBe(false);
  const [length, rest] = ['length', 'rest'].map((name) => part(element, `elv-rework [data-option=${name}]`)!);
  // The run has two ways, so that nothing can be carried out.
  expect(textOf(element, 'elv-rework .problems')).toBe('W1 has two ways. Empty the second one first.');
  length!.focus();
  await userEvent.tab();
  expect(part(element, 'elv-rework')!.shadowRoot!.activeElement).toBe(rest);
  await userEvent.tab();
  expect(focused(element)?.do).toBe('rework');
  await userEvent.keyboard('{Control>}{Enter}{/Control}{Enter}');
  expect(element.schedule.undoLabel).toBeUndefined();
  await userEvent.keyboard('{Escape}');
  await expect.poll(() => part(element, 'elv-rework')!.hidden).toBe(true);
});

test('a field that vanishes by what is chosen leaves the focus in its place', async () => {
  const element = await mountElement({ content: CONTENT });
  const { schedule } = element;
  const { id } = schedule.rows('devices')[0]!;
  schedule.act('An own draw', setCells(schedule.document, [{ sheet: 'devices', id, key: 'unitDraw', value: 90 }]));
  const act = new CountedActions(element);
  await rowOf(act, 0);
  await act.press('Alt+Shift+S');
  await act.choose('elv-rework [data-option=to]', 'Strip');
  const own = part(element, 'elv-rework [data-option=own-unitDraw]')!;
  own.focus();
  await userEvent.keyboard('{Control>}z{/Control}');
  await element.updateComplete;
  await expect.poll(() => part(element, 'elv-rework [data-option=own-unitDraw]')).toBeNull();
  expect(focused(element)).toBeDefined();
  await userEvent.keyboard('{Control>}{Enter}{/Control}');
  await expect.poll(() => element.schedule.rows('devices')[0]!.cells.type).toBe('Strip');
});

test('Ctrl+Shift+K folds the groups from the list that gathers rows, too', async () => {
  await page.viewport(1280, 800);
  const element = await mountElement({ content: CONTENT });
  await choose(element, 'groupings', 'rail');
  await expect.poll(() => parts(element, 'elv-schedule-grid .group').length).toBeGreaterThan(1);
  part(element, '[data-choice=groupings]')!.focus();
  await userEvent.keyboard('{Control>}{Shift>}k{/Shift}{/Control}');
  await expect.poll(() => parts(element, 'elv-schedule-grid .group b.folded').length).toBeGreaterThan(1);
  expect(parts(element, 'elv-schedule-grid .group b.open')).toEqual([]);
});

test('a run with two ways moves with both, by keys', async () => {
  const element = await mountElement({ content: CONTENT });
  const before = element.value;
  const act = new CountedActions(element);
  await act.openSheet('runs');
  await rowOf(act, 0);
  await act.press('Alt+Shift+M');
  await act.choose('elv-rework [data-option=to]', 'supplies L2');
  await expect.poll(() => textOf(element, 'elv-rework .outcome')).toBe('2 device rows go to L2, with 1 run and 2 ways.');
  await act.press('Control+Enter');
  await expect.poll(() => element.schedule.rows('ways').map(({ cells }) => cells.rail)).toEqual(['L2', 'L2']);
  expect(element.schedule.findings.filter(({ severity }) => severity === 'over')).toEqual([]);
  await act.press('Control+z');
  await expect.poll(() => element.value).toEqual(before);
});

test('a job on sorted rows is for the rows that are selected there, not for those of their places', async () => {
  const element = await mountElement({ content: CONTENT });
  const act = new CountedActions(element);
  // The largest quantity first: D3, with 3 lamps.
  await expect.poll(() => act.rowHeading(0).textContent).toBeTruthy();
  await act.clickOn(act.cell(1, 'qty'));
  await userEvent.keyboard('{Control>}{Shift>}l{/Shift}{/Control}');
  await expect.poll(() => part(element, 'elv-column-sight [data-sort=down]')).not.toBeNull();
  await userEvent.click(part(element, 'elv-column-sight [data-sort=down]')!);
  await userEvent.keyboard('{Escape}');
  await expect.poll(() => act.texts('ref').slice(0, 3)).toEqual(['D3', 'D4', 'D5']);
  await rowOf(act, 0);
  await rowOf(act, 1, 'Shift');
  await act.press('Alt+Shift+S');
  await act.choose('elv-rework [data-option=to]', 'Strip');
  await expect.poll(() => textOf(element, 'elv-rework .outcome')).toBe('2 device rows of Lamp become Strip.');
  await act.press('Control+Enter');
  await expect.poll(() => element.schedule.rows('devices').map(({ cells }) => cells.type)).toEqual(['Lamp', 'Strip', 'Strip', 'Strip', 'Lamp']);
  // They stay where they were sorted to.
  await expect.poll(() => act.texts('ref').slice(0, 3)).toEqual(['D3', 'D4', 'D5']);
});

test('each job has one title: in the menu, among the jobs, over the area', async () => {
  const element = await mountElement({ content: CONTENT });
  const act = new CountedActions(element);
  for (const [job, title] of [['duplicate', 'Duplicate'], ['moveTo', 'Move to a rail or branch'], ['swapType', 'Swap a type'], ['splitRun', 'Part a run in two']]) {
    await rowOf(act, 3);
    await act.clickOn(act.rowHeading(3), { button: 'right' });
    await expect.poll(() => part(element, `.cell-menu:popover-open [data-entry=${job}] span`)?.textContent).toBe(title);
    await act.click(`.cell-menu [data-entry=${job}]`);
    await expect.poll(() => part(element, 'elv-rework')?.hidden).toBe(false);
    await expect.poll(() => textOf(element, 'elv-rework h2')).toBe(title);
    expect(textOf(element, 'elv-rework .jobs [aria-pressed=true]')).toBe(title);
    await act.press('Escape');
    await expect.poll(() => part(element, 'elv-rework')!.hidden).toBe(true);
  }
});
