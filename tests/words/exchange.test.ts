import { describe, expect, test } from 'vitest';
import {
  decodeText, encodingNote, goneNotes, MOST_CHARACTERS, readCsv, readSchedule, type Unreadable,
} from '../../src/exchange/index.ts';
import { readLoadTable } from '../../src/report/xlsx/read-load-table.ts';
import { tooLarge } from '../../src/exchange/problem.ts';
import {
  countedList, equationOf, readListFile, readTakeoff, takeoffChanges, takeoffLabel, type TakeoffOptions,
  type TakeoffSource,
} from '../../src/exchange/takeoff/index.ts';
import { reviseSchedule, revisionLabel } from '../../src/exchange/revision/index.ts';
import { conflictRow, conflictSentence, joinSchedules, joinSentences } from '../../src/exchange/join/index.ts';
import { readProfile } from '../../src/exchange/profile/index.ts';
import { compareWithList, LIST_WAYS, takeList, updateLabel } from '../../src/exchange/update/index.ts';
import { openWorkbook } from '../../src/exchange/workbook/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { ScheduleDocument, toContent, toSnapshot, type Cells } from '../../src/schedule/index.ts';
import { loadWords, type Words } from '../../src/words/index.ts';
import { makeWorkbook } from '../support/make-workbook.ts';
import { messagesSaidIn } from '../support/messages.ts';
import { outside, recordedWords } from '../support/pseudo-words.ts';

const CSV = [
  '', 'A\0B', '"D1', 'Ref,Qty\n"D1"x,2', 'Xyz,Uvw', 'Note\nD1', 'Ref,Qty,Ref\nD1,2,D1', 'Ref,Unit draw (kg)\nD1,2',
  'Ref,Qty (kg)\nD1,2',
  'Connected,Demand\n1,2', 'Ref,Qty\nD1,2,3', 'Ref,Qty\nD1,x', 'Ref,Qty\nD1,=NOW()',
  'Ref,Qty,Xyz,\nD1,2,u,v\n\nD2,1,u,', 'Ref,Qty\n\n\nD1,2',
  `Ref,Unit draw\n${'D1,8.4 W\n'.repeat(22)}`, `Ref\n${'D1\n'.repeat(100_001)}`, `Ref\n${','.repeat(16_384)}`,
];

const schedule = (rest: string) => `{"format":"elv-load-schedule","version":2${rest}}`;
const JSON_TEXTS = [
  '{"a": xyz}', '{"a": 1.}', '{"a": 1,}', '{"a": }', '{"a" 1}', '{"a": 1 "b": 2}', '{"a": 1', '[1', '{} {}', '{/* */}',
  '{"a": "b\n"}',
  '{"a": 1e}', '{"a": "\\u12"}', '{"a": "\\x"}', '{"a": "\u0001"}', '['.repeat(101), '{"a": 1, "a": 2}',
  '<!doctype html><p>', '{}',
  '{"format":"elv-load-schedule"}', '{"format":"elv-load-schedule","version":99}',
  '{"format":"elv-load-schedule","version":0.5}',
  `{"format":"elv-load-schedule","version":2,"details":{},"sheets":{},"variants":[{"name":" "},
    {"name":"1","base":{"sheets":{"types":[]}},"tried":{"sheets":{"types":5}}},
    {"name":"1","base":{"sheets":{"types":[]}},"tried":{"sheets":{}}}]}`,
  schedule(''), schedule(
    ',"sheets":[],"details":null,"accepted":{},"revisions":"x"'
  ), schedule(',"sheets":{"devices":1,"types":[true]}'),
  schedule(
    ',"sheets":{"devices":[{"qty":[1]},{"qty":"x"},{"qty":"=NOW("}]}'
  ), schedule(',"sheets":{"devices":[{"qty":"=NOW()"}]}'),
  schedule(
    ',"sheets":{},"details":{"project":[]},"accepted":[{"sheet":"xyz","value":{},"key":1,"row":0.5}],"revisions":[{"revision":true,"state":"x","digest":"x"}]'
  ),
  schedule(
    ',"sheets":{},"accepted":[{"sheet":"feeds","tag":"Xyz","rule":"xyz-uvw","reason":"x","name":"x","date":"x"}]'
  ),
  schedule(`,"sheets":{"devices":[${'{},'.repeat(100_000)}{}]}`),
  schedule(',"xyz":1,"sheets":{"xyz":[],"devices":[{"xyz":1,"unitDraw":"8.4 W"}]},"details":{"xyz":1}'),
];

const TYPES: readonly Cells[] = [{ type: 'Xylo 4', aliases: 'Xy' }, { type: 'Band 5 W/m' }];
const MARKS = { hiddenRows: new Set([1]), hiddenColumns: new Set([2]), struckRows: new Set([2]) };
const LISTS: (readonly [TakeoffSource, Partial<TakeoffOptions>?])[] = [
  ['Device;Qty\nRouter;23\nRouter;1\nOdd box;24\nOdd box;1'],
  [''], ['Qty;Room\n4;R1'], ['Device;Room\nXylo 4;R1'], ['\n\nQty;R1;x\n'], ['Device;Qty;Zzz;\nXylo 4;1;q;r'],
  ['Qqq;\n\nDevice;Qty;Room;Unit\nXylo 4;1;R1;\nXylo 4;2;R1;\nDEVICE;QTY;ROOM;UNIT\nXY;3;R1;\nxylo-4;1;R3;\nXylo;4;R1;\nZzzz;5;R1;\nTotal;;;\nTotal;16;;\nTotal;9;;\n;7;;\n;;;x\n;;R2;Stk\nXylo 4;;R2;'
    + '\nXylo 4;=1+1;R2;\nXylo 4;ca. 5;R2;\nXylo 4;5;R2;psch\nXylo 4;5000000;R2;\nXylo 4;2,5;R2;\nXylo 4;3;R4;m\nXylo 4;0;R2;\n1;;;'],
  ['Device;Qty\nAaa;\nXylo 4;1'],
  ['Device;Qty;Unit\nXylo 4;1;\nXylo 4;1 lot;\nXylo 4;2 x 3;\nXylo 4;2;pr\nTotal;2;\n;9;\nXylo 4;3 entfällt;'],
  ['Device;Qty\nL1;\nXxx;\nXylo 4;1'], ['Ref;Device;Qty\nX1 to X4;Xylo 4;1\nX5;Xylo 4;1\nX5;Xylo 4;1'],
  [['1', '2', '3'].map((qty) => ({ cells: `Device;Qty\nXylo 4;${qty}`, sheet: `L${qty}` }))],
  ['Device;Qty per flat\nXylo 4;2'], ['Device;Qty per flat;Flats\nXylo 4;2;3'], ['Device;Qty\nNb logements;3\nXylo 4;2\nSpares\nXylo 4;2'],
  [';Aaa;Bbb\nCcc;1;2\nDdd;1;2'], ['Device;Qty;;Device;Qty\nXylo 4;1;;Xylo 4;2'], ['Device;Alt;Neu\nXylo 4;1;2'], ['Device;R1 (x3);R2\nXylo 4;1;2'],
  [['v1', 'v2', 'Qqq', 'L1', 'L2'].map((sheet) => ({ cells: 'Room;Device;Qty\nR1;Xylo 4;1\nR2;Xylo 4;1\nR3;Xylo 4;1', sheet }))],
  ['Device;Qty;Room\nXylo 4;1;R̶1̶ R2\nXylo 4;2;R1\nZzzz;3;R1'], ['Device;Qty;Qty x\nXylo 4;1;1'], ['Device;Qty;Draw (mA)\nZzzz;1;5'],
  ['Device;R1;R2;Total\nXylo 4;1;2;3\nXylo 4;1;2;3\nXylo 4;1;2;4\nXylo 4;;;5'],
  [[
    { cells: 'Device;Room;Qty\nXylo 4;R1;1\nXylo 4;R2;2', sheet: 'L1', ...MARKS, hiddenColumns: new Set<number>() },
    { cells: 'Device;Qty\nXylo 4;9', sheet: 'L2' }, { cells: 'Device;Qty\nXylo 4;12', sheet: 'L3' },
    { cells: 'Device;Room;Qty\nXylo 4;R1;1\n;R1;1', sheet: 'Total', hiddenColumns: MARKS.hiddenColumns },
    { cells: 'Code;Description\nXy;Xylo\nXy;Zzzz', sheet: 'L4' }, { cells: 'Qqq;R\nXxx;Yyy', sheet: 'L5' },
    { cells: 'Device;Room;Qty\nXylo 4;R1;1', sheet: 'L6', hiddenColumns: MARKS.hiddenColumns },
  ]],
  ['Device;Qty\nXylo;1\nZzzz;2\nUuuu;3\nXylo 4;4', {
    decisions: {
      names: { xylo: { type: 'Xylo 4' }, zzzz: 'leave-out', uuuu: { type: 'Vvvv' } }, lines: { 5: 'leave-out' },
    },
  }],
];

/** Profiles with everything that can be wrong or is worth a note. */
const PROFILES = [
  '', 'Xyz;0–8;8–x\nQ;1;1', 'Xyz;0–8;12\nQ;1;1', 'Xyz;0;12;24\nQ;1;1;1', 'Xyz;8;16\nQ;1;1', 'Xyz;0–8;6–20\nQ;1;1', 'Q;1;1;1',
  'Xyz;0;12\n;1;1\nQ;1;1\nQ;1\nU;=1;1\n"\0;1;1', 'Zzz\nXyz;0;12\nQ;1;1\nU;;', 'Xyz;12;24\nQ;1;1',
];

function problemsOf(read: { readonly ok: true } | Unreadable): string[] {
  return read.ok ? [] : read.problems.map(({ message }) => message);
}

/** A row of every kind of conflict, and one of theirs in another order. */
function joiningSaid(words: Words): string[] {
  const accepted = (reason: string) =>
    [{ sheet: 'types' as const, tag: 'Xylo 4', rule: '', reason, name: '', date: '', value: null }];
  const revisions = (text: string) => [{ revision: '1', date: '', name: '', text }];
  const of = (details: string, types: Cells[], reason: string) => ({
    details: { panel: details }, sheets: { types }, accepted: accepted(reason), revisions: revisions(reason),
    unknown: { file: { xyz: reason } }, lists: { headings: { xyz: reason } },
    variants: [{ name: '1', base: { sheets: { types: [] } }, tried: { sheets: { types: [{ type: reason }] } } }],
  });
  const [xylo, band] = TYPES as [Cells, Cells];
  const [base, mine, theirs] = [
    of('1', [xylo, band, { type: 'Zzz' }, { type: 'Yyy' }], '1'),
    of('2', [{ ...xylo, note: '2' }, { type: 'Zzz', note: '2' }, { type: 'Yyy' }, { type: 'Q', draw: 1 }, { type: 'U' }], '2'),
    of('3', [{ type: 'Yyy' }, { ...xylo, note: '3' }, { ...band, note: '3' }, { type: 'Q', draw: 2 }], '3'),
  ] as const;
  const renamed: Cells[] = [{ type: 'U', draw: 1 }, { type: 'Q' }];
  const taken = joinSchedules(
    { details: {}, sheets: { types: [{ type: 'Q', draw: 1 }] } }, { details: {}, sheets: { types: renamed } },
    { details: {}, sheets: { types: [{ type: 'U', draw: 1 }] } });
  const devices = (rows: Cells[]) => ({ details: {}, sheets: { devices: rows } });
  const bare = joinSchedules(devices([{ type: 'Q', qty: 1 }]), devices([{ type: 'Q', qty: 2, branch: 'U' }]));
  const parted = joinSchedules(devices([{ qty: 1, source: '1' }, { qty: 2, source: '1' }]), devices([{ qty: 4, source: '1' }]),
    devices([{ qty: 3, source: '1' }]));
  const [was, is] = [[{ type: 'Q', area: '1', qty: 3 }], [{ type: 'Q', area: '1', qty: 2 }]];
  const gone = joinSchedules(devices([]), devices(is), devices(was));
  const lost = joinSchedules(devices(is), devices([]), devices(was));
  const listed = joinSchedules(mine, mine);
  return [joinSchedules(mine, theirs, base), taken, bare, parted, gone, lost, listed].flatMap((join) => [
    ...joinSentences(join, words),
    // What rows hold is no language's.
    ...join.conflicts.flatMap((each) =>
      [conflictSentence(each, words), each.tag === '' ? conflictRow(each, words).replace(/ \(.*\)$/, '') : '']),
  ]);
}

/** A list of which rows change, come, and are left out for every reason. */
function updateSaid(words: Words): string[] {
  const document = new ScheduleDocument(toSnapshot({ details: {}, sheets: { types: [...TYPES, { type: 'Zzz' }, { type: 'Zzz' }, { type: 'Y', aliases: 'V' }] } }).snapshot);
  const rows: Cells[] = [{ draw: 1 }, { type: 'V' }, { type: 'Q' }, { type: 'Q' }, { type: 'Zzz' }, { type: 'U', draw: '=[types.draw@W]' }];
  const schedule = { document, content: () => toContent(document) };
  const ways = [{ sheet: 'types', rows }, { sheet: 'contacts', rows: [] }] as const;
  const taken = ways.flatMap((list) => LIST_WAYS.map((how) => takeList(schedule, list, '1', how, { words }).label));
  const update = compareWithList(document, { sheet: 'types', rows }, words);
  const lined = compareWithList(document, { sheet: 'types', rows, lines: rows.map((_row, index) => index + 2) }, words);
  const part = compareWithList(document, { sheet: 'types', rows: [{ type: 'U', draw: 1 }], isPart: true }, words);
  return [
    ...[...update.leftOut, ...lined.leftOut].map(({ reason }) => reason), ...taken,
    ...[update, part].map((each) => updateLabel(each, '1', words)),
  ];
}

/** Whatever is said of lists, files and workbooks that are made to be refused, or read with notes. */
async function everythingSaid(words: Words): Promise<string[]> {
  const said = [
    ...problemsOf(tooLarge(MOST_CHARACTERS + 1, words)!),
    ...problemsOf(decodeText(Uint8Array.of(0x52, 0xb2, 1), words)),
    encodingNote('Windows-1252', words)!,
  ];
  for (const text of CSV) {
    const read = readCsv(text, undefined, undefined, words);
    said.push(...read.ok ? read.notes : problemsOf(read));
  }
  said.push(...problemsOf(readCsv('Xyz,Uvw\n1,2', 'devices', undefined, words)));
  said.push(...problemsOf(readCsv('Run,Protection\nW1,2', 'runs', undefined, words)));
  said.push(...joiningSaid(words), ...updateSaid(words));
  for (const text of PROFILES) {
    const read = readProfile(text.split('\n').map((line) => line.split(';')), { words });
    said.push(...read.ok ? read.notes : problemsOf(read));
  }
  const accepted = { sheet: 'devices' as const, rule: '', reason: '', name: '', date: '', value: null };
  said.push(...goneNotes(['', '1', '2', '3', '4', '5'].map((tag, row) => ({ ...accepted, tag, row })), words));
  for (const text of JSON_TEXTS) {
    const read = readSchedule(text, words);
    said.push(...read.ok ? read.notes : problemsOf(read));
  }
  for (const [list, options] of LISTS) {
    const read = readTakeoff(list, { types: TYPES, words, ...options });
    said.push(...problemsOf(read));
    if (!read.ok) continue;
    const document = new ScheduleDocument(toSnapshot({ details: {}, sheets: {} }).snapshot);
    document.perform(takeoffChanges(document, read, words));
    const notes = document.rows('types').map(({ cells }) => cells.note as string);
    said.push(
      ...read.lines.map(({ reason }) => reason), ...read.notes, equationOf(read.sums, words), takeoffLabel(read, words),
      ...notes
    );
  }
  said.push(...revisionsSaid(words));
  const hidden = makeWorkbook({ L1: { rows: [['D1']] }, Old: { rows: [['D1']], state: 'hidden' } });
  const file = await readListFile('d1.xlsx', hidden, words);
  said.push(...file.ok ? file.notes : problemsOf(file));
  for (const bytes of workbooks()) {
    const read = openWorkbook(bytes, words);
    said.push(...problemsOf(read));
    if (read.ok) for (const name of [...read.sheets, 'Zzz']) said.push(...problemsOf(await read.read(name)));
    said.push(...problemsOf(await readLoadTable(bytes, words)));
  }
  return said;
}

/** A list that comes again on rows that were parted, moved, marked, or entered by hand. */
function revisionsSaid(words: Words): string[] {
  const source = (line: number) => `Xyz: ${line}`;
  const schedule = new LoadSchedule({
    details: {}, sheets: {
      types: TYPES, devices: [
        { ref: 'X1', type: 'Xylo 4', qty: '=4', source: source(2) }, { ref: 'X2', type: 'Band 5 W/m', area: 'R1', qty: 1, source: source(3) },
        { type: 'Xylo 4', area: 'R2', qty: 3, branch: 'B1', source: source(4) }, { type: 'Xylo 4', area: 'R2', qty: 3, branch: 'B2', source: source(4) },
        { type: 'Xylo 4', area: 'R3', qty: 3, source: source(5), state: 'gone' }, { type: 'Xylo 4', area: 'R4', qty: 3, source: source(6) },
        { type: 'Xylo 4', area: 'R5', qty: 3, source: source(7) }, { type: 'Xylo 4', area: 'R6', qty: 3 },
        { ref: 'X8', type: 'Xylo 4', area: 'R8', qty: 1, source: source(9) }, { type: 'Band 5 W/m', area: 'R12', qty: 4, source: source(9) },
        { type: 'Xylo 4', area: 'R14', qty: 2, source: `${source(10)} (Xylo 4 › R13)` },
        { type: 'Band 5 W/m', area: 'R20', qty: 1, source: source(30) },
      ],
    },
  }, { words });
  const said = ['5', '7'].flatMap((shared) => (['mark', 'delete'] as const).flatMap((gone) => {
    const read = readTakeoff({
      cells: `Ref;Device;Room;Qty\nX1;Xylo 4;R0;5\nX2;Xylo 4;R7;1\n;Xylo 4;R2;${shared}\n;Xylo 4;R3;3\n;Xylo 4;R4;ca. 3\n;Xylo 4;R6;2\nX9;Xylo 4;R8;1\nX10;Xylo 4;R11;4\n;Xylo 4;R13;2\n;Xylo 4;R21;9`,
      file: 'Xyz',
    }, { types: TYPES, words });
    if (!read.ok) throw new Error('The list was not read.');
    const revision = reviseSchedule(schedule, countedList(read), { gone, words });
    return [...revision.rows.map(({ reason }) => reason), revisionLabel(revision, words)];
  }));
  const [named] = schedule.rows('devices');
  schedule.act('', [{ op: 'set', sheet: 'devices', id: named!.id, key: 'ref', value: null }]);
  const read = readTakeoff({ cells: 'Ref;Device;Qty\nX1;Xylo 4;5', file: 'Xyz' }, { types: TYPES, words });
  const same = new Map([[0, named!.id]]);
  if (!read.ok) throw new Error('The list was not read.');
  said.push(...reviseSchedule(schedule, countedList(read), { words, same }).rows.map(({ reason }) => reason));
  schedule.dispose();
  return said;
}

function workbooks(): Uint8Array[] {
  const good = makeWorkbook({ L1: { rows: [['D1', 1]] } });
  const zeros = new Uint8Array(70 * 1024 * 1024);
  return [
    new Uint8Array(21 * 1024 * 1024), Uint8Array.of(0xd0, 0xcf), Uint8Array.of(1, 2), good, good.slice(0, 200),
    makeWorkbook({}),
    makeWorkbook({ L1: { rows: [['D1']] } }, { 'xl/sharedStrings.xml': zeros }),
    makeWorkbook({ L1: { xml: '<row r="1"><c r="A1"><v>1</v></c><c r="XFD1048576"><v>1</v></c></row>' } }),
  ];
}

/**
 * What is not reached above: a fault that both readers of JSON would have to see differently, or that only the library
 * knows.
 */
const UNREACHED = new Set([
  'There is something that is not JSON; put it right.', 'The file is not JSON: {fault}. Put that right.',
  'There is a number that JSON does not know; write it as 12.5.',
  'The sheet is damaged or incomplete and cannot be read. Save the workbook anew as .xlsx, or copy the list and paste it.',
]);

describe('in a language that nobody speaks', () => {
  const { words, messages } = recordedWords();

  test('every sentence is said through the words, and every message of the readers is among them', async () => {
    const said = await everythingSaid(words);
    expect(said.length).toBeGreaterThan(150);
    expect(said.filter((text) => /\p{L}/u.test(outside(text).left))).toEqual([]);
    expect(messagesSaidIn('src/exchange/').filter((message) => !messages.has(message) && !UNREACHED.has(message)))
      .toEqual([]);
  });
});

/** Words that neither German nor French has, but as parts of names in quotation marks. */
const ENGLISH_WORDS = new RegExp(`(?<![\\p{L}“„"]|«\\u00a0)(?:${[
  'the', 'of', 'and', 'is', 'are', 'has', 'not', 'with', 'that', 'this', 'which', 'there', 'it', 'its', 'must', 'may', 'can', 'cannot',
  'be', 'by', 'for', 'from', 'line', 'row', 'sheet', 'column', 'quantity', 'allowed',
].join('|')})(?!\\p{L})`, 'iu');

describe.each(['de', 'fr'])('in %s', (language) => {
  test('no sentence is left in English, and none has a hole', async () => {
    const said = await everythingSaid(await loadWords(language));
    expect(said.filter((text) => ENGLISH_WORDS.test(text))).toEqual([]);
    expect(said.filter((text) => /undefined|NaN|\[object/.test(text))).toEqual([]);
  });

  test('figures have a decimal comma', async () => {
    const read = readTakeoff('Device;Qty\nXylo;2,5 Stk\nXylo 4;1', { types: TYPES, words: await loadWords(language) });
    if (!read.ok) throw new Error('The list was not read.');
    expect(read.lines[1]!.reason).toMatch(/2,5.*\(0,\d\d\)/);
    expect(equationOf(read.sums, await loadWords(language))).toMatch(/3,5 = .* 1 \+ .* 0 \+ .* 2,5$/);
  });
});
