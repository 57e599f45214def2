import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { insertRows, type Cells, type CellValue, type Column, type Content, type SheetName } from '../../src/schedule/index.ts';
import { closeTo } from '../support/close-to.ts';
import { figuresOf } from '../support/figures.ts';
import { GROUPS, someCasesContent } from './random-cases.ts';

const TOLERANCE = { absolute: 1e-9, relative: 1e-9 };
const RUNS = Number(process.env.RUNS ?? 60);
const someShare = fc.constantFrom(0, 0.2, 0.5, 0.85, 1);
const someShares = fc.tuple(someShare, someShare, someShare);

type Sheets = Content['sheets'];

/** Schedules in which each device row and output belongs to a group, and no feed has a diversity of its own. */
const someGrouped = someCasesContent.map(({ sheets }): Sheets => ({
  ...sheets, types: sheets.types!.map((row, at) => ({ ...row, group: GROUPS[at]! })),
  outputs: sheets.outputs!.map((row) => ({ ...row, group: row.group ?? GROUPS[2] })),
  feeds: sheets.feeds!.map((row) => ({ ...row, diversity: null })),
}));

const groupOf = ({ types }: Sheets, row: Cells): CellValue =>
  row.group ?? types!.find(({ type }) => type === row.type)!.group!;

const allFactors = (of: string, shares: readonly number[], more: Cells = {}): Cells[] =>
  GROUPS.map((group, at) => ({ case: of, group, factor: shares[at]!, ...more }));

/** Every figure of sheets that hold loads, but the name of the case and what stands for everything at once in it. */
function worked(sheets: Sheets, without: readonly string[] = []) {
  const schedule = new LoadSchedule({ details: {}, sheets });
  const isHeld = (sheet: SheetName, { key, role }: Column) => role === 'computed' && sheet !== 'cases'
    && !['worstCase', 'togetherDemand', 'status', ...without].includes(key);
  const { sheets: figures } = figuresOf(schedule, isHeld);
  schedule.dispose();
  return figures;
}

const near = (figures: ReturnType<typeof worked>) => Object.fromEntries(Object.entries(figures).map(([sheet, rows]) =>
  [sheet, sheet === 'cases' || sheet === 'factors' ? expect.anything() : rows.map((row) => Object.fromEntries(
    Object.entries(row).map(([key, value]) => [key, typeof value === 'number' ? closeTo(value, TOLERANCE) : value])))]));

test('one case with a factor for each group is a schedule without cases whose rows have these diversities', () => {
  fc.assert(fc.property(someGrouped, someShares, (all, shares) => {
    const sheets = { ...all, cases: [{ case: 'wind' }], factors: allFactors('wind', shares), outputs: [] };
    const plain = {
      ...sheets, cases: [], factors: [], devices: sheets.devices!.map((row) =>
        ({ ...row, diversity: shares[GROUPS.findIndex((group) => group === groupOf(sheets, row))]! })),
    };
    // What a device row tells of itself stays by its own diversity.
    const own = ['share'];
    const { devices: _own, ...withCase } = worked(sheets, own);
    const { devices: _plain, ...without } = worked(plain, own);
    expect(withCase).toEqual(near(without as ReturnType<typeof worked>));
    const volts = (figures: ReturnType<typeof worked>) => figures.devices.map((row) => row.terminalVoltage);
    volts(worked(sheets)).forEach((value, at) => {
      const expected = volts(worked(plain))[at]!;
      expect(value).toEqual(typeof expected === 'number' ? closeTo(expected, TOLERANCE) : expected);
    });
  }), { numRuns: RUNS });
});

test('cases that leave each row the diversity that it has change no figure', () => {
  fc.assert(fc.property(someGrouped, fc.integer({ min: 1, max: 3 }), (sheets, count) => {
    const cases = Array.from({ length: count }, (_, at) => ({ case: `C${at}` }));
    const factors = cases.flatMap((each) => allFactors(each.case, [1, 1, 1], { of: 'demand' }));
    expect(worked({ ...sheets, cases, factors })).toEqual(near(worked({ ...sheets, cases: [], factors: [] })));
  }), { numRuns: RUNS });
});

test('one more case never lowers a demand, nor raises what is available or left of a voltage', () => {
  let moved = 0;
  fc.assert(fc.property(someCasesContent, someShares, fc.subarray([0, 1, 2]), (content, shares, named) => {
    const schedule = new LoadSchedule({
      ...content, sheets: { ...content.sheets, cases: [{ case: 'first' }, ...content.sheets.cases!] },
    });
    const read = () => (['supplies', 'ways', 'runs', 'feeds', 'enclosures'] as const).flatMap((sheet) =>
      schedule.rows(sheet).flatMap(({ id }) => [
        ['demand', 1], ['supplyLoss', 1], ['extra', 1], ['drop', 1], ['current', 1], ['available', -1], ['usable', -1],
        ['voltageMargin', -1], ['endVoltage', -1], ['maxLength', -1], ['openMargin', -1],
      ].map(([key, sign]) => {
        const value = schedule.figures.value(sheet, id, key as string);
        return { what: [sheet, id, key], value: typeof value === 'number' ? value * (sign as number) : null };
      })));
    const before = read();
    const factors = allFactors('more', shares).filter((_row, at) => named.includes(at));
    schedule.act('more', [
      ...insertRows(schedule.document, 'cases', 0, [{ case: 'more' }]), ...insertRows(schedule.document, 'factors', 0, factors),
    ]);
    read().forEach(({ what, value }, at) => {
      const was = before[at]!.value;
      if (was === null || value === null) return;
      expect([what, value >= was - 1e-9]).toEqual([what, true]);
      if (value > was + 1e-9) moved += 1;
    });
    schedule.dispose();
  }), { numRuns: RUNS });
  expect(moved).toBeGreaterThan(RUNS);
});

test('twice as many of everything asks for twice as much in each case, and the same case is the worst', () => {
  fc.assert(fc.property(someCasesContent, (content) => {
    const devices = content.sheets.devices!.map((row) => ({ ...row, type: 'steady' }));
    const twice = devices.map((row: Cells) => ({ ...row, qty: 2 * (row.qty as number) }));
    const of = (rows: Cells[]) =>
      new LoadSchedule({ ...content, sheets: { ...content.sheets, outputs: [], devices: rows } });
    const [one, other] = [of(devices), of(twice)];
    for (const sheet of ['supplies', 'ways', 'runs', 'feeds'] as const) {
      for (const { id } of one.rows(sheet)) {
        for (let place = -1; place < one.cases.cases.length; place += 1) {
          const demand = one.inCase(sheet, id, 'demand', place)!;
          expect(other.inCase(sheet, id, 'demand', place)).toEqual(closeTo(2 * demand, TOLERANCE));
        }
        expect(other.value(sheet, id, 'worstCase')).toBe(one.value(sheet, id, 'worstCase'));
      }
    }
  }), { numRuns: RUNS });
});
