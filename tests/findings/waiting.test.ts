import { expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { insertRows, removeRows } from '../../src/schedule/index.ts';
import { enter, findingsAt, idAt, scheduleOf, valueAt } from '../support/schedules.ts';

/** Two types that do not say their nodes: three rows of T on branches, one of T on none, one of U on none. */
const SHEETS = {
  types: [{ type: 'T', draw: 10 }, { type: 'U', draw: 10 }, { type: 'V', draw: 10, nodes: 2 }],
  supplies: [{ rail: 'L1', rated: 5 }],
  branches: [{ branch: 'B1', limit: 40, terminated: true }, { branch: 'B2', limit: 40, terminated: true }],
  devices: [
    {
      ref: 'D1', type: 'T', qty: 4, rail: 'L1', branch: 'B1',
    }, { ref: 'D2', type: 'T', qty: 1, rail: 'L1', branch: 'B1' },
    { ref: 'D3', type: 'T', qty: 1, rail: 'L1', branch: 'B2' }, { ref: 'D4', type: 'T', qty: 1, rail: 'L1' },
    { ref: 'D5', type: 'U', qty: 1, rail: 'L1' }, { ref: 'D6', type: 'V', qty: 3, rail: 'L1', branch: 'B1' },
  ],
} as const;

const waiting = (schedule: LoadSchedule) => schedule.findings.filter((finding) => finding.waiting !== undefined)
  .map(({ rule, tag, key, waiting: rows }) => [rule, tag, key, rows]);

/** Rows of a schedule built afresh are numbered anew. */
const withoutIds = ({ findings }: LoadSchedule) => findings.map(({ id: _id, ...finding }) => finding);

test('nodes that a type does not say are found once, with how many device rows wait for them', () => {
  const schedule = scheduleOf(SHEETS);
  expect(waiting(schedule)).toEqual([['type-nodes-missing', 'T', 'nodes', 3]]);
  expect(schedule.findings.filter(({ sheet, severity }) => sheet === 'devices' && severity !== 'note')).toEqual([]);
});

test('what hangs on them is not known, and its branches are incomplete', () => {
  const schedule = scheduleOf(SHEETS);
  expect([0, 2, 5].map((row) => valueAt(schedule, 'devices', row, 'nodes'))).toEqual([null, null, 6]);
  expect(valueAt(schedule, 'branches', 0, 'nodes')).toBe(6);
  expect(['nodes', 'free', 'used'].map((key) => schedule.partialSign('branches', idAt(schedule, 'branches'), key)))
    .toEqual(['≥', '≤', '≥']);
  expect([0, 1].map((row) => valueAt(schedule, 'branches', row, 'status'))).toEqual(['incomplete', 'incomplete']);
  enter(schedule, 'types', 0, { nodes: 0 });
  expect([0, 1].map((row) => valueAt(schedule, 'branches', row, 'status'))).toEqual(['ok', 'ok']);
  expect(waiting(schedule)).toEqual([]);
});

test('how many wait follows every change, as in a schedule built afresh', () => {
  const schedule = scheduleOf(SHEETS);
  const { document } = schedule;
  const counts: unknown[] = [];
  const look = () => {
    const afresh = new LoadSchedule(schedule.content());
    expect(withoutIds(schedule)).toEqual(withoutIds(afresh));
    afresh.dispose();
    counts.push(waiting(schedule).map(([, tag, , rows]) => `${tag} ${rows}`).join(', '));
  };
  enter(schedule, 'devices', 3, { branch: 'B2' });
  look();
  enter(schedule, 'devices', 4, { branch: 'B9' });
  look();
  enter(schedule, 'devices', 0, { type: 'U' });
  look();
  enter(schedule, 'types', 1, { type: 'W' });
  look();
  schedule.act('Rows', insertRows(document, 'devices', 0, [{ ref: 'D0', type: 'W', qty: 2, branch: 'B1' }]));
  look();
  schedule.act('Rows', removeRows(document, 'devices', [idAt(schedule, 'devices', 2), idAt(schedule, 'devices', 3)]));
  look();
  schedule.act('Rows', insertRows(document, 'types', 0, [{ type: 'U', draw: 10 }]));
  look();
  for (let step = 0; step < 3; step += 1) schedule.undo();
  look();
  expect(counts).toEqual(['T 4', 'T 4, U 1', 'T 3, U 2', 'T 3', 'T 3, W 1', 'T 1, W 1', 'U 2, T 1, W 1', 'T 3']);
});

test('a row tells nothing of others that wait where none does', () => {
  const schedule = scheduleOf({ ...SHEETS, branches: [{ branch: 'B1' }] });
  const [found] = findingsAt(schedule, 'branches').filter(({ rule }) => rule === 'branch-limit-missing');
  expect(found).toMatchObject({ severity: 'incomplete', key: 'limit' });
  expect(found).not.toHaveProperty('waiting');
});
