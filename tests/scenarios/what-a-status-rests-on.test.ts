import { afterEach, describe, expect, test } from 'vitest';
import { explainCell } from '../../src/explanations.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport } from '../../src/report/index.ts';
import type { Cells, Content, SheetName } from '../../src/schedule/index.ts';
import { idAt, scheduleOf } from '../support/schedules.ts';

const made: LoadSchedule[] = [];
const opened = (sheets: Content['sheets']): LoadSchedule => {
  const schedule = scheduleOf(sheets);
  made.push(schedule);
  return schedule;
};
afterEach(() => { for (const schedule of made.splice(0)) schedule.dispose(); });

const checksOf = (schedule: LoadSchedule, sheet: SheetName) =>
  explainCell(schedule, sheet, idAt(schedule, sheet), 'status')!.checks!;
const numberMade = (checks: string) => Number(/^(\d+) checks? of its limits made/.exec(checks)![1]);

describe('a status says what it rests on', () => {
  const devices = [{ type: 'lamp', qty: 2, rail: 'L1' }];
  const types = [{ type: 'lamp', draw: 500, nodes: 1 }];

  test('a fuse that is not entered is not asked for, and one that is makes four checks more', () => {
    const without = checksOf(opened({ devices, types, supplies: [{ rail: 'L1', rated: 5 }] }), 'supplies');
    const fused = checksOf(opened({ devices, types, supplies: [{ rail: 'L1', rated: 5, fuse: 4 }] }), 'supplies');
    expect(without).toMatch(/not asked for while nothing is entered: .*\bFuse\b/);
    expect(fused).not.toMatch(/nothing is entered: .*\bFuse\b/);
    // What is asked for, everything at once, whether the supply ever gives enough to open it, and whether that opens it
    // at once where a run has nothing else.
    expect(numberMade(fused)).toBe(numberMade(without) + 4);
  });

  test('checks that wait for what is missing say for which cell, and are not counted as made', () => {
    const run = { run: 'W1', rail: 'L1', conductor: 'c', length: 10 };
    const on = [{ type: 'lamp', qty: 2, rail: 'L1', run: 'W1' }];
    const supplies = [{ rail: 'L1', rated: 5 }];
    const conductor = { conductor: 'c', size: '1', resistance: 18 };
    const whole = { devices: on, types: [{ ...types[0]!, minVoltage: 20 }], supplies, runs: [run] };
    const waiting = checksOf(opened({ ...whole, conductors: [conductor] }), 'runs');
    const known = checksOf(opened({ ...whole, conductors: [{ ...conductor, maxCurrent: 10 }] }), 'runs');
    expect(waiting).toMatch(/\d+ waits? for: Max\. current of the conductor c(;|$)/);
    expect(known).not.toMatch(/waits? for/);
    expect(numberMade(waiting)).toBeLessThan(numberMade(known));
  });

  test('an input without which the row is incomplete is not said to be unasked', () => {
    const unasked = (supply: Cells) => /nothing is entered: (.*)$/.exec(
      checksOf(opened({ devices, types, supplies: [{ rail: 'L1', ...supply }] }), 'supplies'))?.[1] ?? '';
    expect(unasked({ rated: 5 })).toMatch(/\bFuse\b/);
    expect(unasked({})).toMatch(/\bFuse\b/);
    expect(unasked({})).not.toMatch(/Rated/);
  });

  test.each<[string, Content['sheets'], SheetName, string]>([
    ['a feed for the inrush of an output', {
      contacts: [{ contact: 'K', lamp: 10, inrush: 80 }], feeds: [{ feed: 'F1', rated: 16, curve: 'C' }],
      outputs: [
        { output: 'K1.2', contact: 'K', kind: 'lamp', power: 100, qty: 1, inrush: 20, feed: 'F1' },
        { output: 'K1.3', contact: 'K', kind: 'lamp', power: 100, qty: 1, feed: 'F1' },
      ],
    }, 'feeds', '1 waits for: Inrush of the relay output K1.3'],
    // Through its demand, that of the row and its draw, to the type.
    ['a supply for the draw of a type', {
      types: [{ type: 'lamp' }], devices: [{ ref: 'D1', type: 'lamp', qty: 2, rail: 'L1' }], supplies: [{ rail: 'L1', rated: 5 }],
    }, 'supplies', '1 waits for: Draw of the device type lamp'],
    ['a supply for its own rating', { supplies: [{ rail: 'L1' }] }, 'supplies', '1 waits for: Rated'],
    ['a supply that tries again for the inrush of a type', {
      types: [{ type: 'lamp', draw: 100, nodes: 0 }], devices: [{ ref: 'D1', type: 'lamp', qty: 2, rail: 'L1' }],
      supplies: [{ rail: 'L1', rated: 5, overload: 'retries' }],
    }, 'supplies', '1 waits for: Inrush of the device type lamp'],
    ['a run for the kind of the fuse that protects it', {
      supplies: [{ rail: 'L1', rated: 20, fuse: 4 }], conductors: [{ conductor: 'c', resistance: 18, maxCurrent: 10 }],
      runs: [{ run: 'W1', rail: 'L1', conductor: 'c', length: 10 }],
    }, 'runs', '1 waits for: Fuse kind of the supply L1'],
  ])('and name the row that they wait for: %s', (_name, sheets, sheet, said) => {
    expect(checksOf(opened(sheets), sheet)).toContain(said);
  });

  test('what is over says so first, and its checks behind it', () => {
    const schedule = opened({ devices: [{ type: 'lamp', qty: 9, rail: 'L1' }], types, supplies: [{ rail: 'L1', rated: 4 }] });
    // 9 × 0.5 A = 4.5 A of 4 A.
    const { numbers, checks } = explainCell(schedule, 'supplies', idAt(schedule, 'supplies'), 'status')!;
    expect(numbers).toMatch(/^Rail L1: demand 4\.50\sA exceeds the usable 4\.00\sA by /);
    expect(numbers!.endsWith(checks!)).toBe(true);
  });
});

test('the load table says what it does not judge, and has each of it checked', () => {
  const { sections } = buildReport(opened({ supplies: [{ rail: 'L1', rated: 5 }] }), { generated: '2026-01-01' });
  const texts = (name: string) => sections.find((section) => section.name === name)!.tables
    .flatMap(({ rows }) => rows.flatMap(({ cells }) => cells.map(({ text }) => text))).join('\n');
  const asked = ['ault loop', 'esidual-current', 'hort-circuit rating', 'urge protection', 'PELV', '24 V AC'];
  for (const each of asked) {
    expect(texts('not-judged')).toContain(each);
    expect(texts('checklist')).toContain(each);
  }
});

describe('what a row names and is not there', () => {
  const supplies = [{ rail: 'L1', rated: 10 }];
  const contacts = [{ contact: 'K', resistive: 5, dc: 5, maxDcVoltage: 30 }];
  const output = { output: 'Q1', contact: 'K', kind: 'resistive', power: 100, voltage: 230 };
  const run = { run: 'W1', rail: 'L1', conductor: 'C', length: 5 };
  const conductors = [{ conductor: 'C', resistance: 10, maxCurrent: 16 }];
  const way = { way: 'F1', rail: 'L1', kind: 'electronic', rated: 2 };
  const cases: [SheetName, Content['sheets'], string][] = [
    ['outputs', { contacts, outputs: [{ ...output, feed: 'F9' }] }, 'feed'],
    ['outputs', { contacts, outputs: [{ ...output, module: 'M9' }] }, 'module'],
    ['outputs', { contacts, outputs: [{ ...output, kind: 'dc', power: 10, voltage: 24, rail: 'L9' }] }, 'rail'],
    ['runs', { supplies, conductors, runs: [{ ...run, way: 'F9' }] }, 'way'],
    ['runs', { supplies, conductors, ways: [way], runs: [{ ...run, way: 'F1', branch: 'B9' }] }, 'branch'],
    ['ways', { supplies, ways: [{ ...way, enclosure: 'E9' }] }, 'enclosure'],
    ['modules', { modules: [{ module: 'M1', enclosure: 'E9' }] }, 'enclosure'],
    ['feeds', { feeds: [{ feed: 'F1', rated: 10, enclosure: 'E9' }] }, 'enclosure'],
    ['branches', { branches: [{ branch: 'B1', limit: 9, terminated: true, enclosure: 'E9' }] }, 'enclosure'],
  ];

  test.each(cases)('keeps a row of %s from being within limits (%#)', (sheet, sheets, key) => {
    const row = sheets[sheet]![0]!;
    expect(opened(sheets).findings.filter(({ severity }) => severity !== 'note').map((each) => [each.rule, each.key]))
      .toEqual([['tag-names-nothing', key]]);
    const status = (cells: typeof row) => {
      const schedule = opened({ ...sheets, [sheet]: [cells] });
      return schedule.value(sheet, idAt(schedule, sheet), 'status');
    };
    expect(status(row)).toBe('incomplete');
    // A character that cannot be seen makes it another tag.
    expect(status({ ...row, [key]: `${String(row[key])}\u200b` })).toBe('incomplete');
    if (key !== 'way') expect(status({ ...row, [key]: null })).toBe('ok');
  });
});
