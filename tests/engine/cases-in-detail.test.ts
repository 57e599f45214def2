import { describe, expect, test } from 'vitest';
import { lackingBehind } from '../../src/engine/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  insertRows, moveRows, renameTag, type Cells, type Content, type SheetName,
} from '../../src/schedule/index.ts';
import { allOf } from './random-actions.ts';
import { enter, idAt, reference, scheduleOf, typeFormula, valueAt } from '../support/schedules.ts';

type Sheets = Content['sheets'];

/** A supply with a run of lights and one of blinds, 1 A of each, at a diversity of 0.5 of their own. */
const PANEL: Sheets = {
  types: [
    { type: 'lamp', draw: 100, load: 'current', group: 'lights', diversity: 0.5 },
    { type: 'blind', power: 24, load: 'power', group: 'blinds', diversity: 0.5 },
  ],
  supplies: [{ rail: 'P', rated: 10, efficiency: 0.8, enclosure: 'E' }],
  enclosures: [{ enclosure: 'E', height: 600, width: 400, depth: 200 }],
  ways: [{ way: 'F1', rail: 'P', kind: 'B', rated: 4 }],
  conductors: [{ conductor: 'c', resistance: 13.3, maxCurrent: 16 }],
  runs: [
    { run: 'W1', way: 'F1', conductor: 'c', length: 20 }, { run: 'W2', rail: 'P', conductor: 'c', length: 20 },
  ],
  devices: [{ ref: 'D1', type: 'lamp', qty: 10, run: 'W1' }, { ref: 'D2', type: 'blind', qty: 1, run: 'W2' }],
};

const withCases = (cases: Cells[], factors: Cells[], sheets: Sheets = PANEL): LoadSchedule =>
  scheduleOf({ ...sheets, cases, factors });

const both = (of: string, lights: number, blinds: number): Cells[] =>
  [{ case: of, group: 'lights', factor: lights }, { case: of, group: 'blinds', factor: blinds }];

function insert(schedule: LoadSchedule, sheet: SheetName, ...rows: Cells[]): void {
  schedule.act('insert', insertRows(schedule.document, sheet, schedule.rows(sheet).length, rows));
}

const expectAsAfresh = (schedule: LoadSchedule) =>
  expect(allOf(schedule)).toEqual(allOf(new LoadSchedule(schedule.content())));

describe('after an edit', () => {
  test('own diversity stops to count once every group has a factor, on runs whose current is steady too', () => {
    const schedule = withCases([{ case: 'evening' }], [{ case: 'evening', group: 'blinds', factor: 0.25 }]);
    expect(schedule.countsOwn('ways', idAt(schedule, 'ways'), 'demand')).toBe(true);
    insert(schedule, 'factors', { case: 'evening', group: 'lights', factor: 0.25 });
    expect(schedule.countsOwn('ways', idAt(schedule, 'ways'), 'demand')).toBe(false);
    // 10 × 0.1 A × 0.25
    expect(valueAt(schedule, 'ways', 0, 'demand')).toBeCloseTo(0.25, 12);
    expectAsAfresh(schedule);
  });

  test('a case that comes, and one that goes, is worked out of runs that need not be solved anew', () => {
    const schedule = withCases([{ case: 'evening' }], both('evening', 1, 0.25));
    insert(schedule, 'cases', { case: 'wind' });
    expectAsAfresh(schedule);
    insert(schedule, 'factors', ...both('wind', 0.2, 1));
    expect(valueAt(schedule, 'ways', 0, 'worstCase')).toBe('evening');
    expect(valueAt(schedule, 'runs', 1, 'worstCase')).toBe('wind');
    expectAsAfresh(schedule);
    while (schedule.undo() !== undefined) expectAsAfresh(schedule);
  });

  test('a device of constant power that changes its group draws its extra by the factor of the other', () => {
    const schedule = withCases([{ case: 'wind' }], both('wind', 0, 1));
    const before = valueAt(schedule, 'runs', 1, 'extra');
    enter(schedule, 'devices', 1, { group: 'lights' });
    expect(before).toBeGreaterThan(0.01);
    expect(valueAt(schedule, 'runs', 1, 'extra')).toBe(0);
    expectAsAfresh(schedule);
  });

  test('the order of cases is that of their rows', () => {
    const schedule = withCases([{ case: 'evening' }, { case: 'wind' }], [...both('evening', 1, 1), ...both('wind', 1, 1)]);
    expect(valueAt(schedule, 'supplies', 0, 'worstCase')).toBe('evening');
    schedule.act('move', moveRows(schedule.document, 'cases', [idAt(schedule, 'cases', 1)], 0));
    expect(schedule.cases.cases.map(({ name }) => name)).toEqual(['wind', 'evening']);
    expect(valueAt(schedule, 'supplies', 0, 'worstCase')).toBe('wind');
  });

  test('whoever shows or checks the name of the worst case hears of it when that is renamed', () => {
    const schedule = withCases([{ case: 'wind' }], both('wind', 1, 1));
    const heard: boolean[] = [];
    schedule.subscribe(({ touched }) => {
      heard.push(...(['supplies', 'ways', 'runs'] as const).map((sheet) =>
        touched.having(sheet, ['worstCase']).includes(idAt(schedule, sheet))));
    });
    schedule.act('rename', renameTag(schedule.document, 'cases', idAt(schedule, 'cases'), 'storm'));
    expect([valueAt(schedule, 'supplies', 0, 'worstCase'), ...heard]).toEqual(['storm', true, true, true]);
  });

  test('the heat of an enclosure leaves own diversity out once the cases say all, though no figure in a case differs', () => {
    // The factors are what the diversity of the rows is: only whether it counts is another matter.
    const sheets = { ...PANEL, devices: [PANEL.devices![0]!, { ...PANEL.devices![1]!, group: 'other' }] };
    const schedule = withCases([{ case: 'wind' }], both('wind', 0.2, 0.5), sheets);
    const loss = () => valueAt(schedule, 'enclosures', 0, 'supplyLoss') as number;
    const before = loss();
    enter(schedule, 'devices', 1, { group: 'blinds' });
    // 24 V × (1 A × 0.5 − 1 A × 0.2) × (1 ÷ 0.8 − 1) less
    expect(before - loss()).toBeCloseTo(24 * 0.3 * 0.25, 9);
    expectAsAfresh(schedule);
  });

  test('a run that collapses in one case has no current, whatever it has in the others', () => {
    const runs = [PANEL.runs![0]!, { ...PANEL.runs![1]!, length: 400, basis: 'demand' }];
    const devices = [PANEL.devices![0]!, { ...PANEL.devices![1]!, qty: 4, diversity: 0.1 }];
    const schedule = withCases([{ case: 'night' }, { case: 'wind' }], both('night', 0, 0.1), { ...PANEL, runs, devices });
    expect(valueAt(schedule, 'runs', 1, 'current')).toBeGreaterThan(0.4);
    insert(schedule, 'factors', ...both('wind', 0, 1));
    expect(valueAt(schedule, 'runs', 1, 'current')).toBeNull();
    expect(schedule.outcome('runs', idAt(schedule, 'runs', 1))).toBe('no stable operating point');
    expect(schedule.inCase('runs', idAt(schedule, 'runs', 1), 'current', 0)).toBeGreaterThan(0.4);
    expectAsAfresh(schedule);
  });

  test('what no run feeds any more has no voltage in any case', () => {
    const schedule = withCases([{ case: 'wind' }], both('wind', 1, 1));
    const id = idAt(schedule, 'devices', 1);
    expect(schedule.inCase('devices', id, 'terminalVoltage', 0)).toBeGreaterThan(20);
    enter(schedule, 'devices', 1, { run: null, rail: 'P' });
    expect(schedule.inCase('devices', id, 'terminalVoltage', 0)).toBeNull();
  });
});

describe('what is not wholly known', () => {
  const cases = [{ case: 'evening' }, { case: 'wind' }];
  test.each<[string, Cells[], Cells[], boolean]>([
    ['every factor is known', cases, [...both('evening', 1, 0.2), ...both('wind', 0, 1)], false],
    ['a factor is missing', cases, [...both('evening', 1, 0.2), { case: 'wind', group: 'blinds' }], true],
    ['a factor is beyond its range', cases, [...both('evening', 1, 0.2), { case: 'wind', group: 'blinds', factor: 4 }], true],
    ['a group has two factors in a case', cases, [...both('evening', 1, 0.2), { case: 'evening', group: 'blinds', factor: 1 }], true],
    ['a group has a factor twice', cases, [...both('evening', 1, 0.2), ...both('evening', 1, 0.2)], false],
    [
      'one of two like factors is of the demand', cases,
      [...both('evening', 1, 0.2), { case: 'evening', group: 'blinds', factor: 0.2, of: 'demand' }], true,
    ],
    ['a factor names no case', cases, [...both('evening', 1, 0.2), { case: 'nowhere', group: 'blinds', factor: 1 }], false],
    ['a factor of a group that nothing belongs to is missing', cases, [{ case: 'wind', group: 'pumps' }], false],
    ['two cases bear one name', [...cases, { case: 'wind' }], both('wind', 1, 1), true],
    ['rows are blank', [{}, ...cases, {}], [{}, ...both('wind', 1, 1), {}], false],
    ['there are 100 cases', Array.from({ length: 100 }, (_, at) => ({ case: `C${at}` })), [], false],
    ['there are more', Array.from({ length: 101 }, (_, at) => ({ case: `C${at}` })), [], true],
  ])('%s', (_what, of, factors, isPartial) => {
    const schedule = withCases(of, factors);
    for (const [sheet, key] of [['supplies', 'demand'], ['supplies', 'loading'], ['runs', 'demand']] as const) {
      const id = idAt(schedule, sheet, sheet === 'runs' ? 1 : 0);
      expect([key, schedule.isPartial(sheet, id, key)]).toEqual([key, isPartial]);
    }
    expect(schedule.figures.missing('runs', idAt(schedule, 'runs', 1), 'demand')).toBe(isPartial ? 1 : 0);
    expect(schedule.cases.cases.length).toBeLessThanOrEqual(100);
  });

  test('the group of a type that is there twice may be another', () => {
    const types = [...PANEL.types!, { type: 'lamp', draw: 100 }];
    const devices = [{ ...PANEL.devices![0]!, unitDraw: 100, diversity: 0.5 }];
    const schedule = withCases([{ case: 'wind' }], both('wind', 1, 1), { ...PANEL, types, devices });
    expect(schedule.isPartial('ways', idAt(schedule, 'ways'), 'demand')).toBe(true);
    enter(schedule, 'devices', 0, { group: 'lights' });
    expect(schedule.isPartial('ways', idAt(schedule, 'ways'), 'demand')).toBe(false);
    enter(schedule, 'devices', 0, { group: null });
    enter(schedule, 'types', 2, { type: 'other' });
    expect(schedule.isPartial('ways', idAt(schedule, 'ways'), 'demand')).toBe(false);
    enter(schedule, 'types', 2, { type: 'lamp' });
    expect(schedule.isPartial('ways', idAt(schedule, 'ways'), 'demand')).toBe(true);
  });

  test('a factor that is worked out of a sum which lacks a row makes what it weighs lack something', () => {
    const schedule = withCases([{ case: 'wind' }], both('wind', 1, 0.2), { ...PANEL, branches: [{ branch: 'B' }] });
    expect(typeFormula(schedule, 'factors', 0, 'factor', `=${reference('branches', 'nodes')}/10+0.5`)).toBeUndefined();
    expect(schedule.isPartial('supplies', idAt(schedule, 'supplies'), 'demand')).toBe(false);
    enter(schedule, 'devices', 0, { branch: 'B' });
    expect(schedule.isPartial('branches', idAt(schedule, 'branches'), 'nodes')).toBe(true);
    expect(schedule.isPartial('supplies', idAt(schedule, 'supplies'), 'demand')).toBe(true);
  });

  test.each<[string, number, Cells]>([
    ['is missing', 1, { factor: null }], ['is that of its group twice', 0, { group: 'blinds' }],
  ])('the factor that %s is the cell that a demand waits for', (_what, at, cells) => {
    const schedule = withCases([{ case: 'wind' }], both('wind', 1, 0.2));
    const behind = (sheet: SheetName, row: number, key: string) =>
      lackingBehind(schedule.document, schedule.figures, [sheet, idAt(schedule, sheet, row), key]);
    expect(behind('supplies', 0, 'demand')).toBeUndefined();
    enter(schedule, 'factors', at, cells);
    const cell = ['factors', idAt(schedule, 'factors', 1), 'factor'];
    expect([behind('supplies', 0, 'demand'), behind('runs', 1, 'demand'), behind('runs', 1, 'extra')])
      .toEqual([cell, cell, cell]);
  });
});

describe('a factor that would go round', () => {
  test.each<[string, SheetName, string]>([
    ['through a supply', 'supplies', 'loading'], ['through the demand of its case', 'cases', 'demand'],
    ['through the energy of its case', 'cases', 'energy'], ['through a marked demand', 'supplies', 'togetherDemand'],
    ['through standby', 'supplies', 'batteryNeeded'], ['through what a run draws beyond', 'runs', 'extra'],
    ['through a way', 'ways', 'available'], ['through the heat', 'enclosures', 'top'],
  ])('is told: %s', (_what, sheet, key) => {
    const supplies = [{ ...PANEL.supplies![0]!, standbyHours: 4, battery: 7 }];
    const schedule = withCases([{ case: 'wind', hours: 2, together: true }], both('wind', 1, 1), { ...PANEL, supplies });
    const at = sheet === 'runs' ? 2 : 1;
    // The factor of blinds reads what hangs on blinds.
    typeFormula(schedule, 'factors', key === 'available' ? 0 : 1, 'factor', `=${reference(sheet, key, at)}/1000`);
    const id = idAt(schedule, 'factors', key === 'available' ? 0 : 1);
    expect(schedule.figures.fault('factors', id, 'factor')?.type).toBe('CYCLE');
    const told = schedule.findingsOf('factors', id).map(({ message }) => message).join(' ');
    expect(told).toMatch(new RegExp(`factor.*${key === 'available' ? 'F1' : ''}`, 'i'));
  });

  test('is found when a device comes to the group that the factor is of, and is none once it leaves', () => {
    const schedule = withCases([{ case: 'wind' }], both('wind', 1, 1));
    typeFormula(schedule, 'factors', 0, 'factor', `=${reference('runs', 'demand', 2)}`);
    const fault = () => schedule.figures.fault('factors', idAt(schedule, 'factors'), 'factor')?.type;
    expect(fault()).toBeUndefined();
    enter(schedule, 'types', 1, { group: 'lights' });
    expect(fault()).toBe('CYCLE');
    expectAsAfresh(schedule);
    enter(schedule, 'devices', 1, { group: 'blinds' });
    expect(fault()).toBeUndefined();
    enter(schedule, 'factors', 0, { group: 'blinds' });
    expect(fault()).toBe('CYCLE');
    expectAsAfresh(schedule);
  });
});
