import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  insertRows, moveRows, namingCells, pasteCells, removeRows, renameTag, ScheduleDocument, setCells,
  setRevisions, toContent, toSnapshot,
  type Cells, type Change, type Content, type SheetName,
} from '../../src/schedule/index.ts';

function documentOf(sheets: Content['sheets']): ScheduleDocument {
  return new ScheduleDocument(toSnapshot({ details: {}, sheets }).snapshot);
}

/** A sheet of branches with these tags. */
const branches = (tags: readonly string[]) => documentOf({ branches: tags.map((branch) => ({ branch })) });
const tags = (document: ScheduleDocument, sheet: SheetName = 'branches', key = 'branch') =>
  document.rows(sheet).map(({ cells }) => cells[key] ?? null);
const cellsOf = (document: ScheduleDocument, sheet: SheetName) => document.rows(sheet).map(({ cells }) => cells);

/** Carries changes out, undoes them, does them again: each time what is expected. @returns the document after them. */
function tried(document: ScheduleDocument, changes: readonly Change[]): ScheduleDocument {
  const before = toContent(document);
  const inverse = document.perform(changes);
  const after = toContent(document);
  const again = document.perform(inverse);
  expect(toContent(document)).toEqual(before);
  document.perform(again);
  expect(toContent(document)).toEqual(after);
  return document;
}

const someTags = fc.integer({ min: 1, max: 12 })
  .map((count) => Array.from({ length: count }, (_tag, index) => `B${index}`));

describe('moving rows', () => {
  test('to every place, any choice of rows, as taking them out of an array and putting them back in', () => {
    const someMove = someTags.chain((all) =>
      fc.tuple(fc.constant(all), fc.subarray(all, { minLength: 1 }), fc.nat({ max: all.length })));
    fc.assert(fc.property(someMove, ([all, moved, at]) => {
      const staying = all.filter((tag) => !moved.includes(tag));
      const to = Math.min(at, staying.length);
      const document = branches(all);
      const ids = document.rows('branches')
        .filter(({ cells }) => moved.includes(cells.branch as string)).map(({ id }) => id);
      expect(tags(tried(document, moveRows(document, 'branches', ids, to))))
        .toEqual([...staying.slice(0, to), ...moved, ...staying.slice(to)]);
    }), { numRuns: 400 });
  });

  test('keeps their order whatever order they are named in, and names twice count once', () => {
    const document = branches(['a', 'b', 'c', 'd']);
    expect(tags(tried(document, moveRows(document, 'branches', [3, 1, 3], 0)))).toEqual(['b', 'd', 'a', 'c']);
  });

  test('to where they are changes nothing', () => {
    const document = branches(['a', 'b', 'c']);
    expect(moveRows(document, 'branches', [1], 1)).toEqual([]);
  });
});

describe('inserting and removing rows', () => {
  test('any of them, anywhere, as in an array', () => {
    const action = fc.oneof(
      fc.record({ insert: fc.nat({ max: 20 }), count: fc.integer({ min: 1, max: 4 }) }),
      fc.record({ remove: fc.array(fc.nat({ max: 20 }), { minLength: 1, maxLength: 4 }) }),
    );
    fc.assert(fc.property(someTags, fc.array(action, { maxLength: 10 }), (start, actions) => {
      const document = branches(start);
      let model: string[] = start;
      let next = 0;
      for (const each of actions) {
        if ('insert' in each) {
          const at = each.insert % (model.length + 1);
          const added = Array.from({ length: each.count }, () => `N${next++}`);
          tried(document, insertRows(document, 'branches', at, added.map((branch) => ({ branch }))));
          model = [...model.slice(0, at), ...added, ...model.slice(at)];
        } else if (model.length > 0) {
          const gone = new Set(each.remove.map((at) => at % model.length));
          tried(document, removeRows(document, 'branches', [...gone].map((at) => document.rows('branches')[at]!.id)));
          model = model.filter((_tag, at) => !gone.has(at));
        }
        expect(tags(document)).toEqual(model);
        document.rows('branches').forEach(({ id }, at) => expect(document.position('branches', id)).toBe(at));
      }
    }), { numRuns: 200 });
  });

  test('no rows are no change', () => {
    const document = branches(['a']);
    expect(insertRows(document, 'branches', 0, [])).toEqual([]);
    expect(removeRows(document, 'branches', [])).toEqual([]);
    expect(removeRows(document, 'branches', [7])).toEqual([]);
  });
});

describe('pasting', () => {
  test('writes over what is there and grows the sheet by what is beyond its end', () => {
    const document = documentOf({ devices: [{ ref: 'D1', qty: 1, note: 'stays' }, { ref: 'D2', qty: 2 }] });
    const changes = pasteCells(document, 'devices', 1, ['ref', 'qty'], [['E1', 10], ['E2', 20], ['E3', null]]);
    expect(cellsOf(tried(document, changes), 'devices')).toEqual(
      [{ ref: 'D1', qty: 1, note: 'stays' }, { ref: 'E1', qty: 10 }, { ref: 'E2', qty: 20 }, { ref: 'E3' }]);
  });

  test('undefined leaves a cell as it is, null empties it', () => {
    const document = documentOf({ devices: [{ ref: 'D1', qty: 1 }, { ref: 'D2', qty: 2 }] });
    const changes = pasteCells(document, 'devices', 0, ['ref', 'qty'], [[undefined, null], ['E2', undefined]]);
    expect(cellsOf(tried(document, changes), 'devices')).toEqual([{ ref: 'D1' }, { ref: 'E2', qty: 2 }]);
  });

  test('lines without anything still make rows, so that what is below keeps its place', () => {
    const document = documentOf({});
    expect(cellsOf(tried(document, pasteCells(document, 'devices', 0, ['ref'], [['D1'], [null], ['D3']])), 'devices'))
      .toEqual([{ ref: 'D1' }, {}, { ref: 'D3' }]);
  });

  test('the same again is no change', () => {
    const document = documentOf({ devices: [{ ref: 'D1', qty: 1 }] });
    expect(pasteCells(document, 'devices', 0, ['ref', 'qty', 'note'], [['D1', 1, null]])).toEqual([]);
  });
});

test('setting cells drops what would change nothing', () => {
  const document = documentOf({ devices: [{ ref: 'D1', qty: 1 }] });
  const edit = (key: string, value: Cells[string]) => ({ sheet: 'devices' as const, id: 0, key, value });
  expect(setCells(document, [edit('qty', 1), edit('note', null), edit('ref', 'D2')]))
    .toEqual([{ op: 'set', ...edit('ref', 'D2') }]);
});

describe('renaming a tag', () => {
  const content: Content['sheets'] = {
    supplies: [{ rail: 'L1' }, { rail: 'L2' }], branches: [{ branch: 'L1' }], runs: [{ run: 'W1', rail: 'L1' }],
    devices: [{ ref: 'L1', rail: 'L1', branch: 'L1' }, { rail: 'L2' }, {}],
  };

  test('takes every reference to it along, and nothing that only reads the same', () => {
    const document = tried(documentOf(content), renameTag(documentOf(content), 'supplies', 0, 'N1'));
    expect(toContent(document).sheets).toMatchObject({
      supplies: [{ rail: 'N1' }, { rail: 'L2' }], branches: [{ branch: 'L1' }], runs: [{ run: 'W1', rail: 'N1' }],
      devices: [{ ref: 'L1', rail: 'N1', branch: 'L1' }, { rail: 'L2' }, {}],
    });
  });

  test.each<[string, Content['sheets'], number, string, (string | null)[]]>([
    [
      'of two rows that share it leaves references alone', { ...content, supplies: [{ rail: 'L1' }, { rail: 'L1' }] },
      1, 'N1', ['L1', 'L2', null],
    ],
    [
      'of a row that had none leaves references alone', { ...content, supplies: [{ rail: 'L2' }, {}] }, 1, 'N1',
      ['L1', 'L2', null],
    ],
    ['to nothing leaves references alone', content, 0, '', ['L1', 'L2', null]],
  ])('%s', (_name, sheets, id, tag, rails) => {
    const document = documentOf(sheets);
    expect(tags(tried(document, renameTag(document, 'supplies', id, tag)), 'devices', 'rail')).toEqual(rails);
    expect(document.row('supplies', id)?.cells.rail ?? '').toBe(tag);
  });

  test('to the same is no change', () => expect(renameTag(documentOf(content), 'supplies', 0, 'L1')).toEqual([]));
});

test('revisions are set with their texts trimmed, undone, and left alone where nothing is different', () => {
  const document = documentOf({});
  const revision = { revision: 'A', date: '2026-11-02', name: 'N. N.', text: 'First issue' };
  tried(document, setRevisions(document, [{ ...revision, text: ' First issue ' }]));
  expect(document.revisions).toEqual([revision]);
  expect(setRevisions(document, [{ ...revision, name: 'N. N. ' }])).toEqual([]);
  expect(setRevisions(document, [])).toEqual([{ op: 'revisions', revisions: [] }]);
});

describe('cells that name rows which are to go', () => {
  const document = documentOf({
    supplies: [{ rail: 'L1' }, { rail: 'L2' }, { rail: 'L2' }, { rail: 'L3' }],
    runs: [{ run: 'R1', rail: 'L1' }, { run: 'R2', rail: 'L2' }],
    devices: [{ ref: 'D1', rail: 'L1' }, { ref: 'D2', rail: 'L3', run: 'R1' }, { ref: 'D3', rail: 'L1' }],
    ways: [{ way: 'F1', rail: 'L1' }],
  });
  const named = (ids: readonly number[]) =>
    namingCells(document, 'supplies', ids).map(({ sheet, id, key }) => `${sheet} ${id} ${key}`);

  test('stand on every sheet that can name them', () => {
    expect(named([0])).toEqual(['devices 0 rail', 'devices 2 rail', 'ways 0 rail', 'runs 0 rail']);
  });

  test('name another still where one of the same tag stays', () => {
    expect(named([1])).toEqual([]);
    expect(named([1, 2])).toEqual(['runs 1 rail']);
  });

  test('name another row by one change each', () => {
    document.perform(setCells(document, namingCells(document, 'supplies', [0]).map((cell) => ({ ...cell, value: 'L3' }))));
    expect(named([0])).toEqual([]);
    expect(document.rows('devices').map(({ cells }) => cells.rail)).toEqual(['L3', 'L3', 'L3']);
  });
});
