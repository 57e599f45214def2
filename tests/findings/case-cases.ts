import type { Cells } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

/** Blinds on a rail, cases, and factors of these. */
const CASES = (cases: readonly Cells[], factors: readonly Cells[]) => ({
  types: [{ type: 'Blind', draw: 500, nodes: 0, diversity: 0.25, group: 'blinds' }],
  supplies: [{ rail: 'P1', rated: 10 }], devices: [{ ref: 'D1', type: 'Blind', qty: 10, rail: 'P1' }], cases, factors,
});
const WIND = { case: 'wind alarm' };
const many = (count: number) => Array.from({ length: count }, (_, at) => ({ case: `case ${at}` }));
/** The first row is the one beyond those that are worked out: rows are read in their order. */
const FACTOR = { case: 'wind alarm', group: 'blinds', factor: 1 };

export const CASE_CASES: readonly FindingCase[] = [
  {
    rule: 'case-without-factors', sheet: 'cases', sheets: CASES([WIND], []), severity: 'note', key: 'case', value: null,
    inStatus: false,
    message: 'Case wind alarm gives no group a factor, so in it everything is as the diversity of its rows says. Enter its factors.',
    silent: [CASES([WIND], [FACTOR])],
  },
  {
    rule: 'case-hours-beyond-day', sheet: 'cases', severity: 'note', key: 'hours', value: 25, limit: 24,
    inStatus: false,
    sheets: CASES([{ ...WIND, hours: 20 }, { case: 'night', hours: 5 }], [FACTOR, { ...FACTOR, case: 'night', factor: 0 }]),
    message: 'Case wind alarm: with its hours those of all cases come to 25.0 h, and a day has 24.0 h, so that no energy, average or load factor of a day follows from them. Correct the hours, and leave those of a rare case empty.',
    silent: [
      CASES([{ ...WIND, hours: 20 }, { case: 'night', hours: 4 }], [FACTOR]),
      CASES(many(30).map((each, at) => at < 24 ? { ...each, hours: 1 } : each), []),
    ],
  },
  {
    rule: 'factor-case-missing', sheet: 'factors', sheets: CASES([WIND], [{ group: 'blinds', factor: 1 }]),
    severity: 'incomplete', key: 'case', value: null, inStatus: false,
    message: 'Factor of blinds belongs to no case, so it counts nowhere. Choose its case.',
    silent: [CASES([WIND], [FACTOR])],
  },
  {
    rule: 'factor-group-missing', sheet: 'factors', sheets: CASES([WIND], [{ ...FACTOR, group: null }]),
    severity: 'incomplete', key: 'group', value: null, inStatus: false,
    message: 'A factor without a group counts for nothing. Enter the group, as types, device rows or outputs give it.',
    silent: [CASES([WIND], [FACTOR])],
  },
  {
    rule: 'factor-missing', sheet: 'factors', sheets: CASES([WIND], [{ ...FACTOR, factor: null }]),
    severity: 'incomplete', key: 'factor', value: null, inStatus: false,
    message: 'Factor of blinds is not known, so what is on in its case is not known either. Enter the share that is on, 0 to 1.',
    silent: [CASES([WIND], [FACTOR])],
  },
  {
    rule: 'factor-of-nothing', sheet: 'factors', sheets: CASES([WIND], [{ ...FACTOR, group: 'Blinds' }]),
    severity: 'note', key: 'group', value: null, inStatus: false,
    message: 'Factor of Blinds: no type, device row or output belongs to this group, so the factor changes nothing. Correct its spelling, or give the group to what belongs to it.',
    silent: [CASES([WIND], [FACTOR])],
  },
];

/** Rows that are found beside others, so that another than the first is meant. */
export const LATER_CASES: readonly Omit<FindingCase, 'inStatus' | 'severity' | 'value'>[] = [
  {
    rule: 'case-beyond-count', sheet: 'cases', sheets: CASES(many(101), []), key: 'case',
    message: 'Case case 100 comes after the first 100 cases, and no more than these are calculated: nothing is judged in it, and no demand is known as a whole. Delete cases, or put several into one.',
    silent: [CASES(many(100), [])],
  },
  {
    rule: 'factor-twice', sheet: 'factors', sheets: CASES([WIND], [FACTOR, { ...FACTOR, factor: 0.5 }]), key: 'factor',
    message: 'Factor of blinds is given another value for the same case in a row above, and which one is meant is not known. Delete one of them.',
    silent: [CASES([WIND], [FACTOR, FACTOR]), CASES([WIND, { case: 'night' }], [FACTOR, { ...FACTOR, case: 'night', factor: 0 }])],
  },
];
