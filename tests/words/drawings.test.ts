import { describe, expect, test } from 'vitest';
import { panelNames, type PanelChoice } from '../../src/engine/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { drawing } from '../../src/report/drawings/index.ts';
import type { Shape } from '../../src/report/pictures/index.ts';
import type { Content } from '../../src/schedule/index.ts';
import { loadWords, type Words } from '../../src/words/index.ts';
import { elements, textIn } from '../pictures/read-picture.ts';
import { demoContent } from '../report/demo.ts';
import { ENGLISH_LEFT } from '../support/english-left.ts';
import { saidMessages } from '../support/messages.ts';
import { outside, recordedWords } from '../support/pseudo-words.ts';

/** A schedule in which something of every kind is missing, lost, or there twice. */
const ODD: Content = {
  details: {},
  sheets: {
    enclosures: [{ enclosure: 'E1' }, { enclosure: 'E2' }], feeds: [{ feed: 'F1' }, { feed: 'F2', enclosure: 'E2' }],
    supplies: [
      { rail: 'R1', enclosure: 'E1', feed: 'F2', rated: 5, units: 2, redundant: true, battery: 7, fuse: 4 }, { rail: 'R2' },
    ],
    ways: [{ way: 'A1', rail: 'R1' }, { way: 'A2', rail: 'R1', kind: 'B', rated: 4 }, { way: 'A3' }],
    runs: [
      { run: 'W1', way: 'A1', secondWay: 'A2' }, { run: 'W2', rail: 'R1' }, { run: 'W3' }, { run: 'W4', rail: 'R1', way: 'A9' },
      { run: 'W5', branch: 'B1', length: 4 },
    ],
    branches: [
      { branch: 'B1', limit: 5, maxCable: 100, terminators: 3 }, { branch: 'B2', terminators: 1 }, { branch: 'B3', terminated: false }, { branch: 'B4' },
      { branch: 'B5', terminated: true },
    ],
    devices: [
      ...['H1', 'H2', 'H3', 'H4'].map((area) => ({ ref: `D-${area}`, qty: 1, run: 'W1', area })), { ref: 'D5', qty: 1.5, rail: 'R1' },
      { ref: 'D6', qty: 1, branch: 'B1' }, { ref: 'D7', qty: 1, branch: 'B1', run: 'W5' }, { ref: 'D8', branch: 'B9' },
      { ref: 'D9', qty: 1, run: 'W4', branch: 'B3' },
    ],
    modules: [{ module: 'K1', enclosure: 'E1', common: 10 }, { module: 'K2' }],
    outputs: [{ output: 'K1.1', module: 'K1', feed: 'F1' }, { output: 'K9', module: 'K7' }],
  },
};
/** One with a branch on one cable, whose far end is known. */
const ONE_CABLE: Content = {
  details: {},
  sheets: { branches: [{ branch: 'B1', terminators: 2 }], runs: [{ run: 'W1', branch: 'B1' }], devices: [{ ref: 'D1', run: 'W1', branch: 'B1' }] },
};

/** Whatever drawings of these schedules say, a text of several lines as one. */
function everythingSaid(words: Words): string[] {
  return [demoContent(), ODD, ONE_CABLE].flatMap((content) => {
    const schedule = new LoadSchedule(content, { words });
    const panels: PanelChoice[] = [...panelNames(schedule), null, undefined];
    const sheets = panels.flatMap((panel) => (['oneLine', 'branches'] as const).flatMap((kind) =>
      [Infinity, 1].flatMap((most) => {
        const drawn = drawing(schedule, kind, panel, { width: 3000, height: 500 }, most);
        return [[drawn.title], ...Array.from({ length: drawn.sheets }, (_each, index) => textsOf(drawn.sheet(index)))];
      })));
    return sheets.flat();
  });
}

const textsOf = (sheet: Shape): string[] => elements(sheet).filter(({ tag }) => tag === 'text' || tag === 'title')
  .map((text) => text.children.map((part) => typeof part === 'string' ? part : textIn(part)).join('\n'));

const entered = [demoContent(), ODD, ONE_CABLE].flatMap(({ sheets }) => Object.values(sheets).flat())
  .flatMap((row) => Object.values(row)).filter((value): value is string => typeof value === 'string' && value.length > 0)
  .sort((one, other) => other.length - one.length);
const withoutData = (text: string) => entered.reduce((rest, each) => rest.replaceAll(each, ' '), text);

test('in a language that nobody speaks, everything is said through the words, and every message is among it', () => {
  const { words, messages } = recordedWords();
  const left = everythingSaid(words).map((text) => withoutData(outside(text).left));
  expect(left.filter((text) => /\p{L}{3,}/u.test(text))).toEqual([]);
  const known = saidMessages().messages.filter(({ place }) => place.startsWith('src/report/drawings/'));
  expect(known.length).toBeGreaterThan(40);
  expect(known.map(({ text }) => text).filter((text) => !messages.has(text))).toEqual([]);
});

describe.each(['de', 'fr'])('in %s', (language) => {
  test('nothing is left in English, and nothing has a hole', async () => {
    const said = everythingSaid(await loadWords(language)).map(withoutData);
    expect(said.filter((text) => ENGLISH_LEFT.test(text))).toEqual([]);
    expect(said.filter((text) => /undefined|NaN|\[object|\{|\}/.test(text))).toEqual([]);
  });
});
