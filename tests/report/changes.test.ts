import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport, changesText, compareSchedules } from '../../src/report/index.ts';
import { insertRows, isBlank, moveRows, removeRows, SHEET_NAMES, type Cells, type Content } from '../../src/schedule/index.ts';
import { someAction, someContent } from '../engine/random-actions.ts';
import { scheduleOf } from '../support/schedules.ts';
import { demoContent } from './demo.ts';

const DEVICES: Cells[] = [
  { ref: 'D1', rail: 'L1', qty: 1, unitDraw: 1000 }, { ref: 'D2', rail: 'L1', qty: 2, unitDraw: 1000 },
  { ref: 'D3', rail: 'L1', qty: '=D2*2', unitDraw: 1000 },
];
const of = (devices: Cells[], more: Content['sheets'] = {}) => scheduleOf({ supplies: [{ rail: 'L1', rated: 10 }], devices, ...more });
const rows = (before: LoadSchedule, after: LoadSchedule) =>
  compareSchedules(before, after).rows.map(({ kind, tag, was, row }) => [kind, tag, was, row]);

test('nothing is different from itself', () => {
  const changes = compareSchedules(of(DEVICES), of(DEVICES));
  expect(changes).toEqual({ details: [], rows: [], figures: [] });
  expect(changesText(changes)).toBe('Nothing is different.\n');
});

test('a value, and what it does to totals and statuses', () => {
  const after = of([DEVICES[0]!, { ...DEVICES[1], qty: 3 }, DEVICES[2]!]);
  const changes = compareSchedules(of(DEVICES), after);
  expect(changes.rows).toEqual([{ kind: 'changed', sheet: 'devices', tag: 'D2', row: 2, was: 2, values: [{ key: 'qty', before: 2, after: 3 }] }]);
  // 1 + 2 + 4 = 7 A before, 1 + 3 + 6 = 10 A after, of 10 A, with the target at 80 %
  expect(changes.figures).toMatchObject([{ sheet: 'supplies', tag: 'L1', row: 1 }]);
  expect(Object.fromEntries(changes.figures[0]!.values.map(({ key, before, after: now }) => [key, [before, now]]))).toMatchObject({
    connected: [7, 10], demand: [7, 10], loading: [0.7, 1], status: ['ok', 'near'],
  });
  expect(changesText(changes)).toBe([
    'Devices', '  D2: changed: Qty 2 → 3', '', 'What that did to totals and statuses',
    '  Supplies, L1: Connected 7.00\u00a0A → 10.00\u00a0A; Demand 7.00\u00a0A → 10.00\u00a0A; Loading 70\u202f% → 100\u202f%; Spare 1.00\u00a0A → −2.00\u00a0A; Limit diversity 1.14 → 0.80; Status within limits → near the limit',
    '',
  ].join('\n'));
});

test('rows added, removed and moved; formulas that follow their rows are the same', () => {
  expect(rows(of(DEVICES), of([{ ref: 'D0', rail: 'L1', qty: 1 }, DEVICES[0]!, DEVICES[1]!, { ...DEVICES[2], qty: '=D3*2' }]))).toEqual([['added', 'D0', null, 1]]);
  expect(rows(of(DEVICES), of([DEVICES[1]!, { ...DEVICES[2], qty: '=D1*2' }]))).toEqual([['removed', 'D1', 1, null]]);
  expect(rows(of(DEVICES), of([DEVICES[1]!, { ...DEVICES[2], qty: '=D1*2' }, DEVICES[0]!]))).toEqual([['moved', 'D1', 1, 3]]);
  expect(rows(of(DEVICES), of([DEVICES[0]!, DEVICES[1]!, { ...DEVICES[2], qty: '=D1*2' }]))).toEqual([['changed', 'D3', 3, 3]]);
});

test('a row keeps its tag through a change, a new tag through its content, and none through most of its cells', () => {
  expect(rows(of([DEVICES[0]!]), of([{ ...DEVICES[0], ref: 'D9' }]))).toEqual([['changed', 'D9', 1, 1]]);
  const untagged = [{ rail: 'L1', qty: 1, unitDraw: 10, area: 'Hall' }, { rail: 'L1', qty: 5, unitDraw: 70, area: 'Foyer' }];
  const changes = compareSchedules(of(untagged), of([untagged[0]!, { ...untagged[1], qty: 6 }]));
  expect(changes.rows).toMatchObject([{ kind: 'changed', row: 2, values: [{ key: 'qty', before: 5, after: 6 }] }]);
  expect(rows(of([untagged[0]!]), of([untagged[1]!]))).toEqual([['removed', '', 1, null], ['added', '', null, 1]]);
  const twice = [{ ref: 'D', qty: 1 }, { ref: 'D', qty: 2 }];
  expect(rows(of(twice), of([twice[1]!, twice[0]!]))).toHaveLength(1);
  expect(rows(of(twice), of([twice[1]!]))).toEqual([['removed', 'D', 1, null]]);
});

test('details, blank rows and unknown figures', () => {
  const before = new LoadSchedule({ details: { revision: 'A', panel: 'P' }, sheets: { supplies: [{ rail: 'L1' }, {}] } });
  const after = new LoadSchedule({ details: { revision: 'B' }, sheets: { supplies: [{ rail: 'L1', rated: 10 }] } });
  const { details, rows: changed, figures } = compareSchedules(before, after);
  expect(details).toEqual([{ key: 'panel', before: 'P', after: null }, { key: 'revision', before: 'A', after: 'B' }]);
  expect(changed).toHaveLength(1);
  expect(figures[0]!.values).toContainEqual({ key: 'usable', before: null, after: 10 });
});

test('as many rows come and go as the lengths differ, whatever is done', () => {
  fc.assert(fc.property(someContent, fc.array(someAction, { maxLength: 6 }), (content, actions) => {
    const [before, after] = [new LoadSchedule(content), new LoadSchedule(content)];
    for (const action of actions) action(after);
    const there = compareSchedules(before, after);
    for (const sheet of SHEET_NAMES) {
      const filled = (schedule: LoadSchedule) => schedule.rows(sheet).filter((row) => !isBlank(row)).length;
      const count = (changes: typeof there, kind: string) => changes.rows.filter((row) => row.sheet === sheet && row.kind === kind).length;
      expect(count(there, 'added') - count(there, 'removed')).toBe(filled(after) - filled(before));
    }
    expect(compareSchedules(after, after)).toEqual({ details: [], rows: [], figures: [] });
    before.dispose();
    after.dispose();
  }), { numRuns: 40 });
});

test('the demo: three rows go, two come, one moves', () => {
  const [before, after] = [new LoadSchedule(demoContent()), new LoadSchedule(demoContent())];
  const { document } = after;
  after.act('Remove', removeRows(document, 'devices', [3, 4, 5]));
  after.act('Insert', insertRows(document, 'devices', 10, [{ ref: 'N1', qty: 1 }, { ref: 'N2', qty: 1 }]));
  after.act('Move', moveRows(document, 'devices', [20], 50));
  const kinds = compareSchedules(before, after).rows.map(({ kind }) => kind);
  expect(kinds).toEqual(['removed', 'removed', 'removed', 'added', 'added', 'moved']);
});

test('a section of the load table', () => {
  const before = new LoadSchedule({ details: { revision: 'A', date: '2026-01-01' }, sheets: of(DEVICES).content().sheets });
  const { sections } = buildReport(of([DEVICES[0]!, { ...DEVICES[1], qty: 3 }, DEVICES[2]!]), { generated: '', since: before });
  const section = sections.find(({ name }) => name === 'changes')!;
  expect(section.sentences[0]).toBe('Compared with revision A of 2026-01-01. Rows are matched by their tags, then by what they hold.');
  expect(section.tables.map(({ title }) => title)).toEqual(['Details', 'Rows', 'What that did to totals and statuses']);
});
