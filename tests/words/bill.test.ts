import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { billCsv, billTables, makeBill } from '../../src/report/index.ts';
import type { Content } from '../../src/schedule/index.ts';
import { loadWords, type Words } from '../../src/words/index.ts';
import { demoContent } from '../report/demo.ts';
import { ENGLISH_LEFT } from '../support/english-left.ts';
import { saidMessages } from '../support/messages.ts';
import { outside, recordedWords } from '../support/pseudo-words.ts';

/** A schedule in which something of every kind is not known. */
const UNKNOWN: Content = {
  details: {},
  sheets: {
    types: [{ type: 'T1', price: 2 }, { type: 'T2', description: 'One metre of it' }], supplies: [{ rail: 'R1' }], ways: [{ way: 'F1' }], modules: [{ module: 'K1' }],
    enclosures: [{ enclosure: 'E1' }], runs: [{ run: 'W1' }, { run: 'W2', length: 3 }], devices: [{ qty: 1 }, { type: 'T2', qty: 2 }, { type: 'T1' }, { ref: 'D1', type: 'T1', qty: 1, state: 'gone' }],
  },
};

/** Whatever a bill says of these schedules. */
function everythingSaid(words: Words): string[] {
  return [demoContent(), UNKNOWN].flatMap((content) => {
    const schedule = new LoadSchedule(content, { words });
    const bill = makeBill(schedule, { allowance: 0.1 });
    const older = makeBill(new LoadSchedule({ details: {}, sheets: {} }, { words }));
    expect(billCsv(bill, older, words)).not.toMatch(/undefined|NaN/);
    // Keys are the same in every language.
    const keys = new Set([...bill.items, ...bill.inAll].map(({ key }) => key));
    return Object.values(billTables(bill, older, words)).flatMap(({ title, headings, rows }) =>
      [title, ...headings, ...rows.flat().filter((value) => !keys.has(String(value))).filter((value) => typeof value === 'string')]);
  });
}

/** What stands in cells of the demo, in whatever language. */
const DATA = new Set(Object.values(demoContent().sheets).flat().flatMap((row) => Object.values(row).map(String)));

test('in a language that nobody speaks, everything is said through the words, and every message is among it', () => {
  const { words, messages } = recordedWords();
  const left = everythingSaid(words).map((text) => outside(text).left.trim()).filter((text) => !DATA.has(text));
  expect(left.filter((text) => !/^(?:T[12]|E1|D1)?$/.test(text))).toEqual([]);
  const known = saidMessages().messages.filter(({ place }) => place.startsWith('src/report/bill/'));
  expect(known.length).toBeGreaterThan(20);
  expect(known.map(({ text }) => text).filter((text) => !messages.has(text))).toEqual([]);
});

describe.each(['de', 'fr'])('in %s', (language) => {
  test('nothing is left in English, and nothing has a hole', async () => {
    const said = everythingSaid(await loadWords(language)).filter((text) => !DATA.has(text));
    expect(said.filter((text) => ENGLISH_LEFT.test(text))).toEqual([]);
    expect(said.filter((text) => /undefined|NaN|\[object|\{|\}/.test(text))).toEqual([]);
  });
});
