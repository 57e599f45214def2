import axe from 'axe-core';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import type { Content } from '../../src/schedule/index.ts';
import { part, parts, removeElements, sample, textOf } from './element-mount.ts';
import { demoContent } from './support/demo-content.ts';
import { open } from './support/load-table.ts';
import { savedFiles } from './support/saved-files.ts';
import { press } from './work-support.ts';

afterEach(async () => {
  removeElements();
  vi.restoreAllMocks();
  document.documentElement.style.colorScheme = '';
  await page.viewport(1280, 800);
});

const svgOf = (element: Element) => part(element, 'elv-drawings svg.picture') as SVGSVGElement | null;
const titleOf = (element: Element) => svgOf(element)?.getAttribute('aria-label');
const tags = (element: Element, name: string) =>
  [...svgOf(element)!.querySelectorAll(`.node.${name}`)].map((node) => node.getAttribute('data-tag'));

/** Opens the load table at a view of drawings and waits until it is drawn. */
async function draw(content: Content, view: 'oneLine' | 'branches' = 'oneLine'): Promise<LoadScheduleElement> {
  const element = await open(content);
  await press(element, `[data-view=${view}]`);
  await expect.poll(() => svgOf(element)).not.toBeNull();
  return element;
}

/** Texts, as they are drawn, that touch one another or go beyond the picture. */
function touching(svg: SVGSVGElement): string[] {
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

describe.each([390, 800, 1280, 1920])('at %i px', (width) => {
  test.each(['oneLine', 'branches'] as const)('%s fits the page without text over text, in type of its size', async (view) => {
    await page.viewport(width, 800);
    const element = await draw(demoContent(), view);
    const svg = svgOf(element)!;
    const holder = part(element, 'elv-drawings .sheet')!;
    await expect.poll(() => holder.scrollWidth).toBeLessThanOrEqual(holder.clientWidth);
    expect(touching(svg)).toEqual([]);
    expect(svg.getBoundingClientRect().width).toBeGreaterThan(Math.min(1200, holder.clientWidth) - 40);
    // One unit is one pixel, so that type of 12 units is as large as that of the page beside it.
    expect(svg.getBoundingClientRect().width).toBeCloseTo(svg.viewBox.baseVal.width, 0);
  });
});

test('one panel and one sheet at a time: sheets are turned by mouse and keyboard, the panel is chosen', async () => {
  const element = await draw(demoContent());
  expect(titleOf(element)).toMatch(/^One-line drawing: KP-1: Sheet 1 of \d+$/);
  const first = tags(element, 'ways');
  expect(first).toContain('L1-F1');
  const next = part(element, 'elv-drawings [name=next]')!;
  await userEvent.click(next);
  await expect.poll(() => titleOf(element)).toContain('Sheet 2');
  expect(tags(element, 'ways').filter((tag) => first.includes(tag))).toEqual([]);
  expect(svgOf(element)!.textContent).toContain('from sheet 1');
  part(element, 'elv-drawings [name=previous]')!.focus();
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => titleOf(element)).toContain('Sheet 1');
  // At its end a button does nothing, and keeps the focus.
  await userEvent.keyboard('{Enter}');
  expect(titleOf(element)).toContain('Sheet 1');
  expect(part(element, 'elv-drawings')!.shadowRoot!.activeElement!.getAttribute('name')).toBe('previous');
  await userEvent.selectOptions(part(element, 'elv-drawings [name=panel]')!, 'KP-2');
  await expect.poll(() => titleOf(element)).toContain('KP-2');
  expect(tags(element, 'supplies').length).toBeGreaterThan(0);
});

test('the drawing of the panel that the page looks at has no choice of its own', async () => {
  const element = await draw(demoContent());
  const choice = parts(element, 'select.panels')[0] as HTMLSelectElement;
  await userEvent.selectOptions(choice, 'KP-2');
  await expect.poll(() => titleOf(element)).toContain('KP-2');
  expect(part(element, 'elv-drawings [name=panel]')).toBeNull();
});

test('it follows an edit', async () => {
  const element = await draw(sample());
  expect(tags(element, 'supplies')).toEqual(['L1', 'L2', 'L3']);
  const id = element.schedule.rows('supplies')[2]!.id;
  element.schedule.act('Tag', [{ op: 'set', sheet: 'supplies', id, key: 'rail', value: 'L9' }]);
  await expect.poll(() => tags(element, 'supplies')).toEqual(['L1', 'L2', 'L9']);
});

test('where there is nothing to draw it says so', async () => {
  const element = await open({ details: {}, sheets: {} });
  await press(element, '[data-view=oneLine]');
  await expect.poll(() => textOf(element, 'elv-drawings p')).toContain('There is nothing to draw yet');
  await press(element, '[data-view=branches]');
  await expect.poll(() => textOf(element, 'elv-drawings p')).toContain('There are no bus branches yet.');
});

test('it is saved whole as one SVG file that stands alone', async () => {
  const element = await draw(demoContent());
  const files = savedFiles();
  await press(element, 'elv-drawings .save');
  await expect.poll(() => files.length).toBe(1);
  expect(files[0]!.name).toBe('KP-1-one-line.svg');
  const text = await files[0]!.text();
  const file = new DOMParser().parseFromString(text, 'image/svg+xml');
  expect(file.querySelector('parsererror')).toBeNull();
  expect(file.querySelectorAll('style')).toHaveLength(1);
  const runs = element.schedule.rows('runs').filter(({ id }) => String(element.schedule.value('runs', id, 'way')).startsWith('L'));
  const drawn = [...file.querySelectorAll('.node.runs')].map((node) => node.getAttribute('data-tag'));
  for (const { cells } of runs.slice(0, 7)) expect(drawn).toContain(cells.run);
  expect(text).not.toContain('from sheet');
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  await image.decode();
  expect(image.naturalWidth).toBe(Math.round(268 / 25.4 * 96));
});

test('a schedule of 10,000 device rows is drawn without holding the page up, one sheet of it', async () => {
  const { sheets } = sample();
  const element = await open({ details: {}, sheets: {
    ...sheets, branches: Array.from({ length: 40 }, (_each, index) => ({ branch: `B${index}`, limit: 128 })),
    runs: Array.from({ length: 400 }, (_each, index) => ({ run: `W${index}`, rail: `L${1 + index % 3}`, branch: `B${index % 40}` })),
    devices: Array.from({ length: 10_000 }, (_each, index) =>
      ({ ref: `D${index}`, type: 'Lamp', qty: 1, run: `W${index % 400}`, branch: `B${index % 40}`, distance: index % 50 })),
  } });
  const frame = part(element, 'elv-load-table iframe') as HTMLIFrameElement;
  await expect.poll(() => frame.contentDocument?.querySelector('#one-line'), { timeout: 30_000 }).not.toBeNull();
  for (const view of ['oneLine', 'branches'] as const) {
    const before = performance.now();
    await press(element, `[data-view=${view}]`);
    await expect.poll(() => titleOf(element)).toContain(view === 'oneLine' ? 'One-line' : 'Bus branches');
    expect(performance.now() - before).toBeLessThan(4000);
    expect(svgOf(element)!.querySelectorAll('*').length).toBeLessThan(3000);
  }
});

test.each(['light', 'dark'])('nothing for the accessibility checker to report: %s', async (scheme) => {
  document.documentElement.style.colorScheme = scheme;
  const element = await draw(demoContent());
  const svg = svgOf(element)!;
  expect([svg.getAttribute('role'), svg.querySelector(':scope > title')!.textContent]).toEqual(['img', svg.getAttribute('aria-label')]);
  expect(svg.querySelector('desc')!.textContent).toContain('supply L1: 24\u00a0V, 20\u00a0A, lighting');
  const { violations } = await axe.run(part(element, 'elv-drawings')!);
  expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 150)}`))).toEqual([]);
});

test('the load table shows the drawings, each sheet as wide as it is on its paper', async () => {
  const element = await open(demoContent());
  const frame = part(element, 'elv-load-table iframe') as HTMLIFrameElement;
  const sheets = () => [...frame.contentDocument?.querySelectorAll<SVGSVGElement>('#one-line svg') ?? []];
  await expect.poll(() => sheets().length, { timeout: 10_000 }).toBeGreaterThan(5);
  expect(new Set(sheets().map((svg) => svg.getAttribute('width')))).toEqual(new Set(['268mm']));
  for (const svg of sheets().slice(0, 3)) expect(touching(svg)).toEqual([]);
  expect(frame.contentDocument!.querySelectorAll('#branches-as-cabled svg').length).toBeGreaterThan(0);
});
