import { describe, expect, test } from 'vitest';
import { CHECKS } from '../../src/findings/checks/index.ts';
import { SEVERITIES } from '../../src/findings/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { SHEET_NAMES, type RowAcceptance } from '../../src/schedule/index.ts';
import { enter, findingsAt, idAt, scheduleOf, valueAt } from '../support/schedules.ts';
import { BRANCH_AND_FEED_CASES } from './branch-feed-cases.ts';
import { TERMINAL_CASES } from './terminal-cases.ts';
import { CASE_CASES, LATER_CASES } from './case-cases.ts';
import { CAUSE_CASES } from './cause-cases.ts';
import { DEVICE_AND_CELL_CASES } from './device-and-cell-cases.ts';
import { expectFinding } from './finding-case.ts';
import { MEASURED_CASES } from './measured-cases.ts';
import { OUTPUT_CASES } from './output-cases.ts';
import { PANEL_CASES } from './panel-cases.ts';
import { RAIL_CASES } from './rail-cases.ts';
import { RUN_AND_ENCLOSURE_CASES } from './run-and-enclosure-cases.ts';
import { SECOND_WAY_CASES } from './second-way-cases.ts';
import { SUPPLY_CASES } from './supply-cases.ts';
import { VOLTAGE_CASES } from './voltage-cases.ts';
import { WAY_CASES } from './way-cases.ts';

const CASES = [
  ...SUPPLY_CASES, ...BRANCH_AND_FEED_CASES, ...OUTPUT_CASES, ...DEVICE_AND_CELL_CASES, ...RUN_AND_ENCLOSURE_CASES,
  ...MEASURED_CASES, ...PANEL_CASES, ...WAY_CASES, ...CAUSE_CASES, ...VOLTAGE_CASES,
  ...SECOND_WAY_CASES, ...CASE_CASES, ...TERMINAL_CASES, ...RAIL_CASES,
];
const VERBS = 'Measure|Bridge|Lay|Put|Set|Empty|Disconnect|Switch|See|Look|Take|Let|Delete|Move|Share|Enter|Choose|Use|Fit|Add|Give|Correct|Complete|Check|move|share|put|use|or lower';
/** The end of a sentence that says what would put it right; a point between digits does not end it. */
const REMEDY = new RegExp(String.raw`[.:] (?:With .* it may be|One of|Units of|It bears|${VERBS})[^.]*(?:\.\d[^.]*)*\.?$`);

/** Rules that hold a row against others of its sheet or against what others make of it. */
const BETWEEN_ROWS = ['tag-used-twice', 'supply-purposes-mixed'];

describe('each rule finds what it is for, says so, and is silent otherwise', () => {
  test.each(CASES)('$rule', expectFinding);

  test.each(LATER_CASES)('$rule, at a row that is not the first', ({ rule, sheet, sheets, key, message, silent }) => {
    const found = (content: typeof sheets) => {
      const schedule = scheduleOf(content);
      return schedule.rows(sheet).flatMap(({ id }) => schedule.findingsOf(sheet, id))
        .filter((each) => each.rule === rule);
    };
    const row = sheets[sheet]!.length;
    expect(found(sheets)).toEqual([expect.objectContaining({ severity: 'incomplete', key, row, message })]);
    expect(valueAt(scheduleOf(sheets), 'supplies', 0, 'status')).toBe('incomplete');
    for (const other of silent) expect(found(other)).toEqual([]);
  });

  test('no rule is without a case, and no case without a rule', () => {
    const told = SHEET_NAMES.flatMap((sheet) => CHECKS[sheet].filter(({ elsewhere }) => elsewhere === undefined));
    const rules = told.map(({ rule }) => rule);
    expect(new Set([...CASES, ...LATER_CASES].map(({ rule }) => rule))).toEqual(new Set([...rules, ...BETWEEN_ROWS]));
    for (const rule of rules) expect(rule).toMatch(/^[a-z]+(-[a-z]+)+$/);
  });

  test('every limit names both of its numbers with their units, and every sentence a remedy', () => {
    for (const { rule, value, limit, message, severity } of CASES) {
      const numbers = message.match(/\d[\d.]*(?: (?:A|V|%|°C|K|m|mA|nodes?))?/g) ?? [];
      if (typeof value === 'number' && typeof limit === 'number' && severity !== 'incomplete') {
        expect([rule, numbers.length >= 2]).toEqual([rule, true]);
      }
      expect([rule, message]).toEqual([rule, expect.stringMatching(REMEDY)]);
    }
  });
});

test('where two decimals would hide a difference, as many are written as show it', () => {
  const message = (milliamps: number, supply: object) => findingsAt(scheduleOf({
    supplies: [{ rail: 'L1', ...supply }], devices: [{ rail: 'L1', qty: 1, unitDraw: milliamps }],
  }), 'supplies').find(({ rule }) => rule.startsWith('supply-over'))?.message;
  expect(message(10_000.1, { rated: 10 }))
    .toContain('demand 10.0001 A exceeds the usable 10.0000 A by 0.0001 A');
  expect(message(8003, { rated: 10 }))
    .toContain('loaded to 80.03 % of 10.00 A, above its target of 80.00 % by 0.003 A');
  expect(message(8070, { rated: 10, target: 0.805 }))
    .toContain('loaded to 80.7 % of 10.00 A, above its target of 80.5 % by 0.02 A');
});

describe('all findings together', () => {
  const schedule = () => scheduleOf({
    supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 1 }], types: [{ draw: 1 }],
    devices: [
      { ref: 'D1', rail: 'L1', qty: 1, unitDraw: 9000 }, { ref: 'D2', rail: 'L2', qty: 2, unitDraw: 1000 },
      { ref: 'D3' },
    ],
  });

  test('come with the worst first, then by sheet and row', () => {
    const { findings, findingCounts } = schedule();
    const places = findings.map(({ severity, sheet, row }) =>
      [SEVERITIES.indexOf(severity), SHEET_NAMES.indexOf(sheet), row] as const);
    expect(places).toEqual([...places].sort((a, b) => a[0] - b[0] || a[1] - b[1] || a[2] - b[2]));
    expect(findings[0]).toMatchObject({ rule: 'supply-over-usable', tag: 'L2', row: 2 });
    for (const severity of SEVERITIES) {
      expect(findings.filter((each) => each.severity === severity).length).toBe(findingCounts[severity]);
    }
  });

  test('the status of a row is the worst that counts in it', () => {
    expect([0, 1].map((at) => valueAt(schedule(), 'supplies', at, 'status'))).toEqual(['near', 'over']);
  });

  const acceptance: RowAcceptance = {
    rule: 'supply-over-usable', reason: 'spare supply is on order', name: 'N. N.', date: '2026-03-02', value: 2,
  };
  const accept = (each: LoadSchedule) =>
    each.act('Accept', [{ op: 'accept', sheet: 'supplies', id: idAt(each, 'supplies', 1), accepted: [acceptance] }]);

  test('one that is accepted stays, marked, and its status too; undo takes the mark away', () => {
    const each = schedule();
    const before = each.findings.length;
    accept(each);
    expect(each.findings.length).toBe(before);
    expect(each.findings[0]).toMatchObject({ rule: 'supply-over-usable', accepted: acceptance });
    expect(each.findings.filter(({ accepted }) => accepted !== undefined).length).toBe(1);
    expect(findingsAt(each, 'supplies', 1)[0]?.accepted).toEqual(acceptance);
    expect(valueAt(each, 'supplies', 1, 'status')).toBe('over');
    each.undo();
    expect(each.findings.every(({ accepted }) => accepted === undefined)).toBe(true);
  });

  test('what is put right is found no more', () => {
    const each = schedule();
    accept(each);
    enter(each, 'supplies', 1, { rated: 5 });
    expect(each.findings.some(({ rule }) => rule === 'supply-over-usable')).toBe(false);
  });
});
