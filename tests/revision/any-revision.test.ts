import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askedRows, countOutcomes } from '../../src/exchange/revision/index.ts';
import { countedList, readTakeoff, type TakeoffTable } from '../../src/exchange/takeoff/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells, Change } from '../../src/schedule/index.ts';
import { differencesOf, type CountedRow } from '../support/independent-revision.ts';
import { devicesOf, revise, total } from './support.ts';

const TYPES: Cells[] = ['Router', 'Sensor', 'Flap drive', 'Card reader'].map((type) => ({ type, draw: 10 }));
const AREAS = ['Hall', 'Bar', 'Attic', ''];

interface Line {
  readonly ref: string;
  readonly type: string;
  readonly area: string;
  readonly branch: string;
  /** As it is written; some can be read, some are in doubt. */
  readonly qty: string;
}

const line: fc.Arbitrary<Line> = fc.record({
  ref: fc.constantFrom('', '', 'E1', 'E2', 'E3', 'E4', 'E1/2'),
  type: fc.constantFrom('Router', 'sensor', 'Flap drive', 'Card reader', 'Odd box', 'Senser', ''),
  area: fc.constantFrom(...AREAS),
  branch: fc.constantFrom('', '', 'B1', 'B2'),
  qty: fc.oneof({ weight: 8, arbitrary: fc.integer({ min: 0, max: 30 }).map(String) }, { weight: 1, arbitrary: fc.constantFrom('ca. 4', '2 x 3', '') }),
});

/** What persons do to device rows between two issues of a list. */
interface Handling {
  readonly row: number;
  readonly what: 'part' | 'place' | 'rename' | 'swap' | 'retype' | 'formula' | 'accept';
}
const handling: fc.Arbitrary<Handling> = fc.record({
  row: fc.nat(20), what: fc.constantFrom('part', 'part', 'place', 'rename', 'swap', 'retype', 'formula', 'accept'),
});
/** Rows that somebody entered without a list. */
const byHand: Cells[] = [{ type: 'Router', area: 'Hall', qty: 2 }, { type: 'Odd box', area: 'Bar', qty: 1 }];

const textOf = (lines: readonly Line[]) =>
  ['Ref;Device;Room;Qty;Branch', ...lines.map(({ ref, type, area, qty, branch }) => [ref, type, area, qty, branch].join(';'))].join('\n');

function handle(schedule: LoadSchedule, { row, what }: Handling): void {
  const rows = schedule.rows('devices');
  const { id, cells } = rows[row % rows.length] ?? {};
  if (id === undefined || cells === undefined) return;
  const set = (key: string, value: string | number): Change => ({ op: 'set', sheet: 'devices', id, key, value });
  const qty = Number(schedule.value('devices', id, 'qty'));
  const changes: Record<Handling['what'], () => Change[]> = {
    // As sharing out does it: the rest of the row goes below, on another branch.
    part: () => qty < 2 ? [] : [set('qty', 1), set('branch', 'B1'), {
      op: 'insert', sheet: 'devices', at: schedule.document.position('devices', id) + 1, rows: [{
        id: schedule.document.freeIds('devices', 1)[0]!,
        cells: { ...cells, qty: qty - 1, ...row % 2 === 0 ? { branch: 'B2' } : {} },
      }],
    }],
    place: () => [set('rail', 'P1'), set('run', 'R1'), set('distance', 3), set('note', 'by hand')],
    rename: () => [set('area', 'Somewhere else')],
    swap: () => [set('area', AREAS[(AREAS.indexOf(String(cells.area ?? '')) + 1) % 3]!)],
    retype: () => [set('type', 'Card reader')],
    formula: () => [set('qty', `=${qty}`)],
    accept: () => [{ op: 'accept', sheet: 'devices', id, accepted: [
      { rule: 'device-without-rail', reason: 'later', name: 'A', date: '2026-01-01', value: null },
    ] }],
  };
  schedule.act(what, changes[what]());
}

/** What of a row is nobody's but its own: all that a list does not say. */
function ownOf({ cells, accepted }: { cells: Cells; accepted?: unknown }): unknown {
  const { qty: _qty, type: _type, area: _area, ref: _ref, source: _source, state: _state, ...own } = cells;
  return { own, accepted };
}

describe('for any list and any revision', () => {
  it('no quantity is lost or doubled, what stays keeps what it has, and taken again nothing changes', () => {
    const lines = fc.array(line, { maxLength: 8 });
    fc.assert(fc.property(lines, lines, fc.array(handling, { maxLength: 6 }), fc.boolean(), fc.boolean(), (
      first, second, handlings, withHand, deletes
    ) => {
      if (!readTakeoff(textOf(first), { types: TYPES }).ok || !readTakeoff(textOf(second), { types: TYPES }).ok) return;
      const schedule = new LoadSchedule({ details: {}, sheets: { types: TYPES } });
      revise(schedule, textOf(first), { name: 'list' }).take();
      if (withHand) {
        const ids = schedule.document.freeIds('devices', byHand.length);
        schedule.act('by hand', [{ op: 'insert', sheet: 'devices', at: 0, rows: byHand.map((cells, index) =>
          ({ id: ids[index]!, cells })) }]);
      }
      for (const each of handlings) handle(schedule, each);
      const before = schedule.content();
      const owns = new Map(schedule.rows('devices').map((row) => [row.id, structuredClone(ownOf(row))]));
      const handsBefore = devicesOf(schedule).filter(({ source }) => source === undefined);
      const counted = devicesOf(schedule).filter(({ source }) => source !== undefined);

      // Whatever persons call the rows: the list of before has nothing new to say.
      if (counted.length > 0) {
        expect(countOutcomes(revise(schedule, textOf(first), { name: 'list', lists: ['list'] })))
          .toEqual({ came: 0, changed: 0, went: 0, kept: counted.length });
      }
      const gone = deletes ? 'delete' : 'mark';
      const takeoff = readTakeoff({ file: 'new list', cells: textOf(second) }, { types: schedule.rows('types').map(({ cells }) => cells) });
      const { sums: read } = takeoff as Extract<typeof takeoff, { ok: true }>;
      const options = { name: 'new list', gone, lists: counted.length > 0 ? ['list'] : [] } as const;
      const revision = revise(schedule, textOf(second), options);
      const { sums } = revision;
      // What may be there already waits; said to be new, all of it is taken.
      const waits = askedRows(revision).reduce((all, { after }) => all + after!, 0);
      const decided = revise(schedule, textOf(second), { ...options, allNew: true });
      expect([askedRows(decided), decided.sums]).toEqual([[], read]);
      revision.take();
      expect(sums).toMatchObject({ read: read.read, taken: read.taken - waits, undecided: read.undecided + waits });
      expect(sums.read).toBeCloseTo(sums.taken + sums.leftOut + sums.undecided, 6);

      const value = ({ id }: { id: number }) => Number(schedule.value('devices', id, 'qty'));
      const sum = (rows: readonly { id: number }[]) => rows.reduce((all, row) => all + value(row), 0);
      const rows = schedule.rows('devices');
      const { rows: taken } = countedList(takeoff as Extract<typeof takeoff, { ok: true }>);
      const sources = new Set(taken.map(({ source }) => source));
      const ofList = rows.filter(({ cells }) => sources.has(cells.source));
      const old = rows.filter(({ cells }) => cells.source !== undefined && !sources.has(cells.source));
      const hands = rows.filter(({ cells }) => cells.source === undefined);
      expect(sum(ofList)).toBe(sums.taken);
      // Nothing of the former list is left but what went, and what an undecided line may mean.
      const waiting = old.filter(({ cells }) => cells.state !== 'gone');
      if (sums.undecided === 0 && !(/Senser|;;|ca\.|2 x|^;;/m.exec(textOf(second)))) expect(waiting).toEqual([]);
      if (deletes) expect(old).toEqual(waiting);
      // Rows by hand have no ref, so that no list names them.
      expect(hands.map(({ cells }) => cells)).toEqual(handsBefore);
      for (const row of rows) if (owns.has(row.id) && String(row.cells.source) !== 'undefined') {
        const own = owns.get(row.id);
        // The number of a row that was deleted may be that of one that came.
        if (!revision.deleted.includes(row.id)) expect(ownOf(row)).toEqual(own);
      }
      const counts = countOutcomes(revision);
      expect(rows.length).toBe(counted.length + hands.length + counts.came - (deletes ? counts.went : 0));
      expect(counts.changed + counts.kept + counts.went).toBe(counted.length);

      const after = schedule.content();
      // Where all of it waits, the schedule does not know the list yet, and is told once more what it revises.
      const isKnown = schedule.rows('devices').some(({ cells }) => String(cells.source).startsWith('new list'));
      const further = isKnown ? { name: 'new list' } : options;
      const again = revise(schedule, textOf(second), further);
      expect(countOutcomes(again)).toMatchObject({ came: 0, changed: 0 });
      expect(again.sums).toEqual(sums);
      if (schedule.undoLabel === 'revised' && JSON.stringify(after) !== JSON.stringify(before)) {
        schedule.undo();
        expect(schedule.content()).toEqual(before);
        schedule.redo();
      }
      revise(schedule, textOf(second), further).take();
      expect(total(devicesOf(schedule))).toBe(total(after.sheets.devices ?? []));
      schedule.dispose();
    }), { numRuns: 100 });
  });

  it('comes to what names alone say, where nothing was parted and every row has a name of its own', () => {
    const row = (keyed: boolean): fc.Arbitrary<CountedRow> => fc.record({
      ...keyed ? { ref: fc.integer({ min: 1, max: 12 }).map((n) => `E-${n}`) } : {},
      type: keyed ? fc.constant('Router') : fc.constantFrom('Router', 'Sensor', 'Flap drive'),
      area: keyed ? fc.constantFrom('Hall', 'Bar') : fc.constantFrom('Hall', 'Bar', 'Attic', 'Shop'), qty: fc.integer({ min: 1, max: 9 }),
    });
    const both = fc.boolean().chain((keyed) => {
      const rows = fc.uniqueArray(row(keyed), {
        minLength: 1, maxLength: 10, selector: ({ ref, type, area }) => ref ?? `${type}|${area}`,
      });
      return fc.tuple(rows, rows, fc.constant(keyed));
    });
    fc.assert(fc.property(both, ([before, after, keyed]) => {
      const text = (rows: readonly CountedRow[]) => keyed
        ? `Ref;Device;Room;Qty\n${rows.map(({ ref, type, area, qty }) => [ref, type, area, qty].join(';')).join('\n')}`
        : `Device;Room;Qty\n${rows.map(({ type, area, qty }) => [type, area, qty].join(';')).join('\n')}`;
      const schedule = new LoadSchedule({ details: {}, sheets: { types: TYPES } });
      revise(schedule, text(before)).take();
      const revision = revise(schedule, text(after), { by: 'ref', allNew: true });
      // By ref, what is new may take the place of what went in the same room.
      const { came, changed, went, kept } = countOutcomes(revision);
      const expected = differencesOf(before, after);
      if (keyed) {
        expect(came).toBeLessThanOrEqual(expected.came);
        expect(expected.came - came).toBe(expected.went - went);
        expect(changed - expected.changed).toBe(expected.came - came);
        expect(kept).toBe(expected.kept);
      } else expect({ came, changed, went, kept }).toEqual(expected);
      schedule.dispose();
    }), { numRuns: 200 });
  });

  it('comes to the same whatever shape either issue has: flat, a matrix either way, a column a storey, sheets', () => {
    const [storeys, types] = [['L0', 'L1', 'L2', 'L3'], ['Router', 'Sensor', 'Flap drive']];
    const inStorey = fc.array(fc.constantFrom(0, 0, 1, 2, 5, 7, 11, 23), { minLength: 3, maxLength: 3 });
    const counts = fc.array(inStorey, { minLength: 4, maxLength: 4 });
    const shape = fc.constantFrom('flat', 'rooms x types', 'types x rooms', 'storeys', 'sheets');
    type Shape = typeof shape extends fc.Arbitrary<infer Each> ? Each : never;
    const counted = (grid: readonly (readonly number[])[]): CountedRow[] => grid.flatMap((row, storey) =>
      row.flatMap((qty, type) => qty === 0 ? [] : [{ area: storeys[storey]!, type: types[type]!, qty }]));
    const listOf = (grid: readonly (readonly number[])[], form: Shape): TakeoffTable[] => {
      const text = (lines: readonly (readonly (string | number)[])[]) => lines.map((line) => line.join(';')).join('\n');
      const shown = (qty: number) => qty === 0 ? '' : qty;
      const across = types.map((type, at) => [type, ...grid.map((row) => shown(row[at]!))]);
      switch (form) {
        case 'flat': return [{ file: 'list', cells: text([['Device', 'Room', 'Qty'], ...counted(grid).map(({ type, area = '', qty }) => [type, area, qty])]) }];
        case 'rooms x types': return [{ file: 'list', cells: text([['Room', ...types], ...grid.map((row, at) => [storeys[at]!, ...row.map(shown)])]) }];
        case 'types x rooms': return [{ file: 'list', cells: text([['Device', ...storeys], ...across]) }];
        case 'storeys': return [{ file: 'list', cells: text([['Device', ...storeys.map((storey) => `Qty ${storey}`)], ...across]) }];
        case 'sheets': return grid.map((row, at) => ({
          file: 'list', sheet: storeys[at]!, cells: text([['Device', 'Qty'], ...types.map((type, place) => [type, row[place]!])]),
        }));
      }
    };
    const seen = new Set<string>();
    fc.assert(fc.property(counts, counts, shape, shape, (before, after, one, other) => {
      const schedule = new LoadSchedule({ details: {}, sheets: { types: TYPES } });
      const first = revise(schedule, listOf(before, one));
      first.take();
      const { lists: known } = revise(schedule, listOf(after, other));
      const options = { lists: known.map(({ name }) => name), allNew: true };
      const revision = revise(schedule, listOf(after, other), options);
      for (const { sums } of [first, revision]) expect(sums.read).toBe(sums.taken + sums.leftOut + sums.undecided);
      // A line that may be the sum of others, or has no quantity, waits for a person: it is in no comparison by hand.
      if (first.open + revision.open === 0) {
        expect(countOutcomes(revision)).toEqual(differencesOf(counted(before), counted(after)));
        seen.add(`${one}, ${other}`);
      }
      revision.take();
      const stays = devicesOf(schedule).filter(({ state }) => state !== 'gone');
      if (revision.open === 0) expect(total(stays)).toBe(total(counted(after) as unknown as Cells[]));
      const taken = schedule.content();
      const again = revise(schedule, listOf(after, other));
      expect(countOutcomes(again)).toMatchObject({ came: 0, changed: 0 });
      again.take();
      expect(schedule.content()).toEqual(taken);
      schedule.dispose();
    }), { numRuns: 60 });
    // Most of the 25 ways from one shape to another were gone.
    expect(seen.size).toBeGreaterThan(15);
  });
});
