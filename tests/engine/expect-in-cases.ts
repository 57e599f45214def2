import { expect } from 'vitest';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { isBlank, SHEET_NAMES, type Cells, type Content, type SheetName } from '../../src/schedule/index.ts';
import { closeTo } from '../support/close-to.ts';
import { recalculateInCases } from '../support/independent-cases.ts';

const TOLERANCE = { absolute: 1e-9, relative: 1e-9 };

/** Keys whose figures follow from each total, the total itself first; what is partial bears a sign. */
const FOLLOWING: Readonly<Record<string, readonly string[]>> = {
  'supplies.usable': ['usable', 'limitDiversity', 'loading', 'spare'],
  'supplies.connected': ['connected', 'limitDiversity'],
  'supplies.demand': ['demand', 'loading', 'spare', 'fuseLoading', 'loss'],
  'supplies.battery': ['batteryNeeded'],
  'supplies.lasts': ['batteryLasts'],
  'branches.cableLength': ['cableLength'],
  'branches.busDemand': ['busDemand'],
  'branches.nodes': ['nodes', 'free', 'used'],
  'modules.current': ['current', 'headroom'],
  'feeds.connected': ['connected', 'inrush'],
  'feeds.drawn': ['drawn', 'demand', 'loading', 'spare'],
  'feeds.supplySurge': ['supplySurge', 'inrush'],
  'feeds.outputSurge': ['outputSurge', 'inrush'],
  'enclosures.supplyLoss': ['supplyLoss', 'loss', 'rise', 'inside', 'top'],
  'enclosures.usedWidth': ['usedWidth', 'freeWidth'],
};

/** Figures of one row as the independent calculation gives them, in the shape in which the product's are read. */
export function expectedRow(sheet: SheetName, figures: object): Record<string, unknown> {
  const { partial = {}, ...values } = figures as { partial?: Record<string, boolean> } & Record<string, unknown>;
  const row: Record<string, unknown> = Object.fromEntries(Object.entries(values)
    .map(([key, value]) => [key, typeof value === 'number' ? closeTo(value, TOLERANCE) : value]));
  for (const [total, is] of Object.entries(partial)) {
    for (const key of FOLLOWING[`${sheet}.${total}`]!) row[`${key} is partial`] = is
      || row[`${key} is partial`] === true;
  }
  return row;
}

export function actualRow(
  schedule: LoadSchedule, sheet: SheetName, id: number, expected: Record<string, unknown>,
): object {
  return Object.fromEntries(Object.keys(expected).map((name) => {
    const [key, partial] = name.split(' ') as [string, string?];
    return [name, partial === undefined ? schedule.value(sheet, id, key) : schedule.partialSign(sheet, id, key) !== ''];
  }));
}

/** Every figure, of all cases together and in each of them. */
export function expectInCases(schedule: LoadSchedule, content: Content): void {
  const { sheets, inCases, cases } = recalculateInCases(content);
  expect(schedule.cases.cases.map(({ name }) => name)).toEqual(cases);
  for (const sheet of SHEET_NAMES) {
    schedule.rows(sheet).forEach((row, at) => {
      if (isBlank(row) || sheets[sheet] === undefined || isFedTwice(content, sheet, row.cells)) return;
      const expected = expectedRow(sheet, sheets[sheet][at]!);
      expect([sheet, at, actualRow(schedule, sheet, row.id, expected)]).toEqual([sheet, at, expected]);
      for (const [key, { each, countsOwn }] of Object.entries(inCases[sheet]?.[at] ?? {})) {
        const figures = each.map((figure) => figure === null ? null : closeTo(figure, TOLERANCE));
        const own = cases.length === 0 || countsOwn;
        expect([sheet, at, key, each.map((_figure, place) => schedule.inCase(sheet, row.id, key, place - 1)),
          schedule.countsOwn(sheet, row.id, key)]).toEqual([sheet, at, key, figures, own]);
      }
    });
  }
}

/** Runs with two ways, and their ways, are not worked out in cases by the independent calculation. */
function isFedTwice({ sheets }: Content, sheet: SheetName, cells: Cells): boolean {
  const isTwice = (run: Cells) => (run.secondWay ?? null) !== null;
  if (sheet === 'runs') {
    return isTwice(cells) || (sheets.runs ?? []).some((run) => run.way === cells.way && isTwice(run));
  }
  return sheet === 'ways' && (sheets.runs ?? []).some((run) =>
    isTwice(run) && (run.way === cells.way || run.secondWay === cells.way));
}

