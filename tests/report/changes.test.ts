import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { writeSchedule } from '../../src/exchange/index.ts';
import { inOrder } from '../../src/schedule/compare/index.ts';
import { buildReport, changesText, compareSchedules } from '../../src/report/index.ts';
import {
  insertRows, isBlank, moveRows, removeRows, renameTag, setCells, SHEET_NAMES, type Cells, type Content, type SheetName,
} from '../../src/schedule/index.ts';
import { someAction, someContent } from '../engine/random-actions.ts';
import { changesSection } from '../../src/report/changes/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { idAt, scheduleOf } from '../support/schedules.ts';
import { demoContent } from './demo.ts';

const DEVICES: Cells[] = [
  { ref: 'D1', rail: 'L1', qty: 1, unitDraw: 1000 }, { ref: 'D2', rail: 'L1', qty: 2, unitDraw: 1000 },
  { ref: 'D3', rail: 'L1', qty: '=[devices.qty@D2]*2', unitDraw: 1000 },
];
const of = (devices: Cells[], more: Content['sheets'] = {}) =>
  scheduleOf({ supplies: [{ rail: 'L1', rated: 10 }], devices, ...more });
const rows = (before: LoadSchedule, after: LoadSchedule) =>
  compareSchedules(before, after).rows.map(({ kind, tag, was, row }) => [kind, tag, was, row]);

const NOTHING = {
  isSame: true, details: [], rows: [], figures: [], findings: [], accepted: [], revisions: [], variants: [],
  unknown: [],
};

test('nothing is different from itself', () => {
  const changes = compareSchedules(of(DEVICES), of(DEVICES));
  expect(changes).toEqual(NOTHING);
  expect(changesText(changes)).toBe('Nothing is different.\n');
});

test('a value, and what it does to totals and statuses', () => {
  const after = of([DEVICES[0]!, { ...DEVICES[1], qty: 3 }, DEVICES[2]!]);
  const changes = compareSchedules(of(DEVICES), after);
  expect(changes.rows).toEqual(
    [{ kind: 'changed', sheet: 'devices', tag: 'D2', row: 2, was: 2, values: [{ key: 'qty', before: 2, after: 3 }] }]
  );
  // 1 + 2 + 4 = 7 A before, 1 + 3 + 6 = 10 A after, of 10 A, with the target at 80 %
  expect(changes.figures).toMatchObject([{ sheet: 'supplies', tag: 'L1', row: 1 }]);
  expect(Object.fromEntries(changes.figures[0]!.values.map(({
    key, before, after: now,
  }) => [key, [before, now]]))).toMatchObject({
    connected: [7, 10], demand: [7, 10], loading: [0.7, 1], status: ['ok', 'near'],
  });
  expect(changesText(changes)).toBe([
    'Devices', '  D2: changed: Qty 2 → 3', '', 'What that did to totals and statuses',
    '  Supplies, L1: Connected 7.00\u00a0A → 10.00\u00a0A; Demand 7.00\u00a0A → 10.00\u00a0A; Loading 70\u202f% → 100\u202f%; Spare 1.00\u00a0A → −2.00\u00a0A; Limit diversity 1.14 → 0.80; Power 168 W → 240 W; Status within limits → near limit',
    '', 'Findings',
    `  new: near limit: Supplies; L1; ${after.findings.find(({ sheet }) => sheet === 'supplies')!.message}`,
    '',
  ].join('\n'));
});

test('rows added, removed and moved; formulas that follow their rows are the same', () => {
  expect(rows(of(DEVICES), of([{ ref: 'D0', rail: 'L1', qty: 1 }, ...DEVICES]))).toEqual([['added', 'D0', null, 1]]);
  expect(rows(of(DEVICES), of(DEVICES.slice(1)))).toEqual([['removed', 'D1', 1, null]]);
  expect(rows(of(DEVICES), of([DEVICES[1]!, DEVICES[2]!, DEVICES[0]!]))).toEqual([['moved', 'D1', 1, 3]]);
  expect(rows(of(DEVICES), of([DEVICES[0]!, DEVICES[1]!, { ...DEVICES[2], qty: '=[devices.qty@D1]*2' }])))
    .toEqual([['changed', 'D3', 3, 3]]);
});

test('a row keeps its tag through a change, a new tag through its content, and none through most of its cells', () => {
  expect(rows(of([DEVICES[0]!]), of([{ ...DEVICES[0], ref: 'D9' }]))).toEqual([['changed', 'D9', 1, 1]]);
  const untagged = [
    { rail: 'L1', qty: 1, unitDraw: 10, area: 'Hall' }, { rail: 'L1', qty: 5, unitDraw: 70, area: 'Foyer' },
  ];
  const changes = compareSchedules(of(untagged), of([untagged[0]!, { ...untagged[1], qty: 6 }]));
  expect(changes.rows).toMatchObject([{ kind: 'changed', row: 2, values: [{ key: 'qty', before: 5, after: 6 }] }]);
  expect(rows(of([untagged[0]!]), of([untagged[1]!]))).toEqual([['removed', '', 1, null], ['added', '', null, 1]]);
  const twice = [{ ref: 'D', qty: 1 }, { ref: 'D', qty: 2 }];
  expect(rows(of(twice), of([twice[1]!, twice[0]!]))).toHaveLength(1);
  expect(rows(of(twice), of([twice[1]!]))).toEqual([['removed', 'D', 1, null]]);
});

test('details, blank rows and unknown figures', () => {
  const before =
    new LoadSchedule({ details: { revision: 'A', panel: 'P' }, sheets: { supplies: [{ rail: 'L1' }, {}] } });
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
      const count = (changes: typeof there, kind: string) =>
        changes.rows.filter((row) => row.sheet === sheet && row.kind === kind).length;
      expect(count(there, 'added') - count(there, 'removed')).toBe(filled(after) - filled(before));
    }
    expect(compareSchedules(after, after)).toEqual(NOTHING);
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

describe('a row that was renamed', () => {
  const renamed = (sheet: SheetName, at: number, tag: string) => {
    const after = new LoadSchedule(demoContent());
    after.act('Rename', renameTag(after.document, sheet, idAt(after, sheet, at), tag));
    return after;
  };

  test('is one line with how many cells name it so now, and nothing else is told', () => {
    const before = new LoadSchedule(demoContent());
    const { rows, figures, findings } = compareSchedules(before, renamed('supplies', 0, 'L9'));
    expect(rows).toMatchObject([{ sheet: 'supplies', kind: 'changed', tag: 'L9', values: [{ key: 'rail', before: 'L1', after: 'L9' }] }]);
    // Rows of the rail, and terminals by their texts but for the name of a bridge, which stays.
    const named = demoContent().sheets;
    const references = (['devices', 'ways', 'runs', 'outputs'] as const).flatMap((sheet) => named[sheet]!).filter(({ rail }) => rail === 'L1');
    const texts = named.terminals!.flatMap((cells) => [cells.inside, cells.outside, cells.potential])
      .filter((text) => typeof text === 'string' && /^L1(?:$|[ :])/.test(text));
    expect(rows[0]!.followed).toBe(references.length + texts.length);
    expect([figures, findings]).toEqual([[], []]);
    expect(changesText(compareSchedules(before, renamed('supplies', 0, 'L9')))).toContain(`${rows[0]!.followed!} cells name it so now`);
  });

  test('what is different besides stays a change of its own, and so does what does not follow', () => {
    const after = renamed('supplies', 0, 'L9');
    after.act('Edit', setCells(after.document, [
      { sheet: 'devices', id: idAt(after, 'devices', 0), key: 'qty', value: 9 },
      { sheet: 'devices', id: idAt(after, 'devices', 1), key: 'rail', value: 'L2' },
    ]));
    const { rows } = compareSchedules(new LoadSchedule(demoContent()), after);
    expect(rows.filter(({ sheet }) => sheet === 'devices').map(({ values }) => values)).toEqual([
      [{ key: 'qty', before: 4, after: 9 }], [{ key: 'rail', before: 'L1', after: 'L2' }],
    ]);
  });
});

test('what changes did to figures stands under the panel of each row', () => {
  const after = new LoadSchedule(demoContent());
  const last = after.rows('devices').findIndex(({ cells }) => cells.rail === 'P2');
  after.act('Edit', setCells(after.document, [0, last].map((at) =>
    ({ sheet: 'devices', id: idAt(after, 'devices', at), key: 'qty', value: 9 }))));
  const changes = compareSchedules(new LoadSchedule(demoContent()), after);
  for (const { sheet, tag, panel } of changes.figures) {
    if (sheet === 'supplies') expect([tag, panel]).toEqual([tag, tag === 'L1' ? 'KP-1' : 'KP-2']);
  }
  const titles = changesSection(changes, '', ENGLISH).tables.map(({ title }) => title);
  expect(titles).toEqual(expect.arrayContaining(['KP-1', 'KP-2'].map((panel) => `What that did to totals and statuses: ${panel}`)));
});

test('a section of the load table', () => {
  const before =
    new LoadSchedule({ details: { revision: 'A', date: '2026-01-01' }, sheets: of(DEVICES).content().sheets });
  const { sections } =
    buildReport(of([DEVICES[0]!, { ...DEVICES[1], qty: 3 }, DEVICES[2]!]), { generated: '', since: before });
  const section = sections.find(({ name }) => name === 'changes')!;
  expect(section.sentences[0]).toBe(
    'Compared with revision A of Jan 1, 2026. Rows are matched by their tags, then by what they hold.'
  );
  expect(section.tables.map(({ title }) => title))
    .toEqual(['Details', 'Rows', 'What that did to totals and statuses', 'Findings']);
});

/** A schedule whose supply is over its rating: 20 A on 10 A. */
const over = (more: Partial<Content> = {}, supply: Cells = {}): Content => ({
  details: {}, sheets: {
    supplies: [{ rail: 'L1', rated: 10, ...supply }], devices: [{ ref: 'D1', rail: 'L1', qty: 20, unitDraw: 1000 }],
  }, ...more,
});
const ACCEPTED = { sheet: 'supplies' as const, tag: 'L1', reason: 'brief test', name: 'A. Reader', date: '2026-11-01' };
/** Accepts what a schedule says is over, as a person does. */
function accepting(content: Content): Content {
  const schedule = new LoadSchedule(content);
  for (const finding of schedule.findings.filter(({ severity }) => severity === 'over')) {
    schedule.accept(finding, ACCEPTED);
  }
  return schedule.content();
}
const compared = (before: Content, after: Content) =>
  compareSchedules(new LoadSchedule(before), new LoadSchedule(after));
const kindsOf = (list: readonly { kind: string }[]) => list.map(({ kind }) => kind);

test('acceptances added, withdrawn, changed and lapsed, and those that hold again', () => {
  const [open, accepted] = [over(), accepting(over())];
  const rules = accepted.accepted!.map(({ rule }) => rule);
  expect(rules.length).toBeGreaterThan(0);
  const added = compared(open, accepted);
  expect(added).toMatchObject({ isSame: false, rows: [], figures: [], findings: [] });
  expect(added.accepted).toMatchObject(rules.map((rule) => ({ kind: 'added', acceptance: { ...ACCEPTED, rule } })));
  expect(changesText(added)).toMatch(/^Acceptances\n {2}accepted: Supplies; L1; brief test; A\. Reader; Nov 1, 2026; /);
  expect(kindsOf(compared(accepted, open).accepted)).toEqual(rules.map(() => 'withdrawn'));
  const other = { ...accepted, accepted: accepted.accepted!.map((each) => ({ ...each, reason: 'for one night' })) };
  expect(kindsOf(compared(accepted, other).accepted)).toEqual(rules.map(() => 'changed'));
  // 30 A instead of 20 A are worse than what was accepted; at 1 A nothing is left to accept.
  const with30 = (content: Content, qty: number) =>
    ({ ...content, sheets: { ...content.sheets, devices: [{ ref: 'D1', rail: 'L1', qty, unitDraw: 1000 }] } });
  const worse = compared(accepted, with30(accepted, 30));
  expect(worse.accepted).toMatchObject(rules.map(() => (
    { kind: 'lapsed', message: expect.stringContaining('30') as string }
  )));
  expect(compared(accepted, with30(accepted, 1)).accepted)
    .toMatchObject(rules.map(() => ({ kind: 'lapsed', message: null })));
  expect(kindsOf(compared(with30(accepted, 30), accepted).accepted)).toEqual(rules.map(() => 'restored'));
});

test('an acceptance is the same under another tag of its row; one that is meant for no row is told of too', () => {
  const accepted = accepting(over());
  const schedule = new LoadSchedule(accepted);
  schedule.act('Rename', renameTag(schedule.document, 'supplies', schedule.rows('supplies')[0]!.id, 'L9'));
  const renamed = compared(accepted, schedule.content());
  expect([renamed.isSame, renamed.rows.length > 0, renamed.accepted]).toEqual([false, true, []]);
  const lost = { ...accepted.accepted![0]!, tag: 'gone' };
  const more = { ...accepted, accepted: [...accepted.accepted!, lost] };
  expect(compared(accepted, more).accepted).toEqual([{ kind: 'added', acceptance: lost, message: null }]);
  expect(compared(more, accepted).accepted).toEqual([{ kind: 'withdrawn', acceptance: lost, message: null }]);
  expect(compared(more, more).isSame).toBe(true);
});

test('findings that came, went, or are worse', () => {
  const supplies = (changes: ReturnType<typeof compared>) =>
    changes.findings.filter(({ sheet, rule }) => sheet === 'supplies' && /usable|target/.test(rule))
    .map(({ kind, tag, rule, before, after }) => [kind, tag, rule, before, after]);
  // 20 A on 10 A are over; 20 A on 40 A are within limits.
  expect(supplies(compared(over(), over({}, { rated: 40 }))))
    .toContainEqual(['went', 'L1', 'supply-over-usable', 'over', null]);
  const came = compared(over({}, { rated: 40 }), over());
  expect(supplies(came)).toContainEqual(['came', 'L1', 'supply-over-usable', null, 'over']);
  expect(changesText(came)).toContain('new: over limit: Supplies; L1; ');
  // A finding goes with its row: another tag makes none of it new.
  const renamed = over(
    { sheets: { supplies: [{ rail: 'L7', rated: 10 }], devices: [{ ref: 'D1', rail: 'L7', qty: 20, unitDraw: 1000 }] } }
  );
  expect(supplies(compared(over(), renamed))).toEqual([]);
});

test('revisions, keys that are not known, and the order that nothing else shows', () => {
  const revision = { revision: 'A', date: '2026-01-01', name: 'A. Reader', text: 'first issue' };
  const later = { ...revision, revision: 'B' };
  expect(compared(over(), over({ revisions: [revision] })).revisions)
    .toEqual([{ kind: 'added', before: null, after: revision }]);
  expect(compared(over({ revisions: [revision] }), over()).revisions).toMatchObject([{ kind: 'removed' }]);
  const text = changesText(
    compared(over({ revisions: [revision] }), over({ revisions: [{ ...revision, text: 'issued' }] }))
  );
  expect(text).toBe('Revisions\n  changed: A; Jan 1, 2026; A. Reader; issued\n');
  expect(changesText(compared(over({ revisions: [revision, later] }), over({ revisions: [later, revision] }))))
    .toBe('Only blank rows, or the order of revisions and acceptances, are different.\n');
  const unknown = over({ unknown: { file: { owner: { a: 1, b: 2 } }, details: { floor: 3 }, sheets: {} } });
  expect(compared(over(), unknown).unknown).toEqual([
    { path: 'owner', before: null, after: { a: 1, b: 2 } }, { path: 'details/floor', before: null, after: 3 },
  ]);
  expect(changesText(compared(over(), unknown))).toContain('details/floor: –; 3');
  const inRow = compared(over(), over({}, { colour: 'red' }));
  expect(inRow.rows).toMatchObject([{ kind: 'changed', values: [{ key: 'colour', before: null, after: 'red' }] }]);
  expect(changesText(inRow)).toContain('L1: changed: colour – → red');
});

test('files are told to be the same when they are, and then only', () => {
  fc.assert(fc.property(someContent, fc.array(someAction, { minLength: 1, maxLength: 4 }), (content, actions) => {
    const [before, after] = [new LoadSchedule(content), new LoadSchedule(content)];
    for (const action of actions) action(after);
    const { isSame, ...lists } = compareSchedules(before, after);
    const isListed = Object.values(lists).some((list) => list.length > 0);
    expect(isSame).toBe(writeSchedule(before.content()) === writeSchedule(after.content()));
    if (isSame) expect(isListed).toBe(false);
    before.dispose();
    after.dispose();
  }), { numRuns: 40 });
});

test('a row is moved only where its order among the others is another, and never from a row to itself', () => {
  const many = Array.from(
    { length: 8 }, (_row, index): Cells => ({ ref: `D${index + 1}`, rail: 'L1', qty: 1, unitDraw: 100 })
  );
  const at = (...numbers: number[]) => of(numbers.map((number) => many[number - 1]!));
  // Rows 1 and 2 go: those below have other numbers, and the same order.
  expect(kindsOf(compareSchedules(at(1, 2, 3, 4, 5), at(3, 4, 5)).rows)).toEqual(['removed', 'removed']);
  // Row 1 goes, and 3 now stands above 2, which keeps its number.
  const swapped = compareSchedules(at(1, 2, 3, 4), at(3, 2, 4));
  expect(swapped.rows).toMatchObject(
    [{ kind: 'removed', tag: 'D1' }, { kind: 'moved', tag: 'D3', was: 3, row: 1, below: null }]
  );
  expect(changesText(swapped)).toContain('D3: moved to the top, from row 3');
  // Three rows go and D4 is put three rows further down: it keeps its number and is moved all the same.
  const same = changesText(compareSchedules(at(1, 2, 3, 4, 5, 6, 7, 8), at(5, 6, 7, 4, 8)));
  expect(same).toContain('D4: moved below D7\n');
  expect(changesText(compareSchedules(at(1, 2, 3), at(2, 3, 1)))).toContain('D1: moved below D3, from row 1 to row 3');
  fc.assert(fc.property(fc.shuffledSubarray([1, 2, 3, 4, 5, 6, 7, 8]), (order) => {
    expect(
      changesText(compareSchedules(at(1, 2, 3, 4, 5, 6, 7, 8), at(...order)))
    ).not.toMatch(/from row (\d+) to row \1\b/);
  }), { numRuns: 60 });
});

test('what came and went is no move where rows are alike', () => {
  const alike: Cells = { rail: 'L1', qty: 1, unitDraw: 100 };
  const other: Cells = { rail: 'L1', qty: 7, unitDraw: 30 };
  // The first of two rows without a tag goes; the other one stays where it was.
  expect(rows(of([alike, other, alike]), of([other, alike]))).toEqual([['removed', '', 1, null]]);
  // A row goes, and one with the same content and another tag comes far from it.
  const named = ['A', 'B', 'C'].map((ref, index): Cells => ({ ...other, ref, qty: index + 20 }));
  expect(rows(of([{ ...alike, ref: 'D1' }, ...named]), of([...named, { ...alike, ref: 'D99' }])))
    .toEqual([['removed', 'D1', 1, null], ['added', 'D99', null, 4]]);
  // A tag that stands twice: one of the rows goes, another one comes.
  expect(rows(
    of([{ ...alike, ref: 'D' }, { ...other, ref: 'D' }]), of([{ ...other, ref: 'D' }, { ...other, ref: 'D', qty: 9 }])
  ).map(([kind]) => kind))
    .toEqual(['removed', 'added']);
});

test('the heaviest part that ascends is that of trying all', () => {
  const someWeights = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 8, maxLength: 8 });
  fc.assert(fc.property(fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6, 7]), someWeights, (places, weights) => {
    const kept = [...inOrder(places, weights)].sort((one, another) => one - another);
    const weigh = (indices: readonly number[]) => indices.reduce((sum, index) => sum + weights[index]!, 0);
    const ascends = (indices: readonly number[]) =>
      indices.every((index, at) => at === 0 || places[indices[at - 1]!]! < places[index]!);
    const subsets = Array.from({ length: 2 ** places.length }, (_subset, bits) =>
      [...places.keys()].filter((index) => (bits >> index) & 1));
    expect(ascends(kept)).toBe(true);
    expect(weigh(kept)).toBe(Math.max(0, ...subsets.filter(ascends).map(weigh)));
  }), { numRuns: 60 });
});
