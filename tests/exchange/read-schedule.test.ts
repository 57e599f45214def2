import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { migrate } from '../../src/exchange/json/migrations.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { SHEET_NAMES, type Content } from '../../src/schedule/index.ts';
import { sheetRows } from './support.ts';

/** Text of a schedule file with these sheets. */
const file = (sheets: object, more: object = {}) =>
  JSON.stringify({ format: 'elv-load-schedule', version: 2, sheets, ...more });

function contentOf(text: string): Content {
  const read = readSchedule(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.content;
}

describe('readSchedule', () => {
  it('reads typed values, and texts as if they were typed', () => {
    const { sheets } = contentOf(file({
      supplies: [{ rail: 'R1', voltage: 12, redundant: 'yes' }, { rail: 2, purpose: 'Lighting' }],
      devices: [
        { ref: 'a', qty: 3, unitDraw: '8.4 W', rail: 'R1', diversity: '70 %' },
        { ref: 'b', qty: '=[devices.qty@a]*2', distance: '12,5', unitDraw: null, note: '=text' },
      ],
    }));
    expect(sheets.supplies).toEqual([
      { rail: 'R1', voltage: 12, redundant: true }, { rail: '2', purpose: 'lighting' },
    ]);
    expect(sheets.devices).toEqual([
      { ref: 'a', qty: 3, unitDraw: 700, rail: 'R1', diversity: 0.7 },
      { ref: 'b', qty: '=[devices.qty@a]*2', distance: 12.5, note: '=text' },
    ]);
  });

  it('says at which voltage watts were taken', () => {
    expect(readSchedule(file({ devices: [{ unitDraw: '8.4 W' }] })))
      .toMatchObject({ ok: true, notes: ['devices, row 1, Unit draw (mA): 8.4 W at 24 V is 350 mA.'] });
  });

  it('ignores computed keys', () => {
    expect(contentOf(file({ feeds: [{ feed: 'F1', demand: 99, status: 'over' }] })).sheets.feeds)
      .toEqual([{ feed: 'F1' }]);
  });

  it('keeps unknown keys at every level and writes them back', () => {
    const text = file(
      { devices: [{ ref: 'a', colour: 'red', origin: { page: 3 } }, { ref: 'b', colour: null }], lamps: [{ watt: 3 }] },
      { details: { project: 'P', client: 'C' }, created: '2026-11-25', extras: { a: [1, 2] } },
    );
    const schedule = new LoadSchedule(contentOf(text));
    schedule.act('Removal of the second row', [{ op: 'remove', sheet: 'devices', at: 1, count: 1 }]);
    schedule.undo();
    const written = JSON.parse(writeSchedule(schedule.content())) as Record<string, unknown>;
    const original = JSON.parse(text) as { sheets: object };
    const empty = Object.fromEntries(SHEET_NAMES.map((name) => [name, []]));
    expect(written).toEqual({ ...original, sheets: { ...empty, ...original.sheets } });
    schedule.dispose();
  });

  it('names the unknown keys', () => {
    const read = readSchedule(file({ devices: [{ colour: 'red' }, { colour: 'blue' }] }));
    expect(read.ok && read.notes).toEqual(
      ['The sheet “devices” has the unknown key “colour”; it is kept and written back.']
    );
  });

  it('is not misled by keys of the prototype', () => {
    const text = '{"format":"elv-load-schedule","version":2,"__proto__":{"polluted":1},"sheets":{"__proto__":[],'
      + '"devices":[{"ref":"a","__proto__":{"polluted":1},"constructor":"x"}]}}';
    const content = contentOf(text);
    expect(content.sheets.devices).toEqual([{ ref: 'a', constructor: 'x' }]);
    expect(Object.getPrototypeOf(content.sheets.devices![0])).toBe(Object.prototype);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('keeps accepted findings', () => {
    const accepted = [{
      sheet: 'supplies', tag: 'R1', rule: 'supply-over-usable', reason: 'agreed', name: 'N. N.', date: '2026-11-25',
      value: 12,
    }];
    const { accepted: read } = contentOf(file({}, { accepted }));
    expect(read).toEqual(accepted);
  });

  it.each<[name: string, text: string, problem: object, words: string]>([
    ['a file that is no JSON', 'Ref,Qty', { code: 'json-syntax', line: 1, column: 1 }, 'double quotes'],
    [
      'a file that is cut short', '{\n  "format": "elv-load-schedule",\n  "sheets": {',
      { code: 'json-syntax', line: 3 }, 'cut short',
    ],
    ['a trailing comma', '{\n  "a": [1,]\n}', { code: 'json-syntax', line: 2 }, 'no comma'],
    ['a comment', '{ // x\n}', { code: 'json-syntax', line: 1, column: 3 }, 'comment'],
    ['an empty file', '', { code: 'json-syntax' }, 'value'],
    ['a key that stands twice', '{\n "a": 1,\n "a": 2\n}', { code: 'json-duplicate-key', line: 3, column: 2 }, '“a”'],
    ['other JSON', '[1, 2]', { code: 'not-a-schedule' }, 'elv-load-schedule'],
    ['another format', '{"format":"x","version":1}', { code: 'not-a-schedule' }, 'elv-load-schedule'],
    ['no version', '{"format":"elv-load-schedule","sheets":{}}', { code: 'version-missing' }, 'add "version": 2'],
    ['a newer version', '{"format":"elv-load-schedule",\n"version":99}',
      { code: 'version-unknown', line: 2, column: 11, received: '99' }, 'newer software'],
    ['a version in words', file({}, { version: 'one' }), { code: 'version-unknown' }, '"version": 2'],
    ['no sheets', '{"format":"elv-load-schedule","version":2}', { code: 'wrong-kind' }, '“sheets”'],
    [
      'a sheet that is no list', file({ devices: {} }), { code: 'wrong-kind', path: '/sheets/devices' },
      'must be a list',
    ],
    ['a row that is no object', file({ devices: [3] }), { code: 'wrong-kind', path: '/sheets/devices/0' }, 'row 1'],
    [
      'a detail that is no text', file({}, { details: { project: [] } }),
      { code: 'wrong-kind', path: '/details/project' }, 'project',
    ],
    [
      'a list in a cell', file({ devices: [{ qty: [1] }] }), { code: 'wrong-kind', path: '/sheets/devices/0/qty' },
      'a list',
    ],
    [
      'true in a column of numbers', file({ devices: [{ qty: true }] }), { code: 'value-refused' },
      'a whole number (0 or more)',
    ],
    [
      'a number out of range', file({ devices: [{ diversity: 1.4 }] }), { code: 'value-refused', received: '1.4' },
      'type 0.714',
    ],
    [
      'a word that is not in the list', file({ types: [{ purpose: 'x' }] }), { code: 'value-refused' },
      'lighting, field',
    ],
    ['a formula without its row', file({ devices: [{ qty: '=[devices.qty#9]' }] }),
      { code: 'formula-unreadable', path: '/sheets/devices/0/qty', line: 1 }, 'no row 9'],
    ['an acceptance on no sheet', file(
      {}, { accepted: [{ sheet: 'lamps', tag: '', rule: '', reason: '', name: '', date: '' }] }
    ),
      { code: 'value-refused', path: '/accepted/0/sheet' }, 'devices, types'],
    ['brackets without end', '['.repeat(100_000), { code: 'json-too-deep' }, '100 deep'],
  ])('refuses %s', (_name, text, problem, words) => {
    const read = readSchedule(text);
    expect(read).toMatchObject({ ok: false, problems: [problem] });
    expect(!read.ok && read.problems[0]!.message).toContain(words);
  });

  it('lists every bad cell with its line and column', () => {
    const text = JSON.stringify({
      format: 'elv-load-schedule', version: 2, sheets: { devices: [{ qty: -1 }, { qty: -1.5, diversity: 70 }] },
    }, null, 2);
    const read = readSchedule(text);
    expect(!read.ok && read.problems.map(({ line, column, path }) => `${line}:${column} ${path}`)).toEqual([
      '7:16 /sheets/devices/0/qty', '10:16 /sheets/devices/1/qty', '11:22 /sheets/devices/1/diversity',
    ]);
  });

  it('never throws, whatever it is given', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
      const read = readSchedule(text);
      expect(read).toMatchObject({ ok: false });
    }));
    const sheets = fc.dictionary(fc.constantFrom<string>(...SHEET_NAMES, 'x'), fc.oneof(fc.jsonValue(), fc.array(
      fc.dictionary(fc.constantFrom('ref', 'qty', 'rail', 'diversity', 'unitDraw', 'note', 'x'), fc.jsonValue()),
    )));
    fc.assert(fc.property(sheets, fc.jsonValue(), fc.jsonValue(), (some, details, accepted) => {
      const read = readSchedule(file(some, { details, accepted }));
      expect(read.ok || (read.total > 0 && read.problems.every(({ message }) => message !== ''))).toBe(true);
    }), { numRuns: 300 });
  });
});

describe('writeSchedule', () => {
  it.each([true, false])('writes what is read back the same, for every sheet (pretty: %s)', (pretty) => {
    const sheets = fc.record(Object.fromEntries(SHEET_NAMES.map((name) => [name, sheetRows(name)])));
    fc.assert(fc.property(sheets, (some) => {
      const content: Content = { details: { project: 'Mill', remarks: 'two\nlines' }, sheets: some, accepted: [] };
      const read = contentOf(writeSchedule(content, { pretty }));
      expect(read.details).toEqual(content.details);
      for (const name of SHEET_NAMES) expect(read.sheets[name]).toEqual(some[name]);
    }), { numRuns: 30 });
  });

  it('writes a line for each row when it is for reading', () => {
    const text = writeSchedule(
      { details: { project: 'Mill' }, sheets: { feeds: [{ rated: 10, feed: 'F1' }] } }, { pretty: true }
    );
    expect(text).toContain('\n    "feeds": [\n      {"feed":"F1","rated":10}\n    ],\n');
  });

  it('leaves out what has no value, however it is written', () => {
    const content: Content = { details: {}, sheets: {}, lists: { headings: { Colour: 'note' }, names: undefined } };
    for (const pretty of [true, false]) {
      expect(JSON.parse(writeSchedule(content, { pretty }))).toMatchObject({ lists: { headings: { Colour: 'note' } } });
    }
  });

  it('gives the same file for the same content', () => {
    const content: Content = { details: {}, sheets: { feeds: [{ note: 'x', feed: 'F1' }] } };
    const once = writeSchedule(content);
    expect(writeSchedule(contentOf(once))).toBe(once);
  });
});

describe('migrate', () => {
  const steps = [(raw: object) => ({ ...raw, second: true }), (raw: object) => ({ ...raw, third: true })];

  it.each([[1, { second: true, third: true }], [2, { third: true }], [3, {}]])(
    'brings version %i up to the newest, step by step', (version, expected) => {
      expect(migrate({}, version, steps)).toEqual(expected);
    });
});
