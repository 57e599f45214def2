import { expect, test } from 'vitest';
import { readSchedule, writeCsv, writeSchedule } from '../../../src/exchange/index.ts';
import { joinSchedules } from '../../../src/exchange/join/index.ts';
import {
  dropVariant, freeName, joinVariant, keepVariant, makeVariant, variantOf, withoutVariant,
} from '../../../src/exchange/variants/index.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import {
  buildReport, changesText, compareSchedules, fileDigest, loadTableHtml, scheduleDigest, tableJson, withoutVariants,
} from '../../../src/report/index.ts';
import { edited, kept, PANEL, taken } from './support.ts';

const reread = (schedule: LoadSchedule) => {
  const read = readSchedule(writeSchedule(schedule.content()));
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return new LoadSchedule(read.content);
};

test('a variant holds the sheets that differ, as they were and as they are', () => {
  const { variant } = kept(PANEL, edited(PANEL, 'supplies', 'P1', { rated: 20 }));
  expect(variant).toEqual({
    name: 'Two supplies',
    base: { sheets: { supplies: PANEL.sheets.supplies } },
    tried: { sheets: { supplies: [{ ...PANEL.sheets.supplies![0], rated: 20 }] } },
  });
});

test('a variant holds the sheets that its formulas name, so that it can be read whatever becomes of them', () => {
  const base = edited(PANEL, 'branches', 'B1', { limit: '=[devices.qty@D2]+20' });
  const { schedule, variant } = kept(base, edited(base, 'branches', 'B1', { reserve: 0.1 }));
  expect(Object.keys(variant.tried.sheets).sort()).toEqual(['branches', 'devices']);
  // The row that the formula names is gone from the schedule: the variant did not touch it.
  const devices = schedule.rows('devices');
  schedule.act('Renamed', [{ op: 'set', sheet: 'devices', id: devices[1]!.id, key: 'ref', value: 'D9' }]);
  const now = taken(schedule, variant);
  expect(now.value('branches', 0, 'reserve')).toBe(0.1);
  expect(now.formulaText('branches', 0, 'limit')).toBeDefined();
  expect(now.value('branches', 0, 'limit')).toBe(60);
});

test('to keep, change and drop a variant are actions that undo takes back', () => {
  const { schedule, variant } = kept(PANEL, edited(PANEL, 'supplies', 'P1', { rated: 20 }));
  schedule.act('Renamed', keepVariant(schedule.document, { ...variant, name: 'One supply', note: 'cheaper' }, 'Two supplies'));
  schedule.act('Kept', keepVariant(schedule.document, { ...variant, name: 'Third' }));
  expect(schedule.document.variants.map(({ name }) => name)).toEqual(['One supply', 'Third']);
  schedule.act('Dropped', dropVariant(schedule.document, 'One supply'));
  expect(schedule.document.variants.map(({ name }) => name)).toEqual(['Third']);
  schedule.undo();
  expect(schedule.document.variants.map(({ name }) => name)).toEqual(['One supply', 'Third']);
  schedule.undo();
  schedule.undo();
  expect(schedule.document.variants).toEqual([variant]);
  schedule.undo();
  expect(schedule.document.variants).toEqual([]);
  schedule.redo();
  expect(variantOf(schedule.document, 'Two supplies')).toEqual(variant);
  expect(dropVariant(schedule.document, 'Nobody')).toEqual([]);
  expect(freeName(schedule.document, (number) => `Variant ${number}`)).toBe('Variant 2');
});

test('a change that names variants that are not there is refused, and nothing is changed', () => {
  const schedule = new LoadSchedule(PANEL);
  expect(() => { schedule.act('x', [{ op: 'variants', at: 0, count: 1, variants: [] }]); }).toThrow(RangeError);
  expect(schedule.content().variants).toEqual([]);
});

test('files keep variants with keys of newer software, and their formulas', () => {
  const base = edited(PANEL, 'devices', 'D1', { qty: '=[devices.qty@D2]/2', morrow: 3 });
  const { schedule, variant } = kept(base, edited(base, 'devices', 'D1', { diversity: '=1/[qty]' }));
  schedule.act('Noted', keepVariant(schedule.document, { ...variant, note: 'one at a time', date: '2026-11-30' }));
  const file = JSON.parse(writeSchedule(schedule.content())) as { variants: Record<string, unknown>[] };
  file.variants[0]!.author = 'A. Planner';
  const read = readSchedule(JSON.stringify(file));
  expect(read).toMatchObject({ ok: true });
  const again = new LoadSchedule(read.ok ? read.content : undefined);
  expect(again.document.variants).toEqual([{ ...variant, note: 'one at a time', date: '2026-11-30', author: 'A. Planner' }]);
  expect(again.document.variants[0]!.tried.sheets.devices![0]).toMatchObject({ diversity: '=1/[qty]', morrow: 3 });
  expect(writeSchedule(reread(again).content())).toBe(writeSchedule(again.content()));
});

const part = (sheets: unknown) => ({ sheets });
const supplies = [{ rail: 'P1', rated: 20 }];
test.each([
  ['no list', {}, '/variants', 'variants'],
  ['no object', ['x'], '/variants/0', 'Variant 1'],
  ['no name', [{ base: part({}), tried: part({}) }], '/variants/0/name', 'must be a text'],
  ['an empty name', [{ name: ' ', base: part({}), tried: part({}) }], '/variants/0/name', 'Give it one'],
  ['a name twice', ['a', 'b', 'a'].map((name) => ({ name, base: part({}), tried: part({}) })), '/variants/2/name', 'another variant “a”'],
  ['a note that is no text', [{ name: 'a', note: 3, base: part({}), tried: part({}) }], '/variants/0/note', 'must be a text'],
  ['no base', [{ name: 'a', tried: part({}) }], '/variants/0/base', 'is missing'],
  ['a sheet in one part only', [{ name: 'a', base: part({ supplies }), tried: part({}) }], '/variants/0/tried', 'no sheet “supplies”'],
  ['rows that are no list', [{ name: 'a', base: part({ supplies }), tried: part({ supplies: 3 }) }], '/variants/0/tried/sheets/supplies', 'a list'],
  ['a value out of its range', [{ name: 'a', base: part({ supplies }), tried: part({ supplies: [{ rail: 'P1', target: 3 }] }) }],
    '/variants/0/tried/sheets/supplies/0/target', 'Variant 1, “tried”: supplies, row 1, Target'],
  ['a formula of a row that it does not hold', [{
    name: 'a', base: part({ supplies }), tried: part({ supplies: [{ rail: 'P1', rated: '=[devices.qty@D1]' }] }),
  }], '/variants/0/tried/sheets/supplies/0/rated', 'D1'],
  ['an acceptance without a reason', [{
    name: 'a', base: part({ supplies }), tried: { ...part({ supplies }), accepted: [{ sheet: 'supplies', tag: 'P1', rule: 'x', name: 'n', date: 'd' }] },
  }], '/variants/0/tried/accepted/0/reason', 'must be a text'],
])('a file is refused whose variants have %s, with place and remedy', (_what, variants, path, sentence) => {
  const read = readSchedule(JSON.stringify({ format: 'elv-load-schedule', version: 2, sheets: {}, variants }, null, 1));
  expect(read).toMatchObject({ ok: false });
  if (read.ok) return;
  expect(read.problems.map((problem) => problem.path)).toContain(path);
  const problem = read.problems.find((each) => each.path === path)!;
  expect(problem.message).toContain(sentence);
  expect(problem.line).toBeGreaterThan(1);
});

test('nothing of a variant counts before it is taken over: no figure, no CSV, no load table, no digest', () => {
  const plain = new LoadSchedule(PANEL);
  const { schedule } = kept(PANEL, edited(PANEL, 'supplies', 'P1', { rated: 20, note: 'of the variant' }));
  const html = (of: LoadSchedule) => loadTableHtml(buildReport(of, { generated: '2026-11-30' }), {
    paper: 'A4-portrait', schedule: writeSchedule(withoutVariants(of.content())),
  });
  expect(tableJson(schedule)).toEqual(tableJson(plain));
  expect(writeCsv(schedule, 'supplies')).toBe(writeCsv(plain, 'supplies'));
  expect(html(schedule)).toBe(html(plain));
  expect(html(schedule)).not.toContain('of the variant');
  expect(scheduleDigest(schedule.content())).toBe(scheduleDigest(plain.content()));
  expect(fileDigest(schedule.content())).not.toBe(fileDigest(plain.content()));
});

test('a variant taken over is one action, which leaves what was edited since and can be taken back whole', () => {
  const { schedule, variant } = kept(PANEL, edited(PANEL, 'supplies', 'P1', { rated: 20 }));
  schedule.act('Later', [{ op: 'set', sheet: 'supplies', id: 0, key: 'target', value: 0.7 }]);
  schedule.act('Later', [{ op: 'set', sheet: 'devices', id: 0, key: 'qty', value: 14 }]);
  const before = writeSchedule(schedule.content());
  const join = joinVariant(schedule.content(), variant);
  expect(join.conflicts).toEqual([]);
  expect(join.changed).toEqual([{ sheet: 'supplies', tag: 'P1', keys: ['rated'] }]);
  expect(schedule.load(withoutVariant(join.content, variant.name), 'Taken over')).toEqual([]);
  expect(schedule.rows('supplies')[0]!.cells).toMatchObject({ rated: 20, target: 0.7 });
  expect(schedule.rows('devices')[0]!.cells).toMatchObject({ qty: 14 });
  expect(schedule.document.variants).toEqual([]);
  expect(schedule.document.details).toEqual({ panel: 'P' });
  expect(schedule.undo()).toBe('Taken over');
  expect(writeSchedule(schedule.content())).toBe(before);
});

test('what the variant and the schedule both changed is asked, and the schedule stands until it is decided', () => {
  const { schedule, variant } = kept(PANEL, edited(PANEL, 'supplies', 'P1', { rated: 20 }));
  schedule.act('Later', [{ op: 'set', sheet: 'supplies', id: 0, key: 'rated', value: 15 }]);
  const join = joinVariant(schedule.content(), variant);
  expect(join.conflicts).toMatchObject([{ name: 'supplies/P1/rated', base: 10, mine: 15, theirs: 20, choice: null }]);
  expect(join.content.sheets.supplies).toMatchObject([{ rated: 15 }]);
  expect(joinVariant(schedule.content(), variant, { 'supplies/P1/rated': 'theirs' }).content.sheets.supplies).toMatchObject([{ rated: 20 }]);
});

test('rows that came, went and moved in a variant come, go and move; acceptances come too', () => {
  const [first, second] = PANEL.sheets.devices!;
  const tried = {
    ...PANEL, sheets: { ...PANEL.sheets, devices: [second!, { ref: 'D3', type: 'Sensor', qty: 1, rail: 'P1' }, first!] },
    accepted: [{ sheet: 'devices' as const, tag: 'D2', rule: 'x', reason: 'r', name: 'n', date: '2026-11-30', value: 1 }],
  };
  const { schedule, variant } = kept(PANEL, tried);
  const now = taken(schedule, variant);
  expect(now.rows('devices').map(({ cells }) => cells.ref)).toEqual(['D2', 'D3', 'D1']);
  expect(now.content().accepted).toMatchObject([{ tag: 'D2', reason: 'r' }]);
});

test('a formula of another sheet follows the rows that a variant removes', () => {
  // The formula names the second row by its place; the variant takes the first one out.
  const base = edited(PANEL, 'branches', 'B1', { limit: '=[devices.qty#2]+20' });
  const untagged = edited(edited(base, 'devices', 'D2', { ref: null }), 'devices', 'D1', {});
  const start = new LoadSchedule(untagged);
  const tried = new LoadSchedule(undefined, { session: { base: start.document.snapshot(), actions: [] } });
  tried.act('Gone', [{ op: 'remove', sheet: 'devices', at: 0, count: 1 }]);
  const variant = makeVariant(start.content(), tried.content(), { name: 'v' });
  const now = taken(start, variant);
  expect(now.value('branches', 0, 'limit')).toBe(60);
  // The same where the formula came to the schedule later.
  const plain = new LoadSchedule(edited(PANEL, 'devices', 'D2', { ref: null }));
  const other = new LoadSchedule(undefined, { session: { base: plain.document.snapshot(), actions: [] } });
  other.act('Gone', [{ op: 'remove', sheet: 'devices', at: 0, count: 1 }]);
  const without = makeVariant(plain.content(), other.content(), { name: 'v' });
  const later = new LoadSchedule(edited(plain.content(), 'branches', 'B1', { limit: '=[devices.qty#2]+20' }));
  expect(taken(later, without).value('branches', 0, 'limit')).toBe(60);
});

test('joining two schedules keeps the variants of both, and asks of those of one name', () => {
  const { schedule, variant } = kept(PANEL, edited(PANEL, 'supplies', 'P1', { rated: 20 }));
  const mine = schedule.content();
  const other = { ...variant, name: 'Other' };
  expect(joinSchedules(mine, { ...mine, variants: [variant, other] }).content.variants).toEqual([variant, other]);
  const join = joinSchedules(mine, { ...mine, variants: [{ ...variant, note: 'n' }] });
  expect(join.content.variants).toEqual([variant]);
  expect(join.conflicts).toMatchObject([{ kind: 'variant', key: 'Two supplies' }]);
  const decided = joinSchedules(mine, { ...mine, variants: [{ ...variant, note: 'n' }] }, undefined, { 'variant/Two supplies': 'theirs' });
  expect(decided.content.variants).toEqual([{ ...variant, note: 'n' }]);
});

test('what changed between two schedules tells of variants that came, went or changed', () => {
  const { schedule, variant } = kept(PANEL, edited(PANEL, 'supplies', 'P1', { rated: 20 }));
  const plain = new LoadSchedule(PANEL);
  const changes = compareSchedules(plain, schedule);
  expect(changes).toMatchObject({ isSame: false, rows: [], figures: [], variants: [{ kind: 'added', before: null }] });
  expect(changesText(changes)).toBe('Variants\n  added: Two supplies; Supplies\n');
  expect(compareSchedules(schedule, plain).variants).toMatchObject([{ kind: 'removed' }]);
  const noted = new LoadSchedule({ ...PANEL, variants: [{ ...variant, note: 'n' }] });
  expect(changesText(compareSchedules(schedule, noted))).toBe('Variants\n  changed: Two supplies; n; Supplies\n');
});
