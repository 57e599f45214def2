import { describe, expect, test } from 'vitest';
import {
  renameTag, ScheduleDocument, setCells, textsInDoubt, toContent, toSnapshot, withTicks, type Cells, type CellValue,
  type Change, type Content,
} from '../../src/schedule/index.ts';

const documentOf = (sheets: Content['sheets']) => new ScheduleDocument(toSnapshot({ details: {}, sheets }).snapshot);
const set = (document: ScheduleDocument, cells: Readonly<Record<string, CellValue>>, id = 0) => setCells(document,
  Object.entries(cells).map(([key, value]) => ({ sheet: 'terminals' as const, id, key, value })));
/** The first terminal after changes, which undo takes back wholly. */
function after(document: ScheduleDocument, changes: readonly Change[]): Cells {
  const before = toContent(document);
  document.perform(document.perform(changes));
  expect(toContent(document)).toEqual(before);
  document.perform(changes);
  return document.rows('terminals')[0]!.cells;
}
const X1: Cells = { terminal: 'X1:1', strip: 'X1', potential: 'F1 L+', inside: 'F1:2', outside: 'R1', core: '1' };
const AS = 'F1:2 · F1 L+ · R1 · 1 · –';

describe('a tick', () => {
  test('keeps what it was made for, with what the same action enters', () => {
    const document = documentOf({ terminals: [X1] });
    expect(after(document, withTicks(document, set(document, { core: '3', wired: true }))))
      .toMatchObject({ wired: true, wiredAs: 'F1:2 · F1 L+ · R1 · 3 · –' });
  });

  test('that stands keeps what it was made for when the row changes, and another tick does not renew it', () => {
    const document = documentOf({ terminals: [{ ...X1, wired: true, wiredAs: AS, by: 'Ada', on: '2026-11-30' }] });
    after(document, withTicks(document, set(document, { core: '3' })));
    expect(after(document, withTicks(document, set(document, { checked: true }))))
      .toMatchObject({ wiredAs: AS, checkedAs: 'F1:2 · F1 L+ · R1 · 3 · –', by: 'Ada' });
  });

  test('that is taken back takes who, when and what along, each tick its own', () => {
    const document = documentOf({ terminals: [{
      ...X1, wired: true, wiredAs: AS, by: 'Ada', on: '2026-11-30', checked: true, checkedAs: AS, checkedBy: 'Ben', checkedOn: '2026-12-01',
    }] });
    expect(after(document, withTicks(document, set(document, { checked: null })))).toEqual({ ...X1, wired: true, wiredAs: AS, by: 'Ada', on: '2026-11-30' });
    expect(after(document, withTicks(document, set(document, { wired: false })))).toEqual({ ...X1, wired: false });
  });

  test('of a row that comes is kept too; what it brings along stays', () => {
    const document = documentOf({ terminals: [] });
    const insert = (cells: Cells): Change => ({ op: 'insert', sheet: 'terminals', at: 0, rows: [{ id: 0, cells }] });
    const cells = (changes: Change[]) => changes.flatMap((change) => change.op === 'insert' ? change.rows.map((row) => row.cells) : []);
    expect(cells(withTicks(document, [insert({ ...X1, wired: true })]))).toEqual([{ ...X1, wired: true, wiredAs: AS }]);
    expect(cells(withTicks(document, [insert({ ...X1, wired: true, wiredAs: 'other' })]))).toEqual([{ ...X1, wired: true, wiredAs: 'other' }]);
    expect(cells(withTicks(document, [insert(X1)]))).toEqual([X1]);
  });
});

describe('a new tag and the texts that name it', () => {
  const renamed = (sheets: Content['sheets'], sheet: 'ways' | 'runs' | 'feeds' | 'supplies' | 'modules', tag: string): [Cells, number] => {
    const document = documentOf(sheets);
    const changes = renameTag(document, sheet, 0, tag);
    const inDoubt = textsInDoubt(document, changes);
    return [after(document, changes), inDoubt];
  };
  const panel = { ways: [{ way: 'F1' }], runs: [{ run: 'R1' }] };

  test('potentials follow too, and what was ticked is ticked for the same', () => {
    const ticked = { ...X1, wired: true, wiredAs: AS };
    expect(renamed({ ...panel, terminals: [ticked] }, 'ways', 'F7')).toEqual(
      [{ ...ticked, potential: 'F7 L+', inside: 'F7:2', wiredAs: 'F7:2 · F7 L+ · R1 · 1 · –' }, 0]);
  });

  test('what was ticked for another connection stays so', () => {
    const ticked = { ...X1, core: '3', wired: true, wiredAs: AS };
    expect(renamed({ ...panel, terminals: [ticked] }, 'runs', 'R7')[0]).toMatchObject({ outside: 'R7', wiredAs: AS });
  });

  test('of a feed and a supply of one tag each follows where the connection or the mark tells which is meant', () => {
    const sheets = (cells: Cells) => ({ feeds: [{ feed: 'M1' }], supplies: [{ rail: 'M1' }], terminals: [cells] });
    const feed = { potential: 'M1 L', inside: 'M1:2', outside: 'M1' };
    const supply = { potential: 'M1 L-', inside: 'M1:L' };
    expect(renamed(sheets(feed), 'feeds', 'N')).toEqual([{ potential: 'N L', inside: 'N:2', outside: 'N' }, 0]);
    expect(renamed(sheets(feed), 'supplies', 'N')).toEqual([feed, 0]);
    expect(renamed(sheets(supply), 'supplies', 'N')).toEqual([{ potential: 'N L-', inside: 'N:L' }, 0]);
    expect(renamed(sheets(supply), 'feeds', 'N')).toEqual([supply, 0]);
  });

  test('what may be either follows neither, and is counted', () => {
    const sheets = (cells: Cells) => ({ feeds: [{ feed: 'M1' }], supplies: [{ rail: 'M1' }], terminals: [cells, { inside: 'M1:4' }, { inside: 'M1:L' }] });
    expect(renamed(sheets({ inside: 'M1' }), 'feeds', 'N')).toEqual([{ inside: 'M1' }, 2]);
    expect(renamed(sheets({ inside: 'M1' }), 'supplies', 'N')).toEqual([{ inside: 'M1' }, 2]);
    // Put right by the same action, it is in doubt no more.
    const document = documentOf(sheets({ inside: 'M1' }));
    const changes = renameTag(document, 'feeds', 0, 'N');
    expect(textsInDoubt(document, [...changes, ...set(document, { inside: 'N:1' })])).toBe(1);
  });

  test('a text that only begins alike is left', () => {
    expect(renamed({ ...panel, terminals: [{ inside: 'F1', potential: 'F1L+', outside: 'R10' }] }, 'ways', 'F7')[0])
      .toEqual({ inside: 'F7', potential: 'F1L+', outside: 'R10' });
  });
});
