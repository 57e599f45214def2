import { expect, test } from 'vitest';
import { findingsAt, scheduleOf } from '../support/schedules.ts';

/** Names and code points as of the Unicode Standard, chapter 23 (special areas and format characters) and annex 9. */
const HIDDEN: readonly (readonly [string, string])[] = [
  ['\u00ad', 'U+00AD'], ['\u200b', 'U+200B'], ['\u200c', 'U+200C'], ['\u200d', 'U+200D'], ['\u200e', 'U+200E'],
  ['\u200f', 'U+200F'], ['\u061c', 'U+061C'],
  ['\u202a', 'U+202A'], ['\u202e', 'U+202E'], ['\u2060', 'U+2060'], ['\u2066', 'U+2066'], ['\u2069', 'U+2069'],
  ['\ufeff', 'U+FEFF'], ['\u{e0041}', 'U+E0041'],
];

test.each(HIDDEN)('%j in a reference is named as %s, and deleting it finds the supply again', (character, name) => {
  const schedule = scheduleOf(
    { supplies: [{ rail: 'L1', rated: 1 }], devices: [{ ref: 'D1', qty: 1, unitDraw: 500, rail: `L${character}1` }] }
  );
  const found = findingsAt(schedule, 'devices').filter(({ key }) => key === 'rail');
  expect(found.map(({ rule }) => rule)).toEqual(['hidden-character']);
  const remedy = schedule.remedy(found[0]!)!;
  expect(remedy.label).toBe(`Delete ${name}`);
  schedule.act(remedy.label, remedy.changes());
  expect(schedule.rows('devices')[0]!.cells.rail).toBe('L1');
  expect(findingsAt(schedule, 'devices').filter(({ key }) => key === 'rail')).toEqual([]);
  // 1 × 500 mA
  expect(schedule.value('supplies', schedule.rows('supplies')[0]!.id, 'demand')).toBeCloseTo(0.5, 12);
  expect(schedule.undo()).toBe(`Delete ${name}`);
  expect(schedule.rows('devices')[0]!.cells.rail).toBe(`L${character}1`);
});

test('deleting it in a tag lets the references to it follow, and those without it find their row', () => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1\u200b', rated: 1 }],
    devices: [{ ref: 'D1', qty: 1, unitDraw: 1, rail: 'L1' }, { ref: 'D2', qty: 1, unitDraw: 1, rail: 'L1\u200b' }],
  });
  const of = (sheet: 'devices' | 'supplies') =>
    schedule.findings.filter((each) => each.sheet === sheet && each.key === 'rail' && each.severity === 'incomplete')
    .map(({ tag, rule }) => [tag, rule]);
  expect(of('devices')).toEqual([['D1', 'tag-names-nothing'], ['D2', 'hidden-character']]);
  const found = findingsAt(schedule, 'supplies').find(({ rule }) => rule === 'hidden-character')!;
  schedule.act('Delete', schedule.remedy(found)!.changes());
  expect([schedule.rows('supplies')[0]!.cells.rail, ...schedule.rows('devices').map(({ cells }) => cells.rail)])
    .toEqual(['L1', 'L1', 'L1']);
  expect([...of('devices'), ...of('supplies')]).toEqual([]);
});

test('a finding about which a person must decide has no remedy', () => {
  const schedule = scheduleOf({ devices: [{ ref: 'D1', qty: 1, unitDraw: 1, rail: 'L9' }] });
  for (const finding of findingsAt(schedule, 'devices')) expect(schedule.remedy(finding)).toBeUndefined();
});
