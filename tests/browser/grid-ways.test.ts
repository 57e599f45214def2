import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { paste, putOnClipboard } from './support/clipboard.ts';
import type { Content } from '../../src/schedule/index.ts';
import { cellAt, frame, mountGrid, placeOf, unmountAll } from './support/mount.ts';

afterEach(unmountAll);

const content = (): Content => ({
  details: {},
  sheets: {
    supplies: [{ rail: 'L1', rated: 10 }], ways: [{ way: 'L1-F1', rail: 'L1', kind: 'fast', rated: 2 }],
    runs: [{ run: 'W1', rail: 'L1', way: 'L1-F1' }, { run: 'W2', rail: 'L1' }, { run: 'W3', rail: 'L1' }],
  },
});

test('B 4 typed in the way of a run makes that way, as one action that one undo takes back', async () => {
  const { grid, schedule, messages } = await mountGrid(content(), { sheet: 'runs' });
  await userEvent.click(cellAt(grid, 1, placeOf(grid, 'way')));
  await userEvent.keyboard('B 4{Enter}');
  await frame();
  const ways = () => schedule.rows('ways').map(({ cells }) => cells);
  expect(ways()[1]).toEqual({ way: 'L1-F2', rail: 'L1', kind: 'B', rated: 4 });
  expect(cellAt(grid, 1, placeOf(grid, 'way')).textContent).toBe('L1-F2');
  expect(messages.at(-1)!.text).toBe('1 way made by kind and rating, on the sheet Ways.');
  await userEvent.keyboard('{Control>}z{/Control}');
  expect([ways().length, schedule.rows('runs')[1]!.cells.way]).toEqual([1, undefined]);
});

test('pasted ones make a way each', async () => {
  const { grid, schedule } = await mountGrid(content(), { sheet: 'runs' });
  await putOnClipboard('C 6\r\ngG 10\r\n');
  await userEvent.click(cellAt(grid, 1, placeOf(grid, 'way')));
  await paste();
  await frame();
  expect(schedule.rows('ways').map(({ cells }) => [cells.way, cells.kind, cells.rated]))
    .toEqual([['L1-F1', 'fast', 2], ['L1-F2', 'C', 6], ['L1-F3', 'gG', 10]]);
  expect(schedule.rows('runs').map(({ cells }) => cells.way)).toEqual(['L1-F1', 'L1-F2', 'L1-F3']);
  await userEvent.keyboard('{Control>}z{/Control}');
  expect([schedule.rows('ways').length, schedule.rows('runs')[2]!.cells.way]).toEqual([1, undefined]);
});
