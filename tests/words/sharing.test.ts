import { describe, expect, test } from 'vitest';
import {
  leftOutSentence, limitSentence, noteSentence, readSharing, rowNames, servedText, shareOut, sizePanel, sizingCsv,
  type ShareRequest,
} from '../../src/allocation/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { loadWords, type Words } from '../../src/words/index.ts';
import { demoContent } from '../report/demo.ts';
import { ENGLISH_LEFT } from '../support/english-left.ts';
import { saidMessages } from '../support/messages.ts';
import { outside, recordedWords } from '../support/pseudo-words.ts';

const TYPES: readonly Cells[] = [
  {
    type: 'T1', purpose: 'lighting', draw: 500, nodes: 0,
  }, { type: 'T2', purpose: 'control', draw: 100, nodes: 1 }, { type: 'T3', draw: 100, nodes: 60 },
  { type: 'T4', purpose: 'lighting', draw: 3000, nodes: 0.5 }, { type: 'T5' },
];
const OUTPUTS: readonly Cells[] = [{ output: 'Q1', contact: 'K1' }, { output: 'Q2' }, {}, { note: 'spare' }];

/** Schedules of which some devices find no place, for every reason that there is. */
const SCHEDULES: readonly { readonly request: ShareRequest; readonly sheets: Content['sheets'] }[] = [
  {
    request: { over: 'branches' },
    sheets: {
      types: TYPES, outputs: OUTPUTS, branches: [{ branch: 'B1', limit: '=1/0' }, { branch: 'B2', limit: 50, busCurrent: 0.25 }],
      devices: [
        { type: 'T1', qty: 1 }, { type: 'T2' }, { type: 'T3', qty: 2 }, { type: 'T9', qty: 1 },
        { ref: 'D1', type: 'T2', qty: 9 },
      ],
    },
  },
  {
    request: { over: 'branches', wholeRows: true },
    sheets: { types: TYPES, branches: [{ branch: 'B1', limit: 5 }], devices: [{ type: 'T2', qty: 9 }] },
  },
  {
    request: { over: 'branches', keepPlaced: true },
    sheets: {
      types: TYPES, branches: [{ branch: 'B1', limit: 50 }],
      devices: [{ type: 'T9', qty: 1, branch: 'B1' }, { ref: 'D2', type: 'T2', qty: 9 }],
    },
  },
  {
    request: { over: 'branches' },
    sheets: { types: TYPES, branches: [{ branch: 'B1' }], devices: [{ type: 'T2', qty: 9 }] },
  },
  {
    request: { over: 'supplies' },
    sheets: {
      types: TYPES, supplies: [{ rail: 'L1', rated: 2.5 }, { rail: 'L2' }], runs: [{ run: 'W1' }, { run: 'W2' }],
      devices: [
        { type: 'T4', qty: 1 }, {
          type: 'T1', qty: 3, run: 'W1',
        }, { type: 'T2', qty: 1, run: 'W1' }, { type: 'T4', qty: 2, run: 'W2' }, { type: 'T5', qty: 1 },
        { type: 'T2', qty: 1, unitDraw: 0 },
      ],
    },
  },
  {
    request: { over: 'supplies', wholeRows: true },
    sheets: { types: TYPES, supplies: [{ rail: 'L1', rated: 2.5 }], devices: [{ type: 'T1', qty: 9 }] },
  },
  { request: { over: 'supplies' }, sheets: { types: TYPES, devices: [{ type: 'T2', qty: 3 }] } },
  {
    request: { over: 'supplies', keepPlaced: true },
    sheets: {
      types: TYPES, supplies: [
        { rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }, { rail: 'L3', rated: 1.25, purpose: 'control', inputInrush: 100 },
      ], runs: [{ run: 'W1' }],
      devices: [
        { type: 'T1', qty: 1, rail: 'L1' }, { type: 'T2', qty: 1, rail: 'L1' }, { type: 'T5', qty: 1, rail: 'L2' }, {
          type: 'T2', qty: 1, rail: 'L3', run: 'W1',
        }, { type: 'T2', qty: 40, run: 'W1' },
      ],
    },
  },
  {
    request: { over: 'supplies' },
    sheets: {
      types: TYPES, runs: [{ run: 'W1' }],
      supplies: [{ rail: 'L1', rated: 5, enclosure: 'P1', fuse: 1 }, { rail: 'L2', rated: 5, enclosure: 'P2' }],
      devices: [
        { type: 'T2', qty: 1, rail: 'L1', run: 'W1' }, { type: 'T2', qty: 1, rail: 'L2', run: 'W1' },
        { type: 'T2', qty: 5, rail: 'L1' }, { type: 'T1', qty: 5, rail: 'L2' },
      ],
    },
  },
  {
    request: { over: 'branches', extension: 0.2, wholeRows: true },
    sheets: {
      types: TYPES, branches: [{ branch: 'B1', limit: 12 }],
      devices: [{ type: 'T2', qty: 6 }, { type: 'T2', qty: 6 }, { type: 'T2', qty: 6 }],
    },
  },
  {
    request: { over: 'branches', wholeRows: true },
    sheets: {
      types: TYPES, branches: [{ branch: 'B1', limit: 10, reserve: 0.1 }],
      devices: [{ type: 'T2', qty: 6 }, { type: 'T2', qty: 6 }, { type: 'T2', qty: 6 }],
    },
  },
];

/** Devices of three sizes that fill a branch only together, which takes longer to find than there is time. */
const TRIPLES = Array.from({ length: 20 }, (_, place) => [251 + place * 4, 300 + place * 7, 449 - place * 11]).flat();
const HARD: (typeof SCHEDULES)[number] = {
  request: { over: 'branches' },
  sheets: {
    branches: [{ branch: 'B1', limit: 1000 }], types: TRIPLES.map((nodes, place) => ({ type: `T${place}`, nodes })),
    devices: TRIPLES.map((_, place) => ({ type: `T${place}`, qty: 1 })),
  },
};

/** Whatever is said of these schedules when they are shared out and sized, and of pieces for which there is no room. */
async function everythingSaid(words: Words): Promise<string[]> {
  const said: string[] = [];
  for (
    const { request, sheets } of [
      ...SCHEDULES, HARD, { request: { over: 'supplies' as const }, sheets: demoContent().sheets },
    ]
  ) {
    const schedule = new LoadSchedule({ details: {}, sheets }, { words });
    const sharing = await shareOut(readSharing(schedule, request), { milliseconds: 500 });
    said.push(...sharing.notes.map((note) => noteSentence(note, words)));
    said.push(...sharing.limits.map((limit) => limitSentence(sharing.over, limit, words)));
    said.push(...sharing.fillings.map(({ serves }) => servedText(serves, words)));
    said.push(
      ...sharing.leftOut.map((left) => leftOutSentence(sharing.over, left, words)), rowNames(sharing.leftOut, words, 1)
    );
    const lists = { ratings: [1.25, 2.5], ways: [4, 8] };
    for (const options of [{ milliseconds: 300 }, { milliseconds: 0 }, { extension: 0.1, equalUnits: true }]) {
      said.push(...(await sizePanel(schedule, { lists, ...options })).flatMap(({ item, why }) => [item, why]));
    }
    schedule.dispose();
  }
  for (const over of ['branches', 'supplies'] as const) {
    // A number that time kept from being proven.
    said.push(limitSentence(
      over, { serves: null, panel: null, size: 9, used: 3, byTotal: 1, lowerBound: 2, limitedBy: [] }, words
    ));
    const place = { row: 0, id: 0, ref: null, qty: 1, code: 'no-room' as const };
    for (const of of ['run', 'row', 'device'] as const) {
      const piece = { of, size: 1.5, most: 1 };
      said.push(
        leftOutSentence(over, { ...place, piece }, words),
        leftOutSentence(over, { ...place, code: 'too-large', piece }, words)
      );
    }
  }
  return [...said, ...sizingCsv([], words).trim().split(',')];
}

test('in a language that nobody speaks, everything is said through the words, and every message is among it',
  async () => {
  const { words, messages } = recordedWords();
  const said = await everythingSaid(words);
  expect(said.length).toBeGreaterThan(100);
  const isData = (text: string) => /^[\s,]*(?:[A-Z]\d?-?[A-Z]?\d+(?:-\d+)?[\s,]*)*$/.test(text);
  expect(said.filter((text) => !isData(outside(text).left))).toEqual([]);
  const known = saidMessages().messages.filter(({ place }) => place.startsWith('src/allocation/'));
  expect(known.length).toBeGreaterThan(30);
  expect(known.map(({ text }) => text).filter((text) => !messages.has(text))).toEqual([]);
}, 60_000);

describe.each(['de', 'fr'])('in %s', (language) => {
  test('nothing is left in English, and nothing has a hole or a decimal point', async () => {
    const said = await everythingSaid(await loadWords(language));
    expect(said.filter((text) => ENGLISH_LEFT.test(text))).toEqual([]);
    expect(said.filter((text) => /undefined|NaN|\[object|\{|\}/.test(text))).toEqual([]);
    expect(said.filter((text) => /(?<![\d.])\d+\.\d/.test(text))).toEqual([]);
  }, 60_000);
});

test('German and French sentences of one sharing, word for word', async () => {
  const { request, sheets } = SCHEDULES[1]!;
  const of = async (language: string) => {
    const words = await loadWords(language);
    const sharing = await shareOut(readSharing(new LoadSchedule({ details: {}, sheets }, { words }), request));
    return leftOutSentence(sharing.over, sharing.leftOut[0]!, words);
  };
  expect(await of('de')).toBe(
    'Die Zeile braucht 9 Teilnehmer; ein Bus-Strang hat höchstens Platz für 5 Teilnehmer. Die Zeile teilen oder einen größeren Bus-Strang eintragen.'
  );
  expect(await of('fr')).toBe(
    'La ligne demande 9 participants\u202f; un segment de bus en reçoit au plus 5. Diviser la ligne ou indiquer un segment de bus plus grand.'
  );
});
