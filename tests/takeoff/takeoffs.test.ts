import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readTakeoff } from '../../src/exchange/takeoff/index.ts';
import { depotWorkbook } from './depot.ts';
import { hotelTakeoff } from './hotel.ts';
import { inShort, read, readData, readList, tablesOfWorkbook, TYPES } from './support.ts';

/**
 * Sums worked out by hand from the files, quantities in the order of their lines. Each takeoff is in the habit of
 * another office: headings, separators, languages, titles, totals.
 */
const takeoffs = [
  {
    file: 'library-refit.csv',
    headings: ['ref', 'description', 'area', 'qty', 'note'],
    // 12 + 4 + 8 + 3 + 6 on the ground floor; 4 + 2 + 18 above.
    taken: 57,
    // The subtotals 33 and 42, the total 75.
    leftOut: 150,
    // 10 whose name is only like a type, «ca. 8», and a thermostat without a quantity.
    undecided: 18,
    rows: 8,
  },
  {
    file: 'kindertagesstaette.csv',
    headings: ['ref', 'description', 'qty', 'unit', 'note'],
    // 24 + 7 + 9 + 3 + 12 + 2.5; 18 + 6 + 14 + 2 + 16; 5.
    taken: 118.5,
    // Zwischensumme 57,5 and Gesamtsumme 1.325,5.
    leftOut: 1383,
    // 5 + 1 «Praesenzmelder»; a subtotal of 61 over 62 devices; one «psch»; 1.200 m of cable.
    undecided: 1268,
    rows: 12,
  },
  {
    file: 'maison-de-sante.csv',
    headings: ['ref', 'description', 'area', 'area', 'qty', 'branch', 'rail', 'note', 'price'],
    // 4 + 6 + 2 + 1 + 1 + 1200 + 6; 2 + 2 + 1 (the same door) + 5.
    taken: 1230,
    // Sous-totaux 1 220 and 13, total 1 233.
    leftOut: 2466,
    // «env. 3».
    undecided: 3,
    // Ten lines, of which two are one row.
    rows: 10,
  },
  {
    file: 'workshop.tsv',
    headings: ['type', 'description', 'area', 'area', 'qty', 'branch', 'rail'],
    // 8 + 3 + 4 + 2 + 2 + 2; 5 + 1 (the same room) + 2 + 1.
    taken: 30,
    leftOut: 40,
    // 6 «Damper actuators», 4 of nothing, 6 that «2 x 3» probably means.
    undecided: 16,
    rows: 9,
  },
  {
    file: 'swimming-pool.tsv',
    headings: ['qty', 'type', 'area'],
    // 4 + 12 + 2 (the same place) + 30 + 8.
    taken: 56,
    leftOut: 0,
    // 6 «Escape signs»; the sum stands below without a word, and might be 62 more.
    undecided: 68,
    rows: 4,
  },
  {
    file: 'hotel.csv',
    headings: ['type', 'area', 'qty'],
    // 4 storeys × (31 rooms × 14 + 31 rooms × 16).
    taken: 3720,
    // The four subtotals of 930 and the total.
    leftOut: 7440,
    undecided: 0,
    // 4 × 62 rooms × 7; the eighth line of each room is merged.
    rows: 1736,
  },
  {
    file: 'town-hall.csv',
    headings: ['ref', 'type', 'qty', 'qty', 'qty', 'total', 'price'],
    // 6 + 8 + 5; 7 + 9 + 4; 22 + 30; 4 + 6 + 3; 1.
    taken: 105,
    // The totals of the levels: 49, 66 and 19.
    leftOut: 134,
    // 8 + 12 + 6 «Valve actuator»; 2 + 1 card readers, of which the line says that they are 4.
    undecided: 29,
    rows: 12,
  },
  {
    file: 'grundschule.csv',
    encoding: 'Windows-1252',
    headings: ['area', 'type', 'qty', 'qty', 'qty', 'total', 'note'],
    // 4 + 6 + 6; 2 + 3 + 3; 4 + 6 + 6; 3 + 3 + 2.
    taken: 48,
    // 28 + 23 + 21.
    leftOut: 72,
    // 5 + 5 + 4 that «entfällt»; 10 «Stellantrieb».
    undecided: 24,
    rows: 12,
  },
  {
    file: 'mediatheque.txt',
    encoding: 'UTF-16 LE',
    headings: ['area', 'qty', 'qty', 'qty', 'qty', 'total'],
    // 8 + 14 + 10 + 2.
    taken: 34,
    // 10 + 4 + 18 + 2.
    leftOut: 34,
    undecided: 0,
    // Blank cells count nothing: 4 + 3 + 3 + 2.
    rows: 12,
  },
  {
    file: 'clinic.tsv',
    encoding: 'UTF-16 BE',
    headings: ['type', 'qty', 'qty', 'qty', 'qty'],
    // 4 + 6 + 8; 1 + 1 + 1 + 1; 2 + 2 + 1 + 3; 1 + 1.
    taken: 32,
    leftOut: 0,
    undecided: 0,
    rows: 13,
  },
  {
    file: 'brewery.csv',
    headings: ['area', 'type', 'qty', 'unit', 'draw', 'note'],
    // 12.5 + 7.5 m; 4.
    taken: 24,
    leftOut: 0,
    // «3 + 1 spare» 4, «2 pr.» 4, «12 (incl. 2 spare)» 12, «2x3» 6, 4 «by others», «ca. 5» 5, 9 of nothing.
    undecided: 44,
    rows: 2,
  },
];

describe.each(takeoffs)('$file', ({ file, encoding = 'UTF-8', headings, taken, leftOut, undecided, rows }) => {
  const list = readList(file);
  const takeoff = read(list.text);

  it('is in the encoding that is found', () => {
    expect(list.encoding).toBe(encoding);
  });

  it('is read in the columns of its office', () => {
    expect(takeoff.columns.map(({ field }) => field)).toEqual(headings);
  });

  it('comes to the sums worked out by hand', () => {
    expect(takeoff.sums).toMatchObject({ read: taken + leftOut + undecided, taken, leftOut, undecided });
    expect(takeoff.rows).toHaveLength(rows);
    expect(takeoff.rows.reduce((sum, { qty }) => sum + Number(qty), 0)).toBe(taken);
  });

  it('says of every line why', () => {
    const all = [...new Set(takeoff.lines.map(({ line }) => line))];
    expect(all).toEqual(all.map((_, index) => index + 1));
    for (const { reason } of takeoff.lines) expect(reason).toMatch(/\.$/);
  });
});

describe('depot.xlsx', async () => {
  const bytes = new Uint8Array(readFileSync(new URL('../../data/takeoffs/depot.xlsx', import.meta.url)));
  const takeoff = read(await tablesOfWorkbook(bytes));

  it('is the workbook that is described beside', async () => {
    expect(await tablesOfWorkbook(bytes)).toEqual(await tablesOfWorkbook(depotWorkbook()));
  });

  it('comes to the sums worked out by hand, sheets taken together', () => {
    // Level 0: 4 + 3 + 2 + 1; level 1: 9 + 5.
    expect(takeoff.sums).toMatchObject({
      taken: 24,
      // 18 and 2 of level 0, 24 of level 1.
      leftOut: 44,
      // Level 0: 6 + 2 (a hidden option), 2 struck through; level 1: 2 hidden, 8; the summary: 15 + 14 + 5 + 5 + 3.
      undecided: 62, read: 130,
    });
  });

  it('says why lines are asked about', () => {
    const flags = takeoff.lines.filter(({ flag }) => flag !== undefined).map(({ key, flag }) => `${key} ${flag!}`);
    expect(flags).toEqual([
      'Level 0!3/4 hidden', 'Level 0!7/3 struck', 'Level 1!4 hidden', ...[2, 3, 4, 5, 6].map((line) => `Summary!${line} sum`),
    ]);
  });

  it('has the sheet for an area where it has no other, and what the legend says of its codes', () => {
    const of = (key: string) => takeoff.lines.find((line) => line.key === key);
    expect(of('Level 1!2')).toMatchObject({ type: 'Presence detector', area: 'Level 1', facts: { draw: 12 } });
    expect(of('Level 0!4/3')).toMatchObject({ type: 'GS', area: 'Level 0, Wash bay', facts: { draw: 4 } });
    expect(takeoff.names.find(({ texts: [code] }) => code === 'GS')!.texts).toEqual(['GS', 'Gate switch, roller lever']);
  });
});

it('takes the lines of the library apart', () => {
  expect(inShort(read(readData('takeoffs/library-refit.csv')))).toEqual({
    1: 'left-out null -', 2: 'left-out null -', 3: 'left-out null -', 4: 'left-out null -', 5: 'left-out null -',
    6: 'taken 12 Downlight 7 W', 7: 'taken 4 Downlight 7 W', 8: 'taken 8 Downlight 12 W',
    9: 'taken 3 Push-button station, 2 keys', 10: 'taken 6 Presence detector', 11: 'left-out 33 -',
    12: 'left-out null -',
    13: 'taken 4 Presence detector', 14: 'undecided 10 -', 15: 'taken 2 Book return flap drive',
    16: 'taken 18 LED strip 9.6 W/m', 17: 'undecided 8 Window contact', 18: 'undecided null Room thermostat',
    19: 'left-out 0 Card reader', 20: 'left-out 42 -', 21: 'left-out null -', 22: 'left-out 75 -',
    23: 'left-out null -',
  });
});

it('takes the lines of the workshop apart', () => {
  expect(inShort(read(readData('takeoffs/workshop.tsv')))).toEqual({
    1: 'left-out null -', 2: 'left-out null -', 3: 'left-out null -',
    4: 'taken 8 Presence detector', 5: 'taken 3 Presence detector', 6: 'taken 4 Push-button station, 2 keys',
    7: 'taken 2 Push-button station, 2 keys', 8: 'taken 2 K2', 9: 'undecided 6 -', 10: 'taken 2 Sounder beacon',
    11: 'left-out null -', 12: 'taken 5 Presence detector', 13: 'merged 1 Presence detector',
    14: 'taken 2 Light sensor',
    15: 'undecided 4 -', 16: 'undecided 6 TC', 17: 'taken 1 TC', 18: 'left-out 40 -',
  });
});

it('has 2,000 lines from a hotel whose rooms repeat', async () => {
  const text = hotelTakeoff();
  expect(text.split('\r\n')).toHaveLength(2001);
  await expect(text).toMatchFileSnapshot('../../data/takeoffs/hotel.csv');
});

it('reads the cells of a spreadsheet: texts, numbers, dates and empty ones', () => {
  const rows = [
    ['Device', 'Qty', 'Remarks', 'Ref'], [
      'Router', 2, new Date(Date.UTC(2026, 10, 12)), 7,
    ], ['Router', 1.234, null, true],
    [undefined, null], ['Light sensor', '3 no.', '', new Date(NaN)],
  ];
  const takeoff = read(rows);
  expect(inShort(takeoff)).toMatchObject(
    { 2: 'taken 2 Router', 3: 'undecided 1.234 Router', 4: 'left-out null -', 5: 'taken 3 Light sensor' }
  );
  expect(takeoff.rows).toEqual(
    [{ type: 'Router', qty: 2, note: '2026-11-12', ref: '7' }, { type: 'Light sensor', qty: 3 }]
  );
});

it('reads the rows of a spreadsheet as it reads their text', () => {
  const text = readData('takeoffs/workshop.tsv');
  const fromText = readTakeoff(text, { types: TYPES });
  const cells = text.trimEnd().split('\n')
    .map((line) => line.split('\t').map((cell) => /^\d+$/.test(cell) ? Number(cell) : cell));
  const fromRows = read(cells);
  expect(fromRows).toMatchObject({ ok: true });
  expect({ ...fromRows, lines: fromRows.lines.map(({ outcome, qty, reason }) => ({ outcome, qty, reason })) })
    .toMatchObject(fromText.ok ? {
      columns: fromText.columns, sums: fromText.sums, rows: fromText.rows,
      lines: fromText.lines.map(({ outcome, qty, reason }) => ({ outcome, qty, reason })),
    } : {});
});
