import { describe, expect, it } from 'vitest';
import { readTakeoff } from '../../src/exchange/takeoff/index.ts';
import { hotelTakeoff } from './hotel.ts';
import { inShort, read, readData, TYPES } from './support.ts';

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
    // 24 + 7 + 9 + 3 + 12; 18 + 6 + 14 + 2 + 16; 5.
    taken: 116,
    // Zwischensumme 57,5 and Gesamtsumme 1.325,5.
    leftOut: 1383,
    // 2,5 m; 5 + 1 «Praesenzmelder»; a subtotal of 61 over 62 devices; one «psch»; 1.200 m of cable.
    undecided: 1270.5,
    rows: 11,
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
    // 6 «Damper actuators», 4 of nothing; «2 x 3» is no number.
    undecided: 10,
    rows: 9,
  },
  {
    file: 'swimming-pool.tsv',
    headings: ['qty', 'type', 'area'],
    // 4 + 12 + 2 (the same place) + 30 + 8.
    taken: 56,
    // The sum stands below without a word.
    leftOut: 62,
    undecided: 6,
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
];

describe.each(takeoffs)('$file', ({ file, headings, taken, leftOut, undecided, rows }) => {
  const takeoff = read(readData(`takeoffs/${file}`));

  it('is read in the columns of its office', () => {
    expect(takeoff.columns.map(({ field }) => field)).toEqual(headings);
  });

  it('comes to the sums worked out by hand', () => {
    expect(takeoff.sums).toMatchObject({ read: taken + leftOut + undecided, taken, leftOut, undecided });
    expect(takeoff.rows).toHaveLength(rows);
    expect(takeoff.rows.reduce((sum, { qty }) => sum + Number(qty), 0)).toBe(taken);
  });

  it('says of every line why', () => {
    expect(takeoff.lines.map(({ line }) => line)).toEqual(takeoff.lines.map((_, index) => index + 1));
    for (const { reason } of takeoff.lines) expect(reason).toMatch(/\.$/);
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
    15: 'undecided 4 -', 16: 'undecided null TC', 17: 'taken 1 TC', 18: 'left-out 40 -',
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
