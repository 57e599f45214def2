import { afterEach, describe, expect, it } from 'vitest';
import { countOutcomes } from '../../src/exchange/revision/index.ts';
import { explainCell } from '../../src/explanations.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { devicesOf, revise, shortly, total } from './support.ts';

const TYPES: Cells[] = [{ type: 'Router', draw: 100 }, { type: 'Sensor', draw: 10 }, { type: 'Flap drive', draw: 50 }];
const schedules: LoadSchedule[] = [];

function scheduleOf(devices: readonly Cells[], more: Record<string, readonly Cells[]> = {}): LoadSchedule {
  const schedule = new LoadSchedule({ details: {}, sheets: { types: TYPES, devices, ...more } });
  schedules.push(schedule);
  return schedule;
}

afterEach(() => { for (const schedule of schedules.splice(0)) schedule.dispose(); });

/** A schedule that was counted in a list. */
function counted(list: string, name = 'list.csv'): LoadSchedule {
  const schedule = scheduleOf([]);
  revise(schedule, list, { name }).take();
  return schedule;
}

describe('a list that comes again', () => {
  const A = 'Ref;Device;Room;Qty\nE1;Router;Hall;3\nE2;Sensor;Hall;2\nE3;Sensor;Bar;4';

  it('comes as a whole where nothing is there, each row with its source', () => {
    expect(shortly(counted(A), 'ref', 'type', 'area', 'qty', 'source')).toEqual([
      'E1 Router Hall 3 list.csv: 2 (Router › Hall › E1)', 'E2 Sensor Hall 2 list.csv: 3 (Sensor › Hall › E2)',
      'E3 Sensor Bar 4 list.csv: 4 (Sensor › Bar › E3)',
    ]);
  });

  it('tells in the explanation of a quantity where it was counted, until a person enters another row', () => {
    const schedule = counted(A);
    revise(schedule, `${A}\nE4;Router;Attic;1`, { name: 'revision B.csv' }).take();
    const said = () => schedule.rows('devices').map(({ id }) => explainCell(schedule, 'devices', id, 'qty')!.source);
    expect(said().slice(2)).toEqual(['counted in revision B.csv: 4 (Sensor › Bar › E3)', 'counted in revision B.csv: 5 (Router › Attic › E4)']);
    expect(explainCell(scheduleOf([{ type: 'Router', qty: 2 }]), 'devices', 0, 'qty')!.source).toBe('the person who entered it');
    expect(explainCell(schedule, 'devices', schedule.rows('devices')[0]!.id, 'diversity')!.source).not.toContain('counted');
  });

  it('changes nothing when it is the same', () => {
    const schedule = counted(A);
    const before = schedule.content();
    const revision = revise(schedule, A);
    expect(countOutcomes(revision)).toEqual({ came: 0, changed: 0, went: 0, kept: 3 });
    revision.take();
    expect(schedule.content()).toEqual(before);
  });

  it('changes what the list says, keeps what is known of the row, marks what went and adds what came', () => {
    const schedule = counted(A);
    const own = { rail: 'P1', branch: 'B1', run: 'R1', distance: 12, diversity: 0.5, note: 'over the door' };
    const [first] = schedule.rows('devices');
    schedule.act('own', Object.entries(own)
      .map(([key, value]) => ({ op: 'set', sheet: 'devices', id: first!.id, key, value })));
    const revision = revise(schedule, 'Ref;Device;Room;Qty\nE1;Router;Foyer;5\nE3;Sensor;Bar;4\nE4;Flap drive;Bar;1', {
      name: 'revision B.csv',
    });
    expect(revision.rows.map(({ outcome, ref, before, after }) => [outcome, ref, before, after])).toEqual([
      ['changed', 'E1', 3, 5], ['kept', 'E3', 4, 4], ['came', 'E4', null, 1], ['went', 'E2', 2, null],
    ]);
    expect(revision.rows[0]!.reason).toBe('Its area was Hall.');
    revision.take();
    expect(devicesOf(schedule)).toEqual([
      { ref: 'E1', type: 'Router', area: 'Foyer', qty: 5, source: 'revision B.csv: 2 (Router › Foyer › E1)', ...own },
      { ref: 'E2', type: 'Sensor', area: 'Hall', qty: 2, source: 'list.csv: 3 (Sensor › Hall › E2)', state: 'gone' },
      { ref: 'E3', type: 'Sensor', area: 'Bar', qty: 4, source: 'revision B.csv: 3 (Sensor › Bar › E3)' },
      { ref: 'E4', type: 'Flap drive', area: 'Bar', qty: 1, source: 'revision B.csv: 4 (Flap drive › Bar › E4)' },
    ]);
    schedule.undo();
    expect(total(devicesOf(schedule))).toBe(9);
  });
});

describe('rows are the same', () => {
  const outcomes = (schedule: LoadSchedule, list: string, options = {}) =>
    revise(schedule, list, options).rows.map(({ outcome, ref, type, area, before, after }) =>
      [outcome, ref, type, area, before, after].filter((part) => part !== '' && part !== null).join(' '));

  it('by area and type where there is no ref, however they are spelt', () => {
    const schedule = counted('Device;Room;Qty\nRouter;Meeting room;3\nSensor;Meeting room;2');
    expect(outcomes(schedule, 'Room;Qty;Device\nMEETING ROOM;2;sensor\nMeeting-room;4;ROUTER')).toEqual([
      'kept Sensor Meeting room 2 2', 'changed Router Meeting room 3 4',
    ]);
  });

  it('by ref where the type is another: it came in its place', () => {
    const schedule = counted('Ref;Device;Room;Qty\nE1;Router;Hall;3\nE2;Sensor;Hall;2');
    expect(outcomes(schedule, 'Ref;Device;Room;Qty\nE1;Flap drive;Hall;3\nE2;Sensor;Hall;2'))
      .toEqual(['changed E1 Flap drive Hall 3 3', 'kept E2 Sensor Hall 2 2']);
  });

  it('by place where a line was put in and the others were numbered anew', () => {
    const schedule = counted('Pos.;Device;Room;Qty\n1.1;Router;Hall;1\n1.2;Sensor;Hall;2\n1.3;Flap drive;Hall;3');
    const renumbered = 'Pos.;Device;Room;Qty\n1.1;Router;Hall;1\n1.2;Router;Bar;5\n1.3;Sensor;Hall;2\n1.4;Flap drive;Hall;3';
    expect(revise(schedule, renumbered)).toMatchObject({ by: 'place' });
    expect(outcomes(schedule, renumbered)).toEqual([
      'kept 1.1 Router Hall 1 1', 'came 1.2 Router Bar 5', 'changed 1.3 Sensor Hall 2 2', 'changed 1.4 Flap drive Hall 3 3',
    ]);
  });

  it('by ref where two rows changed places, unless a person says that places tell', () => {
    const schedule = counted('Ref;Device;Room;Qty\nE1;Router;Hall;1\nE2;Router;Bar;2\nE3;Router;Shop;3\nE4;Router;Yard;4');
    const moved = 'Ref;Device;Room;Qty\nE1;Router;Bar;1\nE2;Router;Hall;2\nE3;Router;Shop;3\nE4;Router;Yard;4';
    expect(revise(schedule, moved)).toMatchObject({ by: 'ref' });
    expect(outcomes(schedule, moved).slice(0, 2)).toEqual(['changed E1 Router Bar 1 1', 'changed E2 Router Hall 2 2']);
    expect(outcomes(schedule, moved, { by: 'place' }).slice(0, 2))
      .toEqual(['changed E1 Router Bar 2 1', 'changed E2 Router Hall 1 2']);
  });

  it('by type where the list says no more, though a person entered areas', () => {
    const schedule = counted('Device;Qty\nRouter;3\nSensor;2');
    const [router] = schedule.rows('devices');
    schedule.act('area', [{ op: 'set', sheet: 'devices', id: router!.id, key: 'area', value: 'Hall' }]);
    expect(outcomes(schedule, 'Device;Qty\nRouter;4\nSensor;2'))
      .toEqual(['changed Router Hall 3 4', 'kept Sensor 2 2']);
  });

  it('though a person wrote no source, as in a schedule of before: it counts as one list', () => {
    const schedule = scheduleOf([
      { ref: 'E1', type: 'Router', area: 'Hall', qty: 3, branch: 'B1' }, { ref: 'E2', type: 'Sensor', area: 'Hall', qty: 2 },
      { note: 'no device' },
    ]);
    expect(outcomes(schedule, 'Ref;Device;Room;Qty\nE1;Router;Hall;4'))
      .toEqual(['changed E1 Router Hall 3 4', 'went E2 Sensor Hall 2']);
  });

  it('if a person says so', () => {
    const schedule = counted('Device;Room;Qty\nRouter;Hall;3\nSensor;Hall;2');
    const renamed = 'Device;Room;Qty\nRouter;Foyer;3\nSensor;Hall;2';
    const [came] = revise(schedule, renamed).rows;
    const { id } = schedule.rows('devices')[0]!;
    expect(came).toMatchObject({ outcome: 'asked', place: 0, maybe: [id] });
    expect(came!.reason).toBe('The row “Router, Hall” was counted on this very line before. Say whether it is the same.');
    // Meanwhile the row stays, and what comes is undecided, also when the list is taken so, and taken again.
    expect(revise(schedule, renamed).sums).toMatchObject({ read: 5, taken: 2, undecided: 3 });
    expect(outcomes(schedule, renamed)).toEqual(['asked Router Foyer 3', 'kept Sensor Hall 2 2', 'kept Router Hall 3 3']);
    revise(schedule, renamed, { name: 'B.csv' }).take();
    const taken = schedule.content();
    const again = revise(schedule, renamed, { name: 'B.csv' });
    expect([countOutcomes(again), again.sums.undecided]).toEqual([{ came: 0, changed: 0, went: 0, kept: 2 }, 3]);
    again.take();
    expect(schedule.content()).toEqual(taken);
    schedule.undo();
    // Said to be new, it comes, and the other one went.
    expect(outcomes(schedule, renamed, { same: new Map([[0, null]]) }))
      .toEqual(['came Router Foyer 3', 'kept Sensor Hall 2 2', 'went Router Hall 3']);
    expect(outcomes(schedule, renamed, { same: new Map([[0, id]]) }))
      .toEqual(['changed Router Foyer 3 3', 'kept Sensor Hall 2 2']);
    // What was said can be taken back there.
    expect(revise(schedule, renamed, { same: new Map([[0, id]]) }).rows[0]).toMatchObject({ place: 0, maybe: [id] });
  });

  it('if a person says so, also where another type came in its place', () => {
    const schedule = counted('Device;Room;Qty\nRouter;Hall;3\nSensor;Hall;2');
    const [router] = schedule.rows('devices');
    schedule.act('shared', [{ op: 'set', sheet: 'devices', id: router!.id, key: 'branch', value: 'B1' }]);
    const other = 'Device;Room;Qty\nFlap drive;Hall;4\nSensor;Hall;2';
    expect(revise(schedule, other).rows[0]).toMatchObject({ outcome: 'came', place: 0, maybe: [router!.id] });
    revise(schedule, other, { same: new Map([[0, router!.id]]) }).take();
    expect(shortly(schedule, 'type', 'qty', 'branch')).toEqual(['Flap drive 4 B1', 'Sensor 2 -']);
  });
});

describe('what a person calls otherwise', () => {
  const A = 'Ref;Device;Room;Qty\nE1;Router;Room 101;3\n;Sensor;Room 101;2\n;Sensor;Room 102;4\n;Flap drive;Room 102;1';
  /** The first list, of which a person renamed rooms, a type and a ref since. */
  const renamed = (rows: Readonly<Record<number, Cells>>, list = A) => {
    const schedule = counted(list);
    schedule.act('own', Object.entries(rows).flatMap(([row, cells]) => Object.entries(cells).map(([key, value]) =>
      ({ op: 'set' as const, sheet: 'devices' as const, id: schedule.rows('devices')[Number(row)]!.id, key, value }))));
    return schedule;
  };

  it('is the same, stays as it is called, and is told', () => {
    const schedule = renamed({ 0: { ref: 'R-9', area: 'Registry' }, 1: { area: 'Registry' }, 2: { type: 'Router' }, 3: { area: 'Post room', type: 'Sensor' } });
    const before = schedule.content();
    const again = revise(schedule, A);
    expect(countOutcomes(again)).toEqual({ came: 0, changed: 0, went: 0, kept: 4 });
    expect(again.rows.map(({ reason }) => reason)).toEqual(['E1, Room 101, Router', 'Room 101, Sensor', 'Room 102, Sensor', 'Room 102, Flap drive']
      .map((name) => `The list still calls it “${name}”; what was entered here stays.`));
    again.take();
    expect(schedule.content()).toEqual(before);
  });

  it('is the same in a revision of another name, whose lines moved', () => {
    const schedule = renamed({ 1: { area: 'Registry' }, 3: { area: 'Registry' } });
    revise(schedule, 'Ref;Device;Room;Qty\n;Router;Lobby;6\n;Flap drive;Room 102;5\nE1;Router;Room 101;3\n;Sensor;Room 102;4\n;Sensor;Room 101;7', { name: 'B.csv' }).take();
    expect(shortly(schedule, 'type', 'area', 'qty')).toEqual([
      'Router Room 101 3', 'Sensor Registry 7', 'Sensor Room 102 4', 'Flap drive Registry 5', 'Router Lobby 6',
    ]);
    // A list that calls it so by then has it too; one that calls it anew is followed.
    expect(countOutcomes(revise(schedule, 'Ref;Device;Room;Qty\n;Sensor;Registry;7', { name: 'C.csv' })).kept).toBe(1);
    revise(schedule, 'Ref;Device;Room;Qty\nE1;Router;Cellar;3', { name: 'C.csv' }).take();
    expect(shortly(schedule, 'area')[0]).toBe('Cellar');
  });

  it('is no other row: rooms that changed names keep to the lines that they were counted on', () => {
    const swapped = renamed({ 1: { area: 'Room 102' }, 2: { area: 'Room 101' } });
    revise(swapped, A.replace('Sensor;Room 101;2', 'Sensor;Room 101;20')).take();
    expect(shortly(swapped, 'area', 'qty')).toEqual(['Room 101 3', 'Room 102 20', 'Room 101 4', 'Room 102 1']);
    // A second room of the same name gives nothing to the first.
    const joined = renamed({ 2: { area: 'Room 101' } });
    expect(countOutcomes(revise(joined, A))).toEqual({ came: 0, changed: 0, went: 0, kept: 4 });
  });

  it('is one row also where only some of its parts are called otherwise, and what comes to it is called like them', () => {
    const own = { type: 'Router', area: 'Registry', source: 'list.csv: 2 (Router › Hall)' };
    const schedule = scheduleOf([{ ...own, qty: 4, branch: 'B1' }, { ...own, qty: 3, branch: 'B2', type: 'Sensor' }]);
    const list = (qty: number) => `Device;Room;Qty\nRouter;Hall;${qty}`;
    expect(countOutcomes(revise(schedule, list(7)))).toEqual({ came: 0, changed: 0, went: 0, kept: 2 });
    revise(schedule, list(9)).take();
    expect(shortly(schedule, 'type', 'area', 'qty')).toEqual(['Router Registry 4', 'Sensor Registry 3', 'Router Registry 2']);
  });
});

describe('what no list has', () => {
  const list = 'Device;Room;Qty\nRouter;Hall;3';

  it('is left alone, and asked about where it may be counted twice', () => {
    const schedule = counted(list);
    schedule.act('by hand', [{ op: 'insert', sheet: 'devices', at: 1, rows: [
      { id: 8, cells: { type: 'Sensor', area: 'Hall', qty: 5 } }, { id: 9, cells: { type: 'Sensor', area: 'Bar', qty: 7 } },
    ] }]);
    const revision = revise(schedule, `${list}\nSensor;Hall;6`);
    expect(revision.rows).toMatchObject([{ outcome: 'kept' }, { outcome: 'asked', after: 6, maybe: [8] }]);
    expect(revision.rows[1]!.reason).toBe('The schedule has a row of this type in this place that no list has. Say whether it is the same.');
    expect(revision.sums).toMatchObject({ taken: 3, undecided: 6 });
    const fresh = revise(schedule, `${list}\nSensor;Hall;6`, { same: new Map([[1, null]]) });
    expect(fresh.rows).toMatchObject([{ outcome: 'kept' }, { outcome: 'came', after: 6 }]);
    expect(revise(schedule, `${list}\nSensor;Hall;6`, { same: new Map([[1, 8]]) }).rows).toMatchObject([{ outcome: 'kept' }, { outcome: 'changed', before: 5, after: 6 }]);
    fresh.take();
    expect(shortly(schedule, 'type', 'area', 'qty', 'source')).toEqual([
      'Router Hall 3 list.csv: 2 (Router › Hall)', 'Sensor Hall 5 -', 'Sensor Bar 7 -', 'Sensor Hall 6 list.csv: 3 (Sensor › Hall)',
    ]);
  });

  it('is the same where the list names it by ref and type', () => {
    const schedule = counted('Ref;Device;Room;Qty\nE1;Router;Hall;3');
    schedule.act('by hand', [{ op: 'insert', sheet: 'devices', at: 1, rows: [
      { id: 8, cells: { ref: 'E2', type: 'Sensor', area: 'Bar', qty: 5 } },
    ] }]);
    expect(revise(schedule, 'Ref;Device;Room;Qty\nE1;Router;Hall;3\nE2;Sensor;Hall;6').rows)
      .toMatchObject([{ outcome: 'kept' }, { outcome: 'changed', before: 5, after: 6 }]);
  });

  it('leaves rows of other lists alone: a list of which no row is there is a further one', () => {
    const schedule = counted(list, 'ground floor.csv');
    const further = revise(schedule, 'Device;Room;Qty\nRouter;Attic;2\nSensor;Attic;1', { name: 'attic.csv' });
    expect(countOutcomes(further)).toEqual({ came: 2, changed: 0, went: 0, kept: 0 });
    further.take();
    const attic = revise(schedule, 'Device;Room;Qty\nRouter;Attic;2', { name: 'attic, revised.csv' });
    expect(attic.lists).toEqual([
      { name: 'ground floor.csv', rows: 1, matched: 0, isRevised: false }, { name: 'attic.csv', rows: 2, matched: 1, isRevised: true },
    ]);
    expect(countOutcomes(attic)).toEqual({ came: 0, changed: 0, went: 1, kept: 1 });
  });

  it('asks where a list of another name has few rows of one: a further storey is no revision by a line in common', () => {
    const schedule = counted('Device;Room;Qty\nRouter;Hall;40\nSensor;Hall;10\nSensor;Bar;30', 'L1.csv');
    const storey = 'Device;Room;Qty\nRouter;Hall;4\nRouter;Attic;8';
    // One of its three rows.
    expect(revise(schedule, storey, { name: 'L2.csv' }).isAsked).toBe(true);
    expect(revise(schedule, storey, { name: 'L1.csv' }).isAsked).toBe(false);
    expect(countOutcomes(revise(schedule, storey, { name: 'L2.csv', lists: [] }))).toEqual({ came: 2, changed: 0, went: 0, kept: 0 });
    // Two of three are most of it.
    expect(revise(schedule, 'Device;Room;Qty\nRouter;Hall;41\nSensor;Bar;30', { name: 'L1 B.csv' }).isAsked).toBe(false);
  });

  it('asks where rows that name no list come again in part, with what matches and what not', () => {
    const byHand = [{ type: 'Router', area: 'Hall', qty: 4 }, { type: 'Sensor', area: 'Hall', qty: 2 }, { type: 'Sensor', area: 'Bar', qty: 6 }];
    const part = 'Device;Room;Qty\nRouter;Hall;5\nSensor;Hall;2\nRouter;Attic;1';
    // Two of the three rows are in the list, and one of its three is in none.
    expect(revise(scheduleOf(byHand), part)).toMatchObject({ isAsked: true, fresh: 1, lists: [{ name: '', rows: 3, matched: 2 }] });
    const told = revise(scheduleOf(byHand), part, { lists: [''] });
    expect([told.isAsked, countOutcomes(told)]).toEqual([false, { came: 1, changed: 1, went: 1, kept: 1 }]);
    expect(countOutcomes(revise(scheduleOf(byHand), part, { lists: [] })))
      .toEqual({ came: 3, changed: 0, went: 0, kept: 0 });
    // All of the one is all of the other, or nothing of it.
    const whole = 'Device;Room;Qty\nRouter;Hall;5\nSensor;Hall;2\nSensor;Bar;1';
    expect(revise(scheduleOf(byHand), whole)).toMatchObject({ isAsked: false, fresh: 0, lists: [{ isRevised: true }] });
    expect(revise(scheduleOf(byHand), 'Device;Room;Qty\nRouter;Attic;5')).toMatchObject({ isAsked: false, fresh: 1, lists: [{ isRevised: false }] });
    // Also beside a list of which nothing comes.
    const beside = counted('Device;Room;Qty\nFlap drive;Roof;9', 'roof.csv');
    const ids = beside.document.freeIds('devices', 3);
    beside.act('by hand', [{ op: 'insert', sheet: 'devices', at: 1, rows: byHand.map((cells, index) => ({ id: ids[index]!, cells })) }]);
    expect(revise(beside, part, { name: 'floor.csv' })).toMatchObject({ isAsked: true, lists: [{ name: 'roof.csv', matched: 0 }, { name: '', rows: 3, matched: 2 }] });
  });

  it('asks where rows of several lists are in it', () => {
    const schedule = counted(list, 'ground floor.csv');
    revise(schedule, 'Device;Room;Qty\nSensor;Hall;1\nSensor;Bar;1', { name: 'first floor.csv', lists: [] }).take();
    const both = 'Device;Room;Qty\nRouter;Hall;3\nSensor;Hall;1';
    expect(revise(schedule, both, { name: 'C.csv' }).isAsked).toBe(true);
    const said = revise(schedule, both, { name: 'C.csv', lists: ['ground floor.csv', 'first floor.csv'] });
    expect(said).toMatchObject({ isAsked: false });
    expect(countOutcomes(said)).toEqual({ came: 0, changed: 0, went: 1, kept: 2 });
  });

  it('speaks of the whole file where a workbook comes with its sheets', () => {
    const schedule = scheduleOf([]);
    const sheet = (file: string, name: string, rows: string) => ({ file, sheet: name, cells: `Device;Room;Qty\n${rows}` });
    revise(schedule, [
      sheet('A.xlsx', 'L0', 'Router;Hall;3'), sheet('A.xlsx', 'L1', 'Router;Bar;4'), sheet('A.xlsx', 'L2', 'Router;Attic;5'),
    ]).take();
    expect(shortly(schedule, 'source')).toEqual([
      'A.xlsx › L0: 2 (Router › L0, Hall)', 'A.xlsx › L1: 2 (Router › L1, Bar)', 'A.xlsx › L2: 2 (Router › L2, Attic)',
    ]);
    const revision = revise(schedule, [sheet('B.xlsx', 'L0', 'Router;Hall;3'), sheet('B.xlsx', 'L1', 'Router;Bar;6')]);
    expect(countOutcomes(revision)).toEqual({ came: 0, changed: 1, went: 1, kept: 1 });
  });
});

describe('what went', () => {
  const schedule = () => counted('Ref;Device;Room;Qty\nE1;Router;Hall;3\nE2;Sensor;Hall;2');
  const without = 'Ref;Device;Room;Qty\nE1;Router;Hall;3';

  it('is marked, still counts, and is found with what would put it right', () => {
    const marked = schedule();
    revise(marked, without).take();
    const [, gone] = marked.rows('devices');
    expect(marked.value('devices', gone!.id, 'connected')).toBe(0.02);
    expect(marked.findings.filter(({ rule }) => rule === 'device-gone')).toMatchObject([{
      tag: 'E2', key: 'state', severity: 'incomplete',
      message: 'Ref E2 is no longer in its list, and its 2 devices still count. Delete the row, or empty its state where they stay.',
    }]);
  });

  it('is deleted where a person says so, in the same action', () => {
    const deleted = schedule();
    const before = deleted.content();
    revise(deleted, without, { gone: 'delete' }).take();
    expect(shortly(deleted, 'ref', 'qty')).toEqual(['E1 3']);
    deleted.undo();
    expect(deleted.content()).toEqual(before);
  });

  it('comes back with all that it had when the list has it again', () => {
    const again = schedule();
    revise(again, without).take();
    const revision = revise(again, `${without}\nE2;Sensor;Hall;5`);
    expect(revision.rows[1]).toMatchObject({ outcome: 'changed', before: 2, after: 5 });
    expect(revision.rows[1]!.reason).toBe('It was marked as gone, and the list has it again.');
    revision.take();
    expect(devicesOf(again)[1]).toEqual({ ref: 'E2', type: 'Sensor', area: 'Hall', qty: 5, source: 'list.csv: 3 (Sensor › Hall › E2)' });
  });

  it('has not gone where a line that nobody decided on may mean it', () => {
    const open = counted('Device;Room;Qty\nRouter;Hall;3\nSensor;Hall;2\nSensor;Bar;2');
    const revision = revise(open, 'Device;Room;Qty\nRouter;Hall;3\nSensor;Hall;ca. 4');
    expect(revision.rows.map(({ outcome, area, after }) => [outcome, area, after]))
      .toEqual([['kept', 'Hall', 3], ['kept', 'Hall', 2], ['went', 'Bar', null]]);
    expect(revision.rows[1]!.reason).toBe('Line 3 of the list, which is undecided, may mean it.');
  });
});

describe('a row that was shared out', () => {
  const types = 'Device;Room;Qty\n';
  /** 10 routers of one line: 4 on B1, 3 on B2 with a run of their own, 3 on none. */
  function shared(rest: Cells = { qty: 3 }): LoadSchedule {
    const own = { type: 'Router', area: 'Hall', rail: 'P1', source: 'list.csv: 2' };
    return scheduleOf([
      { ref: 'E1', ...own, qty: 4, branch: 'B1' }, { ref: 'E1/2', ...own, qty: 3, branch: 'B2', run: 'R1', distance: 5 },
      ...'qty' in rest ? [{ ref: 'E1/3', ...own, ...rest }] : [],
    ]);
  }
  const taken = (schedule: LoadSchedule, qty: number, options = {}) => {
    revise(schedule, `${types}Router;Hall;${qty}`, options).take();
    return shortly(schedule, 'ref', 'qty', 'branch', 'rail', 'run');
  };

  it('stays as it is while its sum does', () => {
    expect(taken(shared(), 10)).toEqual(['E1 4 B1 P1 -', 'E1/2 3 B2 P1 R1', 'E1/3 3 - P1 -']);
  });

  it('loses what is on no branch first, then where the least is known', () => {
    expect(taken(shared(), 8)).toEqual(['E1 4 B1 P1 -', 'E1/2 3 B2 P1 R1', 'E1/3 1 - P1 -']);
    expect(taken(shared(), 5)).toEqual(['E1 2 B1 P1 -', 'E1/2 3 B2 P1 R1', 'E1/3 0 - P1 -']);
  });

  it('gets what comes on the part that is on no branch', () => {
    expect(taken(shared(), 12)).toEqual(['E1 4 B1 P1 -', 'E1/2 3 B2 P1 R1', 'E1/3 5 - P1 -']);
  });

  it('gets a part of its own for what comes where all are shared out, with what they have in common', () => {
    const schedule = shared({});
    expect(taken(schedule, 12)).toEqual(['E1 4 B1 P1 -', 'E1/2 3 B2 P1 R1', 'E1/3 5 - P1 -']);
    expect(taken(schedule, 12)).toHaveLength(3);
  });

  it('is filled again where an earlier list left it empty', () => {
    const schedule = shared({});
    expect(taken(schedule, 4)).toEqual(['E1 1 B1 P1 -', 'E1/2 3 B2 P1 R1']);
    const empty = scheduleOf([
      { ref: 'E1', type: 'Router', area: 'Hall', source: 'list.csv: 2', qty: 4, branch: 'B1' },
      { ref: 'E1/2', type: 'Router', area: 'Hall', source: 'list.csv: 2', qty: 0, branch: 'B2' },
    ]);
    expect(taken(empty, 9)).toEqual(['E1 4 B1 - -', 'E1/2 5 B2 - -']);
  });

  it('keeps parts that formulas name as long as others can give', () => {
    const schedule = shared();
    const third = schedule.rows('devices')[2]!.id;
    schedule.act('sum', [{ op: 'insert', sheet: 'outputs', at: 0, rows: [
      { id: 0, cells: { output: 'O1', qty: `=⟦devices#qty@${third}⟧` } },
    ] }]);
    expect(taken(schedule, 8)).toEqual(['E1 2 B1 P1 -', 'E1/2 3 B2 P1 R1', 'E1/3 3 - P1 -']);
    expect(schedule.value('outputs', 0, 'qty')).toBe(3);
  });

  it('is one line also where sources are not known but refs were parted', () => {
    const schedule = scheduleOf(devicesOf(shared()).map(({ source: _, ...cells }) => cells));
    revise(schedule, 'Ref;Device;Room;Qty\nE1;Router;Hall;12').take();
    expect(shortly(schedule, 'ref', 'qty', 'source')).toEqual(['E1 4', 'E1/2 3', 'E1/3 5'].map((row) => `${row} list.csv: 2 (Router › Hall › E1)`));
  });
});

describe('a quantity that is a formula', () => {
  it('stays where it comes to what the list says, and gives way where not, which is said', () => {
    const schedule = scheduleOf([{ type: 'Router', area: 'Hall', qty: '=2*3', source: 'list.csv: 2' }]);
    expect(revise(schedule, 'Device;Room;Qty\nRouter;Hall;6').rows).toMatchObject([{ outcome: 'kept' }]);
    const revision = revise(schedule, 'Device;Room;Qty\nRouter;Hall;7');
    expect(revision.rows).toMatchObject([{ outcome: 'changed', before: 6, after: 7 }]);
    expect(revision.rows[0]!.reason).toBe('The number of the list takes the place of a formula.');
    revision.take();
    expect(shortly(schedule, 'qty')).toEqual(['7']);
  });
});
