import fc from 'fast-check';
import Papa from 'papaparse';
import { unzipSync, strFromU8 } from 'fflate';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { billCsv, billXlsx, compareBills, makeBill, type BillItem } from '../../src/report/index.ts';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { ENGLISH, loadWords } from '../../src/words/index.ts';
import { openWorkbook } from '../../src/exchange/workbook/index.ts';
import { billOnPaper } from '../support/independent-bill.ts';
import { scheduleOf } from '../support/schedules.ts';
import { demoContent } from './demo.ts';

const SHEETS: Content['sheets'] = {
  enclosures: [{ enclosure: 'P1', height: 600, width: 400, depth: 210, partNumber: 'E-64', price: 180 }, { enclosure: 'P2' }],
  types: [{ type: 'Lamp', purpose: 'lighting', draw: 500, nodes: 0, partNumber: '0012', price: 9.95 }],
  supplies: [
    { rail: 'L1', rated: 10, units: 2, redundant: true, enclosure: 'P1', price: 50 }, { rail: 'L2', rated: 10, enclosure: 'P2' },
  ],
  ways: [{ way: 'L1-F1', rail: 'L1', kind: 'B', rated: 4 }, { way: 'L1-F2', rail: 'L1', kind: 'B', rated: 4 }],
  modules: [{ module: 'K1', outputs: 8, enclosure: 'P2' }],
  conductors: [{ conductor: '1.5', size: 1.5, resistance: 12.1, price: 1.2 }],
  runs: [
    { run: 'W1', way: 'L1-F1', conductor: '1.5', length: 10.25, pairs: 2 }, { run: 'W2', rail: 'L2', conductor: '1.5', length: 7 },
    { run: 'W3', rail: 'L2', conductor: '1.5' },
  ],
  devices: [
    { ref: 'D1', type: 'Lamp', qty: 4, run: 'W1' }, { ref: 'D2', type: 'Lamp', qty: 3, rail: 'L1' },
    { ref: 'D3', type: 'Lamp', qty: 2, rail: 'L2' }, { ref: 'D4', type: 'Lamp', rail: 'L2' }, { ref: 'D5', qty: 1 },
  ],
};

const short = ({ panel, kind, item, quantity, unit }: BillItem) => [panel, kind, item, quantity, unit];

describe('the bill of quantities', () => {
  test('counts by panel what is listed, and says what it could not count', () => {
    const { items, inAll, sums } = makeBill(scheduleOf(SHEETS), { allowance: 0 });
    expect(items.map(short)).toEqual([
      ['P1', 'device', 'Lamp', 7, 'pcs'], ['P1', 'supply', 'Supply 24 V, 10 A', 2, 'pcs'],
      ['P1', 'way', 'Way, B, 4 A', 2, 'pcs'], ['P1', 'enclosure', 'Enclosure 600 × 400 × 210 mm', 1, 'pcs'],
      // 10.25 m × 2 pairs
      ['P1', 'conductor', '1.5', 20.5, 'm'],
      ['P2', 'device', 'Lamp', 2, 'pcs'], ['P2', 'supply', 'Supply 24 V, 10 A', 1, 'pcs'],
      ['P2', 'module', 'Relay module, 8 outputs', 1, 'pcs'], ['P2', 'enclosure', 'Enclosure of unknown size', 1, 'pcs'],
      ['P2', 'conductor', '1.5', 7, 'm'],
      [null, 'device', 'Device without a type', 1, 'pcs'],
    ]);
    expect(inAll.filter(({ kind }) => kind === 'device' || kind === 'conductor').map(short)).toEqual([
      [null, 'device', 'Device without a type', 1, 'pcs'], [null, 'device', 'Lamp', 9, 'pcs'],
      [null, 'conductor', '1.5', 27.5, 'm'],
    ]);
    expect(items.find(({ panel, item }) => panel === 'P2' && item === 'Lamp')).toMatchObject({
      partNumber: '0012', price: 9.95, amount: 19.9, unknownRows: 1,
      why: 'Sum over 1 device row: D3. Not in it, as the quantity is not known: D4. Enter their quantity.',
    });
    expect(items.find(({ panel, item }) => panel === 'P2' && item === '1.5')!.why).toBe(
      '1 run of 7.0 m in all, length × pairs each: W2. In metres of one pair; of single cores it takes twice as much. Not in it, as the length is not known: W3. Enter their length.'
    );
    // P1: 7 × 9.95 + 2 × 50 + 180 + 20.5 × 1.2 = 374.25, the ways without a price; P2: 19.90 + 7 × 1.2.
    expect(sums).toEqual([
      { panel: 'P1', amount: 374.25, without: 1 }, { panel: 'P2', amount: 28.3, without: 3 },
      { panel: null, amount: 0, without: 1 }, { panel: null, amount: 402.55, without: 5 },
    ]);
  });

  test('what is not known at all has no quantity, not 0', () => {
    const { items } = makeBill(scheduleOf({ types: SHEETS.types!, devices: [{ ref: 'D1', type: 'Lamp' }] }));
    expect(items).toMatchObject([{ quantity: null, amount: null, unknownRows: 1 }]);
  });

  test('cables have their allowance, rounded up, and are never less than their lengths', () => {
    const { items } = makeBill(scheduleOf(SHEETS), { allowance: 0.075 });
    // 20.5 × 1.075 = 22.0375; 7 × 1.075 = 7.525
    expect(items.filter(({ unit }) => unit === 'm').map(({ quantity }) => quantity)).toEqual([22.1, 7.6]);
    expect(items.find(({ unit }) => unit === 'm')!.why).toContain('and 7.5 % more');
  });

  test('types by the metre stand in metres, those of cable with the allowance', () => {
    const types: Cells[] = [
      { type: 'LED strip 9.6 W/m' }, { type: 'Wash', description: 'One metre of LED strip in two whites' },
      { type: 'Leak line', description: 'One metre of sensing cable' }, { type: 'Lamp' },
    ];
    const devices = types.flatMap(({ type }): Cells[] =>
      [{ type: type!, qty: 12.5, ref: `${String(type)} 1` }, { type: type!, qty: 7.75, ref: `${String(type)} 2` }]);
    const { items } = makeBill(scheduleOf({ types, devices }), { allowance: 0.1 });
    // 20.25 m; of the cable 20.25 × 1.1 = 22.275, rounded up to a decimetre.
    expect(items.map(short)).toEqual([
      [null, 'device', 'Lamp', 20.25, 'pcs'], [null, 'device', 'Leak line', 22.3, 'm'],
      [null, 'device', 'LED strip 9.6 W/m', 20.25, 'm'], [null, 'device', 'Wash', 20.25, 'm'],
    ]);
    expect(items[1]!.why).toBe('2 device rows of 20.3 m in all, and 10 % more: Leak line 1, Leak line 2.');
    expect(items[3]!.why).toBe('2 device rows of 20.3 m in all: Wash 1, Wash 2.');
  });

  test('unless said otherwise cables are bought a tenth longer', () => {
    // 20.5 × 1.1 and 7 × 1.1, rounded up.
    expect(makeBill(scheduleOf(SHEETS)).items.filter(({ unit }) => unit === 'm').map(({ quantity }) => quantity)).toEqual([22.6, 7.7]);
  });

  test('what a revised list no longer has is still counted, and said', () => {
    const devices: Cells[] = [{ ref: 'D1', type: 'Lamp', qty: 2, state: 'gone' }, { ref: 'D2', type: 'Lamp', qty: 3 }];
    expect(makeBill(scheduleOf({ types: SHEETS.types!, devices })).items).toMatchObject([{
      quantity: 5, why: 'Sum over 2 device rows: D1, D2. Still in it, although their list no longer has them: D1.',
    }]);
  });

  test('of one panel alone it has that panel alone', () => {
    expect(new Set(makeBill(scheduleOf(SHEETS), { panel: 'P2' }).items.map(({ panel }) => panel))).toEqual(new Set(['P2']));
  });

  test('against an older one it says what is more and what is less', () => {
    const older = scheduleOf({
      ...SHEETS, devices: [{ type: 'Lamp', qty: 10, rail: 'L1' }, { type: 'Bell', qty: 1, rail: 'L1' }],
    });
    const changes = compareBills(makeBill(older), makeBill(scheduleOf(SHEETS)))
      .map(({ panel, item, before, after, difference }) => [panel, item, before, after, difference]);
    expect(changes).toEqual([
      ['P1', 'Lamp', 10, 7, -3], ['P2', 'Lamp', 0, 2, 2], [null, 'Device without a type', 0, 1, 1], ['P1', 'Bell', 1, 0, -1],
    ]);
    expect(compareBills(makeBill(older), makeBill(older))).toEqual([]);
    // 10 lamps before, 7 + 2 now.
    expect(compareBills(makeBill(older), makeBill(scheduleOf(SHEETS)), 'inAll')).toMatchObject([
      { item: 'Device without a type', difference: 1, amount: null }, { item: 'Lamp', before: 10, after: 9, difference: -1, amount: -9.95 },
      { item: 'Bell', difference: -1, amount: null },
    ]);
  });

  test('what moves to another panel is the same in all, and another price alone is said', () => {
    const types: Cells[] = [{ type: 'Lamp', price: 10 }];
    const bill = (rail: string | null, price: number) => makeBill(scheduleOf({
      enclosures: [{ enclosure: 'P1' }], types: [{ ...types[0]!, price }], supplies: [{ rail: 'L1', enclosure: 'P1' }],
      devices: [{ type: 'Lamp', qty: 40, ...(rail === null ? {} : { rail }) }],
    }));
    const lamps = (by: 'items' | 'inAll', price: number) => compareBills(bill(null, 10), bill('L1', price), by)
      .map(({ panel, difference, amount }) => [panel, difference, amount]);
    expect(lamps('items', 10)).toEqual([['P1', 40, 400], [null, -40, -400]]);
    expect(lamps('inAll', 10)).toEqual([]);
    // 40 × (12.5 − 10)
    expect(lamps('inAll', 12.5)).toEqual([[null, 0, 100]]);
  });

  test('each item has a key, the same in every language, by which bills are compared', async () => {
    const german = new LoadSchedule({ details: {}, sheets: SHEETS }, { words: await loadWords('de') });
    const [bill, other] = [makeBill(scheduleOf(SHEETS)), makeBill(german)];
    expect(bill.items.map(({ panel, key }) => [panel, key].join(' '))).toEqual([
      'P1 device/Lamp', 'P1 supply/24/10', 'P1 way/B/4', 'P1 enclosure/600/400/210', 'P1 conductor/1.5',
      'P2 device/Lamp', 'P2 supply/24/10', 'P2 module/8', 'P2 enclosure/?', 'P2 conductor/1.5', ' device/?',
    ]);
    expect(other.items.map(({ item }) => item)).not.toEqual(bill.items.map(({ item }) => item));
    expect(compareBills(other, bill)).toEqual([]);
    german.dispose();
    // Nor are two names one key because of what parts it.
    const slashes = makeBill(scheduleOf({ devices: [{ type: 'A/B', qty: 1 }, { type: 'A//B', qty: 1 }] }));
    expect(slashes.items.map(({ key }) => key).sort()).toEqual(['device/A////B', 'device/A//B']);
  });

  test('as CSV, numbers and texts stand in cells of their own', () => {
    const schedule = scheduleOf({ ...SHEETS, types: [{ type: '=1+1' }], devices: [{ type: '=1+1', qty: 2 }] });
    const csv = billCsv(makeBill(schedule, { allowance: 0 }), undefined, ENGLISH);
    const { data } = Papa.parse<string[]>(csv, { skipEmptyLines: true });
    expect(data[0]).toEqual(['Panel', 'Key', 'Item kind', 'Item', 'Quantity', 'Unit', 'Part number', 'Price', 'Amount', 'Why']);
    expect(data.find((line) => line[2] === 'Cable')!.slice(0, 9)).toEqual(['P1', 'conductor/1.5', 'Cable', '1.5', '20.5', 'm', '', '1.2', '24.6']);
    expect(data.find((line) => line[2] === 'Device')!.slice(0, 5)).toEqual(['', 'device/=1+1', 'Device', "'=1+1", '2']);
    expect(data.every((line) => line.length === 10)).toBe(true);
  });

  test('as a workbook, it is read back with numbers, and amounts are formulas', async () => {
    const schedule = scheduleOf(SHEETS);
    const bill = makeBill(schedule);
    const bytes = await billXlsx(bill, bill, ENGLISH);
    const sheet = strFromU8(unzipSync(bytes)['xl/worksheets/sheet1.xml']!);
    expect(sheet).toContain('<f>IF(OR(E2=&quot;&quot;,H2=&quot;&quot;),&quot;&quot;,E2*H2)</f><v>69.65</v>');
    const opened = openWorkbook(bytes);
    if (!opened.ok) throw new Error('The workbook cannot be read back.');
    expect(opened.sheets).toEqual(['Bill of quantities', 'All panels', 'More and less', 'More and less in all']);
    const read = await opened.read('Bill of quantities');
    if (!read.ok) throw new Error('The sheet cannot be read back.');
    expect(read.rows[0]!.slice(0, 5)).toEqual(['Panel', 'Key', 'Item kind', 'Item', 'Quantity']);
    expect(read.rows[1]!.slice(0, 9)).toEqual(['P1', 'device/Lamp', 'Device', 'Lamp', 7, 'pcs', '0012', 9.95, 69.65]);
  });

  test('every quantity of the demo is that of an independent count', () => {
    const schedule = new LoadSchedule(demoContent());
    // One quantity of it is a formula, whose value counts.
    const devices = schedule.rows('devices').map(({ id, cells }) => ({ ...cells, qty: schedule.value('devices', id, 'qty') }));
    expectSame(schedule, { ...demoContent().sheets, devices }, 0.1);
  });

  test('and of random schedules', () => {
    const tag = (stem: string) => fc.constantFrom(undefined, `${stem}0`, `${stem}1`, `${stem}2`);
    const rows = (stem: string, key: string, cells: Record<string, fc.Arbitrary<unknown>>) =>
      fc.array(fc.record(cells), { maxLength: 3 }).map((list) => list.map((each, index) => tidy({ ...each, [key]: `${stem}${index}` })));
    const panel = tag('P');
    const input = fc.record({
      enclosures: rows('P', 'enclosure', {}), types: rows('T', 'type', {
        price: fc.constantFrom(undefined, 3),
        description: fc.constantFrom(undefined, 'A lamp on a cable', 'One metre of strip', 'One metre of sensing cable'),
      }),
      conductors: rows('C', 'conductor', {}),
      supplies: rows('R', 'rail', {
        enclosure: panel, rated: fc.constantFrom(2.5, 5), units: fc.constantFrom(undefined, 1, 2),
        voltage: fc.constantFrom(undefined, 12),
      }),
      branches: rows('B', 'branch', { enclosure: panel }),
      ways: rows('F', 'way', { rail: tag('R'), enclosure: panel, kind: fc.constantFrom('B', 'gG'), rated: fc.constantFrom(2, 4) }),
      modules: rows('K', 'module', { enclosure: panel, outputs: fc.constantFrom(4, 8) }),
      runs: rows('W', 'run', {
        rail: tag('R'), way: tag('F'), branch: tag('B'), conductor: tag('C'), length: fc.constantFrom(undefined, 0.1, 12.5, 33.33),
        pairs: fc.constantFrom(undefined, 1, 3),
      }),
      devices: fc.array(fc.record({
        type: tag('T'), qty: fc.constantFrom(undefined, 0, 1, 7, 2.5), rail: tag('R'), branch: tag('B'), run: tag('W'),
      }).map(tidy), { maxLength: 8 }),
    });
    fc.assert(fc.property(input, fc.constantFrom(0, 0.1), (sheets, allowance) => {
      const schedule = scheduleOf(sheets);
      expectSame(schedule, sheets, allowance);
      schedule.dispose();
    }), { numRuns: 150 });
  });
});

function tidy(cells: Readonly<Record<string, unknown>>): Cells {
  return Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== undefined)) as Cells;
}

/** Compares by panel and kind: what makes items alike is said in words in the one, in ratings in the other. */
function expectSame(schedule: LoadSchedule, sheets: Parameters<typeof billOnPaper>[0], allowance: number): void {
  const { items, inAll } = makeBill(schedule, { allowance });
  const paper = [...billOnPaper(sheets, allowance)].map(([key, quantity]) => {
    const [panel = '', kind = '', like = ''] = key.split(' | ');
    return [panel, kind, like, quantity] as const;
  });
  const known = items.filter(({ quantity }) => quantity !== null);
  const signs = (list: readonly (readonly [string | null, string, number])[]) =>
    list.filter(([, kind]) => kind !== 'conductor' && kind !== 'enclosure' && kind !== 'length')
      .map(([panel, kind, quantity]) => `${panel ?? '-'} ${kind} ${quantity.toFixed(1)}`).sort();
  expect(signs(known.filter(({ kind, unit }) => kind === 'conductor' || unit === 'pcs').map(({ panel, kind, quantity }) => [panel, kind, quantity!])))
    .toEqual(signs(paper.map(([panel, kind, , quantity]) => [panel, kind, quantity])));
  const isLong = (kind: string) => kind === 'conductor' || kind === 'length';
  const cables = known.filter(({ unit }) => unit === 'm');
  expect(cables).toHaveLength(paper.filter(([, kind]) => isLong(kind)).length);
  for (const [panel, kind, like, quantity] of paper) {
    if (!isLong(kind)) continue;
    const item = like === 'none' ? 'Cable of unknown conductors' : like;
    const found = cables.find((each) => (each.panel ?? '-') === panel && each.item === item)!.quantity!;
    expect(found).toBeGreaterThanOrEqual(quantity - 1e-9);
    expect(found).toBeLessThan(quantity + 0.1);
  }
  for (const item of inAll) {
    const of = items.filter((each) => each.kind === item.kind && each.item === item.item && each.price === item.price);
    expect(of.reduce((sum, each) => sum + (each.quantity ?? 0), 0)).toBeCloseTo(item.quantity ?? 0, 9);
  }
}
