import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTakeoff, takeoffChanges, type Takeoff } from '../../src/exchange/takeoff/index.ts';
import { checkCell, inputColumns, ScheduleDocument, type Cells } from '../../src/schedule/index.ts';
import { TYPES } from './support.ts';

const HEADINGS = [
  'Qty', 'Menge', 'Quantité', 'Device', 'Bezeichnung', 'Room', 'Local', 'Ref', 'Pos.', 'Einheit', 'Note', 'No.', '',
];
const NAMES = [
  'Downlight 7 W', 'downlights 7W', 'Downlight', 'Präsenzmelder', 'Flap drive', 'Total', 'Zwischensumme', 'Hall',
  'dito', '"',
  'constructor', '__proto__', 'toString', '=1+1', '💡', '\ud800', '\0', '\u202e', "'", ';', 'a\r\nb', '\t', '???',
];
const QUANTITIES = [
  '', '0', '1', '12', '12 no.', '12,0', '1 200', '1,200', 'ca. 12', '2 x 6', '-3', '0,1', '0.2', '2.675', '1e9',
  '999999', '1000000',
  '9'.repeat(400), '=A1', 'm', '18 m', '٣', 'Infinity', 'NaN',
];
const cell = fc.oneof(
  fc.constantFrom(...NAMES), fc.constantFrom(...QUANTITIES), fc.constantFrom(...HEADINGS), fc.string({
    unit: 'grapheme', maxLength: 8,
  }),
);
const table = fc.oneof(
  fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 20 }),
  fc.record({
    headings: fc.shuffledSubarray(HEADINGS, { minLength: 2, maxLength: 6 }),
    body: fc.array(fc.tuple(...Array.from({ length: 6 }, () => cell)), { maxLength: 20 }),
  }).map(({ headings, body }) => [headings, ...body]),
);

/** What holds of every takeoff, whatever stands in it. */
function holds(takeoff: Takeoff): void {
  const { lines, sums, rows } = takeoff;
  const add = (...outcomes: string[]) =>
    lines.filter(({ outcome }) => outcomes.includes(outcome)).reduce((sum, { qty }) => sum + (qty ?? 0), 0);
  // Sums of decimal fractions, each rounded to three places.
  expect(sums.taken).toBeCloseTo(add('taken', 'merged'), 4);
  expect(sums.leftOut).toBeCloseTo(add('left-out'), 4);
  expect(sums.undecided).toBeCloseTo(add('undecided'), 4);
  expect(sums.taken + sums.leftOut + sums.undecided).toBeCloseTo(sums.read, 4);
  expect(sums.read).toBeCloseTo(add('taken', 'merged', 'left-out', 'undecided'), 4);

  // A quoted text may hold line breaks, so that its record covers several lines of the file.
  // One with several counts stands once for each.
  expect(lines.every(({ line }, index) => index === 0 ? line === 1 : line >= lines[index - 1]!.line)).toBe(true);
  expect(new Set(lines.map(({ key }) => key)).size).toBe(lines.length);
  expect(lines.filter(({ reason }) => reason === '')).toEqual([]);
  expect(rows.reduce((sum, { qty }) => sum + Number(qty), 0)).toBeCloseTo(sums.taken, 4);
  expect(rows).toHaveLength(lines.filter(({ outcome }) => outcome === 'taken').length);
  expect(rows.flatMap((row) => inputColumns('devices').map((column) => checkCell(column, row[column.key] ?? null)))
    .filter((problem) => problem !== undefined)).toEqual([]);
}

/** What is taken comes into a schedule and goes out again. */
function comesAndGoes(takeoff: Takeoff): void {
  const document = new ScheduleDocument();
  const inverse = document.perform(takeoffChanges(document, takeoff));
  expect(document.rows('devices').map(({ cells }) => cells)).toEqual(takeoff.rows);
  document.perform(inverse);
  expect([...document.rows('devices'), ...document.rows('types')]).toEqual([]);
}

function check(source: string | readonly (readonly string[])[], types: readonly Cells[] = TYPES): void {
  const takeoff = readTakeoff(source, { types });
  if (!takeoff.ok) {
    expect(takeoff.problems.length).toBeGreaterThan(0);
    return;
  }
  holds(takeoff);
  comesAndGoes(takeoff);
}

describe('read = taken + left out + undecided', () => {
  it('holds for any table', () => {
    fc.assert(fc.property(table, (rows) => check(rows)), { numRuns: 400 });
  });

  it('holds for any text', () => {
    fc.assert(fc.property(fc.oneof(
      fc.string({ unit: 'binary' }), table.map((rows) => rows.map((row) => row.join(';')).join('\n'))
    ),
      (text) => check(text)), { numRuns: 300 });
  });

  it('holds for any types', () => {
    // A schedule holds no text that a cell refuses, as one with a NUL.
    const name = inputColumns('types').find(({ key }) => key === 'type')!;
    const held = cell.filter((text) => checkCell(name, text) === undefined);
    const types = fc.array(fc.record({ type: held, aliases: held }, { requiredKeys: [] }), { maxLength: 5 });
    fc.assert(fc.property(table, types, (rows, some) => check(rows, some)), { numRuns: 200 });
  });
});

describe('hostile input', () => {
  it.each([
    ['a quote that never ends', 'Device;Qty\n"Router;1', 'csv-syntax'],
    ['a file that is no text', 'Device;Qty\nRouter\0;1', 'not-text'],
    ['nothing', '', 'csv-empty'],
    ['blank lines alone', ' \n\n\t\n', 'csv-empty'],
  ])('%s is refused by name', (_, source, code) => {
    expect(readTakeoff(source, { types: TYPES })).toMatchObject({ ok: false, problems: [{ code }] });
  });

  it.each([
    ['a very long cell', `Device;Qty\n${'Router '.repeat(50_000)};1`],
    ['a very long number', `Device;Qty\nRouter;${'1 '.repeat(100_000)}`],
    ['many columns', `${'Device;'.repeat(5000)}Qty\n${'x;'.repeat(5000)}1`],
    ['many totals', `Device;Qty\n${'Total;0\nRouter;1\n'.repeat(10_000)}`],
    ['many quotes', `Device;Qty\n${'""""""";1\n'.repeat(999)}`],
    ['many separators', `Device,Qty\n${','.repeat(200_000)}`],
  ])('%s is read within 10 s, and the sums hold', (_, source) => {
    check(source);
  }, 10_000);
});
