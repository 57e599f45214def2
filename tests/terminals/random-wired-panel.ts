import fc from 'fast-check';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import {
  insertRows, moveRows, removeRows, renameTag, SCHEMA, setCells, tagOf, type Cells, type CellValue, type Change,
  type Content, type SheetName,
} from '../../src/schedule/index.ts';

const enclosures = fc.constantFrom<CellValue>('KP-1', 'KP-2', null);
const nothingOr = <Value>(...values: Value[]) => fc.constantFrom<Value | null>(null, ...values);

const someSupply = fc.record({
  rated: nothingOr(5, 20, 40), enclosure: enclosures, feed: nothingOr('F1', 'F2'),
  fuse: nothingOr(16), units: nothingOr(2, 3), redundant: nothingOr(true),
});
const someWay = fc.record({ rail: fc.constantFrom('L1', 'L2'), rated: nothingOr(4, 10) });
const someRun = fc.record({
  way: nothingOr('W0', 'W1', 'W2'), rail: fc.constantFrom('L1', 'L2'), pairs: nothingOr(1, 2, 3), branch: nothingOr('B1', 'B2'),
  conductor: nothingOr('thin', 'thick'), secondWay: nothingOr<CellValue>(null, null, 'W1'),
});
const someOutput = fc.record({
  module: nothingOr('K1', 'K2'), to: fc.constantFrom('F1', 'F2', 'rail', 'nothing'), power: nothingOr(40, 400),
});
const someFeed = fc.record({ rated: nothingOr(10, 16), enclosure: enclosures });

/** A panel or two of which much may be unknown: what is fed from where, what is mounted where. */
export const somePanel: fc.Arbitrary<Content> = fc.record({
  supplies: fc.tuple(someSupply, someSupply), ways: fc.array(someWay, { maxLength: 3 }),
  runs: fc.array(someRun, { maxLength: 5 }), outputs: fc.array(someOutput, { maxLength: 5 }),
  feeds: fc.tuple(someFeed, someFeed), branches: fc.tuple(enclosures, enclosures),
  modules: fc.tuple(enclosures, enclosures),
  common: nothingOr(8),
}).map(({ supplies, ways, runs, outputs, feeds, branches, modules, common }): Content => ({
  details: {},
  sheets: {
    enclosures: [{ enclosure: 'KP-1' }, { enclosure: 'KP-2' }],
    supplies: supplies.map((each, at) => ({ rail: `L${at + 1}`, ...each })),
    ways: ways.map((each, at) => ({ way: `W${at}`, ...each })),
    conductors: [{ conductor: 'thin', size: 0.75 }, { conductor: 'thick', size: 6 }],
    runs: runs.map((each, at): Cells => ({ run: `R${at}`, ...each })),
    branches: branches.map((enclosure, at) => ({ branch: `B${at + 1}`, enclosure })),
    modules: modules.map((enclosure, at): Cells => ({ module: `K${at + 1}`, enclosure, ...at === 0 ? { common } : {} })),
    outputs: outputs.map(({ to, ...each }, at): Cells => ({
      output: `Q${at}`, kind: to === 'rail' ? 'dc' : 'resistive', ...each,
      ...to === 'rail' ? { rail: 'L1' } : to === 'nothing' ? {} : { feed: to },
    })),
    feeds: feeds.map((each, at) => ({ feed: `F${at + 1}`, ...each })),
  },
}));

const EDITED: readonly SheetName[] = ['runs', 'outputs', 'ways', 'supplies', 'branches', 'feeds', 'modules'];
const REFERENCES: Readonly<Partial<Record<SheetName, readonly [key: string, values: readonly CellValue[]][]>>> = {
  runs: [['way', ['W0', 'W1', null]], ['rail', ['L1', 'L2', null]], ['pairs', [1, 2, null]], ['branch', ['B1', 'B2', null]]],
  outputs: [['feed', ['F1', 'F2', null]], ['module', ['K1', 'K2', null]], ['rail', ['L1', null]]],
  ways: [['rail', ['L1', 'L2']]], supplies: [['feed', ['F1', 'F2', null]], ['enclosure', ['KP-1', 'KP-2', null]]],
  branches: [['enclosure', ['KP-1', 'KP-2', null]]], feeds: [['enclosure', ['KP-1', 'KP-2', null]]],
  modules: [['enclosure', ['KP-1', 'KP-2', null]]],
};

/** An edit of a panel: a cell, a new row, one that goes, one that is moved or given another tag. */
export const someEdit = fc.record({
  how: fc.constantFrom('cell', 'cell', 'add', 'remove', 'rename', 'move'), sheet: fc.constantFrom(...EDITED), at: fc.nat(9), pick: fc.nat(9),
  name: fc.nat(30),
});

type SomeEdit = typeof someEdit extends fc.Arbitrary<infer Edit> ? Edit : never;

/** Makes an edit; one that finds no row does nothing. */
export function edit(schedule: LoadSchedule, { how, sheet, at, pick, name }: SomeEdit): void {
  const rows = schedule.rows(sheet);
  const row = rows[at % Math.max(1, rows.length)];
  const tag = `${sheet.slice(0, 1).toUpperCase()}${100 + name}`;
  const isFree = !rows.some((each) => tagOf(sheet, each) === tag);
  const changes = (): Change[] => {
    if (how === 'add') return isFree ? insertRows(schedule.document, sheet, rows.length, [{ [SCHEMA[sheet].tag]: tag, ...sheet === 'runs' ? { rail: 'L2' } : {} }]) : [];
    if (row === undefined) return [];
    if (how === 'remove') return removeRows(schedule.document, sheet, [row.id]);
    if (how === 'rename') return isFree ? renameTag(schedule.document, sheet, row.id, tag) : [];
    if (how === 'move') return moveRows(schedule.document, sheet, [row.id], pick % rows.length);
    const choices = REFERENCES[sheet]!;
    const [key, values] = choices[pick % choices.length]!;
    return setCells(schedule.document, [{ sheet, id: row.id, key, value: values[name % values.length]! }]);
  };
  const made = changes();
  if (made.length > 0) schedule.act(how, made);
}
