import { describe, expect, test } from 'vitest';
import { readCsv, readSchedule, writeCsv, writeSchedule } from '../../src/exchange/index.ts';
import { joinSchedules } from '../../src/exchange/join/index.ts';
import { compareWithList, updateChanges, updateCounts } from '../../src/exchange/update/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { changesText, compareSchedules, tableJson } from '../../src/report/index.ts';
import { removeRows, ScheduleDocument, toContent, toSnapshot, type Cells, type Content } from '../../src/schedule/index.ts';
import { scheduleOf, valueAt } from '../support/schedules.ts';

/** A factor is named by its case and its group together: either stands in many rows. */
const CASES: Cells[] = [{ case: 'evening', hours: 6 }, { case: 'wind', together: true }];
const FACTORS: Cells[] = [
  { case: 'evening', group: 'blinds', factor: 0.2 }, { case: 'evening', group: 'lamps', factor: 0.9, note: 'owner' },
  { case: 'wind', group: 'blinds', factor: 1 }, { case: 'wind', group: 'lamps', factor: 0.5, of: 'demand' },
];
const content = (factors: Cells[] = FACTORS, cases: Cells[] = CASES): Content => ({
  details: {},
  sheets: {
    types: [{ type: 'Drive', draw: 1000, group: 'blinds' }, { type: 'Lamp', draw: 500, group: 'lamps' }],
    supplies: [{ rail: 'L1', rated: 20 }],
    devices: [{ ref: 'D1', type: 'Drive', qty: 6, rail: 'L1' }, { ref: 'D2', type: 'Lamp', qty: 8, rail: 'L1' }],
    cases, factors,
  },
});
const changed = (at: number, cells: Cells) => FACTORS.map((row, place) => place === at ? { ...row, ...cells } : row);

describe('a list of factors', () => {
  function updated(csv: string, rows = FACTORS) {
    const document = new ScheduleDocument(toSnapshot(content(rows)).snapshot);
    const read = readCsv(csv, 'factors');
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const update = compareWithList(document, read);
    document.perform(updateChanges(document, update));
    return { update, counts: updateCounts(update), rows: toContent(document).sheets.factors };
  }

  test('changes the factor of its case and group, and adds what no row has', () => {
    const { update, counts, rows } = updated('Case,Group,Factor\nwind,blinds,0.8\nevening,lamps,0.9\nevening,fans,0.3\n');
    expect(counts).toBe('1 changed, 1 new, 2 not in the list');
    expect(update.changed).toMatchObject([{ tag: 'wind, blinds', row: 3, cells: [{ key: 'factor', before: 1, after: 0.8 }] }]);
    expect(update.absent).toEqual(['evening, blinds', 'wind, lamps']);
    expect(rows).toEqual([...changed(2, { factor: 0.8 }), { case: 'evening', group: 'fans', factor: 0.3 }]);
  });

  test('leaves out what it says twice, what stands twice in the schedule, and what names no case or no group', () => {
    const { update, rows } = updated(
      'Case,Group,Factor\nwind,blinds,0.8\nwind,blinds,0.7\nevening,blinds,0.1\n,lamps,0.4\nwind,,0.4\n', [...FACTORS, FACTORS[0]!]);
    expect(update.leftOut.map(({ reason }) => reason)).toEqual([
      'Line 2: “wind, blinds” stands 2 times in the list. Leave one of them.',
      'Line 3: “wind, blinds” stands 2 times in the list. Leave one of them.',
      'Line 4: 2 rows of the schedule are called “evening, blinds”. Give each a Case, Load group of its own there.',
      'Line 5: it has no Case, which would name its row. Enter one.',
      'Line 6: it has no Load group, which would name its row. Enter one.',
    ]);
    expect(rows).toEqual([...FACTORS, FACTORS[0]!]);
  });

  test('tells a case with a comma from a case and a group', () => {
    const { counts } = updated('Case,Group,Factor\nevening,"lamps, blinds",0.5\n', [
      { case: 'evening, lamps', group: 'blinds', factor: 1 }]);
    expect(counts).toBe('0 changed, 1 new, 1 not in the list');
  });
});

describe('two schedules with factors joined', () => {
  const join = (mine: Cells[], theirs: Cells[], base?: Cells[], choices = {}) =>
    joinSchedules(content(mine), content(theirs), base && content(base), choices);

  test('take what either changed in its case, though the group stands in both cases', () => {
    const made = join(changed(0, { factor: 0.3 }), changed(2, { factor: 0.8 }), FACTORS);
    expect([made.conflicts, made.added, made.removed]).toEqual([[], [], []]);
    expect(made.changed).toEqual([{ sheet: 'factors', tag: 'wind, blinds', keys: ['factor'] }]);
    expect(made.content.sheets.factors)
      .toEqual([{ ...FACTORS[0], factor: 0.3 }, FACTORS[1], { ...FACTORS[2], factor: 0.8 }, FACTORS[3]]);
  });

  test.each([true, false])('ask of one that both gave another value, and never keep both (with a base: %s)', (hasBase) => {
    const sides = [changed(2, { factor: 0.8 }), changed(2, { factor: 0.9 }), hasBase ? FACTORS : undefined] as const;
    const name = 'factors/wind, blinds/factor';
    expect(join(...sides).conflicts).toMatchObject([{ name, kind: 'cell', mine: 0.8, theirs: 0.9, choices: ['mine', 'theirs'] }]);
    expect(join(...sides, { [name]: 'theirs' }).content.sheets.factors).toEqual(sides[1]);
    // «both» is none of the choices, so that mine stands.
    expect(join(...sides, { [name]: 'both' }).content.sheets.factors).toEqual(sides[0]);
  });

  test('take one that both added once, and one that only theirs has with its case', () => {
    const night: Cells = { case: 'evening', group: 'fans', factor: 0.1 };
    expect(join([...FACTORS, night], [night, ...FACTORS], FACTORS).content.sheets.factors).toEqual([...FACTORS, night]);
    const made = joinSchedules(content(), content([...FACTORS, { case: 'night', group: 'blinds', factor: 0 }],
      [...CASES, { case: 'night' }]));
    expect(made.added.map(({ sheet, tag }) => [sheet, tag])).toEqual([['cases', 'night'], ['factors', 'night, blinds']]);
    expect(made.conflicts).toEqual([]);
  });
});

describe('changes between two schedules', () => {
  test('name a factor by case and group, and tell that another case is the worst now', () => {
    // 6 × 1 A of blinds, 8 × 0.5 A of lamps: evening 1.2 + 3.6 = 4.8 A, wind 6 + 2 = 8 A; with 0.1 in the wind 2.6 A.
    const [before, after] = [scheduleOf(content().sheets), scheduleOf(content(changed(2, { factor: 0.1 })).sheets)];
    const changes = compareSchedules(before, after);
    expect(changes.rows).toEqual([{
      kind: 'changed', sheet: 'factors', tag: 'wind, blinds', row: 3, was: 3, values: [{ key: 'factor', before: 1, after: 0.1 }],
    }]);
    const figures = changes.figures.flatMap(({ sheet, tag, values }) =>
      values.map(({ key, before: was, after: is }) => [sheet, tag, key, was, is]));
    expect(figures).toEqual(expect.arrayContaining([
        ['supplies', 'L1', 'worstCase', 'wind', 'evening'], ['cases', 'wind', 'demand', 192, expect.closeTo(62.4, 9)],
      ]));
    expect(changesText(changes)).toContain('wind, blinds: changed: Factor 100\u202f% → 10\u202f%');
    expect(changesText(changes)).toContain('Worst case wind → evening');
  });

  test('tell of cases and factors that came, went and were changed', () => {
    const after = scheduleOf(content(
      [...FACTORS.slice(0, 2), { case: 'night', group: 'blinds', factor: 0 }], [{ ...CASES[0], hours: 8 }, { case: 'night', hours: 4 }]).sheets);
    expect(compareSchedules(scheduleOf(content().sheets), after).rows
      .map(({ sheet, kind, tag }) => [sheet, kind, tag])).toEqual([
      ['cases', 'removed', 'wind'], ['cases', 'added', 'night'], ['cases', 'changed', 'evening'],
      ['factors', 'removed', 'wind, blinds'], ['factors', 'removed', 'wind, lamps'], ['factors', 'added', 'night, blinds'],
    ]);
  });

  test('of factors that stand in another order are none but moves', () => {
    const after = scheduleOf(content([...FACTORS.slice(1), FACTORS[0]!]).sheets);
    const { rows, isSame } = compareSchedules(scheduleOf(content().sheets), after);
    expect([isSame, rows.map(({ kind, tag }) => [kind, tag])]).toEqual([false, [['moved', 'evening, blinds']]]);
  });
});

describe('files', () => {
  const withFormulas = () => scheduleOf(content([
    ...FACTORS, { case: 'wind', group: 'fans', factor: '=[factors.factor#3]/2' }, { case: 'evening', group: 'fans', factor: '=1-[factors.factor#5]' },
  ]).sheets);

  test('keep formulas in factors, which name others by their number', () => {
    const schedule = withFormulas();
    expect([4, 5].map((at) => valueAt(schedule, 'factors', at, 'factor'))).toEqual([0.5, 0.5]);
    const text = writeSchedule(schedule.content());
    const read = readSchedule(text);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.content.sheets.factors!.slice(4).map(({ factor }) => factor)).toEqual(['=[factors.factor#3]/2', '=1-[factors.factor#5]']);
    expect(writeSchedule(new LoadSchedule(read.content).content())).toBe(text);
    // A row that goes takes its number with it, and formulas follow.
    schedule.act('Removal', removeRows(schedule.document, 'factors', [schedule.rows('factors')[0]!.id]));
    expect(schedule.content().sheets.factors!.at(-1)!.factor).toBe('=1-[factors.factor#4]');
  });

  test.each(['cases', 'factors'] as const)('%s go to CSV and are known again by their headings', (sheet) => {
    const schedule = withFormulas();
    expect(readCsv(writeCsv(schedule, sheet)))
      .toMatchObject({ ok: true, sheet, rows: schedule.content().sheets[sheet]!, notes: [] });
  });

  test('for programs have both sheets, and the worst case of what has one', () => {
    const { sheets } = tableJson(scheduleOf(content().sheets));
    expect(sheets.cases).toMatchObject([{ case: 'evening', hours: 6, demand: expect.closeTo(115.2, 9) as number }, { case: 'wind', together: true }]);
    expect(sheets.factors).toMatchObject(FACTORS);
    expect(sheets.supplies).toMatchObject([{ rail: 'L1', worstCase: 'wind', demand: 8 }]);
  });
});
