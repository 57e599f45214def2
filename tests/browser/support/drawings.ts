import { expect } from 'vitest';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import type { Content } from '../../../src/schedule/index.ts';
import { part } from '../element-mount.ts';
import { press } from '../work-support.ts';
import { open } from './load-table.ts';

export const svgOf = (element: Element) => part(element, 'elv-drawings svg.picture') as SVGSVGElement | null;
export const titleOf = (element: Element) => svgOf(element)?.getAttribute('aria-label');

/** Opens the load table at a view of drawings and waits until it is drawn. */
export async function draw(content: Content, view: 'oneLine' | 'branches' = 'oneLine'): Promise<LoadScheduleElement> {
  const element = await open(content);
  await press(element, `[data-view=${view}]`);
  await expect.poll(() => svgOf(element)).not.toBeNull();
  return element;
}

/** Texts, as they are drawn, that touch one another or go beyond the picture. */
export function touching(svg: SVGSVGElement): string[] {
  const sheet = svg.getBoundingClientRect();
  const texts = [...svg.querySelectorAll('text')].filter((text) => text.textContent !== '')
    .map((text) => ({ words: text.textContent, box: text.getBoundingClientRect() }));
  return texts.flatMap(({ words, box }, index) => [
    ...box.left < sheet.left || box.right > sheet.right || box.bottom > sheet.bottom ? [`${words}: beyond the sheet`] : [],
    // Boxes of lines reach above and below what is drawn of them.
    ...texts.slice(index + 1).filter((other) =>
      Math.min(box.right, other.box.right) > Math.max(box.left, other.box.left) + 0.5
      && Math.min(box.bottom, other.box.bottom) > Math.max(box.top, other.box.top) + 4).map((other) => `${words} | ${other.words}`),
  ]);
}
