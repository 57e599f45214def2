import { expect, test } from 'vitest';
import { Jumps } from '../../components/load-schedule/jumps.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { insertRows, removeRows } from '../../src/schedule/index.ts';

const at = (id: number) => ({ sheet: 'devices', id, key: 'qty' }) as const;

test('back leads to where each jump began, forth to where one went back from, wherever one had moved meanwhile', () => {
  const jumps = new Jumps();
  expect(jumps.step(-1, at(0))).toBeUndefined();
  jumps.jump(at(0), at(5));
  // By hand to 6, and from there to 9.
  jumps.jump(at(6), at(9));
  expect(jumps.step(-1, at(9))).toEqual(at(6));
  expect(jumps.step(-1, at(7))).toEqual(at(0));
  expect(jumps.step(-1, at(0))).toBeUndefined();
  expect(jumps.step(1, at(0))).toEqual(at(7));
  expect(jumps.step(1, at(7))).toEqual(at(9));
  expect(jumps.step(1, at(9))).toBeUndefined();
});

test('a jump from the midst leaves behind what one had gone back from', () => {
  const jumps = new Jumps();
  jumps.jump(at(0), at(5));
  jumps.jump(at(5), at(9));
  jumps.step(-1, at(9));
  jumps.jump(at(5), at(7));
  expect(jumps.step(1, at(7))).toBeUndefined();
  expect(jumps.step(-1, at(7))).toEqual(at(5));
});

test('of a row that was deleted only its sheet is kept, as another row may have its id by now', () => {
  const schedule = new LoadSchedule({ details: {}, sheets: { devices: [{ ref: 'D1' }, { ref: 'D2' }] } });
  const jumps = new Jumps();
  schedule.subscribe((event) => { jumps.heed(event); });
  jumps.jump(at(0), at(1));
  schedule.act('Deletion', removeRows(schedule.document, 'devices', [0]));
  schedule.act('Insertion', insertRows(schedule.document, 'devices', 0, [{ ref: 'D9' }]));
  expect(schedule.rows('devices')[0]).toMatchObject({ id: 0, cells: { ref: 'D9' } });
  expect(jumps.step(-1, at(1))).toEqual({ ...at(0), id: -1 });
});
