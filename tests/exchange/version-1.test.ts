import { describe, expect, test } from 'vitest';
import { readSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';

/** Opens a file of version 1 with these sheets. */
function open(sheets: object, accepted: readonly object[] = []) {
  const read = readSchedule(JSON.stringify({ format: 'elv-load-schedule', version: 1, sheets, accepted }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { sheets: read.content.sheets, notes: read.notes, schedule: new LoadSchedule(read.content) };
}

describe.each(['', ' ', null, undefined])('an empty cell that stands as %j', (empty) => {
  test('means what version 1 meant by it', () => {
    const { sheets } = open({
      types: [{ type: 'A', draw: 10, points: empty }], supplies: [{ rail: 'L1', peak: empty }],
      branches: [{ branch: 'B1', limit: empty }], runs: [{ run: 'W1', temperature: empty, maxDrop: empty }],
      outputs: [{ output: 'K1', voltage: empty, powerFactor: empty }],
    });
    expect(sheets).toMatchObject({
      types: [{ type: 'A', draw: 10, nodes: 1 }], supplies: [{ rail: 'L1', peak: 1.2 }],
      branches: [{ branch: 'B1', limit: 50 }], runs: [{ run: 'W1', temperature: 20, maxDrop: 0.05 }],
      outputs: [{ output: 'K1', voltage: 230, powerFactor: 1 }],
    });
  });

  test('leaves a row of nothing else blank', () => {
    expect(open({ types: [{ type: empty, draw: empty, points: empty }] }).sheets.types).toEqual([{}]);
  });
});

test.each([5, 'see drawing', ''])('a key that version 1 did not know is no column of now: nodes %j', (nodes) => {
  const { sheets, notes } = open({ types: [{ nodes, type: 'A', points: 2 }, { type: 'B', points: 3, nodes }] });
  expect(sheets.types).toEqual([
    { type: 'A', nodes: 2, nodesOfVersion1: nodes }, { type: 'B', nodes: 3, nodesOfVersion1: nodes },
  ]);
  expect(notes).toEqual(['The sheet “types” has the unknown key “nodesOfVersion1”; it is kept and written back.']);
});

test('what was accepted of a run under the name of a rule of before stays accepted', () => {
  // By hand: 3 A where the conductor carries 2 A, behind a protection of 4 A.
  const by = { sheet: 'runs', tag: 'W1', reason: 'short', name: 'N. N.', date: '2026-01-05', limit: 2 };
  const { schedule } = open({
    supplies: [{ rail: 'L1', rated: 10 }], conductors: [{ conductor: 'C', resistance: 1, maxCurrent: 2 }],
    runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 1, protection: 4 }],
    devices: [{ ref: 'D1', qty: 1, unitDraw: 3000, rail: 'L1', run: 'W1' }],
  }, [
    { ...by, rule: 'run-over-conductor', key: 'current', value: 3.1 },
    { ...by, rule: 'run-protection-over-conductor', key: 'protection', value: 4 },
  ]);
  const rules = schedule.findings.filter(({ sheet, severity }) => sheet === 'runs' && severity === 'over')
    .map(({ rule, accepted }) => [rule, accepted?.reason]);
  expect(rules).toEqual([['run-over-carries', 'short'], ['run-protection-over-carries', 'short']]);
});

test('a run that has a protection has a way, named after it, of the kind that its multiple fits', () => {
  const { sheets, schedule } = open({
    runs: [
      { run: 'W1', rail: 'L1', protection: 2 }, { run: 'W1', rail: 'L1', protection: 4, trip: 10 }, { run: 'W2', trip: 7 },
      { protection: '=I1*2', trip: '=20' }, { run: 'W4', rail: 'L2', protection: 6, trip: 3.3 }, { run: 'W5', way: 'x' },
    ],
    // Its row 3 has no protection.
    supplies: [{ rail: 'L1', rated: '=runs!I2*2', fuse: '=SUM(runs!I1:I6)', units: '=runs!J2' }, { rail: 'L2', rated: '=runs!I3' }],
  });
  expect(sheets.ways).toEqual([
    { way: 'W1', rail: 'L1', kind: 'B', rated: 2, trip: 5 }, { way: 'W2', rail: 'L1', kind: 'C', rated: 4, trip: 10 },
    { way: 'F1', kind: 'D', rated: '=[ways.rated@W1]*2', trip: '=20' }, { way: 'W4', rail: 'L2', rated: 6, trip: 3.3 },
  ]);
  expect(sheets.runs!.map(({ way, tripOfVersion1, wayOfVersion1 }) => way ?? tripOfVersion1 ?? wayOfVersion1))
    .toEqual(['W1', 'W2', 7, 'F1', 'W4', 'x']);
  expect(['rated', 'fuse', 'units'].map((key) => schedule.value('supplies', schedule.rows('supplies')[0]!.id, key)))
    .toEqual([8, 2 + 4 + 4 + 6, 10]);
  expect(sheets.supplies![1]!.rated).toBe('=#REF!');
});
