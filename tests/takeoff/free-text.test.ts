import { expect, it } from 'vitest';
import type { TakeoffSource } from '../../src/exchange/takeoff/index.ts';
import { read } from './support.ts';

const inWords = (source: TakeoffSource) => read(source, { types: [{ type: 'PIR' }, { type: 'Router' }] }).lines
  .filter(({ outcome }) => outcome !== 'left-out').map(({ line, outcome, qty, type, area }) => `${line} ${outcome} ${qty} ${type} @ ${area}`);

it.each([
  ['the number in front', '4 x PIR\n4x Router', ['1 taken 4 PIR @ null', '2 taken 4 Router @ null']],
  ['the number behind', 'PIR x 4\nRouter x3\nPIR (x2)\nRouter 5x', ['1 taken 4 PIR @ null', '2 taken 3 Router @ null', '3 merged 2 PIR @ null', '4 merged 5 Router @ null']],
  ['words for pieces', '4 no. PIR\n3 Stk Router\nPIR 2 pcs', ['1 taken 4 PIR @ null', '2 taken 3 Router @ null', '3 merged 2 PIR @ null']],
  ['bullets', '- 4 x PIR\n• 3 × Router', ['1 taken 4 PIR @ null', '2 taken 3 Router @ null']],
  ['a room above', 'Hall:\n4 x PIR\n\nBar\nRouter x 3', ['2 taken 4 PIR @ Hall', '5 taken 3 Router @ Bar']],
  ['a room in front', 'Hall: 4 x PIR\nBar: 3x Router', ['1 taken 4 PIR @ Hall', '2 taken 3 Router @ Bar']],
  ['commas in names', '4 x Switch, 2 keys, white\n3 x PIR', ['1 taken 4 Switch, 2 keys, white @ null', '2 taken 3 PIR @ null']],
  ['cells of one column', [['Hall'], ['4 x PIR'], [null], ['Router x 3']], ['2 taken 4 PIR @ Hall', '4 taken 3 Router @ Hall']],
  ['a letter', 'Dear all,\nwe need:\n4 x PIR\n2x Router\nThanks', ['3 taken 4 PIR @ we need', '4 taken 2 Router @ we need']],
  ['one line', '4 x PIR', ['1 taken 4 PIR @ null']],
])('each line of a text is a quantity and a name: %s', (_, source, expected) => {
  expect(inWords(source)).toEqual(expected);
});

it('what may be part of a name, several devices in a line and a wrong total are asked about; rooms with numbers are rooms', () => {
  expect(inWords('101 Office\n4 x PIR\n2 x 4-gang button\n3 Router\nPIR: 6\n2 x Router, 3 x PIR\n5 x Router\nTotal: 25')).toEqual([
    '2 taken 4 PIR @ 101 Office', '3 undecided 2 4-gang button @ 101 Office', '4 undecided 3 Router @ 101 Office', '5 undecided 6 PIR @ 101 Office',
    '6 undecided null null @ 101 Office', '7 taken 5 Router @ 101 Office', '8 undecided 25 null @ null',
  ]);
  expect(inWords('4 x PIR\n3 x Router\nTotal: 7').at(-1)).toBe('2 taken 3 Router @ null');
});

it('two devices in a line are no half of them, and a number behind a place is asked about', () => {
  expect(inWords('Hall: PIR x 4, router x 2\n4 x PIR\nRoof: 1 Router\nKitchen - 2 PIR\nBar: 3 no. PIR\n7 x Router')).toEqual([
    '1 undecided null null @ null', '2 taken 4 PIR @ null', '3 undecided 1 Router @ Roof', '4 undecided 2 PIR @ Kitchen', '5 taken 3 PIR @ Bar',
    '6 taken 7 Router @ Bar',
  ]);
});

it('a table is none, also with such quantities', () => {
  expect(inWords('Device,Qty\nRouter,4x\nPIR,3 x')).toEqual(['2 taken 4 Router @ null', '3 taken 3 PIR @ null']);
  expect(inWords('Device,Hall (x3),Bar (x3)\nRouter,1,\nPIR,,2')).toEqual(['2 undecided 3 Router @ Hall x3', '3 undecided 6 PIR @ Bar x3']);
  expect(inWords('Qty,Device\n4x,Router')).toEqual(['2 taken 4 Router @ null']);
});
