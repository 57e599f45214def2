import { describe, expect, test } from 'vitest';
import {
  ALL_ROWS, buildLines, groupName, linesAfter, linesWith, rowsInSight, skipHeadings, type HeadingLine, type Line,
  type LinesOf, type Sight,
} from '../../components/grid/lines/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { insertRows, removeRows, type Cells, type SheetName } from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';

/**
 * Invented. By hand: L1 may be used for 1 A and is asked for 3 × 0.5 + 1 × 0.5 A × 0.4 = 1.7 A: over. L2 is asked for
 * 2 × 0.5 = 1 A of 2 A, and its way B 2 would ask 2 × 7.5 = 15 A of it to act: near.
 */
const DEVICES: Cells[] = [
  { ref: 'D10', area: 'Hall', type: 'Lamp', qty: 3, rail: 'L1', run: 'W1' },
  { ref: 'D2', area: 'Loft', type: 'Lamp', qty: 1, rail: 'L1', diversity: 0.4 },
  { ref: 'D1', area: 'Hall', type: 'Lamp', qty: 2, rail: 'L2', run: 'W2' },
  { ref: 'D3', type: 'Lamp', rail: 'L9' },
];
const schedule = () => new LoadSchedule({
  details: {},
  sheets: {
    devices: DEVICES, types: [{ type: 'Lamp', draw: 500, nodes: 0 }, { type: 'Horn', draw: 20, nodes: 0 }],
    supplies: [{ rail: 'L1', rated: 1 }, { rail: 'L2', rated: 2 }],
    ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: 2 }, { way: 'F2', rail: 'L2', kind: 'B', rated: 2 }],
    runs: [{ run: 'W1', way: 'F1', length: 10 }, { run: 'W2', way: 'F2', length: 10 }],
  },
});

function tags(of: LoadSchedule, sight: Partial<Sight>, sheet: SheetName = 'devices'): unknown[] {
  const key = sheet === 'devices' ? 'ref' : sheet === 'supplies' ? 'rail' : 'type';
  return rowsInSight(of, sheet, { ...ALL_ROWS, ...sight }, ENGLISH).map((id) => of.value(sheet, id, key));
}

describe('rows are picked', () => {
  test.each<[string, Partial<Sight>, unknown[]]>([
    ['all of them', {}, ['D10', 'D2', 'D1', 'D3']],
    ['of one rail', { columns: { rail: { texts: ['L1'] } } }, ['D10', 'D2']],
    ['of one area of several', { columns: { area: { texts: ['Loft', ''] } } }, ['D2', 'D3']],
    ['of one rail and one area', { columns: { rail: { texts: ['L1'] }, area: { texts: ['Hall'] } } }, ['D10']],
    ['by a figure: 1 A and more', { columns: { connected: { least: 1 } } }, ['D10', 'D1']],
    ['by a figure between bounds', { columns: { connected: { least: 0.5, most: 1 } } }, ['D2', 'D1']],
    ['with an own value in one column', { columns: { diversity: { own: true } } }, ['D2']],
    // Each names a rail, in place of that of its run.
    ['with any own value', { only: 'own' }, ['D10', 'D2', 'D1', 'D3']],
  ])('%s', (_what, sight, expected) => {
    expect(tags(schedule(), sight)).toEqual(expected);
  });

  test('by their state: over, near or worse, incomplete', () => {
    const of = schedule();
    expect([of.value('supplies', 0, 'status'), of.value('supplies', 1, 'status')]).toEqual(['over', 'near']);
    expect(tags(of, { only: 'over' }, 'supplies')).toEqual(['L1']);
    expect(tags(of, { only: 'near' }, 'supplies')).toEqual(['L1', 'L2']);
    // D3 has no quantity, and names a rail that is not there.
    expect(tags(of, { only: 'incomplete' })).toEqual(['D3']);
  });

  test('what is accepted is picked, sorted and listed as such, and no longer by the status that it is accepted for', () => {
    const of = schedule();
    for (const finding of of.findingsOf('supplies', 0)) of.accept(finding, { reason: 'Seldom', name: 'N.', date: '2026-01-02' });
    expect([of.value('supplies', 0, 'status'), of.shown('supplies', 0, 'status')]).toEqual(['over', 'accepted']);
    expect(tags(of, { columns: { status: { texts: ['accepted'] } } }, 'supplies')).toEqual(['L1']);
    expect(tags(of, { columns: { status: { texts: ['over'] } } }, 'supplies')).toEqual([]);
    expect(tags(of, { only: 'near' }, 'supplies')).toEqual(['L2']);
    // Worse than accepted is what is near and nobody accepts.
    expect(tags(of, { sort: { key: 'status', down: false } }, 'supplies')).toEqual(['L2', 'L1']);
    expect(tags(of, { sort: { key: 'status', down: true } }, 'supplies')).toEqual(['L1', 'L2']);
  });

  test('a blank row is in sight only where all are', () => {
    const of = new LoadSchedule({ details: {}, sheets: { devices: [{ ref: 'A' }, {}] } });
    expect(rowsInSight(of, 'devices', ALL_ROWS, ENGLISH)).toHaveLength(2);
    expect(rowsInSight(of, 'devices', { columns: { area: { texts: [''] } } }, ENGLISH)).toEqual([0]);
  });
});

describe('rows are sorted', () => {
  test.each<[string, Sight['sort'], unknown[]]>([
    ['by a tag, numbers in it by their size', { key: 'ref', down: false }, ['D1', 'D2', 'D3', 'D10']],
    ['by a tag, the other way up', { key: 'ref', down: true }, ['D10', 'D3', 'D2', 'D1']],
    ['by a result, what is not known last', { key: 'demand', down: false }, ['D2', 'D1', 'D10', 'D3']],
    ['by a result downwards, what is not known last too', { key: 'demand', down: true }, ['D10', 'D1', 'D2', 'D3']],
    ['equal ones as entered', { key: 'area', down: false }, ['D10', 'D1', 'D2', 'D3']],
  ])('%s', (_what, sort, expected) => {
    const of = schedule();
    expect(tags(of, { sort })).toEqual(expected);
    // A view: the document has the order in which the rows were entered.
    expect(of.rows('devices').map(({ cells }) => cells.ref)).toEqual(['D10', 'D2', 'D1', 'D3']);
  });

  test('states by how bad they are', () => {
    expect(tags(schedule(), { sort: { key: 'status', down: false } }, 'supplies')).toEqual(['L1', 'L2']);
    expect(tags(schedule(), { sort: { key: 'status', down: true } }, 'supplies')).toEqual(['L2', 'L1']);
  });
});

const of = (of: LoadSchedule, more: Partial<LinesOf> = {}): LinesOf => ({
  schedule: of, sheet: 'devices', grouping: 'entered', sight: ALL_ROWS, folded: new Set(), words: ENGLISH, canAdd: true, ...more,
});
const shape = (lines: readonly Line[], schedule: LoadSchedule) => lines.map((line) => line.kind === 'blank' ? '+'
  : line.kind === 'row' ? schedule.value('devices', line.id, 'ref')
  : `${line.folded ? '>' : ''}${line.text || (line.id < 0 ? 'none' : schedule.value(line.sheet, line.id, { supplies: 'rail', runs: 'run', ways: 'way', types: 'type', branches: 'branch' }[line.sheet as 'runs']))} ${line.members.length}/${line.all}`);

describe('rows are gathered', () => {
  test.each<[LinesOf['grouping'], unknown[]]>([
    ['rail', ['L1 2/2', 'D10', 'D2', 'L2 1/1', 'D1', 'none 1/1', 'D3', '+']],
    ['way', ['F1 1/1', 'D10', 'F2 1/1', 'D1', 'none 2/2', 'D2', 'D3', '+']],
    ['run', ['W1 1/1', 'D10', 'W2 1/1', 'D1', 'none 2/2', 'D2', 'D3', '+']],
    ['area', ['Hall 2/2', 'D10', 'D1', 'Loft 1/1', 'D2', 'none 1/1', 'D3', '+']],
    ['type', ['Lamp 4/4', 'D10', 'D2', 'D1', 'D3', '+']],
  ])('by %s', (grouping, expected) => {
    const it = schedule();
    expect(shape(buildLines(of(it, { grouping })).lines, it)).toEqual(expected);
  });

  test('picked and sorted within their groups; a group of which no row is in sight has no heading', () => {
    const it = schedule();
    const sight: Sight = { columns: { area: { texts: ['Hall', 'Loft'] }, rail: { texts: ['L1'] } }, sort: { key: 'ref', down: false } };
    expect(shape(buildLines(of(it, { grouping: 'rail', sight })).lines, it)).toEqual(['L1 2/2', 'D2', 'D10', '+']);
    const one: Sight = { columns: { area: { texts: ['Loft'] } } };
    expect(shape(buildLines(of(it, { grouping: 'rail', sight: one })).lines, it)).toEqual(['L1 1/2', 'D2', '+']);
  });

  test('groups are sorted by what their rows add up to, others by the row that comes first, and stay so until asked anew', () => {
    const it = schedule();
    const by = (key: string, down: boolean) => of(it, { grouping: 'rail', sight: { columns: {}, sort: { key, down } } });
    // By hand: L1 1.7 A, L2 1.0 A.
    expect(shape(buildLines(by('demand', false)).lines, it)).toEqual(['L2 1/1', 'D1', 'L1 2/2', 'D2', 'D10', 'none 1/1', 'D3', '+']);
    expect(shape(buildLines(by('demand', true)).lines, it)).toEqual(['L1 2/2', 'D10', 'D2', 'L2 1/1', 'D1', 'none 1/1', 'D3', '+']);
    expect(shape(buildLines(by('ref', false)).lines, it)).toEqual(['L2 1/1', 'D1', 'L1 2/2', 'D2', 'D10', 'none 1/1', 'D3', '+']);
    const before = buildLines(by('demand', true));
    it.act('More', [{ op: 'set', sheet: 'devices', id: 2, key: 'qty', value: 9 }]);
    expect(linesAfter(before, by('demand', true)).lines).toBe(before.lines);
  });

  test('a folded group leaves its heading, at which keys stop', () => {
    const it = schedule();
    const first = buildLines(of(it, { grouping: 'rail' })).lines[0] as HeadingLine;
    const { lines } = buildLines(of(it, { grouping: 'rail', folded: new Set([groupName(first)]) }));
    expect(shape(lines, it)).toEqual(['>L1 2/2', 'L2 1/1', 'D1', 'none 1/1', 'D3', '+']);
    expect([skipHeadings(lines, 2, -1), skipHeadings(lines, 2, 1)]).toEqual([-2, 2]);
  });
});

describe('after an action', () => {
  const sight: Sight = { columns: { rail: { texts: ['L1'] } } };

  test('a row stays in sight though it is picked no more, until a person asks anew', () => {
    const it = schedule();
    const before = buildLines(of(it, { sight }));
    it.act('edit', [{ op: 'set', sheet: 'devices', id: 0, key: 'rail', value: 'L2' }]);
    const after = linesAfter(before, of(it, { sight }));
    expect(after.lines).toBe(before.lines);
    expect(shape(buildLines(of(it, { sight })).lines, it)).toEqual(['D2', '+']);
  });

  test('a new row is in sight whatever it holds, beside the one that it was put in by; one that went is gone', () => {
    const it = schedule();
    const sorted: Sight = { ...sight, sort: { key: 'ref', down: false } };
    const before = buildLines(of(it, { sight: sorted }));
    expect(shape(before.lines, it)).toEqual(['D2', 'D10', '+']);
    it.act('insert', insertRows(it.document, 'devices', 2, [{ ref: 'D7', rail: 'L2' }]));
    const after = linesAfter(before, of(it, { sight: sorted }));
    expect(shape(after.lines, it)).toEqual(['D2', 'D7', 'D10', '+']);
    expect([after.seen.length, after.unseen.size]).toEqual([3, 2]);
    it.act('remove', removeRows(it.document, 'devices', [0]));
    expect(shape(linesAfter(after, of(it, { sight: sorted })).lines, it)).toEqual(['D2', 'D7', '+']);
    it.undo();
    it.undo();
    expect(it.rows('devices')).toHaveLength(4);
  });

  test('a row that is gone to comes in sight in its place, and stays', () => {
    const it = schedule();
    const before = buildLines(of(it, { sight }));
    const with3 = linesWith(before, 3, of(it, { sight }));
    expect(shape(with3.lines, it)).toEqual(['D10', 'D2', 'D3', '+']);
    it.act('edit', [{ op: 'set', sheet: 'devices', id: 3, key: 'qty', value: 1 }]);
    expect(linesAfter(with3, of(it, { sight })).lines).toBe(with3.lines);
  });

  test('nothing is listed anew where rows are as entered and none came or went', () => {
    const it = schedule();
    const before = buildLines(of(it));
    it.act('edit', [{ op: 'set', sheet: 'devices', id: 3, key: 'qty', value: 1 }]);
    expect(linesAfter(before, of(it))).toBe(before);
  });
});
