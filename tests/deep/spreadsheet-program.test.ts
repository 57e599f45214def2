import fc from 'fast-check';
import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { readSchedule } from '../../src/exchange/index.ts';
import { compareWithList, updateChanges } from '../../src/exchange/update/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  columnOf, inputColumns, isNumeric, SCHEMA, SHEET_NAMES, setCells, type CellValue, type InputColumn, type SheetName,
} from '../../src/schedule/index.ts';
import { LiveFormulas } from '../../src/report/xlsx/live-formulas.ts';
import { readLoadTable } from '../../src/report/xlsx/read-load-table.ts';
import { shownValue } from '../../src/report/xlsx/shown-value.ts';
import { demoContent } from '../report/demo.ts';
import { editWorkbook, type CellEdit } from '../support/edit-workbook.ts';
import { differences, differencesAfterEdits, marksThatDiffer, writeWorkbook } from '../support/recalculate-workbook.ts';
import { cellsOfFile, openAndSave } from '../support/spreadsheet-program.ts';

interface Edit {
  readonly sheet: SheetName;
  readonly at: number;
  readonly key: string;
  readonly value: CellValue;
}

/** Inputs of which the worksheets follow every consequence but what runs come to. */
const FOLLOWED: Partial<Record<SheetName, readonly string[]>> = {
  devices: ['qty', 'diversity'], types: ['draw', 'nodes', 'diversity'],
  supplies: ['rated', 'target', 'derating', 'efficiency', 'battery', 'standbyHours'], ways: ['rated', 'target'],
  branches: ['limit', 'reserve'], runs: ['length'], outputs: ['qty', 'power', 'inrush', 'target'],
  contacts: ['resistive', 'lamp', 'motor', 'coil'], feeds: ['rated', 'diversity', 'target'],
  enclosures: ['height', 'width', 'ambient', 'maxInside', 'otherLoss'], factors: ['factor'], cases: ['hours'],
};
const placeOf = (sheet: SheetName, key: string) => SCHEMA[sheet].columns.indexOf(columnOf(sheet, key));

/** A value that a person could enter in its place, within what the column allows. */
function another(column: InputColumn, value: CellValue, share: number): CellValue {
  if (column.kind === 'boolean') return value !== true;
  if (column.choices !== undefined) return column.choices[Math.floor(share * column.choices.length)]!;
  const least = column.min ?? (column.above === undefined ? -40 : column.above + 0.01);
  const now = typeof value === 'number' ? value : 1;
  const tried = Math.min(column.max ?? Infinity, Math.max(least, now * (0.4 + 1.4 * share)));
  return column.kind === 'integer' ? Math.max(Math.ceil(least), Math.round(tried)) : Number(tried.toPrecision(3));
}

/** Edits of what stands in cells; of the demo, whose every sheet has rows. */
function someEdits(schedule: LoadSchedule, keysOf: (sheet: SheetName) => readonly string[], count: number) {
  const cells = SHEET_NAMES.flatMap((sheet) => keysOf(sheet).map((key) => [sheet, key] as const));
  const one = fc.tuple(fc.constantFrom(...cells), fc.nat(9999), fc.double({ min: 0, max: 1, noNaN: true }));
  return fc.array(one, { minLength: count, maxLength: count })
    .map((all) => all.map(([[sheet, key], at, share]): Edit => {
      const rows = schedule.rows(sheet);
      const place = at % rows.length;
      const value = schedule.value(sheet, rows[place]!.id, key);
      return { sheet, at: place, key, value: another(columnOf(sheet, key) as InputColumn, value, share) };
    }));
}

/** The same edits made in the workbook and in the schedule, and the workbook worked out by the program. */
async function edited(lists: readonly (readonly Edit[])[]) {
  const made = await Promise.all(lists.map(async (edits) => {
    const schedule = new LoadSchedule(demoContent());
    const bytes = await writeWorkbook(schedule);
    for (const { sheet, at, key, value } of edits) {
      schedule.act('edit', setCells(schedule.document, [{ sheet, id: schedule.rows(sheet)[at]!.id, key, value }]));
    }
    const entered = edits.map(({ sheet, at, key, value }): CellEdit => ({
      title: SCHEMA[sheet].title, row: at + 1, column: placeOf(sheet, key),
      value: shownValue(columnOf(sheet, key), value, schedule.words),
    }));
    return { schedule, bytes: editWorkbook(bytes, entered) };
  }));
  const saved = await openAndSave(made.map(({ bytes }) => bytes));
  return made.map(({ schedule }, place) => ({ schedule, saved: saved[place]!, cells: cellsOfFile(saved[place]!) }));
}

/** The sheets of the schedule that a workbook carries, once everything is taken that it offers. */
async function readBack(bytes: Uint8Array) {
  const table = await readLoadTable(bytes);
  const read = table.ok ? readSchedule(table.text) : table;
  if (!table.ok || !read.ok) throw new Error('The program saved no load table.');
  const schedule = new LoadSchedule(read.content);
  expect(table.edited?.left).toEqual([]);
  for (const list of table.edited?.offered ?? []) {
    schedule.act('edit', updateChanges(schedule.document, compareWithList(schedule.document, list), { takes: () => true }));
  }
  return schedule.content().sheets;
}

/** The figures that ask for recalculation, of sheets that are worked out by formulas. */
const waiting = (schedule: LoadSchedule, cells: ReturnType<typeof cellsOfFile>) =>
  (differences(schedule, cells) as [SheetName, number, string, unknown][])
    .filter(([sheet, , , found]) => found === 'recalculate' && !['devices', 'runs', 'terminals'].includes(sheet))
    .map(([sheet, , key]) => `${sheet}.${key}`);

test('a spreadsheet program comes to every figure of the demo, and asks for nothing', async () => {
  const [only] = await edited([[]]);
  expect(differences(only!.schedule, only!.cells)).toEqual([]);
  expect(marksThatDiffer(only!.schedule, only!.cells)).toEqual([]);
});

test('it takes headings, tables, choices, colours and the set-up of pages for what they are', async () => {
  const [only] = await edited([[]]);
  const parts = unzipSync(only!.saved);
  const text = (path: string) => strFromU8(parts[path]!);
  const sheets = [...text('xl/workbook.xml').matchAll(/<sheet name="([^"]*)"/g)].map(([, name]) => name);
  const supplies = text(`xl/worksheets/sheet${sheets.indexOf('Supplies') + 1}.xml`);
  // What it saves is what it has understood.
  expect(supplies).toMatch(/<pageSetUpPr fitToPage="(?:true|1)"/);
  expect(supplies).toMatch(/<pageSetup [^>]*paperSize="9"/);
  expect(supplies).toMatch(/fitToHeight="0"[^>]*orientation="landscape"|orientation="landscape"[^>]*fitToHeight="0"/);
  expect(supplies).toMatch(/<dataValidation [^>]*type="list"[^>]*>\s*<formula1>&quot;yes,no&quot;/);
  expect(supplies).toMatch(/<dataValidation [^>]*type="list"[^>]*>\s*<formula1>Enclosures!\$A\$2:/);
  const looks = [...supplies.matchAll(/<conditionalFormatting [^>]*>.*?<formula>(.*?)<\/formula>/gs)].map(([, formula]) => formula!);
  expect(looks).toEqual(expect.arrayContaining([
    expect.stringContaining('over limit') as string, expect.stringContaining('recalculate') as string, expect.stringMatching(/\$[A-Z]+2=1/) as string,
  ]));
  expect(text('xl/styles.xml')).toContain('&quot;≥ &quot;0.00');
  expect(text('xl/workbook.xml')).toMatch(/<definedName [^>]*name="_xlnm.Print_Titles"[^>]*>Supplies!\$A:\$A,Supplies!\$1:\$1</);
  const tables = Object.keys(parts).filter((path) => path.startsWith('xl/tables/')).map(text);
  expect(tables.filter((table) => table.includes('displayName="schedule_supplies"') && table.includes('<autoFilter '))).toHaveLength(1);
  // Yes and no in words, and a row of findings as high as its longest sentence.
  expect(only!.cells.value('Supplies', 1, placeOf('supplies', 'redundant'))).toMatch(/^(?:yes|no)$/);
  const findings = text(`xl/worksheets/sheet${sheets.indexOf('Findings') + 1}.xml`);
  expect([...findings.matchAll(/<row [^>]*ht="([\d.]+)"/g)].some(([, height]) => Number(height) > 26)).toBe(true);
});

// 200 edits of inputs in all: what is said is what the schedule says, at least or at most where it says so, or a word
// that asks for recalculation.
test('after 100 edits of counts, draws and ratings every figure and status agrees', async () => {
  const schedule = new LoadSchedule(demoContent());
  const lists = fc.sample(someEdits(schedule, (sheet) => FOLLOWED[sheet] ?? [], 20), { numRuns: 5, seed: 1 });
  for (const [place, { schedule: changed, cells, saved }] of (await edited(lists)).entries()) {
    expect([lists[place], differencesAfterEdits(changed, cells)]).toEqual([lists[place], []]);
    expect(await readBack(saved)).toEqual(changed.content().sheets);
    // What is added up is never asked for, but where a start is held against it.
    const asked = [...new Set(waiting(changed, cells))];
    expect(asked.filter((path) => /demand|connected|loading|top|usable|available|free|nodes/.test(path))).toEqual([]);
  }
});

test('and after 100 edits of anything that is typed or chosen', async () => {
  const schedule = new LoadSchedule(demoContent());
  const keys = (sheet: SheetName) => inputColumns(sheet)
    .filter((column) => isNumeric(column) || column.kind === 'choice' || column.kind === 'boolean').map(({ key }) => key);
  const lists = fc.sample(someEdits(schedule, keys, 20), { numRuns: 5, seed: 2 });
  for (const [place, { schedule: changed, cells }] of (await edited(lists)).entries()) {
    expect([lists[place], differencesAfterEdits(changed, cells)]).toEqual([lists[place], []]);
  }
});

test('nothing that was calculated stands beside what was changed', async () => {
  const schedule = new LoadSchedule(demoContent());
  const at = (sheet: SheetName, key: string, row = 0) => [SCHEMA[sheet].title, row + 1, placeOf(sheet, key)] as const;
  const spare = schedule.rows('devices').length;
  const [run] = schedule.rows('runs');
  const entered = { ref: 'X1', type: schedule.value('types', schedule.rows('types')[0]!.id, 'type'), qty: 1000, run: run!.cells.run! };
  const bytes = await writeWorkbook(schedule);
  const edits: CellEdit[][] = [
    [{ title: SCHEMA.enclosures.title, row: 1, column: placeOf('enclosures', 'ambient'), value: 55 }],
    Object.entries(entered).map(([key, value]) => ({ title: SCHEMA.devices.title, row: spare + 1, column: placeOf('devices', key), value })),
    [{ title: SCHEMA.types.title, row: 1, column: placeOf('types', 'draw'), value: null }],
  ];
  const [warm, added, unknown] = (await openAndSave(edits.map((each) => editWorkbook(bytes, each)))).map(cellsOfFile);
  expect(['inside', 'top'].map((key) => Number(warm!.value(...at('enclosures', key))) > 55)).toEqual([true, true]);
  expect(warm!.value(...at('enclosures', 'status'))).toBe('over limit');
  expect(warm!.value(...at('runs', 'endVoltage'))).toBe('recalculate');
  expect(warm!.value('Findings', 1, 0)).toMatch(/stands as it was issued/);

  const rail = schedule.value('runs', run!.id, 'rail');
  const supply = schedule.rows('supplies').findIndex(({ cells }) => cells.rail === rail);
  const before = schedule.value('supplies', schedule.rows('supplies')[supply]!.id, 'connected') as number;
  expect(Number(added!.value(...at('supplies', 'connected', supply)))).toBeGreaterThan(before + 10);
  expect(added!.value(...at('supplies', 'status', supply))).toBe('over limit');

  const formulas = new LiveFormulas(schedule);
  const marks = schedule.rows('supplies').map((_row, place) =>
    unknown!.value(SCHEMA.supplies.title, place + 1, formulas.markPlace('supplies', 'demand')!));
  expect(marks.filter((mark, place) => mark === 1
    && !schedule.isPartial('supplies', schedule.rows('supplies')[place]!.id, 'demand')).length).toBeGreaterThan(0);
  expect(schedule.rows('supplies').filter((_row, place) => marks[place] === 1
    && unknown!.value(...at('supplies', 'status', place)) === 'within limits')).toEqual([]);
});
