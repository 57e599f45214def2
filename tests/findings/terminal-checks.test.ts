import { expect, test } from 'vitest';
import type { Cells } from '../../src/schedule/index.ts';
import { layOutTerminals, layoutChanges } from '../../src/terminals/index.ts';
import { idAt, scheduleOf } from '../support/schedules.ts';

/** Two rails, a feed with two outputs, a branch, and terminals; of each only what a test needs. */
function panelWith(terminals: readonly Cells[], more: Readonly<Record<string, readonly Cells[]>> = {}) {
  return scheduleOf({
    supplies: [{ rail: 'L1', rated: 40 }, { rail: 'L2', rated: 10 }],
    ways: [{ way: 'F1', rail: 'L1', rated: 10 }, { way: 'F2', rail: 'L1', rated: 10 }],
    runs: [{ run: 'R1', way: 'F1' }, { run: 'R2', way: 'F2' }],
    feeds: [{ feed: 'M1', rated: 16 }, { feed: 'M2', rated: 16 }],
    outputs: ['Q1', 'Q2'].map((output) => ({ output, feed: 'M1', kind: 'resistive', power: 3680 })),
    branches: [{ branch: 'B1', limit: 10 }],
    ...more, terminals,
  });
}

const found = (schedule: ReturnType<typeof panelWith>, at = 0) =>
  schedule.findingsOf('terminals', idAt(schedule, 'terminals', at)).map(({ rule, severity, message }) => ({ rule, severity, message }));
const rules = (schedule: ReturnType<typeof panelWith>, at = 0) => found(schedule, at).map(({ rule }) => rule);
const at = (number: number, cells: Cells): Cells => ({ terminal: `X1:${number}`, strip: 'X1', ...cells });
const plus = (way: string, cells: Cells = {}): Cells => ({ potential: `${way} L+`, inside: `${way}:2`, ...cells });

test('a terminal that holds nothing, or is as it is to be, is within limits', () => {
  const schedule = panelWith([at(1, plus('F1', { outside: 'R1', core: '1', size: 2.5, maxSize: 2.5 })), at(2, {})]);
  expect([0, 1].map((place) => schedule.standing('terminals', idAt(schedule, 'terminals', place)))).toEqual(['ok', 'ok']);
});

test('two potentials on one bridge are over, on each of its terminals', () => {
  const schedule = panelWith([
    at(1, plus('F1', { bridge: 'a' })), at(2, { potential: 'L1 L-', inside: 'L1:-', bridge: 'a' }), at(3, plus('F2')),
  ]);
  expect(found(schedule)).toEqual([{
    rule: 'terminal-bridge-shorts', severity: 'over',
    message: 'Terminal X1:1 is bridged with another potential, L1 L-: that shorts a supply, or brings mains into extra-low voltage. Take it out of the bridge a, or correct its potential.',
  }]);
  expect(rules(schedule, 1)).toEqual(['terminal-bridge-shorts']);
  expect(rules(schedule, 2)).toEqual([]);
});

test('terminals of one potential that are neither bridged nor wired with each other', () => {
  const schedule = panelWith([
    at(1, plus('F1')), at(2, { potential: 'F1 L+', outside: 'R1', core: '1' }), at(3, { potential: 'F1 L+', inside: 'X1:1' }),
  ]);
  expect(found(schedule, 1)).toMatchObject([{ rule: 'terminal-apart', severity: 'near' }]);
  // By a conductor from terminal to terminal it is joined; two conductors come to X1:1 then.
  expect([rules(schedule), rules(schedule, 2)]).toEqual([['terminal-crowded'], ['terminal-crowded']]);
});

test('two conductors on one connection, and one alone', () => {
  const schedule = panelWith([at(1, plus('F1')), at(2, plus('F1')), at(3, plus('F2'))]);
  expect(found(schedule)).toEqual([{
    rule: 'terminal-crowded', severity: 'near',
    message: 'Terminal X1:1: 2 conductors come to F1:2, where one is to be. Use a bridge, or another terminal.',
  }]);
  expect(rules(schedule, 2)).toEqual([]);
});

test('a potential to which nothing inside is wired', () => {
  const schedule = panelWith([at(1, { potential: 'F1 L+', outside: 'R1', core: '1' })]);
  expect(found(schedule)).toMatchObject([{ rule: 'terminal-unfed', severity: 'near' }]);
});

test('a neutral that comes in from a feed is fed by its cable', () => {
  const schedule = panelWith([
    at(1, { potential: 'M1 N', outside: 'M1', core: 'N', bridge: 'n' }), at(2, { potential: 'M1 N', outside: 'Q1', core: 'N', bridge: 'n' }),
  ]);
  expect([rules(schedule), rules(schedule, 1)]).toEqual([[], []]);
});

test.each<[number | null, number | null, string[]]>([
  [4, 2.5, ['terminal-too-small']], [2.5, 2.5, []], [null, 2.5, []], [4, null, []],
])('a conductor of %s mm² in a terminal of %s mm²', (size, maxSize, expected) => {
  expect(rules(panelWith([at(1, plus('F1', { size, maxSize }))]))).toEqual(expected);
});

test('a core twice: on two terminals of a panel, but a feed goes on to another one', () => {
  const twice = panelWith([at(1, plus('F1', { outside: 'R1', core: '1', bridge: 'a' })), at(2, { potential: 'F1 L+', outside: 'R1', core: '1', bridge: 'a' })]);
  expect(found(twice)).toMatchObject([{ rule: 'terminal-core-twice', severity: 'over' }]);
  const goesOn = panelWith([
    at(1, { potential: 'M1 L', outside: 'M1', core: '2:L', enclosure: 'A' }), { ...at(1, { potential: 'M1 L', outside: 'M1', core: '2:L', enclosure: 'B' }), terminal: 'X9:1', strip: 'X9' },
  ], { enclosures: [{ enclosure: 'A' }, { enclosure: 'B' }] });
  expect([rules(goesOn), rules(goesOn, 1)]).toEqual([[], []]);
});

test('mains beside extra-low voltage, by number and not by row, with and without a partition; PE is neither', () => {
  const mains = { potential: 'Q1 L', inside: 'Q1:14', outside: 'Q1', core: 'L' };
  const schedule = (partition: boolean) => panelWith([at(3, plus('F1')), at(1, { potential: 'PE', inside: 'L1:PE' }), at(2, { ...mains, partition })]);
  expect(found(schedule(false))).toMatchObject([{ rule: 'terminal-beside', severity: 'near' }]);
  expect(found(schedule(false))[0]!.message).toContain('stands beside X1:2');
  expect(rules(schedule(false), 1)).toEqual([]);
  expect(rules(schedule(false), 2)).toEqual(['terminal-beside']);
  expect([0, 2].map((place) => rules(schedule(true), place))).toEqual([[], []]);
});

test('the neutrals of outputs are summed over their bridge: 32 A in terminals of 2.5 mm² is too much, 4 mm² bear it', () => {
  // 3680 W at 230 V are 16 A each; IEC 60947-7-1 tests 2.5 mm² with 24 A and 4 mm² with 32 A, from memory.
  const neutrals = (maxSize: number) => panelWith(['M1', 'Q1', 'Q2'].map((outside, place) =>
    at(place + 1, { potential: 'M1 N', outside, core: 'N', bridge: 'n', maxSize })));
  expect(found(neutrals(2.5), 2)).toEqual([{
    rule: 'terminal-bridge-over', severity: 'over',
    message: 'Terminal X1:3: its bridge carries up to 32.00 A where it is fed, and terminals of this size carry 24.00 A: 8.00 A too much. Take larger terminals, or feed the bridge at several places.',
  }]);
  expect(rules(neutrals(4), 2)).toEqual([]);
});

test('a bridge of which a current is not known is not called within limits', () => {
  const schedule = panelWith(['M1', 'Q1', 'Q2'].map((outside, place) =>
    at(place + 1, { potential: 'M1 N', outside, core: 'N', bridge: 'n', maxSize: 2.5 })), { outputs: [{ output: 'Q1', feed: 'M1' }, { output: 'Q2', feed: 'M1' }] });
  expect(schedule.standing('terminals', idAt(schedule, 'terminals'))).toBe('incomplete');
});

test('a bridge across strips', () => {
  const schedule = panelWith([at(1, plus('F1', { bridge: 'a' })), { ...at(1, { potential: 'F1 L+', inside: 'F1:4', bridge: 'a' }), terminal: 'X2:1', strip: 'X2' }]);
  expect(rules(schedule)).toContain('terminal-bridge-strips');
});

test.each<[string, Cells, string]>([
  ['a cable that is gone', plus('F1', { outside: 'R9', core: '1' }), 'terminal-outside-lost'],
  ['a part that is gone', { potential: 'F9 L+', inside: 'F9:2' }, 'terminal-inside-lost'],
  ['a tag of two sheets', { potential: 'M2 L', inside: 'M2' }, 'terminal-inside-doubtful'],
  ['no potential', { inside: 'F1:2' }, 'terminal-potential-missing'],
  ['no core', plus('F1', { outside: 'R1' }), 'terminal-core-missing'],
])('%s is named, and nothing is called within limits', (_what, cells, rule) => {
  const schedule = panelWith([at(1, cells)], { modules: [{ module: 'M2' }] });
  expect(found(schedule)).toMatchObject([{ rule, severity: 'incomplete' }]);
});

test('a designation that stands twice counts in the status', () => {
  const schedule = panelWith([at(1, plus('F1')), at(1, plus('F2'))]);
  expect([rules(schedule), rules(schedule, 1)]).toEqual([['tag-used-twice'], ['tag-used-twice']]);
  expect(schedule.standing('terminals', idAt(schedule, 'terminals'))).toBe('incomplete');
});

test('an edit of what a terminal leads to is heeded at once', () => {
  const schedule = panelWith([at(1, plus('F1', { outside: 'R1', core: '1' }))]);
  schedule.act('Delete', [{ op: 'remove', sheet: 'runs', at: 0, count: 1 }]);
  expect(rules(schedule)).toEqual(['terminal-outside-lost']);
});

test('a connection tells a feed from a module of the same tag', () => {
  const schedule = panelWith([at(1, { potential: 'M2 L', inside: 'M2:2' })], { modules: [{ module: 'M2' }] });
  expect(rules(schedule)).toEqual([]);
});

test('a spare terminal that is ticked is not called free', () => {
  const schedule = panelWith([at(1, { wired: true, wiredAs: 'F1:2 · F1 L+ · R1 · 1 · –' })]);
  expect(found(schedule)).toEqual([{
    rule: 'terminal-wired-otherwise', severity: 'incomplete',
    message: 'Terminal X1:1 is spare by now and was ticked as wired when it was to join F1:2 · F1 L+ · R1 · 1 · –. Take its conductors out, then take the tick back.',
  }]);
});

test('a cable between two panels has terminals in both: one that lacks them in one is named', () => {
  const schedule = scheduleOf({
    enclosures: [{ enclosure: 'P1' }, { enclosure: 'P2' }],
    feeds: [{ feed: 'M1', rated: 16, enclosure: 'P1' }],
    supplies: [{ rail: 'L1', rated: 10, enclosure: 'P2', feed: 'M1' }],
  });
  schedule.act('Laid out', layoutChanges(schedule.document, layOutTerminals(schedule.document, schedule)));
  const rulesOfFeed = () => schedule.findings.filter(({ rule }) => rule === 'feeds-without-terminals').map(({ value }) => value);
  expect(rulesOfFeed()).toEqual([]);
  const there = schedule.rows('terminals').filter(({ cells }) => cells.enclosure === 'P2' && cells.outside === 'M1');
  const here = schedule.rows('terminals').filter(({ cells }) => cells.enclosure === 'P1' && cells.core === there[0]!.cells.core);
  // The core is on a terminal of the other panel too.
  expect([there.length > 0, here.length > 0]).toEqual([true, true]);
  schedule.act('Gone', [{ op: 'remove', sheet: 'terminals', at: schedule.document.position('terminals', there[0]!.id), count: 1 }]);
  expect(rulesOfFeed()).toEqual([1]);
});
