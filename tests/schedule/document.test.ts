import { describe, expect, test } from 'vitest';
import { LoadSchedule, type ScheduleEvent } from '../../src/load-schedule.ts';
import {
  History, insertRows, isBlank, removeRows, ScheduleDocument, setCells, SHEET_NAMES, tagOf, toContent, toSnapshot,
  type Cells, type Content,
} from '../../src/schedule/index.ts';
import { enter, idAt, scheduleOf, valueAt } from '../support/schedules.ts';

const documentOf = (content: Partial<Content>) =>
  new ScheduleDocument(toSnapshot({ details: {}, sheets: {}, ...content }).snapshot);
const refs = (document: ScheduleDocument) => document.rows('devices').map(({ cells }) => cells.ref);
const DEVICES = { sheets: { devices: ['a', 'b', 'c', 'd'].map((ref) => ({ ref })) } };

describe('ids of rows', () => {
  test('stay while rows come, go and move', () => {
    const document = documentOf(DEVICES);
    const [, , c] = document.rows('devices');
    document.perform(removeRows(document, 'devices', [0]));
    document.perform(insertRows(document, 'devices', 1, [{ ref: 'x' }]));
    document.perform([{ op: 'move', sheet: 'devices', from: 2, count: 1, to: 0 }]);
    expect(document.row('devices', c!.id)?.cells.ref).toBe('c');
    expect(document.position('devices', c!.id)).toBe(0);
  });

  test('of rows that went are given again, so that they stay small', () => {
    const document = documentOf(DEVICES);
    for (let turn = 0; turn < 50; turn += 1) {
      document.perform(removeRows(document, 'devices', [document.rows('devices')[turn % 4]!.id]));
      document.perform(insertRows(document, 'devices', turn % 4, [{ ref: `x${turn}` }]));
    }
    expect(document.capacity('devices')).toBe(4);
    expect(document.rows('devices').map(({ id }) => id).sort()).toEqual([0, 1, 2, 3]);
  });

  test('come back with the rows on undo, whatever took them in between', () => {
    const document = documentOf(DEVICES);
    const history = new History(document);
    history.act('Delete', removeRows(document, 'devices', [1, 2]));
    history.act('New', insertRows(document, 'devices', 0, [{ ref: 'x' }, { ref: 'y' }, { ref: 'z' }]));
    const after = document.rows('devices').map(({ id }) => id);
    history.undo();
    history.undo();
    expect(document.rows('devices').map(({ id, cells }) => [id, cells.ref]))
      .toEqual([[0, 'a'], [1, 'b'], [2, 'c'], [3, 'd']]);
    history.redo();
    history.redo();
    expect(document.rows('devices').map(({ id }) => id)).toEqual(after);
  });

  test('a row that is not there has no place', () => {
    const document = documentOf(DEVICES);
    expect([document.position('devices', 9), document.row('devices', 9), document.position('types', 0)])
      .toEqual([-1, undefined, -1]);
  });
});

describe('a change that names what is not there is refused, and changes nothing', () => {
  test.each<[string, Parameters<ScheduleDocument['perform']>[0][number]]>([
    ['a cell of no row', { op: 'set', sheet: 'devices', id: 9, key: 'ref', value: 'x' }],
    ['more rows than there are', { op: 'remove', sheet: 'devices', at: 2, count: 3 }],
    ['rows before the first', { op: 'remove', sheet: 'devices', at: -1, count: 1 }],
    ['a move beyond the end', { op: 'move', sheet: 'devices', from: 0, count: 2, to: 3 }],
    ['an id that is taken', { op: 'insert', sheet: 'devices', at: 0, rows: [{ id: 1, cells: {} }] }],
  ])('%s', (_name, change) => {
    const document = documentOf(DEVICES);
    expect(() => document.perform([change])).toThrow(RangeError);
    expect(toContent(document)).toEqual(toContent(documentOf(DEVICES)));
  });
});

test('what is handed in and out is not the document’s own', () => {
  const cells = { ref: 'x' };
  const document = documentOf(DEVICES);
  document.perform(insertRows(document, 'devices', 0, [cells]));
  cells.ref = 'changed outside';
  toContent(document).sheets.devices![0]!.ref = 'changed outside';
  (document.snapshot().sheets.devices[0]!.cells).ref = 'changed outside';
  expect(refs(document)[0]).toBe('x');
});

test('content goes in and comes out whole, what this version does not know included', () => {
  const content: Content = {
    details: { project: 'P', panel: 'A1', revision: '2' },
    sheets: {
      ...Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, []])),
      devices: [{ ref: 'a', qty: 2, later: 'unknown key' }, {}],
    },
    accepted: [
      { sheet: 'supplies', tag: 'L1', rule: 'supply-over-fuse', reason: 'r', name: 'n', date: '2026-01-02', value: 3 },
    ],
    revisions: [{ revision: 'A', date: '2026-01-02', name: 'n', text: 't' }],
    unknown: { extension: { a: [1, 2] } },
  };
  expect(toContent(documentOf(content))).toMatchObject(content);
});

test('tags and blank rows', () => {
  expect([tagOf('devices', { id: 0, cells: { ref: 'a' } }), tagOf('devices', { id: 0, cells: {} })]).toEqual(['a', '']);
  const rows: Cells[] = [{}, { note: null }, { qty: 0 }, { terminated: false }];
  expect(rows.map((cells) => isBlank({ id: 0, cells }))).toEqual([true, true, false, false]);
});

describe('history', () => {
  test('one undo takes back one action, across sheets', () => {
    const schedule = scheduleOf({ supplies: [{ rail: 'L1' }], devices: [{ ref: 'D1', rail: 'L1' }] });
    const before = schedule.content();
    schedule.act('Both', setCells(schedule.document, [
      { sheet: 'supplies', id: 0, key: 'rail', value: 'L2' }, { sheet: 'devices', id: 0, key: 'rail', value: 'L2' },
    ]));
    const after = schedule.content();
    expect([schedule.undoLabel, schedule.redoLabel]).toEqual(['Both', undefined]);
    expect(schedule.undo()).toBe('Both');
    expect(schedule.content()).toEqual(before);
    expect([schedule.undoLabel, schedule.redoLabel]).toEqual([undefined, 'Both']);
    expect(schedule.redo()).toBe('Both');
    expect(schedule.content()).toEqual(after);
  });

  test('at either end nothing happens', () => {
    const schedule = scheduleOf({ supplies: [{ rail: 'L1' }] });
    expect([schedule.undo(), schedule.redo()]).toEqual([undefined, undefined]);
    expect(valueAt(schedule, 'supplies', 0, 'rail')).toBe('L1');
  });

  test('an action after an undo ends what could be done again', () => {
    const schedule = scheduleOf({ supplies: [{ rail: 'L1', rated: 1 }] });
    enter(schedule, 'supplies', 0, { rated: 2 });
    schedule.undo();
    enter(schedule, 'supplies', 0, { rated: 3 });
    expect([schedule.redo(), valueAt(schedule, 'supplies', 0, 'rated')]).toEqual([undefined, 3]);
    schedule.undo();
    expect(valueAt(schedule, 'supplies', 0, 'rated')).toBe(1);
  });

  test('no changes are no action', () => {
    const schedule = scheduleOf({ supplies: [{ rail: 'L1' }] });
    schedule.act('Nothing', []);
    enter(schedule, 'supplies', 0, { rail: 'L1' });
    expect(schedule.undoLabel).toBeUndefined();
  });

  test('details, acceptances and opening a file are taken back too', () => {
    const schedule =
      new LoadSchedule({ details: { project: 'Old' }, sheets: { supplies: [{ rail: 'L1', rated: 10 }] } });
    schedule.act('Title', [{ op: 'details', details: { project: 'New' } }]);
    const titled = schedule.content();
    expect(schedule.load({ details: { project: 'Other' }, sheets: { feeds: [{ feed: 'F1', rated: 6 }] } }, 'Open'))
      .toEqual([]);
    expect(
      [schedule.document.details.project, schedule.rows('supplies').length, valueAt(schedule, 'feeds', 0, 'spare')]
    ).toEqual(['Other', 0, 4.800000000000001]);
    expect(schedule.undo()).toBe('Open');
    expect(schedule.content()).toEqual(titled);
    expect(valueAt(schedule, 'supplies', 0, 'spare')).toBe(8);
    schedule.undo();
    expect(schedule.document.details.project).toBe('Old');
  });

  test('listeners hear each action once, with what is worth something else', () => {
    const schedule = scheduleOf(
      {
        types: [{ type: 'T', draw: 100 }], supplies: [{ rail: 'L1', rated: 1 }],
        devices: [{ type: 'T', qty: 2, rail: 'L1' }],
      }
    );
    const heard: ScheduleEvent[] = [];
    const end = schedule.subscribe((event) => heard.push(event));
    enter(schedule, 'types', 0, { draw: 200 });
    schedule.undo();
    schedule.redo();
    schedule.undo();
    end();
    schedule.redo();
    expect(heard.map(({ label, cause }) => [label, cause]))
      .toEqual([['Entry', 'act'], ['Entry', 'undo'], ['Entry', 'redo'], ['Entry', 'undo']]);
    for (const { touched } of heard) {
      for (
        const [sheet, key] of [
          ['types', 'draw'], ['devices', 'unitDraw'], ['devices', 'demand'], ['supplies', 'demand'],
          ['supplies', 'loading'],
        ] as const
      ) {
        expect([sheet, key, touched.concerns(sheet, key)]).toEqual([sheet, key, true]);
      }
      expect(touched.concerns('supplies', 'rated')).toBe(false);
    }
  });
});

test('formulas elsewhere follow in the same action as the rows that they refer to', () => {
  const schedule =
    scheduleOf({ branches: [{ limit: 10 }, { limit: 20 }], feeds: [{ feed: 'F1', rated: '=[branches.limit#2]' }] });
  schedule.act('Delete', removeRows(schedule.document, 'branches', [idAt(schedule, 'branches', 1)]));
  expect(schedule.formulaText('feeds', idAt(schedule, 'feeds'), 'rated')).toBe('=#REF!');
  schedule.undo();
  expect([schedule.formulaText('feeds', idAt(schedule, 'feeds'), 'rated'), valueAt(schedule, 'feeds', 0, 'rated')])
    .toEqual(['=branches!B2', 20]);
});
