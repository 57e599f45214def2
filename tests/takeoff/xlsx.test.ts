import { strToU8, type ZippableFile } from 'fflate';
import { describe, expect, it } from 'vitest';
import { utils, write } from '@e965/xlsx';
import { openWorkbook, type Workbook } from '../../src/exchange/workbook/index.ts';
import { usedRange } from '../../src/exchange/workbook/used-range.ts';
import { readTakeoff } from '../../src/exchange/takeoff/index.ts';
import { makeWorkbook, type MadeSheet } from '../support/make-workbook.ts';
import { inShort, read } from './support.ts';
import { processorTime } from '../support/processor-time.ts';

function open(bytes: Uint8Array): Workbook {
  const workbook = openWorkbook(bytes);
  if (!workbook.ok) throw new Error(JSON.stringify(workbook.problems));
  return workbook;
}

async function rowsOf(bytes: Uint8Array, sheet?: string): Promise<readonly (readonly unknown[])[]> {
  const workbook = open(bytes);
  const result = await workbook.read(sheet ?? workbook.sheets[0]!);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.rows;
}

/** Why the first sheet of a workbook, or the workbook, is not read. */
async function refusal(bytes: Uint8Array, sheet?: string): Promise<string> {
  const workbook = openWorkbook(bytes);
  const result = workbook.ok ? await workbook.read(sheet ?? workbook.sheets[0]!) : workbook;
  return result.ok ? 'it was read' : result.problems.map(({ code, message }) => `${code}: ${message}`).join(' ');
}

const sheet = (rows: MadeSheet['rows']): MadeSheet => ({ rows: rows! });
const DAY = new Date(Date.UTC(2026, 10, 25));

describe('the cells of a sheet', () => {
  it('are texts, numbers, yes or no and days, each in its place; what has no result is empty', async () => {
    expect(await rowsOf(makeWorkbook({ A: sheet([
      ['  Lamp & "co" <1> ', 3, true, DAY],
      [],
      [null, 1.5, null, { error: '#N/A' }],
      [{ formula: 'B1+B3' }, -2],
    ]) }))).toEqual([
      ['Lamp & "co" <1>', 3, true, DAY],
      [null, null, null, null],
      [null, 1.5, null, null],
      [null, -2, null, null],
    ]);
  });

  it('keep their rows below empty ones that the file does not even name', async () => {
    const xml = '<row r="4"><c r="C4" t="inlineStr"><is><t>Lamp</t></is></c></row>';
    expect(await rowsOf(makeWorkbook({ A: { xml } })))
      .toEqual([[null, null, null], [null, null, null], [null, null, null], [null, null, 'Lamp']]);
  });

  it('are the same when another library writes the workbook', async () => {
    const rows = [['Device', 'Qty', 'Counted'], ['Lamp', 3, true], ['Sensor', 0.25, false]];
    const book = utils.book_new();
    utils.book_append_sheet(book, utils.aoa_to_sheet(rows), 'Count');
    utils.book_append_sheet(book, utils.aoa_to_sheet([['x']]), 'Notes & more');
    for (const bookSST of [true, false]) {
      const bytes = new Uint8Array(
        write(book, { type: 'array', bookType: 'xlsx', bookSST, compression: true }) as ArrayBuffer
      );
      expect(open(bytes).sheets).toEqual(['Count', 'Notes & more']);
      expect(await rowsOf(bytes)).toEqual(rows);
      expect(await rowsOf(bytes, 'Notes & more')).toEqual([['x']]);
    }
  });
});

describe('the sheets of a workbook', () => {
  it('are those that are shown, in their order; the rest of the workbook does not matter to one', async () => {
    const bytes = makeWorkbook({
      Behind: { ...sheet([['hidden']]), state: 'veryHidden' }, Count: sheet([['first']]),
      Broken: { xml: '<row r="1"><c r="A1"><v>3</row>' }, Last: sheet([['last']]),
    });
    expect(open(bytes).sheets).toEqual(['Count', 'Broken', 'Last']);
    expect(await rowsOf(bytes)).toEqual([['first']]);
    expect(await rowsOf(bytes, 'Last')).toEqual([['last']]);
    expect(await refusal(bytes, 'Broken'))
      .toMatch(
        /^not-a-workbook: The sheet is damaged or incomplete and cannot be read\. Save the workbook anew as \.xlsx, or copy/
      );
    expect(await refusal(bytes, 'Behind'))
      .toBe('sheet-missing: There is no sheet “Behind”; the sheets are Count, Broken, Last. Name one of them.');
  });

  it('are all of them when none is shown', () => {
    expect(open(makeWorkbook({ A: { state: 'hidden' }, B: { state: 'hidden' } })).sheets).toEqual(['A', 'B']);
  });
});

describe('a takeoff in a workbook', () => {
  it('is read below merged titles, with every line by its row, and without its total', async () => {
    const rows = await rowsOf(makeWorkbook({ Count: { merged: ['A1:D1', 'A2:D2'], ...sheet([
      ['Boat house, takeoff off drawings'],
      ['Issue of', DAY],
      [],
      ['Device', 'Room', 'Qty', 'Counted on'],
      ['Lamp', 'Jetty', 1234, DAY],
      ['Sensor', 'Jetty', '12 no.', null],
      ['Lamp', 'Slip', 1.5, null],
      [],
      ['Total', null, 1247.5, null],
    ]) } }));
    const takeoff = read(rows, { types: [{ type: 'Lamp', draw: 350 }, { type: 'Sensor', draw: 100 }] });
    expect(takeoff.headingLine).toBe(4);
    const short = inShort(takeoff);
    // 1234 + 12 + 1.5 = 1247.5, which the total says too; one and a half lamps are for a person to decide on.
    expect([short[5], short[6], short[7]!.split(' ')[0], short[9]])
      .toEqual(['taken 1234 Lamp', 'taken 12 Sensor', 'undecided', 'left-out 1247.5 -']);
    expect(takeoff.rows).toMatchObject(
      [{ type: 'Lamp', area: 'Jetty', qty: 1234 }, { type: 'Sensor', area: 'Jetty', qty: 12 }]
    );
  });

  it('has the text of cells that are merged downwards in each of their rows, but a number once', async () => {
    const rows = await rowsOf(makeWorkbook({ Count: { merged: ['B2:B4', 'C2:C3', 'A5:C5', 'B5:B99999'], ...sheet([
      ['Device', 'Room', 'Qty'],
      ['Lamp', 'Jetty', 3],
      ['Sensor', null, null],
      ['Lamp', null, 2],
      ['Slip, not counted yet'],
      ['Sensor', null, 1],
    ]) } }));
    expect(rows.map((cells) => cells.slice(1)))
      .toEqual([['Room', 'Qty'], ['Jetty', 3], ['Jetty', null], ['Jetty', 2], [null, null], [null, 1]]);
    const takeoff = read(rows, { types: [{ type: 'Lamp', draw: 350 }, { type: 'Sensor', draw: 100 }] });
    // 3 + 2 lamps of one room are one row.
    expect(takeoff.rows).toMatchObject([{ type: 'Lamp', area: 'Jetty', qty: 5 }, { type: 'Sensor', qty: 1 }]);
  });

  it('is the same as its CSV', async () => {
    const lines = [['Device', 'Room', 'Qty'], ['Lamp', 'Jetty', '3'], ['Winch', 'Slip', ''], ['Subtotal', '', '3']];
    const types = [{ type: 'Lamp', draw: 350 }];
    const typed = (cell: string) => cell === '' ? null : /^\d+$/.test(cell) ? Number(cell) : cell;
    const workbook = await rowsOf(makeWorkbook({ A: sheet(lines.map((cells) => cells.map(typed))) }));
    const { lines: fromCells, sums } = read(workbook, { types });
    const fromText = read(lines.map((cells) => cells.join(',')).join('\n'), { types });
    expect(fromCells.map(({ outcome, qty, type, reason }) => [outcome, qty, type, reason]))
      .toEqual(fromText.lines.map(({ outcome, qty, type, reason }) => [outcome, qty, type, reason]));
    expect(sums).toEqual(fromText.sums);
  });

  it('is refused in words when its sheet is empty', async () => {
    const rows = await rowsOf(makeWorkbook({ A: sheet([[null, null], []]) }));
    expect(readTakeoff(rows, { types: [] })).toMatchObject({ ok: false, problems: [{ code: 'csv-empty' }] });
  });
});

describe('what is no workbook that can be read', () => {
  const good = makeWorkbook({ A: sheet([['Device', 'Qty'], ['Lamp', 3]]) });

  it.each<[why: string, bytes: Uint8Array, message: RegExp]>([
    ['nothing', new Uint8Array(0), /^not-a-workbook: The file is no workbook/],
    [
      'text under its name', strToU8('Device,Qty\nLamp,3\n'.repeat(20)),
      /^not-a-workbook: The file is no workbook in the format \.xlsx\. Save the list as/,
    ],
    [
      'the half of one', good.subarray(0, good.length / 2),
      /^not-a-workbook: The workbook is damaged: a part of it is cut off or cannot be unpacked\. Take another copy of it\.$/,
    ],
    ['one whose beginning is lost', good.subarray(200), /^not-a-workbook: /],
    [
      'the older format', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]),
      /older format \(\.xls\) or locked by a password/,
    ],
    ['a package of something else', makeWorkbook({}, { 'xl/workbook.xml': strToU8('<w/>') }), /no sheet with cells/],
    [
      'more than 20 MB', new Uint8Array(20 * 1024 * 1024 + 1),
      /^file-too-large: The workbook has 21 MB; at most 20 MB is read/,
    ],
  ])('refuses %s', async (_, bytes, message) => {
    expect(await refusal(bytes)).toMatch(message);
  });

  it('never throws, whichever byte is wrong', async () => {
    for (let place = 0; place < good.length; place += 7) {
      const damaged = good.slice();
      damaged[place] = damaged[place]! ^ 0xff;
      expect(await refusal(damaged)).toMatch(/^(it was read|[a-z-]+: .+\.)$/s);
    }
  });

  it('stops unpacking at 64 MB, whatever the package says of its sizes', async () => {
    // Spaces are packed 1 : 1000; the sheet would become 128 MB.
    const bomb = makeWorkbook({ A: {} }, { 'xl/worksheets/sheet1.xml': [spaces(128), { level: 1 }] });
    expect(bomb.length).toBeLessThan(1024 * 1024);
    lieAboutSizes(bomb);
    const taken = processorTime();
    expect(await refusal(bomb)).toBe('file-too-large: The workbook becomes larger than 64 MB when it is unpacked, and is not read. '
      + 'Copy the list and paste it, or save it as CSV.');
    expect(taken()).toBeLessThan(10_000);
  });

  it('does not unpack other sheets and pictures', async () => {
    const large: ZippableFile = [spaces(80), { level: 1 }];
    const bytes = makeWorkbook(
      { A: sheet([['Lamp']]), B: {} }, { 'xl/worksheets/sheet2.xml': large, 'xl/media/image1.png': large }
    );
    expect(await rowsOf(bytes, 'A')).toEqual([['Lamp']]);
  });

  it('builds no table for a cell that stands far away', async () => {
    const far = '<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576"><v>1</v></c></row>';
    expect(await refusal(makeWorkbook({ A: { xml: far } })))
      .toMatch(
        /^sheet-too-large: The sheet reaches over 1048576 rows and 16384 columns; at most 2 million cells are read\. Delete what/
      );
    expect(await refusal(makeWorkbook({ A: { xml: '<row r="99999999999"/>' } }))).toMatch(/^sheet-too-large: /);
    // Far cells that have a format only are no content.
    const formatted = '<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576" s="1"/></row>';
    expect(await rowsOf(makeWorkbook({ A: { xml: formatted } }))).toEqual([[1]]);
    expect(usedRange('<x:c s="1" r="AB7"><x:v>1</x:v></x:c><c r=\'C12\'><v/></c>')).toEqual({ rows: 12, columns: 28 });
  });
});

function spaces(megabytes: number): Uint8Array {
  return new Uint8Array(megabytes * 1024 * 1024).fill(0x20);
}

/** Writes 1 as the unpacked size of every file, in the directory and in the headers. */
function lieAboutSizes(bytes: Uint8Array): void {
  const view = new DataView(bytes.buffer);
  for (let at = 0; at < bytes.length - 30; at += 1) {
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 1, true);
    if (view.getUint32(at, true) === 0x04034b50) view.setUint32(at + 22, 1, true);
  }
}
