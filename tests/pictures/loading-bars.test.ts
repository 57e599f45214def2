import { describe, expect, test } from 'vitest';
import { branchesPicture, suppliesPicture, type Shape } from '../../src/report/pictures/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { scheduleOf } from '../support/schedules.ts';
import { elements, measure, textIn, withClass } from './read-picture.ts';

/** Length of a bar that stands for 100 %: 70 mm at 4 units to the millimetre. */
const FULL = 280;

/** What each row of bars shows, read off the picture: share filled, place of the tick, and its words. */
function readOff(picture: Shape) {
  return withClass(picture, 'row').map((row) => {
    const [fill] = withClass(row, 'fill');
    const [target] = withClass(row, 'target');
    const frame = withClass(row, 'frame')[0]!;
    expect(measure(frame, 'width')).toBe(FULL);
    return {
      filled: fill === undefined ? null : measure(fill, 'width') / FULL,
      tick: target === undefined ? null : (measure(target, 'x1') - measure(frame, 'x')) / FULL,
      hatched: withClass(row, 'hatch').length > 0,
      words: elements(row).filter(({ tag }) => tag === 'text')
        .map((text) => textIn(text).replaceAll(/[\u00a0\u202f]/g, ' ')),
    };
  });
}

describe('the loading of supplies', () => {
  // By hand: 7.9 A of 10 A; 5.5 A of 5 A; at least 1 A of 4 A; nothing of an unknown rating.
  const picture = suppliesPicture(scheduleOf({
    supplies: [
      { rail: 'A', purpose: 'lighting', rated: 10 }, { rail: 'B', rated: 5, target: 0.75 }, { rail: 'C', rated: 4 },
      { rail: 'D' }, {},
    ],
    devices: [
      {
        rail: 'A', qty: 79, unitDraw: 100,
      }, { rail: 'B', qty: 55, unitDraw: 100 }, { rail: 'C', qty: 10, unitDraw: 100 },
      { rail: 'C', qty: 1 },
    ],
  }));
  const near = (value: number) => closeTo(value, { absolute: 1e-4, relative: 0 });

  test('is drawn to scale, with ticks at the targets, and in words', () => {
    expect(readOff(picture)).toEqual([
      {
        filled: near(0.79), tick: near(0.8), hatched: false,
        words: ['Alighting', 'within limits', '7.90 A of 10.00 A, 79 %, target 80 %'],
      },
      {
        filled: near(1), tick: near(0.75), hatched: true, words: ['B', 'over limit', '5.50 A of 5.00 A, 110 %, target 75 %'],
      },
      {
        filled: near(0.25), tick: near(0.8), hatched: false,
        words: ['C', 'incomplete', '≥ 1.00 A of 4.00 A, ≥ 25 %, target 80 %'],
      },
      { filled: null, tick: near(0.8), hatched: false, words: ['D', 'incomplete', '0.00 A of not known, target 80 %'] },
    ]);
  });

  test('has the figures in its description', () => {
    const description = textIn(elements(picture).find(({ tag }) => tag === 'desc')!).replaceAll(/[\u00a0\u202f]/g, ' ');
    expect(description).toContain('A, lighting: 7.90 A of 10.00 A, 79 %, target 80 %; within limits.');
    expect(description).toContain('B: 5.50 A of 5.00 A, 110 %, target 75 %; over limit.');
  });
});

test('how full branches are, with ticks where reserves begin', () => {
  const picture = branchesPicture(scheduleOf({
    types: [{ type: 'T', nodes: 1 }],
    branches: [
      { branch: 'P', limit: 50 }, { branch: 'Q', limit: 50, reserve: 0.2 }, { branch: 'R', limit: 20 }, { branch: 'S' },
    ],
    devices: [
      { branch: 'P', type: 'T', qty: 20 }, { branch: 'Q', type: 'T', qty: 43 }, { branch: 'R', type: 'T', qty: 22 },
      { branch: 'S', type: 'T', qty: 9 },
    ],
  }));
  expect(readOff(picture)).toEqual([
    {
      filled: closeTo(0.4, EXACT), tick: null, hatched: false,
      words: ['P', 'within limits', '20 of 50 nodes, 40 %, 30 left'],
    },
    {
      filled: closeTo(0.86, EXACT), tick: closeTo(0.8, EXACT), hatched: false,
      words: ['Q', 'near limit', '43 of 50 nodes, 86 %, 3 into the reserve'],
    },
    { filled: 1, tick: null, hatched: true, words: ['R', 'over limit', '22 of 20 nodes, 110 %, 2 too many'] },
    { filled: null, tick: null, hatched: false, words: ['S', 'incomplete', '9 nodes, limit not known'] },
  ]);
});

test('the scale that it states is that of the bars', () => {
  const picture = suppliesPicture(scheduleOf({ supplies: [{ rail: 'A', rated: 10 }] }));
  const [zero, , full] = withClass(picture, 'grid').map((line) => measure(line, 'x1'));
  const [, millimetres, percent] = /(\d+) mm are (\d+)\s%/.exec(textIn(picture))!.map(Number);
  // 180 mm of paper are 720 units.
  expect((full! - zero!) / 4 * percent! / 100).toBe(millimetres);
});

test('without any row a picture says so', () => {
  expect(textIn(suppliesPicture(scheduleOf({})))).toContain('There are no supplies yet.');
  expect(textIn(branchesPicture(scheduleOf({})))).toContain('There are no bus branches yet.');
});

test('two hundred supplies with long tags stand below one another, each with its full name', () => {
  const supplies = Array.from(
    { length: 200 }, (_, index) => ({ rail: `Rail of a very long name, number ${index}, in the attic`, rated: 5 })
  );
  const picture = suppliesPicture(scheduleOf({ supplies }));
  const tops = withClass(picture, 'frame').map((frame) => measure(frame, 'y'));
  expect(tops.every((top, index) => index === 0 || top - tops[index - 1]! >= 30)).toBe(true);
  expect(Math.max(...tops)).toBeLessThan(Number(picture.attributes.viewBox!.split(' ')[3]));
  for (const { rail } of supplies) expect(textIn(picture)).toContain(rail);
});
