import { expect, test } from 'vitest';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { PLAIN_LOOK } from '../../src/schedule/index.ts';
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
  const schedule = opened({ rare: ['supplies', 'of-tomorrow'], tomorrow: 3 });
  expect([schedule.look('supplies').all, schedule.look('runs').all]).toEqual([true, false]);
  schedule.setLook('runs', { groups: ['measured'] });
  schedule.setLook('supplies', { all: false });
  expect(JSON.parse(writeSchedule(schedule.content())))
    .toMatchObject({ view: { rare: ['of-tomorrow', 'runs.measured'], tomorrow: 3 } });
  expect(schedule.look('runs').groups).toEqual(['measured']);
});

test('files keep what is hidden, frozen and widened, sheet by sheet, and leave out what is as at first', () => {
  const schedule = opened({ hidden: { morrow: ['a'] }, frozen: { supplies: 'rated' } });
  expect(schedule.look('supplies').frozen).toBe('rated');
  schedule.setLook('devices', { hidden: ['note'], wide: { area: 20.5 }, frozen: 'area' });
  schedule.setLook('supplies', { frozen: 'rail' });
  expect((JSON.parse(writeSchedule(schedule.content())) as { view: unknown }).view).toEqual({
    hidden: { morrow: ['a'], devices: ['note'] }, frozen: { devices: 'area' }, wide: { devices: { area: 20.5 } },
  });
});

test('to look at a schedule in another way changes neither its digest nor what can be undone', () => {
  const schedule = opened(undefined);
  const before = scheduleDigest(schedule.content());
  schedule.setLook('supplies', { all: true, hidden: ['note'], wide: { rated: 9 }, frozen: 'rated' });
  expect(scheduleDigest(schedule.content())).toBe(before);
  expect([schedule.undoLabel, schedule.lastAction]).toEqual([undefined, undefined]);
  schedule.setLook('supplies', PLAIN_LOOK);
  expect(JSON.parse(writeSchedule(schedule.content()))).not.toHaveProperty('view');
});

test.each([
  [{ rare: 'supplies' }, '/view/rare'], [7, '/view'], [{ hidden: [] }, '/view/hidden'], [{ frozen: 3 }, '/view/frozen'],
  [{ hidden: { runs: 'note' } }, '/view/hidden/runs'], [{ wide: { runs: [] } }, '/view/wide/runs'],
])('a view that is none is refused: %j', (view, path) => {
  expect(readSchedule(file(view))).toMatchObject({ ok: false, problems: [{ path, code: 'wrong-kind' }] });
});
