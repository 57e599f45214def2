import { read, utils, write as save, type CellObject, type WorkBook } from '@e965/xlsx';
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readSchedule } from '../../src/exchange/index.ts';
import { compareWithList, updateChanges } from '../../src/exchange/update/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport, loadTableXlsx } from '../../src/report/index.ts';
import { readLoadTable } from '../../src/report/xlsx/read-load-table.ts';
import { SCHEMA, type SheetName } from '../../src/schedule/index.ts';
import { loadWords } from '../../src/words/index.ts';
import { someContent } from '../engine/random-actions.ts';
import { scheduleOf } from '../support/schedules.ts';
import { demoContent } from './demo.ts';

const written = async (schedule: LoadSchedule) =>
  loadTableXlsx(schedule, buildReport(schedule, { generated: '2026-11-25' }));
const bytesOf = (workbook: WorkBook) =>
  new Uint8Array(save(workbook, { type: 'array', bookType: 'xlsx' }) as ArrayBuffer);

async function editsOf(bytes: Uint8Array, lang = 'en'): Promise<readonly string[]> {
  const table = await readLoadTable(bytes, await loadWords(lang));
  if (!table.ok) throw new Error(table.problems[0]!.message);
  return table.verification.differs;
}

const small = () => scheduleOf({
  types: [{ type: 'Lamp', draw: 350 }, { type: 'Valve', draw: 100 }],
  supplies: [{ rail: 'L1', rated: 10 }],
  outputs: [{ output: 'K1', kind: 'lamp', power: 60 }],
  devices: [
    { ref: 'D1', rail: 'L1', type: 'Lamp', qty: 3, area: 'Hall' }, {
      ref: 'D2', rail: 'L1', type: 'Valve', qty: 12, unitDraw: 120, area: 'Jetty',
    },
    {}, { rail: 'L1', type: 'Lamp', qty: '=[devices.qty@D2]*2', area: ' Slip\r\nway ' },
  ],
});

/** The workbook of a schedule, opened by another program, with some cells of a sheet set. */
async function edited(
  schedule: LoadSchedule, sheet: SheetName, cells: readonly (
    readonly [row: number, key: string, cell: CellObject | undefined]
  )[],
): Promise<Uint8Array> {
  const workbook = read(await written(schedule), { type: 'array', cellFormula: true });
  const worksheet = workbook.Sheets[schedule.words.text(SCHEMA[sheet].title)]!;
  for (const [row, key, cell] of cells) {
    const place = utils.encode_cell({ r: row, c: SCHEMA[sheet].columns.findIndex((column) => column.key === key) });
    if (cell === undefined) delete worksheet[place];
    else worksheet[place] = cell;
  }
  return bytesOf(workbook);
}

describe('what was changed on the worksheets of a load table', () => {
  test('is named by sheet, tag and column, with both values', async () => {
    const bytes = await edited(small(), 'devices', [
      [1, 'qty', { t: 'n', v: 5 }], [
        2, 'area', { t: 's', v: 'Boat <house> & "co"' },
      ], [4, 'qty', { t: 'n', v: 7 }], [2, 'qty', undefined],
    ]);
    expect(await editsOf(bytes)).toEqual([
      'Devices, D1, Qty: 3 in the schedule, 5 on the worksheet.',
      'Devices, D2, Area: Jetty in the schedule, Boat <house> & "co" on the worksheet.',
      'Devices, D2, Qty: 12 in the schedule, – on the worksheet.',
      // Twice the 12 of the second row.
      'Devices, row 4, Qty: 24 in the schedule, 7 on the worksheet.',
    ]);
  });

  test('a title block that is gone is said to be, and no other worksheet is taken for it', async () => {
    const workbook = read(await written(small()), { type: 'array', cellFormula: true });
    workbook.SheetNames = workbook.SheetNames.filter((name) => name !== 'Load table');
    delete workbook.Sheets['Load table'];
    expect(await editsOf(bytesOf(workbook))).toEqual(['Details: was not found on a worksheet and is not compared.']);
  });

  test('dates of the title block are none, as they are read or as they were entered', async () => {
    const schedule = new LoadSchedule({ ...small().content(), details: { date: '2026-03-02' } }, { words: await loadWords('de') });
    const workbook = read(await written(schedule), { type: 'array', cellFormula: true });
    const [head] = workbook.SheetNames.map((name) => workbook.Sheets[name]!);
    const [place] = Object.keys(head!).filter((cell) => (head![cell] as CellObject).v === '02.03.2026');
    expect(place).toBeDefined();
    expect(await editsOf(bytesOf(workbook))).toEqual([]);
    head![place!] = { t: 's', v: '2026-03-02' };
    expect(await editsOf(bytesOf(workbook))).toEqual([]);
    head![place!] = { t: 's', v: '03.03.2026' };
    expect(await editsOf(bytesOf(workbook))).toHaveLength(1);
  });

  test('is found where a formula of a figure, a share or a choice stood', async () => {
    expect(await editsOf(await edited(small(), 'devices', [[1, 'unitDraw', { t: 'n', v: 400 }]])))
      .toEqual(['Devices, D1, Unit draw: 350.0\u00a0mA in the schedule, 400.0\u00a0mA on the worksheet.']);
    // A formula of ours over what was entered.
    expect(await editsOf(await edited(small(), 'devices', [[2, 'diversity', { t: 'n', v: 0.5 }]])))
      .toEqual(['Devices, D2, Diversity: 100\u202f% in the schedule, 50\u202f% on the worksheet.']);
    const choice = SCHEMA.outputs.columns.find(({ key }) => key === 'kind')!;
    expect(await editsOf(await edited(small(), 'outputs', [[1, 'kind', { t: 's', v: 'motor' }]])))
      .toEqual([`Outputs, K1, ${choice.title}: lamp in the schedule, motor on the worksheet.`]);
  });

  test('is told of a draw of a type once, not of every device that follows it', async () => {
    expect(await editsOf(await edited(small(), 'types', [[1, 'draw', { t: 'n', v: 700 }]])))
      .toEqual(['Types, Lamp, Draw: 350.0\u00a0mA in the schedule, 700.0\u00a0mA on the worksheet.']);
  });

  test('is told of rows that came and went, and not of those that were sorted', async () => {
    const columns = SCHEMA.devices.columns.map(({ key }) => key);
    const workbook = read(await written(small()), { type: 'array', cellFormula: true });
    const worksheet = workbook.Sheets.Devices!;
    const line = (row: number) =>
      columns.map((_key, c) => worksheet[utils.encode_cell({ r: row, c })] as CellObject | undefined);
    const put = (row: number, cells: readonly (CellObject | undefined)[]) => {
      cells.forEach((cell, c) => { worksheet[utils.encode_cell({ r: row, c })] = cell ?? { t: 'z' }; });
    };
    const [first, second] = [line(1), line(2)];
    put(1, second);
    put(2, first);
    expect(await editsOf(bytesOf(workbook))).toEqual([]);
    put(2, columns.map(() => undefined));
    put(
      3, columns.map((key) => ({ ref: { t: 's', v: 'D9' }, qty: { t: 'n', v: 2 } } as Record<string, CellObject>)[key])
    );
    expect(await editsOf(bytesOf(workbook))).toEqual([
      'Devices, D1: the row is not on the worksheet.',
      'Devices, row 4 of the worksheet: the row is not in the schedule: Ref D9; Qty 2.',
    ]);
  });

  test('is told of the details too, and of what could not be compared', async () => {
    const schedule = new LoadSchedule({ ...small().content(), details: { project: 'Library', revision: 'A' } });
    const workbook = read(await written(schedule), { type: 'array', cellFormula: true });
    const front = workbook.Sheets['Load table']!;
    const place = Object.keys(front).find((key) => (front[key] as CellObject).v === 'Revision')!;
    front[place.replace('A', 'B')] = { t: 's', v: 'B' };
    expect(await editsOf(bytesOf(workbook))).toEqual(['Revision: A in the schedule, B on the worksheet.']);
    workbook.Workbook!.Names = workbook.Workbook!.Names!.filter(({ Name }) => !/^supplies|^devices\.qty$/.test(Name));
    expect(await editsOf(bytesOf(workbook))).toEqual([
      'Revision: A in the schedule, B on the worksheet.',
      'Devices, Qty: was not found on a worksheet and is not compared.',
      'Supplies: was not found on a worksheet and is not compared.',
    ]);
  });

  test('is told in the language of the reader, whatever that of the file is', async () => {
    const german = new LoadSchedule(small().content(), { words: await loadWords('de') });
    expect(await editsOf(await written(german))).toEqual([]);
    expect(await editsOf(await edited(german, 'outputs', [[1, 'power', { t: 'n', v: 90 }]])))
      .toEqual(['Outputs, K1, Power: 60.0\u00a0W in the schedule, 90.0\u00a0W on the worksheet.']);
    expect((await editsOf(await edited(small(), 'devices', [[1, 'qty', { t: 'n', v: 5 }]]), 'de'))[0])
      .toMatch(/D1.*3.*5/);
  });

  test('is nothing where nothing was changed, as written and as another program saves it', async () => {
    const demo = new LoadSchedule(demoContent());
    const bytes = await written(demo);
    expect(await editsOf(bytes)).toEqual([]);
    expect(await editsOf(bytesOf(read(bytes, { type: 'array', cellFormula: true })))).toEqual([]);
    await fc.assert(fc.asyncProperty(someContent, async (content) => {
      const schedule = new LoadSchedule(content);
      expect(await editsOf(await written(schedule))).toEqual([]);
      schedule.dispose();
    }), { numRuns: 20 });
  }, 120_000);
});

describe('edits that are offered', () => {
  /** The schedule that a workbook carries, once everything that is offered was taken. */
  async function taken(bytes: Uint8Array, lang = 'en') {
    const table = await readLoadTable(bytes, await loadWords(lang));
    if (!table.ok) throw new Error(table.problems[0]!.message);
    const read = readSchedule(table.text);
    if (!read.ok) throw new Error(read.problems[0]!.message);
    const schedule = new LoadSchedule(read.content);
    const { offered, left } = table.edited!;
    for (const list of offered) schedule.act('edit', updateChanges(schedule.document, compareWithList(schedule.document, list)));
    return { schedule, offered, left };
  }

  test('bring numbers, choices, yes and no, references and new rows into the schedule', async () => {
    const { schedule, left } = await taken(await edited(small(), 'devices', [
      [1, 'qty', { t: 'n', v: 5 }], [2, 'type', { t: 's', v: 'Lamp' }], [2, 'unitDraw', { t: 'n', v: 90 }],
      // In the first of the rows that are kept ready.
      [5, 'ref', { t: 's', v: 'D9' }], [5, 'type', { t: 's', v: 'Valve' }], [5, 'qty', { t: 'n', v: 2 }],
    ]));
    expect(left).toEqual([]);
    expect(schedule.rows('devices').map(({ cells }) => [cells.ref, cells.type, cells.qty, cells.unitDraw, cells.diversity])).toEqual([
      ['D1', 'Lamp', 5, undefined, undefined], ['D2', 'Lamp', 12, 90, undefined],
      [undefined, undefined, undefined, undefined, undefined], [undefined, 'Lamp', expect.any(String), undefined, undefined],
      ['D9', 'Valve', 2, undefined, undefined],
    ]);
    const outputs = await taken(await edited(small(), 'outputs', [[1, 'kind', { t: 's', v: 'motor' }]]));
    expect(outputs.schedule.rows('outputs')[0]!.cells.kind).toBe('motor');
    const supplies = await taken(await edited(small(), 'supplies', [[1, 'redundant', { t: 's', v: 'yes' }]]));
    expect(supplies.schedule.rows('supplies')[0]!.cells.redundant).toBe(true);
    const typed = await taken(await edited(small(), 'supplies', [[1, 'redundant', { t: 'b', v: true }]]));
    expect(typed.schedule.rows('supplies')[0]!.cells.redundant).toBe(true);
  });

  test('are read in the words in which the file was written', async () => {
    const german = new LoadSchedule(small().content(), { words: await loadWords('de') });
    const choice = german.words.text('motor');
    const { schedule } = await taken(await edited(german, 'outputs', [[1, 'kind', { t: 's', v: choice }]]), 'fr');
    expect(schedule.rows('outputs')[0]!.cells.kind).toBe('motor');
  });

  test('offer no row twice: one that was named otherwise and changed stands where it stood, and is not taken as a new one', async () => {
    const edits = [[1, 'ref', { t: 's', v: 'D7' }], [1, 'qty', { t: 'n', v: 99 }]] as const;
    const { schedule, offered, left } = await taken(await edited(small(), 'devices', edits));
    expect(offered).toEqual([]);
    expect(left.join(' ')).toMatch(/D1: the row is not on the worksheet\..* It stands where D1 stood/);
    expect(schedule.rows('devices')).toHaveLength(small().rows('devices').length);
  });

  test('leave out what was emptied, named otherwise, taken out or cannot be read, with a sentence on each', async () => {
    const { offered, left } = await taken(await edited(small(), 'devices', [
      [1, 'qty', { t: 's', v: 'many' }], [2, 'qty', undefined], [1, 'ref', { t: 's', v: 'D7' }],
    ]));
    expect(offered).toEqual([]);
    expect(left).toEqual([
      'Devices, D2, Qty: 12 in the schedule, – on the worksheet.',
      'Devices, D1: the row is not on the worksheet.',
      'Devices, row 2 of the worksheet: the row is not in the schedule: Ref D7; Area Hall; Type Lamp; Qty many; Rail L1. It stands where D1 stood: enter it where it is another row; else change the tag and the figures of D1.',
    ]);
  });
});

describe('a load table that software of version 1 wrote', () => {
  const frozen = (name: string) =>
    new Uint8Array(readFileSync(new URL(`../data/versions/${name}`, import.meta.url)));

  test.each(['1.load-table.xlsx', '1.load-table.de.xlsx'])('has no edits where nobody made any: %s', async (name) => {
    expect(await editsOf(frozen(name))).toEqual([]);
  });

  test('names what was changed under the names of now', async () => {
    const workbook = read(frozen('1.load-table.xlsx'), { type: 'array', cellFormula: true });
    // The columns of version 1: purpose the third, points the seventh.
    workbook.Sheets.Types!.C3 = { t: 's', v: 'lighting' };
    workbook.Sheets.Types!.G3 = { t: 'n', v: 7 };
    expect(await editsOf(bytesOf(workbook))).toEqual([
      'Types, Drive, Purpose: field in the schedule, lighting on the worksheet.',
      'Types, Drive, Nodes: 2 in the schedule, 7 on the worksheet.',
    ]);
    // The third column of its supplies, 12 × 2 typed: it reads no other cell, so that no rule of now changes it.
    workbook.Sheets.Supplies!.C2 = { t: 'n', v: 48 };
    expect(await editsOf(bytesOf(workbook)))
      .toContain('Supplies, L1, Voltage: 24.00\u00a0V in the schedule, 48.00\u00a0V on the worksheet.');
    workbook.Sheets.Supplies!.C2 = { t: 'n', v: 24 };
    workbook.Sheets.Types!.C3 = { t: 's', v: 'peripherals' };
    workbook.Workbook!.Names = workbook.Workbook!.Names!.filter(({ Name }) => Name !== 'types.points');
    expect(await editsOf(bytesOf(workbook)))
      .toEqual(['Types, Nodes: was not found on a worksheet and is not compared.']);
  });
});
