import { afterEach, describe, expect, test } from 'vitest';
import { demoContent } from '../support/demo-content.ts';
import { mountElement, part, parts, removeElements } from '../element-mount.ts';
import { isSeen, VIEWS } from '../access/every-view.ts';

afterEach(() => {
  removeElements();
  localStorage.clear();
});

/** The four sizes of type [px]: headings of areas, text, what stands beside it, labels. */
const SIZES = [15.5, 13.5, 12, 10.5];
/** A number in a drawing, fields for fingers, and documents and pictures, which are as in print. */
const OTHERS = 'svg *, .measured *, iframe, elv-picture *, input[type=checkbox], input[type=radio], input[type=file]';

const holdsText = (element: Element) =>
  [...element.childNodes].some((each) => each instanceof Text && each.data.trim() !== '') || element.matches('input, select');

test.each(VIEWS)('%s has no size of type but four', async (_name, show) => {
  const element = await mountElement({ content: demoContent() });
  await show(element);
  const odd = parts(element, '*').filter((each) => isSeen(each) && holdsText(each) && !each.matches(OTHERS))
    .map((each) => ({ each, size: Math.round(Number.parseFloat(getComputedStyle(each).fontSize) * 10) / 10 }))
    .filter(({ size }) => !SIZES.includes(size));
  expect(odd.map(({ each, size }) => `${size} ${each.localName}.${each.className} ${each.textContent.trim().slice(0, 30)}`)).toEqual([]);
});

describe('one baseline', () => {
  /** Where the letters of a text stand [px]. */
  function baselineOf(text: Text): number {
    const range = document.createRange();
    range.selectNodeContents(text);
    const { bottom } = range.getBoundingClientRect();
    const { font } = getComputedStyle(text.parentElement!);
    const pen = document.createElement('canvas').getContext('2d')!;
    pen.font = font;
    return bottom - pen.measureText('x').fontBoundingBoxDescent;
  }

  const textsIn = (element: Element): Text[] => parts(element, '*')
    .filter((each) => isSeen(each) && each.getBoundingClientRect().width > 2 && each.localName !== 'option')
    .flatMap((each) => [...each.childNodes].filter((node): node is Text => node instanceof Text && node.data.trim() !== ''));

  test.each([
    ['the commands', '.commands'], ['the tabs', 'elv-sheet-tabs'], ['the tools of the sheet', 'elv-schedule-toolbar .tools'],
    ['the line below the rows', 'elv-sheet-view .line'],
  ])('letters of %s stand on one line', async (_name, selector) => {
    const element = await mountElement({ content: demoContent() });
    const places = textsIn(part(element, selector)!).map((text) => ({ text: text.data.trim(), at: baselineOf(text) }));
    expect(places.length).toBeGreaterThan(1);
    // Where there is no room for one line there are several, each at least its height from the next.
    const lines: number[] = [];
    for (const { at } of places) if (!lines.some((line) => Math.abs(line - at) < 1)) lines.push(at);
    const close = lines.filter((line, index) => lines.some((other, at) => at !== index && Math.abs(line - other) < 15));
    expect(close, JSON.stringify(places)).toEqual([]);
  });
});
