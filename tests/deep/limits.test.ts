import { strToU8 } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readCsv, readSchedule } from '../../src/exchange/index.ts';
import { readLoadTable } from '../../src/report/xlsx/read-load-table.ts';
import { readTakeoff } from '../../src/exchange/takeoff/index.ts';
import { openWorkbook } from '../../src/exchange/workbook/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { KNOWN_FUNCTIONS } from '../../src/schedule/formula/known-functions.ts';
import { computedColumns, SHEET_NAMES, type Content } from '../../src/schedule/index.ts';
import { makeWorkbook } from '../support/make-workbook.ts';
import { processorTime } from '../support/processor-time.ts';

/** How long anything may take that is too large to be read [ms]: five times what it takes. */
const LONGEST = 20_000;

async function inTime<Result>(act: () => Result): Promise<Awaited<Result>> {
  const taken = processorTime();
  const result = await act();
  expect(taken()).toBeLessThan(LONGEST);
  return result;
}

const file = (rest: string): string => `{"format":"elv-load-schedule","version":2,"details":{},"sheets":{},${rest}}`;
const MB = 1024 * 1024;

describe('what is too much is refused with a sentence, in time', () => {
  test.each<[what: string, read: () => unknown, says: RegExp]>([
    ['a schedule of 65 MB', () => readSchedule(' '.repeat(65 * MB)), /65 MB; at most 64 MB is read/],
    ['a sheet of 65 MB', () => readCsv('x'.repeat(65 * MB)), /at most 64 MB is read/],
    [
      'a sheet of eight million rows', () => readCsv(`Ref,Qty\r\n${'D1,2\r\n'.repeat(8_000_000)}`),
      /more than 100000 rows/,
    ],
    [
      'a sheet of 100 000 columns', () => readCsv(`Ref,Qty${',x'.repeat(100_000)}\r\n`, 'devices'),
      /Line 1 has more than 16384 fields/,
    ],
    [
      'a takeoff of a million lines',
      () => readTakeoff(`Description;Qty\r\n${'Lamp;1\r\n'.repeat(1_000_000)}`, { types: [] }), /more than 100000 rows/,
    ],
    [
      'a takeoff of 100 000 columns',
      () =>
        readTakeoff(`Description;Qty${';x'.repeat(100_000)}\r\nLamp;1\r\n`, { types: [] }), /more than 16384 fields/,
    ],
    ['a list in a list, five million deep', () => readSchedule('['.repeat(5_000_000)), /more than 100 deep/],
    [
      'an object in an object, a million deep',
      () => readSchedule(file(`"x":${'{"a":'.repeat(1_000_000)}1${'}'.repeat(1_000_000)}`)), /more than 100 deep/,
    ],
    [
      'a sheet of 200 000 rows in JSON',
      () => readSchedule(file('').replace('"sheets":{},', `"sheets":{"devices":[${'{},'.repeat(200_000)}{}]}`)),
      /200001 rows; at most 100000/,
    ],
    [
      'a workbook of 21 MB', () => openWorkbook(new Uint8Array(21 * MB).fill(7).fill(0x50, 0, 1).fill(0x4b, 1, 2)),
      /21 MB; at most 20 MB/,
    ],
  ])('%s', async (_what, read, says) => {
    const answer = await inTime(read) as { ok: boolean; problems: { message: string }[] };
    expect(answer.ok).toBe(false);
    expect(answer.problems[0]!.message).toMatch(says);
  });

  test('a workbook that becomes many times as large when it is unpacked', async () => {
    const sheet = new Uint8Array(10 * MB).fill(0x20);
    sheet.set(strToU8('<worksheet>'));
    const parts = Object.fromEntries(Array.from(
      { length: 7 }, (_part, index) => [`xl/worksheets/sheet${index + 1}.xml`, sheet]
    ));
    const bomb = makeWorkbook({ A: { rows: [['x']] } }, parts);
    expect(bomb.length).toBeLessThan(2 * MB);
    const workbook = openWorkbook(bomb);
    const read = await inTime(() => workbook.ok ? workbook.read('A') : workbook);
    expect(read.ok || read.problems[0]!.message).not.toMatch(/undefined|NaN/);
    const carrier = makeWorkbook({ 'Schedule data': { rows: [['{}']] } }, {
      'xl/worksheets/sheet1.xml': strToU8(`<worksheet>${' '.repeat(65 * MB)}`),
    });
    const embedded = await inTime(() => readLoadTable(carrier));
    expect(embedded.ok || embedded.problems[0]!.message).toMatch(/larger than 64 MB when it is unpacked/);
  });

  test('the largest sheet that is read, is read', async () => {
    const read = await inTime(() => readCsv(`Ref,Qty\r\n${'D1,2\r\n'.repeat(100_000)}`));
    expect(read.ok && read.rows.length).toBe(100_000);
  });
});

const rows = (cells: object): Content =>
  ({ details: {}, sheets: { devices: [{ ref: 'D1', qty: 1, ...cells }, { ref: 'D2', qty: 2 }] } });

describe('formulas made to break the page', () => {
  const refused: readonly [what: string, formula: string, says: RegExp][] = [
    ['one of a million signs', `=${'1+'.repeat(500_000)}1`, /at most 2000 are allowed/],
    ['one that goes to the network', '=WEBSERVICE("http://192.0.2.1/")', /not known/],
    ['one that makes a link', '=HYPERLINK("http://192.0.2.1/";"x")', /not known/],
    ['one that fetches a picture', '=IMAGE("http://192.0.2.1/x.png")', /not known/],
    ['one that reads another program', '=DDE("x";"y";"z")', /not known/],
    ['one that names a place by a text', '=INDIRECT("D1")', /not known/],
    ['one that makes an endless text', '=LEN(REPT("x";1E9))', /not known/],
    ['one that reads every row there could be', '=SUM(D1:D1048576)', /no row 1048576/],
    ['one that changes by itself', '=RAND()', /changes by itself/],
    ['one that names what programs have', '=__proto__', /not known/],
  ];
  test.each(refused)('%s is refused with a sentence', async (_what, formula, says) => {
    const schedule = new LoadSchedule(rows({}));
    const read = await inTime(() => schedule.checkFormula('devices', 'qty', formula));
    expect(read.ok ? 'taken' : read.problem).toMatch(says);
    schedule.dispose();
  });

  test.each(
    [
      ['itself', '=[qty]', 2], ['another that reads it', '=[devices.qty@D2]', '=[devices.qty@D1]'],
      ['a total that it feeds', '=SUM([devices.qty#1:#2])', 2],
    ]
  )('one that reads %s has no figure, and the finding says so', (_what, first, second) => {
    const schedule =
      new LoadSchedule({ details: {}, sheets: { devices: [{ ref: 'D1', qty: first }, { ref: 'D2', qty: second }] } });
    expect(schedule.value('devices', 0, 'qty')).toBeNull();
    expect(schedule.findings.map(({ message }) => message).join()).toMatch(/depends on its own result/);
    schedule.dispose();
  });

  test('every function that is known answers any argument in time, or says that it cannot', async () => {
    const schedule = new LoadSchedule(rows({}));
    for (const name of KNOWN_FUNCTIONS) {
      for (const argument of ['1E9', '1E308', '-1E308', '9007199254740991', '0', '"x"', 'D2:D2', '-1']) {
        for (let count = 0; count <= 3; count += 1) {
          const formula = `=${name}(${Array.from({ length: count }, () => argument).join(';')})`;
          const read = await inTime(() => schedule.checkFormula('devices', 'distance', formula));
          expect(read.ok || read.problem.length > 10, formula).toBe(true);
        }
      }
    }
    schedule.dispose();
  }, 120_000);

  test('a thousand of the longest formulas, each reading the one above, are worked out in time', async () => {
    const formula = (row: number) => `=${row === 1 ? '1' : `[devices.qty#${row - 1}]`}${'+0*(1+2)'.repeat(200)}`;
    const content: Content = {
      details: {},
      sheets: { devices: Array.from(
        { length: 1000 }, (_row, index) => ({ ref: `D${index}`, qty: formula(index + 1) })
      ) },
    };
    const schedule = await inTime(() => new LoadSchedule(content));
    expect(schedule.formulaProblems).toEqual([]);
    expect(schedule.value('devices', 999, 'qty')).toBe(1);
    schedule.dispose();
  });
});

test('figures at the edge of what numbers hold never show as anything but figures', () => {
  const huge = {
    qty: 9_007_199_254_740_991, unitDraw: 1e308, diversity: 1, rail: 'L', run: 'R', branch: 'B', distance: 1e308,
  };
  const schedule = new LoadSchedule({ details: {}, sheets: {
    devices: [{ ref: 'D1', ...huge }, { ref: 'D2', ...huge, qty: 1, unitDraw: 5e-324 }],
    supplies: [
      {
        rail: 'L', rated: 1e308, units: 9_007_199_254_740_991, voltage: 1e-300, efficiency: 5e-324, fuse: 5e-324,
        target: 5e-324, enclosure: 'E',
      },
    ],
    runs: [
      { run: 'R', rail: 'L', conductor: 'C', length: 1e308, pairs: 1, way: 'W' },
    ], ways: [{ way: 'W', rail: 'L', rated: 5e-324, trip: 1e308, k2: 5e-324 }], conductors: [{ conductor: 'C', resistance: 1e308, maxCurrent: 5e-324 }],
    outputs: [
      {
        output: 'K', qty: 9_007_199_254_740_991, power: 1e308, voltage: 5e-324, powerFactor: 5e-324, contact: 'T',
        feed: 'F', inrush: 1e308,
      },
    ],
    contacts: [
      { contact: 'T', resistive: 5e-324, inrush: 5e-324 },
    ], feeds: [{ feed: 'F', rated: 5e-324, voltage: 5e-324 }],
    enclosures: [
      {
        enclosure: 'E', height: 1e308, width: 1e308, depth: 1e308, ambient: -1e308, maxInside: 1e308, otherLoss: 1e308,
      },
    ],
    branches: [{ branch: 'B', limit: 9_007_199_254_740_991 }],
  } });
  const whole = readSchedule(JSON.stringify({ format: 'elv-load-schedule', version: 2, ...schedule.content() }));
  expect(whole.ok || whole.problems.length > 0).toBe(true);
  for (const { message, value } of schedule.findings) {
    expect(message).not.toMatch(/NaN|Infinity|undefined/);
    expect(typeof value === 'number' && !Number.isFinite(value)).toBe(false);
  }
  for (const sheet of SHEET_NAMES) {
    for (const { id } of schedule.rows(sheet)) {
      for (const { key, kind } of computedColumns(sheet)) {
        if (kind !== 'number' && kind !== 'integer' && kind !== 'ratio') continue;
        const value = schedule.value(sheet, id, key);
        expect(value === null || Number.isFinite(value), `${sheet} ${key} ${String(value)}`).toBe(true);
      }
    }
  }
});
