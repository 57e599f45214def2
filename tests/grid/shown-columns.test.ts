import { expect, test } from 'vitest';
import { shownColumns } from '../../components/grid/shown-columns.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { isStatus, PLAIN_LOOK, SCHEMA, SHEET_NAMES, type Cells, type SheetName } from '../../src/schedule/index.ts';

/** Two supplies of invention with blinds of 2 A and lamps of 1 A each. */
function schedule(cases: readonly Cells[] = [], factors: readonly Cells[] = []): LoadSchedule {
  return new LoadSchedule({
    details: {},
    sheets: {
      types: [{ type: 'Blind', draw: 1000, group: 'blinds', diversity: 0.5 }, { type: 'Lamp', draw: 500, group: 'lamps' }],
      supplies: [{ rail: 'P1', rated: 10 }, { rail: 'P2', rated: 10 }],
      devices: ['P1', 'P2'].flatMap((rail) => ['Blind', 'Lamp'].map((type) => ({ ref: `${rail} ${type}`, type, qty: 2, rail }))),
      cases, factors,
    },
  });
}

function keysOf(of: LoadSchedule, sheet: SheetName): string[] {
  const keys = shownColumns(of, sheet).map(({ key }) => key);
  of.dispose();
  return keys;
}

test('whoever asks for all columns sees every one of the schema', () => {
  const all = schedule();
  for (const sheet of SHEET_NAMES) {
    all.setLook(sheet, { ...PLAIN_LOOK, all: true });
    const shown = shownColumns(all, sheet);
    expect(shown.toSorted(byLetter(sheet)).map(({ key }) => key)).toEqual(SCHEMA[sheet].columns.map(({ key }) => key));
    expect(shown.findIndex(isStatus)).toBeLessThan(2);
  }
  all.dispose();
});

const byLetter = (sheet: SheetName) => (one: { readonly key: string }, other: { readonly key: string }) =>
  placeOf(sheet, one.key) - placeOf(sheet, other.key);
const placeOf = (sheet: SheetName, of: string) => SCHEMA[sheet].columns.findIndex(({ key }) => key === of);

test('the power of a case and the worst case of a supply are in sight, what marked cases ask only where it is another', () => {
  expect(keysOf(schedule([{ case: 'night', hours: 8 }]), 'cases')).toEqual(
    ['case', 'hours', 'standby', 'together', 'demand', 'energy', 'note']);
  const told = (of: LoadSchedule) => keysOf(of, 'supplies')
    .filter((key) => ['worstCase', 'togetherDemand', 'standbyDemand'].includes(key));
  expect(told(schedule())).toEqual([]);
  // By their own diversity 1 A of blinds and 1 A of lamps; in the storm 2 A of blinds.
  expect(told(schedule([{ case: 'storm' }], [{ case: 'storm', group: 'blinds', factor: 1 }]))).toEqual(['worstCase']);
  const dark = [{ case: 'mains off', standby: true }];
  expect(told(schedule(dark, [{ case: 'mains off', group: 'lamps', factor: 0.1 }]))).toEqual(['standbyDemand']);
  // The highest is what rows take by their own diversity, 2 A each; together it is 1.5 A.
  const together: Cells[] = [{ case: 'power return', together: true }, { case: 'day' }];
  const some = [{ case: 'power return', group: 'blinds', factor: 0.25 }, { case: 'power return', group: 'lamps', factor: 1 }];
  expect(told(schedule(together, some))).toEqual(['togetherDemand']);
});
