import { expect, test } from 'vitest';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { scheduleDigest } from '../../src/report/digest/index.ts';

const file = (view: unknown) => JSON.stringify({
  format: 'elv-load-schedule', version: 2, details: {}, sheets: { supplies: [{ rail: 'L1' }] }, view,
});

function opened(view: unknown): LoadSchedule {
  const read = readSchedule(file(view));
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return new LoadSchedule(read.content);
}

test('files keep which rare columns are shown, with sheets and keys of newer software', () => {
  const schedule = opened({ rare: ['supplies', 'of-tomorrow'], frozen: 3 });
  expect([schedule.showsRare('supplies'), schedule.showsRare('runs')]).toEqual([true, false]);
  schedule.showRare('runs', true);
  schedule.showRare('supplies', false);
  expect(JSON.parse(writeSchedule(schedule.content())))
    .toMatchObject({ view: { rare: ['of-tomorrow', 'runs'], frozen: 3 } });
});

test('to look at a schedule in another way changes neither its digest nor what can be undone', () => {
  const schedule = opened(undefined);
  const before = scheduleDigest(schedule.content());
  schedule.showRare('supplies', true);
  expect(scheduleDigest(schedule.content())).toBe(before);
  expect([schedule.undoLabel, schedule.lastAction]).toEqual([undefined, undefined]);
  schedule.showRare('supplies', false);
  expect(JSON.parse(writeSchedule(schedule.content()))).not.toHaveProperty('view');
});

test.each([[{ rare: 'supplies' }, '/view/rare'], [7, '/view']])('a view that is none is refused: %j', (view, path) => {
  expect(readSchedule(file(view))).toMatchObject({ ok: false, problems: [{ path, code: 'wrong-kind' }] });
});
