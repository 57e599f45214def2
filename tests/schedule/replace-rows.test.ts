import { expect, test } from 'vitest';
import { goneNotes, readCsv, writeCsv } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  withRowsAdded, withRowsReplaced, type Acceptance, type Cells, type Content,
} from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';

const BY = {
  rule: 'device-without-quantity', reason: 'counted on site', name: 'N. N.', date: '2026-03-02', value: null,
};
const accepted: Acceptance[] = [
  { sheet: 'devices', tag: 'D1', ...BY }, {
    sheet: 'devices', tag: '', row: 2, ...BY
  }, { sheet: 'feeds', tag: '', row: 1, ...BY },
];
const content = (): Content => ({
  details: { panel: 'KP-1' }, accepted,
  sheets: {
    devices: [{ ref: 'D1', qty: 3 }, { qty: 4, distance: '=[devices.qty#1]+[qty]' }],
    feeds: [{ rated: '=SUM([devices.qty#1:#2])' }],
  },
});
/** Rows of another file: its formulas name its own rows. */
const ROWS: Cells[] = [
  { ref: 'D1', qty: 10 }, {
    qty: 20, distance: "=[devices.qty#1]+[qty#2]+[qty]+[feeds.rated#1]+SUM([devices.qty#1:#2])+[devices.qty@'a #1']",
  },
  { ref: 'a #1', qty: 30 },
];
const acceptedRows = (schedule: LoadSchedule) =>
  schedule.rows('devices').map((row, place) => (row.accepted === undefined ? -1 : place)).filter((place) => place >= 0);

test('rows that take the place of others are accepted by their tag only', () => {
  const { content: replaced, gone } = withRowsReplaced(content(), 'devices', ROWS);
  const schedule = new LoadSchedule(replaced);
  expect(gone).toEqual([accepted[1]]);
  expect([schedule.formulaProblems, schedule.rows('devices').length, acceptedRows(schedule)]).toEqual([[], 3, [0]]);
  expect(schedule.content().accepted).toContainEqual({ ...accepted[1], row: 0 });
  // By hand: 10 + 20 + 20 + (10 + 20) + (10 + 20) + 30.
  expect(schedule.value('devices', 1, 'distance')).toBe(140);
});

test('rows behind others keep what they name, and leave the others what was accepted', () => {
  const schedule = new LoadSchedule(withRowsAdded(content(), 'devices', ROWS));
  expect([schedule.formulaProblems, acceptedRows(schedule)]).toEqual([[], [0, 1]]);
  expect(schedule.rows('devices').map((_row, id) => schedule.value('devices', id, 'distance')))
    .toEqual([null, 7, null, 117, null]);
  expect(schedule.content().accepted).toContainEqual(accepted[2]);
});

test('a tag that stands twice once rows are behind others leaves formulas the row that they named', () => {
  const before: Content = {
    details: {}, sheets: {
      outputs: [{ output: 'K1', power: "=[devices.qty@D1]*20+[devices.qty@'D 2']+[devices.qty@D3]" }],
      devices: [{ ref: 'D1', qty: 3, distance: '=[qty@D3]' }, { ref: 'D 2', qty: 4 }, { ref: 'D3', qty: 5 }],
    },
  };
  const rows: Cells[] = [
    { ref: 'D1', qty: 10, distance: "=[qty@D1]+[devices.$qty$@'D 2']" }, { ref: 'D 2', qty: 40 },
  ];
  const schedule = new LoadSchedule(withRowsAdded(before, 'devices', rows));
  expect(schedule.formulaProblems).toEqual([]);
  // By hand: 3 × 20 + 4 + 5; the row before names D3, which stands once; that of the file its own rows, 10 + 40.
  expect(schedule.value('outputs', 0, 'power')).toBe(69);
  expect([0, 3].map((row) => schedule.value('devices', row, 'distance'))).toEqual([5, 50]);
  const { outputs, devices } = schedule.content().sheets;
  expect(outputs![0]!.power).toBe('=[devices.qty#1]*20+[devices.qty#2]+[devices.qty@D3]');
  expect(devices![3]!.distance).toBe('=[qty]+[devices.$qty$#5]');
});

test('rows that come in as they went out keep what was accepted of them, whatever their tags', () => {
  const devices: Cells[] = [
    { ref: 'D1', qty: 1 }, { ref: 'D1', qty: 2 }, { note: 'spare', distance: '=[devices.qty#1]' }, { ref: 'D4' },
  ];
  const all = [['D1', 2], ['', 3], ['D4', undefined]].map(([tag, row]): Acceptance =>
    ({ sheet: 'devices', tag: tag as string, ...(row === undefined ? {} : { row: row as number }), ...BY }));
  const before = new LoadSchedule({ details: {}, sheets: { devices }, accepted: all });
  const read = readCsv(writeCsv(before, 'devices'), 'devices');
  if (!read.ok) throw new Error(read.problems[0]!.message);
  const same = withRowsReplaced(before.content(), 'devices', read.rows);
  expect([same.content.accepted, same.gone, goneNotes(same.gone, ENGLISH)]).toEqual([all, [], []]);

  // One of those with a doubled tag is there no more, the untagged one is another, and D4 is gone.
  const other = withRowsReplaced(before.content(), 'devices', [{ ref: 'D1' }, { ref: 'D5' }, { note: 'new' }]);
  expect(other.content.accepted).toEqual([{ ...all[0], row: 0 }, { ...all[1], row: 0 }, all[2]]);
  expect(acceptedRows(new LoadSchedule(other.content))).toEqual([]);
  expect(goneNotes(other.gone, ENGLISH)).toEqual([
    'What was accepted of D1, row 3, D4 has no row any more; it is kept and written back.',
  ]);
  expect(withRowsReplaced(other.content, 'devices', []).gone).toEqual([]);
});
