import { describe, expect, test } from 'vitest';
import type { Cells, SheetName } from '../../src/schedule/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { enter, findingsAt, reference, scheduleOf, typeFormula, valueAt } from '../support/schedules.ts';
import { processorTime } from '../support/processor-time.ts';

/** What the finding on a formula in a column says, if there is one. */
function fault(schedule: LoadSchedule, sheet: SheetName, at: number, key: string): string | undefined {
  return findingsAt(schedule, sheet, at)
    .find((finding) => finding.rule === 'formula-without-result' && finding.key === key)?.message;
}

describe('a result that the column does not allow is refused with a finding', () => {
  test.each<[SheetName, string, string, RegExp]>([
    ['devices', 'qty', '=1.5', /Qty gives a result that is not allowed: 1\.5 is not a whole number/],
    ['devices', 'qty', '=-1', /-1 is less than 0/],
    ['devices', 'diversity', '=1.25', /1\.25 is greater than 1/],
    ['supplies', 'rated', '=0', /0 is not greater than 0/],
    ['supplies', 'units', '=0', /0 is less than 1/],
    ['branches', 'limit', '=99/2', /49\.5 is not a whole number/],
    ['supplies', 'rated', '=1/0', /divides by zero/],
    ['supplies', 'rated', '=SQRT(-1)', /has no finite result/],
    ['supplies', 'rated', '=10^308*10', /has no finite result/],
    ['supplies', 'rated', '="ten"', /does not give a number/],
    ['supplies', 'rated', '=1=1', /does not give a number/],
    ['supplies', 'rated', '=MATCH("x";A1:A1;0)', /finds no match/],
  ])('%s.%s %s', (sheet, key, formula, message) => {
    const schedule = scheduleOf({ [sheet]: [{ note: 'here' }] });
    expect(typeFormula(schedule, sheet, 0, key, formula)).toBeUndefined();
    expect(fault(schedule, sheet, 0, key)).toMatch(message);
    expect(valueAt(schedule, sheet, 0, key)).toBeNull();
    enter(schedule, sheet, 0, { [key]: 1 });
    expect(fault(schedule, sheet, 0, key)).toBeUndefined();
  });

  test('a whole result is none the worse for coming from a division', () => {
    const schedule = scheduleOf({ devices: [{ ref: 'D1' }] });
    typeFormula(schedule, 'devices', 0, 'qty', '=9/3');
    expect([valueAt(schedule, 'devices', 0, 'qty'), fault(schedule, 'devices', 0, 'qty')]).toEqual([3, undefined]);
  });
});

test.each(['=D1', '=IF(1=1;D1;2)', '=INDEX(D1:D2;1)', '=CHOOSE(1;D1;2)', '=SWITCH(1;1;D1)'])(
'%s gives nothing where nothing is entered, and not 0', (formula) => {
  const schedule = scheduleOf({ devices: [{ ref: 'D1' }, { ref: 'D2', qty: 7 }, { ref: 'D3' }] });
  expect(typeFormula(schedule, 'devices', 2, 'qty', formula)).toBeUndefined();
  expect(valueAt(schedule, 'devices', 2, 'qty')).toBeNull();
  enter(schedule, 'devices', 0, { qty: 4 });
  expect(valueAt(schedule, 'devices', 2, 'qty')).toBe(4);
});

/** A cell as a formula of its own sheet names it. */
const addressIn = (sheet: SheetName, key: string, row: number) => reference(sheet, key, row).split('!')[1]!;

describe('a text to look for', () => {
  const types = `${addressIn('devices', 'type', 1)}:${addressIn('devices', 'type', 4)}`;
  const devices = ['Spot', 'Spotlight', 'Wide spot', 'SPOT'].map((type) => ({ type, qty: 1 }));

  test.each([
    // Criteria of OpenFormula, with its settings for whole cells and wildcards (from memory); capitals do not matter.
    ['a whole cell', 'Spot', 2], [
      'the beginning', 'Spot*', 3,
    ], ['the end', '*spot', 3], ['anywhere', '*spot*', 4], ['any one letter', 'Sp?t', 2],
    ['no part of a cell', 'pot', 0],
  ])('is %s', (_what, text, count) => {
    const schedule = scheduleOf({ devices });
    expect(typeFormula(schedule, 'devices', 0, 'qty', `=COUNTIF(${types};"${text}")`)).toBeUndefined();
    expect(valueAt(schedule, 'devices', 0, 'qty')).toBe(count);
  });
});

describe('unknown is not zero', () => {
  const row = (qty: Cells[string], unitDraw: Cells[string]): Cells => ({ ref: 'D', qty, unitDraw, rail: 'L1' });
  test('a formula that reads an empty cell is unknown, and so is what follows', () => {
    const schedule = scheduleOf({ supplies: [{ rail: 'L1', rated: 10 }], devices: [row(null, 100), row(4, 100)] });
    typeFormula(schedule, 'devices', 1, 'qty', '=D1+4');
    expect(valueAt(schedule, 'devices', 1, 'connected')).toBeNull();
    expect(fault(schedule, 'devices', 1, 'qty'))
      .toBe('Ref D: the formula in Qty reads a cell that is empty. Fill that cell.');
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe('incomplete');
    enter(schedule, 'devices', 0, { qty: 2 });
    expect(valueAt(schedule, 'devices', 1, 'connected')).toBeCloseTo(0.6, 12);
    expect(fault(schedule, 'devices', 1, 'qty')).toBeUndefined();
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe('ok');
  });

  test('IF and IFERROR do not make a number of it', () => {
    const schedule = scheduleOf({ devices: [row(null, 100), row(4, 100)] });
    for (const formula of ['=IF(D1>0;1;2)', '=IFERROR(D1;7)', '=D1*0', '=SUM(D1;3)']) {
      typeFormula(schedule, 'devices', 1, 'qty', formula);
      expect([formula, valueAt(schedule, 'devices', 1, 'qty')]).toEqual([formula, null]);
    }
  });

  test('an empty cell with a default reads as that', () => {
    const schedule = scheduleOf({ supplies: [{ rail: 'L1' }, { rail: 'L2' }] });
    typeFormula(schedule, 'supplies', 1, 'rated', `=${reference('supplies', 'voltage')}/2`);
    expect(valueAt(schedule, 'supplies', 1, 'rated')).toBe(12);
  });

  test('no default takes the place of a formula without a result', () => {
    const schedule = scheduleOf(
      {
        types: [{ type: 'T', draw: 100, diversity: '=1/0' }], devices: [{ type: 'T', qty: 1, rail: 'L1' }],
        supplies: [{ rail: 'L1', rated: 1 }],
      }
    );
    expect([valueAt(schedule, 'devices', 0, 'diversity'), valueAt(schedule, 'devices', 0, 'demand')])
      .toEqual([null, null]);
  });
});

describe('loops', () => {
  const content = {
    supplies: [{ rail: 'L1', rated: 10 }], feeds: [{ feed: 'F1' }],
    devices: [{ ref: 'D1', qty: 1, unitDraw: 100, rail: 'L1' }, { ref: 'D2', qty: 2, unitDraw: 100, rail: 'L1' }],
  };
  const CONNECTED = reference('supplies', 'connected');
  const OWN = /depends on its own result/;
  test.each<[string, [SheetName, number, string, string][], [SheetName, number, string, RegExp][]]>([
    ['a cell that reads itself', [['devices', 0, 'qty', '=D1']], [['devices', 0, 'qty', OWN]]],
    ['two that read one another', [['devices', 0, 'qty', '=D2'], ['devices', 1, 'qty', '=D1']],
      [['devices', 0, 'qty', OWN], ['devices', 1, 'qty', OWN]]],
    ['a range that holds the cell', [['devices', 0, 'qty', '=SUM(D1:D2)']], [['devices', 0, 'qty', OWN]]],
    [
      'an input that reads what follows from it', [['devices', 0, 'qty', `=${reference('devices', 'connected')}*10`]],
      [['devices', 0, 'qty', OWN]],
    ],
    [
      'a quantity that reads the total of its rail', [['devices', 0, 'qty', `=ROUND(${CONNECTED};0)`]],
      [['devices', 0, 'qty', OWN]],
    ],
    [
      'one that reads what follows from the total',
      [['devices', 0, 'unitDraw', `=${reference('supplies', 'demand')}*100`]], [['devices', 0, 'unitDraw', OWN]],
    ],
    [
      'one that goes by another sheet',
      [['feeds', 0, 'rated', `=${CONNECTED}`], ['devices', 0, 'qty', `=${reference('feeds', 'rated')}`]],
      [['devices', 0, 'qty', OWN]],
    ],
  ])('%s: found and told, and nothing hangs', (_name, formulas, faults) => {
    const schedule = scheduleOf(content);
    for (const [sheet, at, key, text] of formulas) expect(typeFormula(schedule, sheet, at, key, text)).toBeUndefined();
    for (const [sheet, at, key, message] of faults) {
      expect(fault(schedule, sheet, at, key)).toMatch(message);
      expect(valueAt(schedule, sheet, at, key)).toBeNull();
    }
    const afresh = new LoadSchedule(schedule.content());
    expect(afresh.findings).toEqual(schedule.findings);
    for (const _formula of formulas) schedule.undo();
    expect(schedule.findings.filter(({ rule }) => rule === 'formula-without-result')).toEqual([]);
    expect(valueAt(schedule, 'supplies', 0, 'connected')).toBeCloseTo(0.3, 12);
  });

  test('the sentence names the way round, cell by cell', () => {
    const schedule = scheduleOf(content);
    typeFormula(schedule, 'devices', 0, 'qty', `=ROUND(${CONNECTED};0)`);
    expect(fault(schedule, 'devices', 0, 'qty'))
      .toBe('Ref D1: the formula in Qty depends on its own result: Qty of the device row D1 → '
      + 'Connected of the supply L1 → Connected of the device row D1 → Qty of the device row D1. Take one of these references out.');
    enter(schedule, 'supplies', 0, { rail: 'L7' });
    enter(schedule, 'devices', 0, { rail: 'L7' });
    expect(fault(schedule, 'devices', 0, 'qty')).toContain('Connected of the supply L7');
    enter(schedule, 'devices', 0, { rail: null });
    expect([fault(schedule, 'devices', 0, 'qty'), valueAt(schedule, 'devices', 0, 'qty')]).toEqual([undefined, 0]);
  });

  test('a reference that closes a circle is found as it is entered, and opens it again', () => {
    const cabinet = { height: 600, width: 400, depth: 200, mounting: 'free', ambient: 20 };
    const schedule = scheduleOf({
      supplies: [{ rail: 'L1', rated: 10, enclosure: 'E2', efficiency: 0.9, fullUpTo: 40, lessPerKelvin: 0.02 }],
      enclosures: [
        { enclosure: 'E1', ...cabinet, otherLoss: '=[supplies.usable@L1]' },
        { enclosure: 'E2', ...cabinet, otherLoss: 0 },
      ],
    });
    const loss = () => [fault(schedule, 'enclosures', 0, 'otherLoss'), valueAt(schedule, 'enclosures', 0, 'otherLoss')];
    // Nothing warms E2 above its 20 °C, so that the supply gives all of its 10 A.
    expect(loss()).toEqual([undefined, 10]);
    enter(schedule, 'supplies', 0, { enclosure: 'E1' });
    expect(loss()).toEqual([expect.stringMatching(OWN), null]);
    enter(schedule, 'supplies', 0, { enclosure: 'E2' });
    expect(loss()).toEqual([undefined, 10]);
  });

  test('a formula may read a total that its own cell does not feed, though the columns go round', () => {
    const schedule = scheduleOf({ ...content, supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }],
      devices: [...content.devices, { ref: 'D3', unitDraw: 1000, rail: 'L2' }] });
    expect(typeFormula(schedule, 'devices', 2, 'qty', `=ROUND(${CONNECTED}*10;0)`)).toBeUndefined();
    // 0.3 A on L1, times 10: 3 devices of 1 A on L2
    expect(
      [
        fault(schedule, 'devices', 2, 'qty'), valueAt(schedule, 'devices', 2, 'qty'),
        valueAt(schedule, 'supplies', 1, 'connected'),
      ]
    )
      .toEqual([undefined, 3, 3]);
    enter(schedule, 'devices', 1, { qty: 4 });
    expect(valueAt(schedule, 'supplies', 1, 'connected')).toBe(5);
    enter(schedule, 'devices', 2, { rail: 'L1' });
    expect(fault(schedule, 'devices', 2, 'qty')).toMatch(OWN);
    schedule.undo();
    expect(valueAt(schedule, 'supplies', 1, 'connected')).toBe(5);
  });

  test('a formula that reads one that goes round says so', () => {
    const schedule = scheduleOf(content);
    typeFormula(schedule, 'devices', 0, 'qty', '=D1');
    typeFormula(schedule, 'devices', 1, 'qty', '=D1+1');
    expect(fault(schedule, 'devices', 1, 'qty')).toMatch(/reads one that depends on its own result/);
    enter(schedule, 'devices', 0, { qty: 4 });
    expect(valueAt(schedule, 'devices', 1, 'qty')).toBe(5);
  });

  test('10,000 formulas in a column, each on the one above, and a sum over them, take no time that grows with their square', () => {
    const rows = 10_000;
    const devices: Cells[] = Array.from(
      { length: rows },
      (_, at) => ({ ref: `D${at}`, qty: at === 0 ? 1 : `=[devices.qty@D${at - 1}]+1`, unitDraw: 1, rail: 'L1' })
    );
    const taken = processorTime();
    const schedule = scheduleOf(
      {
        supplies: [{ rail: 'L1', rated: 10 }], devices, feeds: [{ feed: 'F', rated: `=SUM([devices.qty#1:#${rows}])` }],
      }
    );
    expect(valueAt(schedule, 'feeds', 0, 'rated')).toBe(rows * (rows + 1) / 2);
    typeFormula(schedule, 'devices', 0, 'qty', `=D${rows}`);
    expect(schedule.findings.filter(({ rule, sheet }) => rule === 'formula-without-result' && sheet === 'devices'))
      .toHaveLength(rows);
    schedule.undo();
    expect(valueAt(schedule, 'feeds', 0, 'rated')).toBe(rows * (rows + 1) / 2);
    // A walk along all rows from each of them would take minutes.
    expect(taken()).toBeLessThan(40_000);
  }, 60_000);

  test('a rating that reads the demand is no loop, and follows it', () => {
    const schedule = scheduleOf(content);
    expect(typeFormula(schedule, 'supplies', 0, 'rated', `=ROUNDUP(${reference('supplies', 'demand')}*2;0)`))
      .toBeUndefined();
    // 0.3 A, twice that rounded up
    expect([valueAt(schedule, 'supplies', 0, 'demand'), valueAt(schedule, 'supplies', 0, 'rated')])
      .toEqual([0.30000000000000004, 1]);
    enter(schedule, 'devices', 1, { qty: 20 });
    // 0.1 A + 2 A, twice that is 4.2 A
    expect([valueAt(schedule, 'supplies', 0, 'rated'), valueAt(schedule, 'supplies', 0, 'status')]).toEqual([5, 'ok']);
  });
});

test('a formula follows every edit on its way, across sheets', () => {
  const schedule = scheduleOf({
    types: [{ type: 'T', draw: 100 }], supplies: [{ rail: 'L1', rated: 10 }], devices: [
      { ref: 'D1', type: 'T', qty: 5, rail: 'L1' },
    ],
    outputs: [{ output: 'Q1', kind: 'resistive', power: 230, qty: 1 }],
  });
  expect(typeFormula(schedule, 'outputs', 0, 'qty', `=ROUNDUP(${reference('devices', 'connected')}*10;0)`))
    .toBeUndefined();
  const current = () => valueAt(schedule, 'outputs', 0, 'current');
  expect(current()).toBe(5);
  enter(schedule, 'types', 0, { draw: 200 });
  expect(current()).toBe(10);
  enter(schedule, 'devices', 0, { unitDraw: 300 });
  expect(current()).toBe(15);
  enter(schedule, 'devices', 0, { qty: null });
  expect(current()).toBeNull();
  schedule.undo();
  schedule.undo();
  expect(current()).toBe(10);
});
