import { describe, expect, it } from 'vitest';
import {
  conflictRow, conflictSentence, joinSchedules, joinSentences, throughout, type JoinChoice,
} from '../../../src/exchange/join/index.ts';
import type { Acceptance, Cells, Content, SheetName } from '../../../src/schedule/index.ts';

const of = (sheets: Partial<Record<SheetName, Cells[]>>, rest: Partial<Content> = {}): Content =>
  ({ details: {}, sheets, ...rest });

/** Joins rows of one sheet. */
function joined(
  sheet: SheetName, mine: Cells[], theirs: Cells[], base?: Cells[], choices: Record<string, JoinChoice> = {},
) {
  const join = joinSchedules(of({ [sheet]: mine }), of({ [sheet]: theirs }), base && of({ [sheet]: base }), choices);
  return { ...join, rows: join.content.sheets[sheet], asked: join.conflicts.map(({ name }) => name) };
}

const BASE: Cells[] = [{ rail: 'L1', rated: 5 }, { rail: 'L2', rated: 10 }, { rail: 'L3', rated: 20 }];

describe('two schedules with a common base', () => {
  it('take what either changed, added and removed', () => {
    const { rows, asked, added, changed, removed } = joined('supplies',
      [{ rail: 'L1', rated: 5, note: 'mine' }, { rail: 'L2', rated: 10 }, { rail: 'L4' }],
      [{ rail: 'L0' }, { rail: 'L1', rated: 10 }, { rail: 'L5' }, { rail: 'L3', rated: 20 }], BASE);
    // L1: a note of mine and a rating of theirs. L2 went with theirs, L3 with mine.
    expect(rows).toEqual([{ rail: 'L1', rated: 10, note: 'mine' }, { rail: 'L5' }, { rail: 'L4' }, { rail: 'L0' }]);
    expect(asked).toEqual([]);
    expect(added.map(({ tag }) => tag)).toEqual(['L5', 'L0']);
    expect(changed).toEqual([{ sheet: 'supplies', tag: 'L1', keys: ['rated'] }]);
    expect(removed.map(({ tag }) => tag)).toEqual(['L2']);
  });

  it('ask for a cell that both changed, where mine stands until somebody decides', () => {
    const mine = [{ rail: 'L1', rated: 10, units: 2 }];
    const theirs = [{ rail: 'L1', rated: 20, units: 2 }];
    const { rows, conflicts } = joined('supplies', mine, theirs, BASE.slice(0, 1));
    expect(rows).toEqual(mine);
    expect(conflicts).toMatchObject([{
      name: 'supplies/L1/rated', kind: 'cell', sheet: 'supplies', tag: 'L1', key: 'rated', base: 5, mine: 10, theirs: 20,
      choices: ['mine', 'theirs'], choice: null,
    }]);
    const decided = joined('supplies', mine, theirs, BASE.slice(0, 1), { 'supplies/L1/rated': 'theirs' });
    expect(decided.rows).toEqual(theirs);
    expect(decided.conflicts).toMatchObject([{ choice: 'theirs' }]);
  });

  it('ask for a row that one removed and the other changed', () => {
    const changed = [{ rail: 'L1', rated: 10 }, ...BASE.slice(1)];
    expect(joined('supplies', BASE.slice(1), changed, BASE)).toMatchObject({
      rows: BASE.slice(1), conflicts: [{ name: 'supplies/L1', kind: 'removed', mine: null, theirs: changed[0], choice: null }],
    });
    expect(joined('supplies', BASE.slice(1), changed, BASE, { 'supplies/L1': 'theirs' }).rows)
      .toEqual([...BASE.slice(1), changed[0]]);
    expect(joined('supplies', changed, BASE.slice(1), BASE)).toMatchObject({ rows: changed, asked: ['supplies/L1'] });
    expect(joined('supplies', changed, BASE.slice(1), BASE, { 'supplies/L1': 'theirs' }).rows).toEqual(BASE.slice(1));
  });

  it('ask for a row that one removed and the other names or reads since', () => {
    const base = of({ supplies: BASE, devices: [{ ref: 'D1', qty: 1 }] });
    const without = of({ supplies: BASE.slice(1), devices: [{ ref: 'D1', qty: 1 }] });
    const names = of({ supplies: BASE, devices: [{ ref: 'D1', qty: 1, rail: 'L1' }] });
    const reads = of({ supplies: BASE, devices: [{ ref: 'D1', qty: '=[supplies.rated@L1]*2' }] });
    for (const using of [names, reads]) {
      const kept = joinSchedules(using, without, base);
      expect(kept.conflicts).toMatchObject([{ name: 'supplies/L1', kind: 'removed' }]);
      expect(kept.content.sheets).toMatchObject(using.sheets);
      const gone = joinSchedules(without, using, base);
      expect(gone.conflicts).toMatchObject([{ name: 'supplies/L1', kind: 'removed' }]);
      // It stays until somebody decides, or what reads it would be lost.
      expect(gone.content.sheets.supplies).toHaveLength(3);
      expect(joinSchedules(without, using, base, { 'supplies/L1': 'theirs' }).content).toEqual(gone.content);
      expect(joinSchedules(without, using, base, { 'supplies/L1': 'mine' }).content.sheets.supplies).toHaveLength(2);
    }
    expect(joinSchedules(without, reads, base, { 'supplies/L1': 'mine' }).content.sheets.devices)
      .toEqual([{ ref: 'D1', qty: '=#REF!*2' }]);
    // Whoever removes a row and names it all the same knows it.
    const dangling = of({ supplies: BASE.slice(1), devices: [{ ref: 'D1', qty: 1, rail: 'L1' }] });
    expect(joinSchedules(base, dangling, base)).toMatchObject({ conflicts: [], content: { sheets: dangling.sheets } });
  });

  it('let formulas and references follow their rows, wherever these stand', () => {
    const base = of({ devices: [{ ref: 'D1', qty: 2 }, { ref: 'D2', qty: '=[devices.qty@D1]*2' }] });
    const mine = of({ devices: [{ ref: 'D0', qty: 7 }, ...base.sheets.devices!] });
    const theirs = of({ devices: [{ ref: 'D9', qty: '=[devices.qty@D1]+[devices.qty@D2]' }, { ref: 'D1', qty: 3 }, base.sheets.devices![1]!] });
    expect(joinSchedules(mine, theirs, base).content.sheets.devices).toEqual([
      { ref: 'D0', qty: 7 }, { ref: 'D1', qty: 3 }, { ref: 'D2', qty: '=[devices.qty@D1]*2' },
      { ref: 'D9', qty: '=[devices.qty@D1]+[devices.qty@D2]' },
    ]);
  });

  it('say that the order of rows of theirs is not taken over', () => {
    expect(joined('supplies', BASE, [...BASE].reverse(), BASE)).toMatchObject({ rows: BASE, moved: ['supplies'] });
  });
});

describe('two schedules without a base', () => {
  it('have all rows of both, cells of either, and ask where both say something', () => {
    const { rows, asked } = joined('supplies',
      [{ rail: 'L1', rated: 5, note: 'mine' }, { rail: 'L2', units: 2 }], [{ rail: 'L3' }, { rail: 'L1', rated: 10, units: 3 }]);
    expect(rows).toEqual([{ rail: 'L1', rated: 5, note: 'mine', units: 3 }, { rail: 'L2', units: 2 }, { rail: 'L3' }]);
    expect(asked).toEqual(['supplies/L1/rated', 'supplies/L1/note', 'supplies/L1/units']);
  });

  it('keep two things under one tag apart when somebody says so, and what names them follows', () => {
    const mine = of({ supplies: [{ rail: 'L1', rated: 5 }], devices: [{ ref: 'D1', rail: 'L1', qty: 1 }] });
    const theirs = of({
      supplies: [{ rail: 'L1', rated: 10, note: 'floor 2' }],
      devices: [{ ref: 'E1', rail: 'L1', qty: '=[supplies.rated@L1]' }],
    });
    const { content, conflicts } = joinSchedules(mine, theirs, undefined, { 'supplies/L1/rated': 'both' });
    expect(content.sheets).toMatchObject({
      supplies: [{ rail: 'L1', rated: 5 }, { rail: 'L2', rated: 10, note: 'floor 2' }],
      devices: [{ ref: 'D1', rail: 'L1', qty: 1 }, { ref: 'E1', rail: 'L2', qty: '=[supplies.rated@L2]' }],
    });
    expect(conflicts).toMatchObject([{ name: 'supplies/L1/rated', choice: 'both' }]);
  });

  it('neither lose nor double a quantity of devices without refs', () => {
    const row = (area: string, qty: number): Cells => ({ type: 'Valve', area, qty });
    const [mine, theirs] = [[row('R1', 2), row('R1', 2), row('R2', 4)], [row('R1', 2), row('R2', 5), row('R3', 1)]];
    // R1 stands twice in mine and once in theirs: twice. R2 is 4 or 5, not 9.
    expect(joined('devices', mine, theirs)).toMatchObject({ rows: [...mine, row('R3', 1)], asked: ['devices/#3/qty'] });
    expect(joined('devices', mine, theirs, undefined, { 'devices/#3/qty': 'theirs' }).rows)
      .toEqual([row('R1', 2), row('R1', 2), row('R2', 5), row('R3', 1)]);
    expect(joined('devices', mine, theirs, undefined, { 'devices/#3/qty': 'both' }).rows)
      .toEqual([...mine, row('R2', 5), row('R3', 1)]);
  });
});

it('rows that both added with other content are asked for, those with the same stand once', () => {
  const [mine, theirs] = [[...BASE, { rail: 'L4', rated: 5 }, { rail: 'L5' }], [...BASE, { rail: 'L4', rated: 10 }, { rail: 'L5' }]];
  expect(joined('supplies', mine, theirs, BASE)).toMatchObject({ rows: mine, asked: ['supplies/L4/rated'] });
});

it('a tag of theirs that mine gave another row is asked for', () => {
  const mine = [{ rail: 'X', rated: 5 }, ...BASE.slice(1)];
  const theirs = [...BASE.map((cells) => ({ ...cells, note: 'n' })), { rail: 'X', rated: 40 }];
  expect(joined('supplies', mine, theirs, BASE)).toMatchObject({
    rows: mine.map((cells) => ({ ...cells, note: 'n' })),
    conflicts: [{ kind: 'tag', choices: ['mine', 'both'], theirs: { rail: 'X', rated: 40 }, choice: null }],
  });
  const { name } = joined('supplies', mine, theirs, BASE).conflicts[0]!;
  expect(joined('supplies', mine, theirs, BASE, { [name]: 'both' }).rows!.at(-1)).toEqual({ rail: 'X 2', rated: 40 });
  const renamed = BASE.map((cells) => (cells.rail === 'L2' ? { ...cells, rail: 'X' } : cells));
  expect(joined('supplies', mine, renamed, BASE)).toMatchObject({ rows: mine, asked: ['supplies/L2/rail'] });
});

describe('what stands beside the cells', () => {
  const accepted = (tag: string, reason: string): Acceptance =>
    ({ sheet: 'supplies', tag, rule: 'supply-near', reason, name: 'N', date: '2026-11-30', value: 1 });
  const revision = (name: string, text: string) => ({ revision: name, date: '2026-11-30', name: 'N', text });

  it('joins too, and is asked for where both changed it', () => {
    const base = of({ supplies: BASE }, { details: { panel: 'P', project: 'Q' }, revisions: [revision('A', 'first')] });
    const mine = of({ supplies: BASE }, {
      details: { panel: 'P1', project: 'Q1' }, accepted: [accepted('L1', 'mine'), accepted('L2', 'mine')],
      revisions: [revision('A', 'first'), revision('B', 'mine')], unknown: { file: { x: 1 }, details: {}, sheets: {} }, lists: { headings: { Stk: 'qty', Raum: 'area' } },
    });
    const theirs = of({ supplies: BASE }, {
      details: { panel: 'P2', project: 'Q', remarks: 'R' }, accepted: [accepted('L2', 'theirs'), accepted('L3', 'theirs'), accepted('L9', 'no row')],
      revisions: [revision('A', 'first'), revision('B', 'theirs'), revision('C', 'theirs')],
      unknown: { file: { x: 2, 'a/b': 3 }, details: { owner: 4 }, sheets: {} },
      lists: { headings: { Stk: 'note' }, names: { reserve: 'leave-out' } },
    });
    const { content, conflicts, others } = joinSchedules(mine, theirs, base);
    expect(content).toMatchObject({
      details: { panel: 'P1', project: 'Q1', remarks: 'R' },
      accepted: [accepted('L1', 'mine'), accepted('L2', 'mine'), accepted('L3', 'theirs'), accepted('L9', 'no row')],
      revisions: [revision('A', 'first'), revision('B', 'mine'), revision('C', 'theirs')],
      unknown: { file: { x: 1, 'a/b': 3 }, details: { owner: 4 } },
      lists: { headings: { Stk: 'qty', Raum: 'area' }, names: { reserve: 'leave-out' } },
    });
    expect(conflicts.map(({ name }) => name))
      .toEqual(['supplies/L2/accepted/supply-near', 'list/headings/Stk', 'detail/panel', 'revision/B', 'other/file/x']);
    expect(others).toEqual([
      'supplies/L3/accepted/supply-near', 'list/names/reserve', 'detail/remarks', 'revision/C', 'other/file/a/b', 'other/details/owner',
      'acceptance/supplies L9 supply-near ',
    ]);
    const decided = joinSchedules(mine, theirs, base, Object.fromEntries(conflicts.map(({ name }) => [name, 'theirs'])));
    expect(decided.content).toMatchObject({
      details: { panel: 'P2' }, accepted: [{}, accepted('L2', 'theirs'), {}, {}],
      revisions: [{}, revision('B', 'theirs'), {}], unknown: { file: { x: 2 } },
    });
  });
});

it('a content whose formulas cannot be read is a fault of the caller', () => {
  expect(() => joined('devices', [], [{ ref: 'D1', qty: '=[devices.qty@D7]' }])).toThrow('devices, row 1, qty');
});

describe('device rows that were parted', () => {
  const sum = (rows: readonly Cells[] | undefined) => rows!.reduce((total, { qty }) => total + Number(qty ?? 0), 0);
  const row = (ref: string, qty: number, more: Cells = {}): Cells => ({ ref, type: 'Sensor', qty, source: 'A.csv: 5', ...more });
  const base = [row('D5', 5)];
  const mine = [row('D5', 2, { branch: 'B1' }), row('D5/2', 3, { branch: 'B2' })];
  const theirs = [row('D5', 1, { branch: 'B1' }), row('D5/2', 2, { branch: 'B2' }), row('D5/3', 2, { branch: 'B3' })];

  it.each([['with sources', (cells: Cells) => cells], ['by their refs alone', ({ source: _source, ...cells }: Cells) => cells]])(
    'are one thing of which one side counts, %s', (_name, as) => {
      const lists = [mine, theirs, base].map((rows) => rows.map(as)) as [Cells[], Cells[], Cells[]];
      const open = joined('devices', ...lists);
      expect(open).toMatchObject({
        asked: ['devices/D5/qty'], rows: lists[0], conflicts: [{ kind: 'parts', base: lists[2], mine: lists[0], theirs: lists[1] }],
      });
      const decided = joined('devices', ...lists, { 'devices/D5/qty': 'theirs' });
      expect([sum(decided.rows), decided.rows!.map(({ qty }) => qty)]).toEqual([5, [1, 2, 2]]);
      // Without a base too: 2 + 3 or 1 + 2 + 2, and never 7.
      expect(sum(joined('devices', lists[0], lists[1]).rows)).toBe(5);
    });

  it('keep the quantity of a revised list where that is what counts', () => {
    const shared = [row('D1', 8, { branch: 'B1' }), row('D1/2', 2, { branch: 'B2' })];
    const revised = [row('D1', 14, { source: 'B.csv: 5' })];
    const { conflicts } = joined('devices', shared, revised, [row('D1', 10)]);
    expect(conflicts).toMatchObject([{ name: 'devices/D1/qty', kind: 'parts', mine: shared, theirs: revised }]);
    expect(sum(joined('devices', shared, revised, [row('D1', 10)], { 'devices/D1/qty': 'mine' }).rows)).toBe(10);
    expect(joined('devices', shared, revised, [row('D1', 10)], { 'devices/D1/qty': 'theirs' }).rows)
      .toEqual([row('D1', 14, { source: 'B.csv: 5', branch: 'B1' })]);
  });

  it('are found without refs and sources where their number is another one', () => {
    const bare = (...quantities: number[]) => quantities.map((qty): Cells => ({ area: 'R1', type: 'Sensor', qty }));
    const { asked, rows } = joined('devices', bare(1, 3), bare(2, 2), bare(4));
    expect([asked, sum(rows)]).toEqual([['devices/#1/qty'], 4]);
    expect(sum(joined('devices', bare(1, 3), bare(2, 2), bare(4), { 'devices/#1/qty': 'theirs' }).rows)).toBe(4);
    // Two rows that were two all along join row by row.
    expect(joined('devices', bare(4, 3), bare(2, 5), bare(2, 3))).toMatchObject({ asked: [], rows: bare(4, 5) });
  });

  it('that only one side parted, or moved, are no question', () => {
    expect(joined('devices', mine, [row('D5', 5, { note: 'n' })], base)).toMatchObject({
      asked: [], rows: [{ ...mine[0], note: 'n' }, mine[1]],
    });
    const moved = mine.map((cells): Cells => ({ ...cells, branch: 'B9' }));
    expect(joined('devices', mine, moved, mine)).toMatchObject({ asked: [], rows: moved });
  });

  it('that one side removed and the other parted go or stay together', () => {
    const { asked, rows } = joined('devices', [], mine, base);
    expect([asked, rows]).toEqual([['devices/D5/qty'], []]);
    expect(joined('devices', [], mine, base, { 'devices/D5/qty': 'theirs' }).rows).toEqual(mine);
  });
});

it('a row that both counted in the same line of the same list is one row', () => {
  const counted: Cells = { area: 'R1', type: 'Sensor', qty: 6, source: 'B.csv: 9' };
  const start: Cells[] = [{ ref: 'D1', type: 'Lamp', qty: 1 }];
  expect(joined('devices', [...start, { ...counted, branch: 'B1' }], [...start, counted], start))
    .toMatchObject({ added: [], rows: [...start, { ...counted, branch: 'B1' }] });
});

describe('what is known of the base', () => {
  const issue = (revision: string) => ({ revision, date: '2026-10-02', name: 'N', text: 'T' });
  const schedule = (...revisions: string[]) => of({ supplies: [{ rail: 'L1' }] }, { revisions: revisions.map(issue) });

  it('is the last issue that both list, or nothing, and is said', () => {
    const join = joinSchedules(schedule('A', 'B', 'C'), schedule('A', 'B', 'D'));
    expect(join.begun).toEqual(issue('B'));
    expect(joinSentences(join)[1]).toMatch(/^Both list issue B of Oct 2, 2026: choose its load table as what both began with\./);
    expect(joinSentences(joinSchedules(schedule('A'), schedule('X')))[1]).toMatch(/^Nothing says what both began with: every difference/);
    expect(joinSentences(joinSchedules(schedule('A'), schedule('A'), schedule('A')))).toHaveLength(1);
  });

  it('without one, a cell that only one of them fills is asked too, and stands meanwhile', () => {
    const join = joined('supplies', [{ rail: 'L1', rated: 5 }], [{ rail: 'L1', units: 3 }]);
    expect(join).toMatchObject({ rows: [{ rail: 'L1', rated: 5, units: 3 }], asked: ['supplies/L1/rated', 'supplies/L1/units'] });
    expect(conflictSentence(join.conflicts[0]!)).toBe('Only one of you says something here: whether the other took it out is not known.');
    expect(join.conflicts.map((each) => [throughout(each, 'mine'), throughout(each, 'theirs')])).toEqual([['mine', 'mine'], ['theirs', 'theirs']]);
    expect(joined('supplies', [{ rail: 'L1', rated: 5 }], [{ rail: 'L1', units: 3 }], undefined,
      { 'supplies/L1/rated': 'theirs', 'supplies/L1/units': 'mine' }).rows).toEqual([{ rail: 'L1' }]);
  });
});

it('a row without a tag is named by its place and what it holds', () => {
  const row = (area: string, qty: number): Cells => ({ type: 'Valve', area, qty });
  const { conflicts: [conflict] } = joined('devices', [row('R1', 2), row('R2', 4)], [row('R2', 5)]);
  expect(conflictRow(conflict!)).toBe('row 2 of yours, 1 of theirs (R2, Valve, 4)');
  expect(conflictSentence(conflict!)).toBe('Both have a row of this kind, without a tag, with other values: is it one thing, or are these two?');
});
