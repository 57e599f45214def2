import fc from 'fast-check';
import { expect, it } from 'vitest';
import { joinSchedules } from '../../../src/exchange/join/index.ts';
import { writeSchedule } from '../../../src/exchange/index.ts';
import { toContent, ScheduleDocument, toSnapshot, type Cells, type CellValue, type Content, type SheetName } from '../../../src/schedule/index.ts';

const TAG: Partial<Record<SheetName, string>> = { devices: 'ref', supplies: 'rail', branches: 'branch' };
const SHEETS = ['devices', 'supplies', 'branches'] as const;
type TestSheet = (typeof SHEETS)[number];

/** Values of each column; formulas name rows by tag, so that their texts mean the same in any order. */
const VALUES: Readonly<Record<TestSheet, Readonly<Record<string, readonly (string | number)[]>>>> = {
  devices: {
    type: ['Valve', 'Lamp'], area: ['R1', 'R2'], qty: [1, 2, 3, '=[supplies.rated@S0]*2', '=[devices.unitDraw@D1]+1'],
    unitDraw: [10, 20], rail: ['S0', 'S1'], branch: ['B0', 'B1'], note: ['a', 'b'],
  },
  supplies: { rated: [5, 10, 20], units: [1, 2], note: ['x', 'y'], enclosure: ['E1'] },
  branches: { limit: [30, 60, '=[branches.limit@B1]/2'], reserve: [0.1, 0.2], note: ['p', 'q'] },
};
const LETTER: Readonly<Record<TestSheet, string>> = { devices: 'D', supplies: 'S', branches: 'B' };

const cellsOf = (sheet: TestSheet) => fc.record(
  Object.fromEntries(Object.entries(VALUES[sheet]).map(([key, values]) => [key, fc.constantFrom(...values)])),
  { requiredKeys: [] },
) as fc.Arbitrary<Cells>;

const base: fc.Arbitrary<Content> = fc.record(Object.fromEntries(SHEETS.map((sheet) =>
  [sheet, fc.array(cellsOf(sheet), { minLength: 2, maxLength: 5 })
    .map((rows) => rows.map((cells, index): Cells => ({ [TAG[sheet]!]: `${LETTER[sheet]}${index}`, ...cells })))])))
  .map((sheets) => readable({ details: { panel: 'P' }, sheets }));

/** What a person did to a schedule. */
type Edit =
  | { readonly do: 'set'; readonly sheet: TestSheet; readonly row: number; readonly key: string; readonly value: string | number | null }
  | { readonly do: 'remove'; readonly sheet: TestSheet; readonly row: number }
  | { readonly do: 'add'; readonly sheet: TestSheet; readonly at: number; readonly tag: string; readonly cells: Cells };

const edit = (tags: readonly string[]): fc.Arbitrary<Edit> => fc.constantFrom(...SHEETS).chain((sheet) => fc.oneof(
  { weight: 5, arbitrary: fc.constantFrom(...Object.keys(VALUES[sheet])).chain((key) => fc.record({
    do: fc.constant('set' as const), sheet: fc.constant(sheet), row: fc.nat(4), key: fc.constant(key),
    value: fc.constantFrom(...VALUES[sheet][key]!, null),
  })) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('remove' as const), sheet: fc.constant(sheet), row: fc.nat(4) }) },
  { weight: 2, arbitrary: fc.record({
    do: fc.constant('add' as const), sheet: fc.constant(sheet), at: fc.nat(5),
    tag: fc.constantFrom(...tags).map((tag) => `${LETTER[sheet]}${tag}`), cells: cellsOf(sheet),
  }) },
));

function edited(content: Content, edits: readonly Edit[]): Content {
  const sheets = Object.fromEntries(SHEETS.map((sheet) =>
    [sheet, content.sheets[sheet]!.map((cells) => ({ ...cells }))])) as Record<TestSheet, Cells[]>;
  for (const each of edits) {
    const rows = sheets[each.sheet];
    if (each.do === 'add') {
      if (rows.some((cells) => cells[TAG[each.sheet]!] === each.tag)) continue;
      rows.splice(each.at, 0, { [TAG[each.sheet]!]: each.tag, ...each.cells });
    } else if (each.do === 'remove') rows.splice(each.row, 1);
    else if (rows[each.row] !== undefined) {
      if (each.value === null) delete rows[each.row]![each.key];
      else rows[each.row]![each.key] = each.value;
    }
  }
  return readable({ ...content, sheets });
}

/** Without formulas that name rows that are not there, or that go round: as a file that was written. */
function readable(content: Content): Content {
  return toContent(new ScheduleDocument(toSnapshot(content).snapshot));
}

const pair = (mineTags: readonly string[], theirTags: readonly string[]) => fc.tuple(
  base, fc.array(edit(mineTags), { maxLength: 6 }), fc.array(edit(theirTags), { maxLength: 6 }),
).map(([start, one, other]) => ({ start, mine: edited(start, one), theirs: edited(start, other) }));

const CLASHING = pair(['5', '6', '7'], ['6', '7', '8']);
const byTag = (content: Content, sheet: TestSheet) =>
  new Map((content.sheets[sheet] ?? []).map((cells) => [cells[TAG[sheet]!], cells]));
const inAnyOrder = (content: Content) =>
  [content.details, ...SHEETS.map((sheet) => [...byTag(content, sheet).values()].map((cells) =>
    JSON.stringify(Object.entries(cells).sort(([one], [two]) => (one < two ? -1 : 1)))).sort())];
const text = (content: Content) => writeSchedule(content);

it('joining a schedule with itself gives it back, whatever the base', () => {
  fc.assert(fc.property(CLASHING, ({ start, mine }) => {
    for (const from of [undefined, start, mine]) {
      const join = joinSchedules(mine, mine, from);
      expect(text(join.content)).toBe(text(mine));
      expect(join).toMatchObject({ conflicts: [], added: [], changed: [], removed: [] });
    }
  }), { numRuns: 200 });
});

it('what only one of them changed is what both come to', () => {
  fc.assert(fc.property(CLASHING, ({ start, mine }) => {
    expect(text(joinSchedules(mine, start, start).content)).toBe(text(mine));
    const other = joinSchedules(start, mine, start);
    expect(other.conflicts).toEqual([]);
    expect(inAnyOrder(other.content)).toEqual(inAnyOrder(mine));
  }), { numRuns: 300 });
});

it('without conflicts it is the same whichever of them is mine', () => {
  let without = 0;
  fc.assert(fc.property(CLASHING, fc.boolean(), ({ start, mine, theirs }, hasBase) => {
    const from = hasBase ? start : undefined;
    const [one, other] = [joinSchedules(mine, theirs, from), joinSchedules(theirs, mine, from)];
    expect(one.conflicts.length === 0).toBe(other.conflicts.length === 0);
    if (one.conflicts.length > 0) return;
    without += 1;
    expect(inAnyOrder(one.content)).toEqual(inAnyOrder(other.content));
  }), { numRuns: 300 });
  expect(without).toBeGreaterThan(100);
});

it('nothing of either is missing in what is made or among what is asked', () => {
  fc.assert(fc.property(CLASHING, fc.boolean(), ({ start, mine, theirs }, hasBase) => {
    const join = joinSchedules(mine, theirs, hasBase ? start : undefined);
    const asked = new Set(join.conflicts.flatMap(({ sheet, tag, key }) => [`${sheet}/${tag}/${key}`]));
    for (const sheet of SHEETS) {
      const was = hasBase ? byTag(start, sheet) : new Map<CellValue | undefined, Cells>();
      const made = byTag(join.content, sheet);
      for (const side of [mine, theirs]) {
        const rows = byTag(side, sheet);
        for (const [tag, cells] of rows) {
          if (asked.has(`${sheet}/${String(tag)}/`)) continue;
          for (const key of new Set([...Object.keys(cells), ...Object.keys(was.get(tag) ?? {})])) {
            const [value, before] = [cells[key] ?? null, was.get(tag)?.[key] ?? null];
            // What a side did not change may have been changed, or its row removed, by the other.
            if (value === before || asked.has(`${sheet}/${String(tag)}/${key}`)) continue;
            expect([sheet, tag, key, made.get(tag)?.[key] ?? null]).toEqual([sheet, tag, key, value]);
          }
        }
        if (!hasBase) continue;
        for (const tag of was.keys()) {
          if (!rows.has(tag) && !asked.has(`${sheet}/${String(tag)}/`)) expect([sheet, tag, made.has(tag)]).toEqual([sheet, tag, false]);
        }
      }
      // No row stands twice.
      expect(made.size).toBe(join.content.sheets[sheet]!.length);
    }
  }), { numRuns: 300 });
});

it('deciding for theirs throughout gives what theirs says wherever it was asked', () => {
  fc.assert(fc.property(CLASHING, ({ start, mine, theirs }) => {
    const { conflicts } = joinSchedules(mine, theirs, start);
    const choices = Object.fromEntries(conflicts.map(({ name }) => [name, 'theirs' as const]));
    expect(Object.keys(choices)).toHaveLength(conflicts.length);
    const decided = joinSchedules(mine, theirs, start, choices);
    for (const { sheet, tag, key, kind } of decided.conflicts) {
      const [made, their] = [decided.content, theirs].map((each) => byTag(each, sheet as TestSheet).get(tag));
      if (kind === 'cell' && their !== undefined) expect([tag, key, made?.[key] ?? null]).toEqual([tag, key, their[key] ?? null]);
      if (kind === 'removed') expect([tag, made !== undefined]).toEqual([tag, their !== undefined]);
    }
  }), { numRuns: 300 });
});
