import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { ScheduleDocument, toContent, toSnapshot, type Cells, type Content } from '../../src/schedule/index.ts';
import { idAt, reference, scheduleOf, typeFormula } from '../support/schedules.ts';
import { processorTime } from '../support/processor-time.ts';

const HOSTILE = 'it\'s [a] "tag" @1:2#3 ⟦x⟧';
const DEVICES: Cells[] = [
  {
    ref: 'L1-001', qty: 2,
  }, { ref: 'L1 002', qty: 3 }, { ref: HOSTILE, qty: 4 }, { ref: 'twice', qty: 5 }, { ref: 'twice', qty: 6 },
  { qty: 7 }, { ref: '2×1.5', qty: 8 }, { ref: 'x'.repeat(200), qty: 9 },
];
const schedule = () =>
  scheduleOf({ devices: DEVICES, types: [{ type: 'T', draw: 100 }], supplies: [{ rail: 'L1', rated: 10 }] });

/** What a file holds of a formula that is typed into the distance of the first row. */
function saved(typed: string): unknown {
  const one = schedule();
  expect(typeFormula(one, 'devices', 0, 'distance', typed)).toBeUndefined();
  return one.content().sheets.devices![0]!.distance;
}

/** What a file holds with a text in the distance of the first row. */
function withDistance(distance: string): Content {
  const { sheets } = schedule().content();
  return { details: {}, sheets: { ...sheets, devices: [{ ...DEVICES[0], distance }, ...DEVICES.slice(1)] } };
}

describe('a file names', () => {
  test.each([
    ['a cell of the same row', '=D1*2', '=[qty]*2'],
    ['a row by its tag', `=D1+${reference('types', 'draw')}`, '=[qty]+[types.draw@T]'],
    ['a tag of several words in quotes', '=D2', "=[devices.qty@'L1 002']"],
    ['a tag of every sign, with its quotes doubled', '=D3', '=[devices.qty@\'it\'\'s [a] "tag" @1:2#3 ⟦x⟧\']'],
    ['a row that shares its tag by its place', '=D4+D5', '=[devices.qty#4]+[devices.qty#5]'],
    ['a row without a tag by its place', '=D6', '=[devices.qty#6]'],
    ['a row with a tag that is too long by its place', '=D8', '=[devices.qty#8]'],
    ['a range by places', '=SUM(D2:D5)', '=SUM([devices.qty#2:#5])'],
    ['a range over columns by both', `=SUM(${reference('supplies', 'rated')}:${reference('supplies', 'units').split('!')[1]})`, '=SUM([supplies.rated#1:units#1])'],
    [
      'what a dollar sign keeps', '=$D2+D$2+$D$1+SUM(D$2:$D4)',
      "=[devices.$qty@'L1 002']+[devices.qty$@'L1 002']+[$qty$]+SUM([devices.qty$#2:$qty#4])",
    ],
    ['one corner for both where they are alike', '=SUM($D$2:$D4)', '=SUM([devices.$qty$#2:#4])'],
    ['figures', `=${reference('supplies', 'loading')}`, '=[supplies.loading@L1]'],
    ['nothing in a text', '=IF("D1"="[qty]";1;2)', '=IF("D1"="[qty]";1;2)'],
    ['a missing row as such', '=#REF!+1', '=#REF!+1'],
  ])('%s', (_what, typed, text) => {
    expect(saved(typed)).toBe(text);
    const { snapshot, problems } = toSnapshot(withDistance(text));
    expect(problems).toEqual([]);
    const again = new ScheduleDocument(snapshot);
    expect(toContent(again).sheets.devices![0]!.distance).toBe(text);
    const read = schedule().checkFormula('devices', 'distance', typed);
    expect(again.rows('devices')[0]!.cells.distance).toBe(read.ok && read.value);
  });
});

/** What is wrong with a formula of a file, in the distance of the first row. */
const problemOf = (text: string) =>
  toSnapshot(withDistance(text)).problems.map(({ row, key, problem }) => [row, key, problem]);

describe('a formula of a file is refused with a sentence', () => {
  test.each([
    ['a sheet that is not there', '=[lamps.qty#1]', 'There is no sheet lamps: the sheets are devices, types,'],
    [
      'a key that is not there', '=[devices.colour#1]',
      'The sheet devices has no column “colour”. Write one of its keys: ref, area, type, qty,',
    ],
    [
      'a tag that is not there', '=[devices.qty@L9]',
      'No row of the sheet devices has the tag “L9”, which the formula names. Write a tag that stands there,',
    ],
    [
      'a tag that stands twice', '=[devices.qty@twice]',
      'More than one row of the sheet devices has the tag “twice”, which the formula names. Name the row by its number: #4 or #5.',
    ],
    ['a place that is not there', '=[devices.qty#9]', 'The sheet devices has no row 9: refer to a row that is there.'],
    ['the place 0', '=[devices.qty#0]', 'The sheet devices has no row 0: refer to a row that is there.'],
    [
      'no row of another sheet', '=[types.draw]',
      '[types.draw] names no row of the sheet types. Add @ and its tag, or # and its number.',
    ],
    [
      'a status', '=[supplies.status@L1]',
      'Status of the sheet supplies is calculated last and no formula can read it.',
    ],
    [
      'letters', '=D1*2',
      'The formula names D1 by letter and number, which mean nothing in a file. Name it by key and row: [qty] in the same row,',
    ],
    ['letters of another sheet', '=types!D1', 'The formula names D1 by letter'],
    ['letters in brackets', '=[.D1]', '[.D1] cannot be read. Name a cell as [qty] in the same row,'],
    ['whole columns', '=SUM(D:D)', 'The formula cannot be read at :: in a file, refer to cells as [qty],'],
    ['a bracket without its end', '=[qty', 'The formula cannot be read at [: in a file, refer to cells as [qty],'],
    ['too many signs', `=${'[qty]+'.repeat(1001)}1`, 'The formula has 2004 characters; at most 2000 are allowed.'],
    [
      'the signs by which documents keep references', '=⟦devices#qty@0⟧',
      'The signs ⟦ and ⟧ cannot stand in a formula.',
    ],
  ])('for %s', (_what, text, sentence) => {
    expect(problemOf(text)).toEqual([[1, 'distance', expect.stringContaining(sentence)]]);
  });

  test('in time, whatever it is made of', () => {
    const taken = processorTime();
    for (
      const part of ['[', "['", '[\'a', '["', '"', "'", '[devices.qty@', "[a.b@'''", '[qty#1:', '[qty]', '1e', 'D1']
    ) {
      expect(problemOf(`=${part.repeat(20_000)}`)).toHaveLength(1);
      expect(problemOf(`=${part.repeat(2_000_000)}`)).toHaveLength(1);
    }
    expect(taken()).toBeLessThan(5000);
  });
});

test('a formula that can be typed can be saved, however long the tags are that it names', () => {
  const tag = 'long tag, '.repeat(9).trim();
  const one = scheduleOf({ devices: [{ qty: 1 }, { ref: tag, qty: 2 }] });
  expect(typeFormula(one, 'devices', 0, 'distance', `=${'D2+'.repeat(660)}1`)).toBeUndefined();
  const again = new LoadSchedule(one.content());
  expect([again.formulaProblems, again.value('devices', 0, 'distance')]).toEqual([[], 1321]);
});

const someTag =
  fc.oneof(fc.string({ unit: 'grapheme' }), fc.string({ unit: fc.constantFrom(...Array.from('\'"[]@#:$. ⟦⟧a1=')) }));
test('formulas come back as they were, whatever the tags are', () => {
  fc.assert(fc.property(fc.array(fc.option(someTag), { minLength: 3, maxLength: 6 }), (tags) => {
    const one = scheduleOf({ devices: tags.map((ref, row) => (
      { qty: row, ...(ref === null || ref === '' ? {} : { ref }) }
    )) });
    expect(typeFormula(one, 'devices', 0, 'distance', '=D1+D2*$D$3+SUM(D1:D3)')).toBeUndefined();
    const again = new LoadSchedule(one.content());
    expect(again.formulaProblems).toEqual([]);
    expect(again.rows('devices')[0]!.cells.distance).toBe(one.rows('devices')[0]!.cells.distance);
    expect(again.value('devices', idAt(again, 'devices'), 'distance')).toBe(1 * 2 + 0 + 3);
  }));
});
