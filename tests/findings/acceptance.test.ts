import { describe, expect, test } from 'vitest';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import type { Finding } from '../../src/findings/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  acceptFinding, insertRows, moveRows, removeRows, renameTag, toSnapshot, type Acceptance, type Cells,
} from '../../src/schedule/index.ts';
import { enter, findingsAt, idAt, scheduleOf } from '../support/schedules.ts';
import { processorTime } from '../support/processor-time.ts';

const BY = { reason: 'a larger supply is on order', name: 'N. N.', date: '2026-03-02' };

/** A rail of 10 A that is asked for so many amperes. */
const rail = (demand: number, supply: Cells = {}) => scheduleOf({
  supplies: [{ rail: 'L1', rated: 10, fuse: 20, ...supply }], devices: [
    { ref: 'D1', rail: 'L1', qty: 1, unitDraw: demand * 1000 },
  ],
});
const of = (schedule: LoadSchedule, rule: string): Finding =>
  findingsAt(schedule, 'supplies').find((each) => each.rule === rule)!;
const over = (schedule: LoadSchedule) => of(schedule, 'supply-over-usable');

test('a finding is accepted with reason, name, date, value and limit, in one step that is taken back and done again',
  () => {
  const schedule = rail(12);
  schedule.accept(over(schedule), BY);
  expect(over(schedule).accepted).toEqual({
    rule: 'supply-over-usable', key: 'demand', ...BY, value: 12, limit: 10,
  });
  expect(schedule.content().accepted).toEqual([{ sheet: 'supplies', tag: 'L1', ...over(schedule).accepted }]);
  schedule.undo();
  expect(over(schedule).accepted).toBeUndefined();
  schedule.redo();
  schedule.withdraw(over(schedule));
  expect(over(schedule).accepted).toBeUndefined();
  expect(schedule.undoLabel).toBe('Withdrawal of an acceptance');
});

test('it is open again when it has grown worse, by its value or by its limit, and only then', () => {
  const schedule = rail(12);
  schedule.accept(over(schedule), BY);
  const cases: [Cells, 'devices' | 'supplies', 'accepted' | 'reopened'][] = [
    [{ unitDraw: 12_500 }, 'devices', 'reopened'], [{ unitDraw: 11_000 }, 'devices', 'accepted'],
    [
      { unitDraw: 13_000, diversity: 0.9 }, 'devices', 'accepted',
    ], [{ rated: 9 }, 'supplies', 'reopened'], [{ rated: 11 }, 'supplies', 'accepted'],
  ];
  for (const [cells, sheet, state] of cases) {
    enter(schedule, sheet, 0, cells);
    expect([cells, over(schedule)])
      .toEqual([cells, expect.objectContaining({ [state]: expect.objectContaining(BY) as unknown })]);
    expect(over(schedule)).not.toHaveProperty(state === 'accepted' ? 'reopened' : 'accepted');
    schedule.undo();
  }
  enter(schedule, 'devices', 0, { unitDraw: 12_500 });
  schedule.accept(over(schedule), { ...BY, name: 'M. M.' });
  expect(over(schedule).accepted).toMatchObject({ name: 'M. M.', value: 12.5 });
  expect(schedule.content().accepted).toHaveLength(1);
});

test('where too little is what is wrong, less is worse', () => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 10 }], conductors: [{ conductor: 'C', resistance: 10 }], types: [
      { type: 'T', draw: 1000, minVoltage: 23.5 },
    ],
    runs: [
      { run: 'W1', rail: 'L1', conductor: 'C', length: 50 },
    ], devices: [{ qty: 1, rail: 'L1', run: 'W1', type: 'T' }],
  });
  const under = () => findingsAt(schedule, 'runs').find(({ rule }) => rule === 'run-under-voltage')!;
  schedule.accept(under(), BY);
  enter(schedule, 'runs', 0, { length: 60 });
  expect(under().reopened).toMatchObject(BY);
  enter(schedule, 'runs', 0, { length: 40 });
  expect(under().accepted).toMatchObject(BY);
});

test('what names nothing is accepted for the tag that stood there', () => {
  const schedule = scheduleOf({ devices: [{ ref: 'D1', rail: 'X', branch: 'Y', qty: 1 }] });
  const nothing = (key: string) =>
    findingsAt(schedule, 'devices').find((each) => each.rule === 'tag-names-nothing' && each.key === key)!;
  schedule.accept(nothing('rail'), BY);
  expect(nothing('rail').accepted).toBeDefined();
  expect(nothing('branch').accepted).toBeUndefined();
  enter(schedule, 'devices', 0, { rail: 'Z' });
  expect(nothing('rail')).toMatchObject({ reopened: BY });
});

test.each([
  ['type-nodes-missing', {
    types: [{ type: 'T', draw: 10 }], branches: [{ branch: 'B1', limit: 40, terminated: true }],
    devices: [{ ref: 'D1', type: 'T', qty: 1, branch: 'B1' }, { ref: 'D2', type: 'T', qty: 1, branch: 'B1' }],
  }, 'devices', 'branch', 'B1'],
  ['conductor-current-missing', {
    conductors: [{ conductor: 'C', resistance: 10 }],
    runs: [{ run: 'W1', conductor: 'C' }, { run: 'W2', conductor: 'C' }],
  }, 'runs', 'conductor', 'C'],
] as const)('%s is open again when more rows wait for it than when it was accepted', (rule, sheets, from, key, tag) => {
  const schedule = scheduleOf(sheets);
  const found = (of = schedule) => of.findings.find((each) => each.rule === rule)!;
  const wait = (rows: number) => {
    [0, 1].forEach((at) => { enter(schedule, from, at, { [key]: at < rows ? tag : null }); });
  };
  wait(1);
  schedule.accept(found(), BY);
  expect(schedule.content().accepted).toMatchObject([{ rule, waiting: 1 }]);
  wait(2);
  const read = readSchedule(writeSchedule(schedule.content()));
  if (!read.ok) throw new Error(read.problems[0]!.message);
  for (const of of [schedule, new LoadSchedule(read.content)]) {
    expect(found(of)).toMatchObject({ waiting: 2, reopened: BY });
    expect(found(of)).not.toHaveProperty('accepted');
  }
  schedule.accept(found(), BY);
  wait(1);
  expect(found()).toMatchObject({ waiting: 1, accepted: { ...BY, waiting: 2 } });
});

test('acceptances and revisions are kept in the file', () => {
  const schedule = rail(12);
  schedule.accept(over(schedule), BY);
  const revisions = [{ revision: 'A', date: '2026-01-05', name: 'N. N.', text: 'First issue' }];
  schedule.act('History', [{ op: 'revisions', revisions }]);
  const read = readSchedule(writeSchedule(schedule.content(), { pretty: true }));
  if (!read.ok) throw new Error(read.problems[0]!.message);
  expect(read.content).toMatchObject({ accepted: schedule.content().accepted, revisions });
  expect(over(new LoadSchedule(read.content)).accepted).toMatchObject(BY);
  schedule.undo();
  expect(schedule.document.revisions).toEqual([]);
});

test.each([
  ['revisions that are no list', { revisions: {} }, '/revisions'],
  ['a revision without a text for its name', { revisions: [{ revision: 'A', name: 5 }] }, '/revisions/0/name'],
  [
    'an acceptance whose limit is a list',
    { accepted: [{ sheet: 'supplies', tag: '', rule: '', reason: '', name: '', date: '', limit: [] }] },
    '/accepted/0/limit',
  ],
  ...['1', 1.5, -1].map((row): [string, object, string] => [`an acceptance with the row ${JSON.stringify(row)}`,
    { accepted: [{ sheet: 'supplies', tag: '', rule: '', reason: '', name: '', date: '', row }] }, '/accepted/0/row']),
  [
    'an acceptance for which half a row waited',
    { accepted: [{ sheet: 'types', tag: '', rule: '', reason: '', name: '', date: '', waiting: 0.5 }] },
    '/accepted/0/waiting',
  ],
  [
    'an acceptance whose key is a number',
    { accepted: [{ sheet: 'supplies', tag: '', rule: '', reason: '', name: '', date: '', key: 1 }] }, '/accepted/0/key',
  ],
])('a file is refused for %s', (_name, part, path) => {
  const read = readSchedule(JSON.stringify({ format: 'elv-load-schedule', version: 2, sheets: {}, ...part }));
  expect(read).toMatchObject({ ok: false, problems: [{ path }] });
});

test('nobody accepts without a reason, a name and a date', () => {
  const schedule = rail(12);
  for (const by of [{ ...BY, reason: ' ' }, { ...BY, name: '' }, { ...BY, date: '2 March' }]) {
    expect(() => acceptFinding(schedule.document, over(schedule), by)).toThrow(RangeError);
  }
});

describe('an acceptance stays with its row', () => {
  /** Two rails that are asked for too much, the first one accepted. */
  const accepted = () => {
    const schedule = scheduleOf({
      supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }],
      devices: [
        { ref: 'D1', rail: 'L1', qty: 1, unitDraw: 12_000 }, { ref: 'D2', rail: 'L2', qty: 1, unitDraw: 12_000 },
      ],
    });
    schedule.accept(overAt(schedule, 1)!, BY);
    return schedule;
  };
  const overAt = (schedule: LoadSchedule, at: number) =>
    findingsAt(schedule, 'supplies', at).find(({ rule }) => rule === 'supply-over-usable');
  const marks = (schedule: LoadSchedule) =>
    schedule.rows('supplies').map((_row, at) => overAt(schedule, at)?.accepted?.name);
  const again = (schedule: LoadSchedule) => {
    const read = readSchedule(writeSchedule(schedule.content()));
    if (!read.ok) throw new Error(read.problems[0]!.message);
    return { schedule: new LoadSchedule(read.content), notes: read.notes };
  };
  const rename = (schedule: LoadSchedule, at: number, tag: string) => {
    schedule.act('Rename', renameTag(schedule.document, 'supplies', idAt(schedule, 'supplies', at), tag));
  };

  test('under another tag, in the file too, and leaves the former tag to whoever bears it next', () => {
    const schedule = accepted();
    rename(schedule, 1, 'L3');
    const load = { ref: 'D3', rail: 'L2', qty: 1, unitDraw: 12_000 };
    schedule.act('Row', [
      ...insertRows(
        schedule.document, 'supplies', 2, [{ rail: 'L2', rated: 10 }]
      ), ...insertRows(schedule.document, 'devices', 2, [load]),
    ]);
    expect(marks(schedule)).toEqual([undefined, 'N. N.', undefined]);
    expect(schedule.content().accepted).toMatchObject([{ sheet: 'supplies', tag: 'L3', rule: 'supply-over-usable' }]);
    expect(marks(again(schedule).schedule)).toEqual([undefined, 'N. N.', undefined]);
  });

  test('when rows move, and when it comes back after a deletion', () => {
    const schedule = accepted();
    schedule.act('Move', moveRows(schedule.document, 'supplies', [idAt(schedule, 'supplies', 1)], 0));
    expect(marks(schedule)).toEqual(['N. N.', undefined]);
    const before = schedule.content();
    schedule.act('Delete', removeRows(schedule.document, 'supplies', [idAt(schedule, 'supplies', 0)]));
    expect(schedule.content().accepted).toEqual([]);
    schedule.act('Row', insertRows(schedule.document, 'supplies', 0, [{ rail: 'L2', rated: 10 }]));
    expect(marks(schedule)).toEqual([undefined, undefined]);
    schedule.undo();
    schedule.undo();
    expect(schedule.content()).toEqual(before);
    expect(marks(schedule)).toEqual(['N. N.', undefined]);
  });

  test.each(
    [['no tag', null], ['the tag of another', 'L1']]
  )('of several with %s, which files tell by its number', (_what, rail) => {
    const schedule = accepted();
    enter(schedule, 'supplies', 1, { rail });
    enter(schedule, 'supplies', 0, { rail });
    expect(schedule.content().accepted).toMatchObject([{ sheet: 'supplies', tag: rail ?? '', row: 2 }]);
    const { schedule: opened, notes } = again(schedule);
    expect(opened.rows('supplies').map((row) => row.accepted?.length)).toEqual([undefined, 1]);
    expect(notes).toEqual([]);
  });

  test('and one that a file holds for no row is kept, said, and meant for no other that bears its tag later', () => {
    const lost = { sheet: 'supplies', tag: 'L9', rule: 'supply-over-usable', ...BY, value: 12 } as const;
    const first = again(new LoadSchedule({ ...accepted().content(), accepted: [lost] }));
    expect(first.notes).toEqual([
      'The acceptance of supply-over-usable is meant for a row “L9” of the sheet “supplies” that is not there; it is kept and written back.',
    ]);
    const { schedule } = first;
    expect([marks(schedule), schedule.content().accepted]).toEqual([[undefined, undefined], [lost]]);
    rename(schedule, 0, 'L9');
    expect(schedule.content().accepted).toEqual([{ ...lost, row: 0 }]);
    const second = again(schedule);
    expect([marks(second.schedule), second.notes]).toEqual([[undefined, undefined], first.notes]);
  });

  test('and without a number is meant for every row that bears its tag, as files of version 1 hold it', () => {
    const schedule = accepted();
    enter(schedule, 'supplies', 0, { rail: 'L2' });
    const [{ row: _row, ...each }] = schedule.content().accepted as [Acceptance];
    const opened = new LoadSchedule({ ...schedule.content(), accepted: [each] });
    expect(opened.rows('supplies').map((row) => row.accepted?.length)).toEqual([1, 1]);
  });

  test('in time where there are many, and is meant for none of more than a hundred that share a tag', () => {
    const taken = processorTime();
    const devices = Array.from({ length: 20_000 }, (_row, at) => ({ ref: at < 101 ? 'many' : `D${at}`, qty: 1 }));
    const accepted = Array.from({ length: 20_000 }, (_each, at): Acceptance =>
      ({ sheet: 'devices', tag: at % 2 === 0 ? 'many' : 'D101', rule: `rule-${at}`, ...BY, value: null }));
    const { snapshot } = toSnapshot({ details: {}, sheets: { devices }, accepted });
    expect([snapshot.unattached.length, snapshot.sheets.devices[101]!.accepted!.length]).toEqual([10_000, 10_000]);
    expect(taken()).toBeLessThan(2000);
  });
});
