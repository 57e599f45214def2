import fc from 'fast-check';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  inputColumns, insertRows, isNumeric, moveRows, pasteCells, removeRows, renameTag, SCHEMA, setCells, SHEET_NAMES,
  type Cells, type CellValue, type Content, type InputColumn, type SheetName,
} from '../../src/schedule/index.ts';

/** Tags that random rows bear and refer to; few, so that they meet, are shared and go missing. */
const TAGS = ['A', 'B', 'C', 'D'];

/** Formulas that a person might type, some of them wrong. */
const FORMULAS = [
  '=2*3', '=D1', '=SUM(D1:D3)', '=supplies!D1/10', '=1/0', '=ROUND(D2*1.5;0)', '=types.D1', '=[.D1]+1', '=M1',
];

/** Few, as tags are. */
const GROUPS = ['lights', 'blinds', 'pumps'];

function valueOf(column: InputColumn): fc.Arbitrary<CellValue> {
  if (column.key === 'group') return fc.constantFrom<CellValue>(null, ...GROUPS);
  if (column.to !== undefined || column.tag === true) return fc.constantFrom<CellValue>(null, ...TAGS, 'nowhere');
  switch (column.kind) {
    case 'boolean': return fc.constantFrom(null, true, false);
    case 'choice': return fc.constantFrom<CellValue>(null, ...column.choices!);
    case 'integer': return fc.constantFrom<CellValue>(null, 0, 1, 2, 3, 7, 12);
    case 'ratio': return fc.constantFrom<CellValue>(null, 0.25, 0.5, 0.7, 0.85, 1);
    case 'number': {
      const { min = 0, max = 1e9 } = column;
      return fc.constantFrom(null, ...[0.5, 1, 2.5, 12, 24, 100, 350].filter((each) => each >= min && each <= max));
    }
    default: return fc.constantFrom<CellValue>(null, 'text');
  }
}

const cellsOf = (sheet: SheetName): fc.Arbitrary<Cells> =>
  fc.record(Object.fromEntries(inputColumns(sheet).map((column) => [column.key, valueOf(column)])))
    .map((cells): Cells => Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== null)));

const someSheet =
  fc.constantFrom(...SHEET_NAMES, 'devices' as const, 'devices' as const, 'supplies' as const, 'outputs' as const);
const place = fc.nat({ max: 30 });

/** A small schedule with rows on every sheet. */
export const someContent: fc.Arbitrary<Content> = fc.record(Object.fromEntries(SHEET_NAMES.map((sheet) =>
  [sheet, fc.array(cellsOf(sheet), { maxLength: sheet === 'devices' ? 10 : 4 })])))
  .map((sheets) => ({ details: { project: 'random' }, sheets: sheets }));

/** Something that a person does. */
export type Action = (schedule: LoadSchedule) => void;

const within = (schedule: LoadSchedule, sheet: SheetName, at: number) => {
  const rows = schedule.rows(sheet);
  return rows.length === 0 ? undefined : rows[at % rows.length];
};

const edit: fc.Arbitrary<Action> = someSheet
  .chain((sheet) => fc.constantFrom(...inputColumns(sheet)).map((column) => ({ sheet, column })))
  .chain(({ sheet, column }) => fc.tuple(place, valueOf(column)).map(([at, value]): Action => (schedule) => {
    const row = within(schedule, sheet, at);
    if (row === undefined) return;
    schedule.act('edit', setCells(schedule.document, [{ sheet, id: row.id, key: column.key, value }]));
  }));

const formula: fc.Arbitrary<Action> = fc.tuple(someSheet, place, fc.constantFrom(...FORMULAS), fc.nat())
  .map(([sheet, at, text, pick]): Action => (schedule) => {
    const row = within(schedule, sheet, at);
    const columns = inputColumns(sheet).filter(isNumeric);
    if (row === undefined || columns.length === 0) return;
    const { key } = columns[pick % columns.length]!;
    const read = schedule.checkFormula(sheet, key, text);
    if (read.ok) schedule.act('formula', setCells(schedule.document, [{ sheet, id: row.id, key, value: read.value }]));
  });

const insert: fc.Arbitrary<Action> = someSheet
  .chain((sheet) => fc.tuple(place, fc.array(cellsOf(sheet), { minLength: 1, maxLength: 3 }))
    .map(([at, rows]): Action => (schedule) => {
      schedule.act('insert', insertRows(schedule.document, sheet, at % (schedule.rows(sheet).length + 1), rows));
    }));

const somePlaces = fc.array(place, { minLength: 1, maxLength: 3 });
const idsAt = (schedule: LoadSchedule, sheet: SheetName, places: readonly number[]) =>
  [...new Set(places.flatMap((at) => within(schedule, sheet, at)?.id ?? []))];

const remove: fc.Arbitrary<Action> = fc.tuple(someSheet, somePlaces).map(([sheet, places]): Action => (schedule) => {
  schedule.act('delete', removeRows(schedule.document, sheet, idsAt(schedule, sheet, places)));
});

const move: fc.Arbitrary<Action> = fc.tuple(someSheet, somePlaces, place)
  .map(([sheet, places, to]): Action => (schedule) => {
    const ids = idsAt(schedule, sheet, places);
    const staying = schedule.rows(sheet).length - ids.length;
    schedule.act('move', moveRows(schedule.document, sheet, ids, to % (staying + 1)));
  });

const rename: fc.Arbitrary<Action> = fc.tuple(someSheet, place, fc.constantFrom(...TAGS))
  .map(([sheet, at, tag]): Action => (schedule) => {
    const row = within(schedule, sheet, at);
    if (row !== undefined) schedule.act('rename', renameTag(schedule.document, sheet, row.id, tag));
  });

const paste: fc.Arbitrary<Action> = someSheet.chain((sheet) => {
  const columns = inputColumns(sheet).slice(0, 8);
  const keys = columns.map(({ key }) => key);
  return fc.tuple(place, fc.array(fc.tuple(...columns.map(valueOf)), { minLength: 1, maxLength: 30 }))
    .map(([at, lines]): Action => (schedule) => {
      const from = at % (schedule.rows(sheet).length + 1);
      schedule.act('paste', pasteCells(schedule.document, sheet, from, keys, lines));
    });
});

const withoutFormula: fc.WeightedArbitrary<Action>[] = [
  { weight: 6, arbitrary: edit },
  { weight: 2, arbitrary: insert },
  { weight: 2, arbitrary: remove },
  { weight: 2, arbitrary: move },
  { weight: 1, arbitrary: rename },
  { weight: 2, arbitrary: paste },
  { weight: 2, arbitrary: fc.constant<Action>((schedule) => { schedule.undo(); }) },
  { weight: 1, arbitrary: fc.constant<Action>((schedule) => { schedule.redo(); }) },
  { weight: 1, arbitrary: someContent.map((content): Action => (schedule) => { schedule.load(content, 'open'); }) },
];

export const someAction: fc.Arbitrary<Action> = fc.oneof(...withoutFormula, { weight: 2, arbitrary: formula });

/** Something that a person does who types no formula. */
export const someActionWithoutFormula: fc.Arbitrary<Action> = fc.oneof(...withoutFormula);

/** A number without its last digits: the order in which a total is added up may differ. */
const rounded = (value: CellValue): CellValue => typeof value === 'number' ? Number(value.toPrecision(12)) : value;

/** Everything that a schedule comes to, by sheet and row in order, with what was found. */
export function allOf(schedule: LoadSchedule): unknown {
  const sheets =
    SHEET_NAMES.map((sheet) => schedule.rows(sheet).map(({ id }) => Object.fromEntries(SCHEMA[sheet].columns
    .map(({ key }) => [key, [rounded(schedule.value(sheet, id, key)), schedule.partialSign(sheet, id, key)]]))));
  const inCases = SHEET_NAMES.map((sheet) => schedule.rows(sheet).map(({ id }) => Object.fromEntries(
    SCHEMA[sheet].columns.filter((column) => column.role === 'computed' && typeof column.inCases === 'string')
      .map(({ key }) => [key, [schedule.countsOwn(sheet, id, key), ...[null, ...schedule.cases.cases]
        .map((_case, at) => rounded(schedule.inCase(sheet, id, key, at - 1)))]]))));
  const findings = schedule.findings.map(({ id: _id, ...finding }) =>
    ({ ...finding, value: rounded(finding.value), limit: rounded(finding.limit) }));
  return { sheets, inCases, findings };
}
