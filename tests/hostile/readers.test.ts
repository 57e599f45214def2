import fc from 'fast-check';
import { strToU8 } from 'fflate';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { readCsv, readSchedule, writeCsv, writeSchedule } from '../../src/exchange/index.ts';
import { explainCell } from '../../src/explanations.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { inputColumns, SHEET_NAMES, type Cells, type Content } from '../../src/schedule/index.ts';
import { makeWorkbook } from '../support/make-workbook.ts';
import { processorTime } from '../support/processor-time.ts';
import { HOSTILE_TEXTS } from './hostile-texts.ts';
import { BYTE_READERS, faultOf, TEXT_READERS } from './readers.ts';

/** Longest that a reader may think about a text of some kilobytes [ms]. */
const LONGEST = 5000;

async function answered(read: () => unknown): Promise<string | undefined> {
  const taken = processorTime();
  const fault = faultOf(await read() as Parameters<typeof faultOf>[0]);
  const took = taken();
  return took > LONGEST ? `took ${Math.round(took)} ms` : fault;
}

const sample = (): Content => ({
  details: { project: 'Boat house' },
  sheets: {
    devices: [
      { ref: 'D1', type: 'Lamp', qty: 2, rail: 'L1' },
      { ref: 'D2', type: 'Lamp', qty: '=[devices.qty@D1]*2', rail: 'L1' },
    ],
    types: [{ type: 'Lamp', draw: 350 }], supplies: [{ rail: 'L1', rated: 1 }],
  },
});

/** Files that are right, to be broken in a place or two. */
const RIGHT: Readonly<Record<string, string>> = {
  'a schedule file': writeSchedule(sample()),
  'a sheet in CSV': writeCsv(new LoadSchedule(sample()), 'devices'),
  'a takeoff': 'Description;Qty;Room\r\nLamp;12 no.;Hall\r\nSensor;3,0;Hall\r\nTotal;15;\r\n',
};

describe.each(Object.entries(TEXT_READERS))('%s', (name, read) => {
  test.each(HOSTILE_TEXTS.map((text) => [
    JSON.stringify(text.slice(0, 40)), text,
  ]))('made of %s is read or refused with a sentence', async (_shown, text) => {
    expect(await answered(() => read(text))).toBeUndefined();
  });

  test('made of anything is read or refused with a sentence', async () => {
    const word = fc.oneof(fc.string({
      unit: 'binary', maxLength: 30,
    }), fc.constantFrom(...HOSTILE_TEXTS.filter(({ length }) => length < 200)),
      fc.constantFrom(
        ',', ';', '\t', '\r\n', '\n', '"', '{', '}', '[', ']', ':', '"sheets":', '"devices":', 'Ref', 'Qty', 'Total',
        '12'
      ));
    await fc.assert(fc.asyncProperty(fc.array(word, { maxLength: 60 }), async (words) => {
      expect(await answered(() => read(words.join('')))).toBeUndefined();
    }), { numRuns: 150 });
  });

  test('broken in any place is read or refused with a sentence', async () => {
    const whole = RIGHT[name] ?? RIGHT['a takeoff']!;
    await fc.assert(fc.asyncProperty(fc.nat(whole.length), fc.nat(40), fc.string({
      unit: 'binary', maxLength: 12,
    }), async (at, gone, put) => {
      expect(await answered(() => read(whole.slice(0, at) + put + whole.slice(at + gone)))).toBeUndefined();
    }), { numRuns: 300 });
  });
});

describe.each(Object.entries(BYTE_READERS))('%s', (_name, read) => {
  const whole = makeWorkbook(
    { 'Schedule data': { rows: [['{"format":'], ['Lamp', 2]] }, B: { rows: [['Description', 'Qty'], ['Lamp', 3]] } }
  );

  test('made of any bytes is read or refused with a sentence', async () => {
    await fc.assert(fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => {
      expect(await answered(() => read(Uint8Array.from(bytes)))).toBeUndefined();
    }), { numRuns: 200 });
  });

  test('with any byte changed, or cut off anywhere, is read or refused with a sentence', async () => {
    await fc.assert(fc.asyncProperty(fc.nat(whole.length - 1), fc.nat(255), fc.boolean(), async (at, value, cut) => {
      const bytes = Uint8Array.from(whole);
      bytes[at] = value;
      expect(await answered(() => read(cut ? bytes.slice(0, at) : bytes))).toBeUndefined();
    }), { numRuns: 300 });
  });

  test.each(HOSTILE_TEXTS.filter(({ length }) => length < 200).map((text) => [
    JSON.stringify(text), text,
  ]))('with a part made of %s is read or refused with a sentence', async (_shown, text) => {
    const parts = ['xl/workbook.xml', 'xl/worksheets/sheet1.xml', 'xl/sharedStrings.xml', 'xl/styles.xml'];
    for (const part of parts) {
      expect(await answered(() => read(makeWorkbook({ A: { rows: [['x']] } }, { [part]: strToU8(text) }))))
        .toBeUndefined();
    }
  });
});

describe('hostile texts in every cell that takes a text', () => {
  const texts = HOSTILE_TEXTS.map((text) => text.replace(/\p{Surrogate}|\0/gu, '\ufffd'));
  const content: Content = {
    details: { project: texts[0]!, remarks: texts[1]! },
    sheets: Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, texts.map((text) =>
      Object.fromEntries(inputColumns(sheet).filter(({ kind }) => kind === 'text' || kind === 'reference')
        .map(({ key, kind, tag }) => [
          key, tag === true || kind === 'reference' ? text.trim() : text,
        ]).filter(([, each]) => each !== '')) as Cells)])),
  };

  test('are saved and read back as they were', () => {
    const read = readSchedule(writeSchedule(content));
    expect(read.ok && writeSchedule(read.content)).toBe(writeSchedule(content));
  });

  test.each(SHEET_NAMES)('go out as CSV of %s and come back as they were, and none begins as a formula does',
    (sheet) => {
    const schedule = new LoadSchedule(content);
    const text = writeCsv(schedule, sheet);
    const fields = Papa.parse<string[]>(text).data.flat();
    expect(fields.length).toBeGreaterThan(100);
    expect(fields.filter((field) => /^[=+@\t\r]|^-\D/.test(field))).toEqual([]);
    const read = readCsv(text, sheet);
    const before = schedule.rows(sheet).map(({ cells }) => cells);
    expect(read.ok && JSON.stringify(read.rows.map((cells) => plain(cells))))
      .toBe(JSON.stringify(before.map((cells) => plain(cells))));
  });

  test('give figures and findings without a fault, and change nothing outside the schedule', () => {
    const schedule = new LoadSchedule(content);
    for (const { message } of schedule.findings) expect(message.length).toBeGreaterThan(10);
    for (const sheet of SHEET_NAMES) {
      for (const { id } of schedule.rows(sheet)) explainCell(schedule, sheet, id, inputColumns(sheet)[0]!.key);
    }
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect(({} as Record<string, unknown>).qty).toBeUndefined();
  });
});

/** Cells in a fixed order, without those that are empty. */
function plain(cells: Cells): [string, unknown][] {
  return Object.entries(cells).filter(([, value]) => value !== null && value !== '')
    .sort(([one], [other]) => one < other ? -1 : 1);
}
