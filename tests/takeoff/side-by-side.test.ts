import { expect, it } from 'vitest';
import { partOf, type TakeoffSource } from '../../src/exchange/takeoff/index.ts';
import { read } from './support.ts';

/** What is taken, left out as a total and asked about: «3/7: 4 Light sensor @ Bar». */
function inWords(source: TakeoffSource) {
  const { lines } = read(source);
  const of = (...outcomes: string[]) => lines.filter(({ outcome }) => outcomes.includes(outcome))
    .map(({ key, qty, type, area }) => `${key}: ${qty} ${type} @ ${area}`);
  return { taken: of('taken', 'merged'), asked: of('undecided') };
}

it('lists side by side are both read, each with its areas, titles and totals, and said', () => {
  const list = 'Level 1\nRoom;Device;Qty;;Room;Device;Qty\nHall;Router;1;;Bar;Light sensor;4\n;Light sensor;2;;;Router;5\n;;;;Pub;Router;5\nTotal;;3;;Total;;14';
  expect(inWords(list)).toEqual({ asked: [], taken: [
    '3/3: 1 Router @ Level 1, Hall', '3/7: 4 Light sensor @ Level 1, Bar', '4/3: 2 Light sensor @ Level 1, Hall', '4/7: 5 Router @ Level 1, Bar', '5/7: 5 Router @ Level 1, Pub',
  ] });
  const { sums, notes, lines, parts } = read(list);
  // 3 + 14 devices, and their totals once more.
  expect(sums).toEqual({ read: 34, taken: 17, leftOut: 17, undecided: 0, inTotals: 17 });
  expect(notes).toEqual(['2 lists stand side by side. Each is read by itself.']);
  expect(lines.map((line) => parts.indexOf(partOf(line, parts)))).toEqual([0, 1, 0, 1, 0, 1, 0, 1, 1, 0, 1]);
});

it.each([
  ['without a blank column', 'Device;Qty;Device;Qty\nRouter;1;Light sensor;4', ['2/2: 1 Router @ null', '2/4: 4 Light sensor @ null']],
  ['with a title each', 'Level 1;;;Level 2\nDevice;Qty;;Device;Qty\nRouter;1;;Light sensor;4', ['3/2: 1 Router @ Level 1', '3/5: 4 Light sensor @ Level 2']],
  ['with a title above both', 'Level 1\nDevice;Qty;;Device;Qty\nRouter;1;;Light sensor;4', ['3/2: 1 Router @ Level 1', '3/5: 4 Light sensor @ Level 1']],
  ['with a room in front of both', 'Room;Device;Qty;Device;Qty\nHall;Router;1;Light sensor;4', ['2/3: 1 Router @ Hall', '2/5: 4 Light sensor @ Hall']],
  ['under headings of their own words and lines', 'Device;Qty\nRouter;1\nRouter;3;;Gerät;Menge\nRouter;2;;Light sensor;9', [
    '2/2: 1 Router @ null', '3/2: 3 Router @ null', '4/2: 2 Router @ null', '4/5: 9 Light sensor @ null',
  ]],
  ['as matrices', 'Room;Router;Light sensor;;Room;Router;Light sensor\n101;1;2;;201;3;4', [
    '2/2: 1 Router @ 101', '2/3: 2 Light sensor @ 101', '2/6: 3 Router @ 201', '2/7: 4 Light sensor @ 201',
  ]],
  ['beside a legend', 'Code;Room;Qty;;Code;Description\nAb;Hall;3;;Ab;Light sensor\nCd;Bar;4;;Cd;Router', [
    '2/3: 3 Light sensor @ Hall', '3/3: 4 Router @ Bar',
  ]],
])('so they are %s', (_, source, taken) => {
  expect(inWords(source)).toEqual({ taken, asked: [] });
});

it('columns between which one stays blank are one list where they are not two', () => {
  expect(inWords('Ref;Device;Qty;;Room;Remarks\nA1;Router;3;;Hall;x').taken).toEqual(['2: 3 Router @ Hall']);
});

it('a list that adds up another one, beside it or below, is asked about', () => {
  const rooms = ['Hall;Router;1', 'Bar;Router;3', 'Bar;Light sensor;2'];
  const beside = `Room;Device;Qty;;Device;Qty\n${rooms[0]};;Router;4\n${rooms[1]};;Light sensor;2\n${rooms[2]}`;
  expect(inWords(beside).asked).toEqual(['2/6: 4 Router @ null', '3/6: 2 Light sensor @ null']);
  expect(read(beside).sums).toMatchObject({ taken: 6, undecided: 6 });
  const below = `Room;Device;Qty\n${rooms.join('\n')}\n\nDevice;Quantity\nRouter;4\nLight sensor;2`;
  expect(inWords(below).asked).toEqual(['7: 4 Router @ null', '8: 2 Light sensor @ null']);
  // On a sheet of its own too, though another storey may be equal.
  const detail = { sheet: 'L1', cells: `Room;Device;Qty\n${rooms.join('\n')}` };
  expect(inWords([{ sheet: 'Order', cells: 'Device;Qty\nRouter;4\nLight sensor;2' }, detail]).asked).toHaveLength(2);
  expect(inWords([detail, { ...detail, sheet: 'L2' }]).asked).toEqual([]);
});
