import { describe, expect, it } from 'vitest';
import { equationOf } from '../../src/exchange/takeoff/index.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { inShort, read } from './support.ts';

const take = (...lines: string[]) => read(['Device;Room;Qty', ...lines].join('\n'));
const reasonOf = (line: number, ...lines: string[]) => take(...lines).lines.find((each) => each.line === line)!.reason;

describe('totals', () => {
  it.each([
    ['of all', ['Router;;1', 'Light sensor;;4', 'Total;;5'], 4, 'the sum of the lines from 2 on'],
    ['of a part', ['Router;;1', 'Total;;1', 'Light sensor;;4', 'Total;;4'], 5, 'from 4 on'],
    ['of several parts', ['Ground floor', 'Hall', 'Router;;1', 'Total hall;;1', 'Bar', 'Router;;2', 'Total bar;;2',
      'Total ground floor;;3'], 9, 'from 4 on'],
    [
      'that are grand', ['Router;;1', 'Sub-total;;1', 'Light sensor;;4', 'Subtotal;;4', 'Grand total;;5'], 6,
      'from 2 on',
    ],
    ['in German', ['Router;;1', 'Zwischensumme;;1', 'Übertrag;;1'], 4, 'from 2 on'],
    [
      'in German words of a building',
      ['Lichtfühler;;3', 'Summe Erdgeschoss;;3', 'Router;;1', 'Teilergebnis;;1', 'Gesamtmenge;;4'], 6, 'from 2 on',
    ],
    ['in French', ['Voyant;;3', 'Total général;;3'], 3, 'from 2 on'],
    ['in French words of a building', ['Voyant;;3', 'Sous-totaux RDC;;3', 'Voyant;x;1', 'Cumul;;4'], 5, 'from 2 on'],
    ['that are called so at the end', ['Router;;1', 'Light sensor;;2', 'Ground floor total;;3'], 4, 'from 2 on'],
  ])('%s are left out, checked', (_, lines, line, words) => {
    const { lines: read } = take(...lines);
    const total = read.find((each) => each.line === line)!;
    expect(total).toMatchObject({ outcome: 'left-out', isTotal: true });
    expect(total.reason).toContain(words);
  });

  it.each([
    ['of several lines', ['Router;;1', 'Light sensor;;4', ';;5'], 4],
    // Four below four may be four more.
    ['of one line', ['Router;;4', ';Hall;4'], 3],
  ])('without a word may be devices, and are asked about: the sum %s', (_, lines, line) => {
    const found = take(...lines).lines.find((each) => each.line === line)!;
    expect(found).toMatchObject({ outcome: 'undecided', flag: 'sum' });
    expect(found.reason).toContain('is the sum of the lines from 2 on. Leave it out if it is their total.');
  });

  it('that are wrong need a decision, and the next one is not led astray', () => {
    const takeoff = take('Router;;1', 'Light sensor;;4', 'Subtotal;;6', 'Router;Hall;2', 'Subtotal;;2', 'Total;;7');
    expect(inShort(takeoff)).toMatchObject({ 4: 'undecided 6 -', 6: 'left-out 2 -', 7: 'left-out 7 -' });
    expect(takeoff.lines[3]!.reason)
      .toBe('It is called a total and says 6, but the lines above come to 5. Check both, then leave it out.');
    expect(equationOf(takeoff.sums)).toBe('Read 22 = taken 7 + left out 9 (9 in totals) + undecided 6');
  });

  it.each(['Total;;9', 'Total heat sensor;;9', 'Building total of everything that was counted here;;9'])(
    '%s is not taken for a device, as it may be a wrong total', (line) => {
      expect(inShort(take('Router;;1', 'Router;x;2', line))[4]).toBe('undecided 9 -');
    });

  it('are not what a device is called that is known by such a name', () => {
    const types = [{ type: 'Total heat sensor' }];
    expect(inShort(read('Device;Qty\nTotal heat sensor;3', { types }))[2]).toBe('taken 3 Total heat sensor');
  });
});

describe('titles and other lines without a device', () => {
  it('stand for the area where no column does', () => {
    const { rows, lines } = read('Device;Qty\nHall;\nRouter;1\n2 Bar;\nRouter;2');
    expect(rows).toEqual([{ type: 'Router', area: 'Hall', qty: 1 }, { type: 'Router', area: '2 Bar', qty: 2 }]);
    expect(lines[2]!.reason).toContain('Its area is the title on line 2.');
  });

  it.each([
    ['a title', ['Hall;;'], 2, 'left-out', 'It is a title or a remark: a single text without a quantity.'],
    [
      'a title with a number', ['1.2;Hall;'], 2, 'left-out',
      'It is a title or a remark: a single text without a quantity.',
    ],
    ['a blank line', ['Router;;1', '', 'Router;x;1'], 3, 'left-out', 'The line is blank.'],
    ['a line of separators', ['Router;;1', ';;', 'Router;x;1'], 3, 'left-out', 'The line is blank.'],
    ['repeated headings', ['Router;;1', 'DEVICE;room;Qty.'], 3, 'left-out', 'The headings are repeated.'],
    [
      'a device without a quantity', ['Router;;'], 2, 'undecided',
      'It has no quantity. Say how many there are. It has the name of its type.',
    ],
    [
      'a quantity of nothing', ['Router;;1', 'Light sensor;;2', ';Hall;7'], 4, 'undecided',
      'It has a quantity but names no device. Say what it counts in the takeoff, or leave it out.',
    ],
    ['none', ['Router;;0'], 2, 'left-out', 'There are none: the quantity is 0. '],
  ])('%s', (_, lines, line, outcome, reason) => {
    const found = take(...lines).lines.find((each) => each.line === line)!;
    expect({ outcome: found.outcome, reason: found.reason }).toEqual({ outcome, reason: reason.trim() });
  });
});

describe('lines that are no devices by their looks', () => {
  const source = 'Device;Room;Qty\nHall;;\nRouter;;3\nTotal;;3\nTotal;;9\n;Bar;5\nDEVICE;Room;Qty\nFree text without a count;;';
  const keys = ['1', '2', '4', '5', '6', '7', '8'];

  it.each(keys)('count with the quantity that a person gives, and nothing else changes: line %s', (key) => {
    const before = read(source);
    const after = read(source, { decisions: { lines: { [key]: { qty: 2 } } } });
    const found = after.lines.find((line) => line.key === key)!;
    expect(found).toMatchObject({ outcome: 'taken', qty: 2 });
    expect(found.isTotal).toBeUndefined();
    // Its name is one that the list has, for which a type may be chosen.
    expect(after.names.find((name) => name.key === found.nameKey)).toMatchObject({ state: 'new', texts: [found.type] });
    const own = before.lines.find((line) => line.key === key)!;
    expect(after.sums.taken).toBe(before.sums.taken + 2);
    expect(after.sums.read).toBe(before.sums.read - (own.qty ?? 0) + 2);
    expect(after.lines.map((line) => line.key)).toEqual(before.lines.map((line) => line.key));
  });

  it('are counted of a legend, and in a list with several counts, as one', () => {
    const legend = 'Code;Description;Draw (mA)\nR;Router;10';
    expect(read([{ sheet: 'Legend', cells: legend }, { sheet: 'A', cells: 'Device;Qty\nRouter;1' }], {
      decisions: { lines: { 'Legend!2': { qty: 4 } } },
    }).sums).toMatchObject({ read: 5, taken: 5 });
    const { lines } = read('Device;Qty L0;Qty L1\nRouter;1;2\nTitle of a storey;;', { decisions: { lines: { 1: { qty: 3 }, 3: { qty: 4 } } } });
    expect(lines.map(({ key, outcome, qty }) => `${key} ${outcome} ${qty}`)).toEqual([
      '1 taken 3', '2/2 taken 1', '2/3 taken 2', '3 taken 4',
    ]);
  });

  it('take what they say when they are taken', () => {
    expect(inShort(read(source, { decisions: { lines: { 4: 'take', 5: 'take', 6: 'take' } } }))).toMatchObject({
      4: 'taken 3 Total', 5: 'merged 9 Total', 6: 'taken 5 Bar',
    });
  });
});

describe('lines of the same type in the same place', () => {
  it('are one row, whatever the device is called', () => {
    const takeoff = read(
      'Device;Room;Qty;Remarks\nPIR detector;Hall;2;ceiling\npresence-detector;hall;3;\nPräsenzmelder;Bar;1;\nPresence detector;Hall;1;wall'
    );
    expect(inShort(takeoff)).toMatchObject(
      {
        2: 'taken 2 Presence detector', 3: 'merged 3 Presence detector', 4: 'taken 1 Presence detector',
        5: 'merged 1 Presence detector',
      }
    );
    expect(takeoff.rows).toEqual([
      { type: 'Presence detector', area: 'Hall', qty: 6, note: 'ceiling; wall' },
      { type: 'Presence detector', area: 'Bar', qty: 1 },
    ]);
    expect(takeoff.lines[2]).toMatchObject({ mergedInto: 2, qty: 3 });
  });

  it('are rows of their own where ref, rail or branch differ', () => {
    const { rows } = read(
      'Ref;Device;Qty;Rail;Branch\nA;Router;1;P1;\nB;Router;1;P1;\nB;Router;1;P2;\nB;Router;1;P2;B1\nB;Router;1;P2;B1'
    );
    expect(rows.map(({ qty }) => qty)).toEqual([1, 1, 1, 2]);
  });
});

it('puts what is above in the place of ditto marks', () => {
  const { rows } = take('Router;Hall;1', 'dito;Bar;2', 'Light sensor;"""";3');
  expect(rows).toEqual([
    { type: 'Router', area: 'Hall', qty: 1 }, { type: 'Router', area: 'Bar', qty: 2 },
    { type: 'Light sensor', area: 'Bar', qty: 3 },
  ]);
});

it.each(['ditto', 'dto.', 'desgl.', 'wie vor', 'idem', 'd°', '-//-'])('%s is a ditto mark', (mark) => {
  expect(take('Router;Hall;1', `${mark};Bar;2`).rows)
    .toEqual([{ type: 'Router', area: 'Hall', qty: 1 }, { type: 'Router', area: 'Bar', qty: 2 }]);
});

it.each(
  ['LED strip, per metre', 'Lichtband je Meter', 'Lichtband 5 W/lfm', 'Bandeau LED, au mètre']
)('counts %s by the metre', (type) => {
  expect(inShort(read(`Device;Qty\n${type};12 m`, { types: [{ type }] }))[2]).toBe(`taken 12 ${type}`);
});

it('counts by the metre what is described as one metre', () => {
  const types = [{ type: 'LED strip, tunable white', description: 'One metre of LED strip in two whites' }];
  expect(inShort(read('Device;Qty\nLED strip, tunable white;12 m', { types }))[2]).toBe('taken 12 LED strip, tunable white');
});

it('takes lengths of what is counted by the metre only', () => {
  expect(inShort(take('LED strip 9.6 W/m;Bar;12 m', 'Router;Bar;12 m', 'Cable tray;Bar;3 lm')))
    .toMatchObject({ 2: 'taken 12 LED strip 9.6 W/m', 3: 'undecided 12 Router', 4: 'undecided 3 Cable tray' });
});

it('takes decimals of what is counted by the metre, with a unit or without', () => {
  expect(inShort(take('LED strip 9.6 W/m;Bar;12.5 m', 'LED strip 9.6 W/m;Hall;2.5', 'Router;Bar;2.5', 'Router;Hall;2.5 no.')))
    .toMatchObject({
      2: 'taken 12.5 LED strip 9.6 W/m', 3: 'taken 2.5 LED strip 9.6 W/m', 4: 'undecided 2.5 Router', 5: 'undecided 2.5 Router',
    });
});

it('takes no count from a ditto mark', () => {
  expect(inShort(take('Router;Hall;1', 'Router;Bar;dito'))[3]).toBe('undecided null Router');
});

it('learns the decimal sign from the other quantities, or is told', () => {
  const lines = ['Device;Qty', 'Router;1.200', 'Light sensor;2,0'];
  expect(inShort(read(lines.join('\n')))[2]).toBe('taken 1200 Router');
  expect(inShort(read(lines.slice(0, 2).join('\n')))[2]).toBe('undecided null Router');
  expect(inShort(read(lines.slice(0, 2).join('\n'), { decimal: ',' }))[2]).toBe('taken 1200 Router');
});

it('gives unknown names one new type, however they are spelt', () => {
  const takeoff = take('Flap drive;Hall;1', 'FLAP DRIVE;Bar;2', 'flap-drive;Hall;3');
  expect(inShort(takeoff)).toMatchObject(
    { 2: 'taken 1 Flap drive', 3: 'taken 2 Flap drive', 4: 'merged 3 Flap drive' }
  );
  expect(takeoff.names).toHaveLength(1);
  expect(reasonOf(2, 'Flap drive;Hall;1')).toBe('“Flap drive” becomes a new type; of it nothing is known but what the list says.');
});

describe('decisions', () => {
  const source = 'Device;Room;Qty\nRouters;Hall;ca. 3\nRouters;Bar;2\nFoyer;;\nTotal;;9';
  const key = read(source).names[0]!.key;

  it('are asked for', () => {
    expect(inShort(read(source))).toMatchObject(
      { 2: 'undecided 3 -', 3: 'undecided 2 -', 4: 'left-out null -', 5: 'undecided 9 -' }
    );
  });

  it('say what a name means, what a quantity is, and what is left out', () => {
    const takeoff = read(source, {
      decisions: { names: { [key]: { type: 'Router' } }, lines: { 2: { qty: 4 }, 4: { qty: 1 }, 5: 'leave-out' } },
    });
    expect(inShort(takeoff)).toMatchObject({
      2: 'taken 4 Router', 3: 'taken 2 Router', 4: 'taken 1 Foyer', 5: 'left-out 9 -',
    });
    expect(inShort(read(source, { decisions: { names: { [key]: 'leave-out' } } })))
      .toMatchObject({ 3: 'left-out 2 -' });
    expect(inShort(read(source, { decisions: { names: { [key]: 'new' } } }))).toMatchObject({ 3: 'taken 2 Routers' });
  });

  it('keep a length out of what is not counted by the metre', () => {
    expect(read(source, { decisions: { lines: { 3: { qty: 1.5 } }, names: { [key]: { type: 'Router' } } } }).lines[2])
      .toMatchObject({ outcome: 'undecided', qty: 1.5 });
  });

  it.each([-1, NaN, Infinity, 1e300])('keep a quantity of %s out', (qty) => {
    expect(read(source, { decisions: { lines: { 3: { qty } } } }).lines[2])
      .toMatchObject({ outcome: 'undecided', qty: null });
  });

  it('keep a type out that is not there', () => {
    const { lines } = read(source, { decisions: { names: { [key]: { type: 'Nothing' } } } });
    expect(lines[2]).toMatchObject(
      { outcome: 'undecided', reason: 'There is no type Nothing. Choose another one for “Routers”.' }
    );
  });
});

describe('quotes that are signs of a text', () => {
  const types: Cells[] = [{ type: 'Router', aliases: '"Router" left; Router 2"' }, { type: 'Light sensor' }];

  it.each([
    ['ditto marks', 'Room\tDevice\tQty\nHall\tRouter\t4\n"\t"\t6\n"\tLight sensor\t1', ['4 Router @ Hall', '6 Router @ Hall', '1 Light sensor @ Hall']],
    ['ditto marks between commas', 'Room,Device,Qty\nHall,Router,4\n",",6', ['4 Router @ Hall', '6 Router @ Hall']],
    ['a word in quotes', 'Room;Device;Qty\nHall;"Router" left;4\nHall;Router 2";1', ['4 Router @ Hall', '1 Router @ Hall']],
  ])('are read as such: %s', (_, source, expected) => {
    expect(read(source, { types }).lines.slice(1).map(({ qty, type, area }) => `${qty} ${type} @ ${area}`)).toEqual(expected);
  });

  it('are no others: texts over several lines, with signs that part fields, and doubled quotes stay', () => {
    const { rows } = read('Room;Device;Qty\n"Hall;\nleft";"Router";4\n";Bar";Router;"5"\n"a ""b""";Router;6');
    expect(rows.map(({ area, qty }) => [area, qty])).toEqual([['Hall; left', 4], [';Bar', 5], ['a "b"', 6]]);
  });
});
