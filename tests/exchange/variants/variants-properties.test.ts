import fc from 'fast-check';
import { expect, it } from 'vitest';
import { writeSchedule } from '../../../src/exchange/index.ts';
import { withoutVariant } from '../../../src/exchange/variants/index.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import { compareOutcomes } from '../../../src/report/index.ts';
import { removeRows, setCells, type Change, type SheetName } from '../../../src/schedule/index.ts';
import { keepVariant, joinVariant, makeVariant } from '../../../src/exchange/variants/index.ts';
import { PANEL } from './support.ts';

type Edit = (schedule: LoadSchedule) => readonly Change[];

const VALUES: Readonly<Record<string, readonly (string | number | null)[]>> = {
  'devices.qty': [1, 7, 30, '=[devices.qty@D2]+2', '=SUM([devices.qty#1:#2])', null],
  'devices.diversity': [0, 0.3, 1, null], 'devices.rail': ['P1', 'P2', null], 'devices.ref': ['D1', 'D7', null],
  'supplies.rated': [5, 20, null], 'supplies.rail': ['P1', 'P2'], 'branches.limit': [20, 60, '=[devices.qty#1]+40'],
  'types.draw': [100, 800],
};

/** Edits as a person makes them; formulas are read as they are typed in files. */
const edit: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...Object.keys(VALUES))
    .chain((name) => fc.tuple(fc.constantFrom(...VALUES[name]!), fc.nat(3)).map(([value, row]): Edit => (schedule) => {
      const [sheet, key] = name.split('.') as [SheetName, string];
      const rows = schedule.rows(sheet);
      if (rows.length === 0) return [];
      const { id } = rows[row % rows.length]!;
      if (typeof value !== 'string' || !value.startsWith('=')) return setCells(schedule.document, [{ sheet, id, key, value }]);
      const { sheets, ...content } = schedule.content();
      const at = schedule.document.position(sheet, id);
      const rowsWithIt = sheets[sheet]!.map((cells, place) => place === at ? { ...cells, [key]: value } : cells);
      const withIt = new LoadSchedule({ ...content, sheets: { ...sheets, [sheet]: rowsWithIt } });
      // The row that it names may be gone.
      if (withIt.formulaProblems.length > 0) return [];
      return [{ op: 'load', snapshot: withIt.document.snapshot() }];
    })) },
  { weight: 1, arbitrary: fc.nat(3).map((row): Edit => (schedule) => {
    const rows = schedule.rows('devices');
    return rows.length === 0 ? [] : removeRows(schedule.document, 'devices', [rows[row % rows.length]!.id]);
  }) },
  { weight: 1, arbitrary: fc.nat(3).map((row): Edit => (schedule) => [{
    op: 'insert', sheet: 'devices', at: row % (schedule.rows('devices').length + 1),
    rows: [{ id: schedule.document.freeIds('devices', 1)[0]!, cells: { type: 'Sensor', qty: 5, rail: 'P1' } }],
  }]) },
  { weight: 1, arbitrary: fc.nat(3).map((row): Edit => (schedule) => {
    const { length } = schedule.rows('devices');
    return length < 2 ? [] : [{ op: 'move', sheet: 'devices', from: row % length, count: 1, to: 0 }];
  }) },
);

function play(schedule: LoadSchedule, edits: readonly Edit[]): LoadSchedule {
  for (const make of edits) schedule.act('Edit', make(schedule));
  return schedule;
}

const session = (schedule: LoadSchedule) =>
  new LoadSchedule(undefined, { session: { base: schedule.document.snapshot(), actions: [] } });

it('a variant that was just kept gives, taken over, what was tried out, and undo gives back what was there', () => {
  const [some, more] = [fc.array(edit, { maxLength: 4 }), fc.array(edit, { minLength: 1, maxLength: 6 })];
  fc.assert(fc.property(some, more, (before, edits) => {
    const schedule = play(new LoadSchedule(PANEL), before);
    const tried = play(session(schedule), edits);
    const variant = makeVariant(schedule.content(), tried.content(), { name: 'v' });
    schedule.act('Kept', keepVariant(schedule.document, variant));
    const start = writeSchedule(schedule.content());
    const join = joinVariant(schedule.content(), variant);
    expect(join.conflicts).toEqual([]);
    expect(schedule.load(withoutVariant(join.content, 'v'), 'Taken over')).toEqual([]);
    expect(writeSchedule(schedule.content())).toBe(writeSchedule(tried.content()));
    expect(compareOutcomes(tried, schedule).filter(({ isSame }) => !isSame)).toEqual([]);
    schedule.undo();
    expect(writeSchedule(schedule.content())).toBe(start);
  }), { numRuns: 60 });
});

it('a variant can be taken over after whatever was done to the schedule since, and a file reads it', () => {
  const some = fc.array(edit, { minLength: 1, maxLength: 5 });
  fc.assert(fc.property(some, some, (edits, later) => {
    const schedule = new LoadSchedule(PANEL);
    const variant = makeVariant(schedule.content(), play(session(schedule), edits).content(), { name: 'v' });
    schedule.act('Kept', keepVariant(schedule.document, variant));
    play(schedule, later);
    const { content, conflicts } = joinVariant(schedule.content(), variant);
    expect(new LoadSchedule(content).formulaProblems).toEqual([]);
    // Decided for the schedule throughout, all that it has counts but what only the variant changed.
    const mine = Object.fromEntries(conflicts.map(({ name }) => [name, 'mine' as const]));
    expect(joinVariant(schedule.content(), variant, mine).conflicts.every(({ choice }) => choice === 'mine')).toBe(true);
  }), { numRuns: 60 });
});
