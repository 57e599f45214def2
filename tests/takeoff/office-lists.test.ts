import { mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import {
  chooseColumn, officeColumns, readTakeoff, takeoffChanges, withOfficeNames, type Takeoff,
} from '../../src/exchange/takeoff/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { OfficeLists } from '../../src/schedule/index.ts';
import { runCommand } from './run-command.ts';

const file = (lists: unknown) => JSON.stringify({
  format: 'elv-load-schedule', version: 2, details: {}, sheets: { types: [{ type: 'Lamp' }] }, lists,
});

function opened(lists: unknown): LoadSchedule {
  const read = readSchedule(file(lists));
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return new LoadSchedule(read.content);
}

/** Reads a list as the takeoff of a schedule does. */
function read(schedule: LoadSchedule, text: string, columns = {}, names = {}): Takeoff {
  const { lists } = schedule.document;
  const takeoff = readTakeoff(text, {
    types: schedule.rows('types').map(({ cells }) => cells), columns: { ...officeColumns(lists), ...columns },
    decisions: withOfficeNames({ names }, lists),
  });
  if (!takeoff.ok) throw new Error(takeoff.problems[0]!.message);
  return takeoff;
}

const take = (schedule: LoadSchedule, takeoff: Takeoff) =>
  schedule.act('Takeoff', takeoffChanges(schedule.document, takeoff));

const LIST = 'Device,Bay,Stock,How many\nLamp,Jetty,9,3\nSpare kit,Jetty,1,2\n';

test('a heading of an own meaning, and a name that counts nothing, are known the next time', () => {
  const schedule = opened(undefined);
  const plain = read(schedule, LIST);
  expect(plain.sums).toMatchObject({ taken: 5 });
  const chosen = chooseColumn(plain.columns, 1, 'note');
  take(schedule, read(schedule, LIST, chosen, { sparekit: 'leave-out' }));
  // «Device» and «How many» say themselves what they hold, and «Stock» is read by nobody.
  const lists: OfficeLists = { headings: { Bay: 'note' }, names: { 'Spare kit': 'leave-out' } };
  expect(JSON.parse(writeSchedule(schedule.content()))).toMatchObject({ lists });

  const again = opened(lists);
  const second = read(again, 'Bay,How many,Device\nSlip,4,Lamp\nSlip,7,SPARE KIT\n');
  expect(second.sums).toMatchObject({ read: 11, taken: 4, leftOut: 7, undecided: 0 });
  expect(second.rows).toEqual([{ type: 'Lamp', note: 'Slip', qty: 4 }]);
  expect(second.lines[2]!.reason).toBe('“SPARE KIT” is left out by decision.');
});

test('what is decided otherwise later is forgotten, and an undo takes it back with the devices', () => {
  const lists: OfficeLists = {
    headings: { 'Bay': 'note', 'Pos.': 'area' }, names: { 'Spare kit': 'leave-out', 'Duct': 'leave-out' },
  };
  const schedule = opened(lists);
  const first = read(schedule, LIST);
  take(schedule, read(schedule, LIST, chooseColumn(first.columns, 1, undefined), { sparekit: 'new' }));
  expect(schedule.document.lists).toEqual({ headings: { 'Pos.': 'area' }, names: { Duct: 'leave-out' } });
  schedule.undo();
  expect(schedule.document.lists).toEqual(lists);
  expect(schedule.rows('devices')).toHaveLength(0);
});

test('a takeoff that adds nothing to what is known leaves it, and a file without any says nothing of it', () => {
  const schedule = opened(undefined);
  take(schedule, read(schedule, 'Device,Qty\nLamp,3\n'));
  expect(schedule.document.lists).toBeUndefined();
  expect(JSON.parse(writeSchedule(schedule.content()))).not.toHaveProperty('lists');
});

test('a file keeps what newer software calls things', () => {
  const lists = { headings: { Reel: 'of-tomorrow' }, names: { Lamp: 'of-tomorrow' }, colours: [7] };
  const schedule = opened(lists);
  expect(read(schedule, 'Device,Reel,Qty\nLamp,2,3\n').sums).toMatchObject({ taken: 3 });
  expect(JSON.parse(writeSchedule(schedule.content()))).toMatchObject({ lists });
});

test.each([
  [7, '/lists'], [{ headings: [] }, '/lists/headings'], [{ names: { Lamp: 3 } }, '/lists/names'],
])('lists that are none are refused: %j', (lists, path) => {
  expect(readSchedule(file(lists))).toMatchObject({ ok: false, problems: [{ path, code: 'wrong-kind' }] });
});

test('the terminal knows what the schedule that it is given calls things, and writes it back', async () => {
  const folder = await mkdtemp(path.join(tmpdir(), 'lists-'));
  const [types, list] = [path.join(folder, 'office.schedule.json'), path.join(folder, 'list.csv')];
  const lists: OfficeLists = { headings: { Wanted: 'qty' }, names: { 'Spare kit': 'leave-out' } };
  await writeFile(types, file(lists));
  await writeFile(list, 'Device,Stock,Wanted\nLamp,9,3\nSpare kit,1,2\n');
  const output = path.join(folder, 'written.json');
  const { code, out } = await runCommand(list, '--types', types, '--output', output);
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject({ read: 5, taken: 3, leftOut: 2, undecided: 0 });
  expect(JSON.parse(await readFile(output, 'utf8'))).toMatchObject({ lists });
});

test('what a code became is the same the next time, also where another device made it a type', () => {
  const schedule = new LoadSchedule({ details: {}, sheets: { types: [{ type: 'Push-button station', aliases: 'Wall button' }, { type: 'Damper actuator' }] } });
  const list = 'Code;Description;Qty\nK2;Push-button station;4\nK2;Wall button;2\nK2;2-key wall board;1\nDA;Damper actuators;3\n';
  take(schedule, read(schedule, list, {}, { 'da | damperactuators': { type: 'Damper actuator' } }));
  const types = (takeoff: Takeoff) => takeoff.lines.slice(1).map(({ outcome, type }) => `${outcome} ${type}`);
  const again = read(schedule, list);
  expect(types(again)).toEqual(['taken Push-button station', 'merged Push-button station', 'taken K2', 'taken Damper actuator']);
  // Nothing more is to be remembered then.
  const { types: before } = schedule.content().sheets;
  take(schedule, again);
  expect(schedule.content().sheets.types).toEqual(before);
  expect(before!.map(({ aliases }) => aliases)).toEqual(['Wall button; K2, Push-button station; K2, Wall button', 'DA, Damper actuators', undefined]);
});
