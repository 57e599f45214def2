import { afterEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { Content } from '../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, textOf } from './element-mount.ts';
import { demoContent } from './support/demo-content.ts';
import { openWork, press } from './work-support.ts';

afterEach(async () => {
  removeElements();
  await page.viewport(1280, 800);
});

const boxes = (element: Awaited<ReturnType<typeof mountElement>>, at: number) =>
  [...parts(element, 'elv-wiring .rails svg')[at]!.querySelectorAll('.part')];

/** The demo with one mounting rail less in its second panel. */
function withTwoRails(): Content {
  const demo = demoContent();
  const enclosures = demo.sheets.enclosures!.map((cells) => cells.enclosure === 'KP-2' ? { ...cells, rails: 2 } : cells);
  return { ...demo, sheets: { ...demo.sheets, enclosures } };
}

test('the rails of each enclosure are drawn to scale; parts are placed as one action that undo takes back', async () => {
  const element = await mountElement({ content: withTwoRails() });
  await openWork(element, 'wiring');
  await press(element, '[data-view=rails]');
  await expect.poll(() => parts(element, 'elv-wiring .rails svg').length).toBe(2);
  const { schedule } = element;
  const supply = schedule.rows('supplies').find(({ cells }) => cells.enclosure === 'KP-2')!;
  const drawn = [...parts(element, 'elv-wiring .rails svg')[1]!.querySelectorAll('g.row')]
    .find((group) => group.querySelector('title')!.textContent.startsWith(String(supply.cells.rail)))!;
  const frame = parts(element, 'elv-wiring .rails svg')[1]!.querySelector('.frame')!;
  const width = (shape: Element) => Number(shape.getAttribute('width'));
  // The second enclosure has rails of 500 mm.
  expect(width(drawn.querySelector('.part')!) / width(frame)).toBeCloseTo(Number(supply.cells.width) / 500, 3);
  expect(textOf(element, 'elv-wiring .body')).toContain('everything is put whole on');

  const before = boxes(element, 0).map((box) => box.getAttribute('x'));
  await press(element, '[data-do=place]');
  // Both units of P2 have no room on one rail, which one cell cannot say.
  expect(schedule.rows('supplies').filter(({ cells }) => cells.mountedOn === undefined).map(({ cells }) => cells.rail)).toEqual(['P2']);
  expect(textOf(element, 'elv-wiring .body')).toContain('so it stays empty: KP-2 P2');
  await expect.poll(() => part(element, 'elv-wiring [data-do=place]')?.matches(':disabled')).toBe(true);
  expect(boxes(element, 0).map((box) => box.getAttribute('x'))).toEqual(before);

  // One that is moved by hand stays, until all are placed anew.
  const [first] = schedule.rows('supplies');
  schedule.act('By hand', [{ op: 'set', sheet: 'supplies', id: first!.id, key: 'mountedOn', value: 6 }]);
  await element.updateComplete;
  await userEvent.click(part(element, 'elv-wiring [name=anew]')!);
  await expect.poll(() => parts(element, 'elv-wiring [data-part=placed] tbody tr').length).toBeGreaterThan(0);
  await press(element, '[data-do=place]');
  expect(schedule.rows('supplies')[0]!.cells.mountedOn).not.toBe(6);
  schedule.undo();
  expect(schedule.rows('supplies')[0]!.cells.mountedOn).toBe(6);
});

test('where the sum fits and no arrangement does, the part that finds no rail is drawn apart and said', async () => {
  const element = await mountElement({ content: { details: {}, sheets: {
    enclosures: [{ enclosure: 'E1', rails: 3, railLength: 400 }],
    modules: [250, 250, 250, 210].map((width, at) => ({ module: `K${at + 1}`, enclosure: 'E1', width })),
  } } });
  await openWork(element, 'wiring');
  await press(element, '[data-view=rails]');
  await expect.poll(() => parts(element, 'elv-wiring .rails svg').length).toBe(1);
  expect(parts(element, 'elv-wiring .rails svg desc')[0]!.textContent).toContain('Without a mounting rail: K4.');
  expect(textOf(element, 'elv-wiring .body')).toContain('No mounting rail is found for E1 K4.');
});

test.each([390, 760, 1920])('at %d px the view stands within its width; the picture scrolls by itself', async (width) => {
  await page.viewport(width, 900);
  const element = await mountElement({ content: demoContent() });
  element.style.height = '880px';
  await openWork(element, 'wiring');
  await press(element, '[data-view=rails]');
  await expect.poll(() => parts(element, 'elv-wiring .rails svg').length).toBe(2);
  const body = part(element, 'elv-wiring .body')!;
  expect(body.scrollWidth).toBeLessThanOrEqual(body.clientWidth);
});
