import { afterEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { part, parts, removeElements, sample, textOf } from './element-mount.ts';
import { demoContent } from './support/demo-content.ts';
import { draw, svgOf, titleOf, touching } from './support/drawings.ts';
import { open } from './support/load-table.ts';
import { savedFiles } from './support/saved-files.ts';
import { press } from './work-support.ts';

afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
});

const tags = (element: Element, name: string) =>
  [...svgOf(element)!.querySelectorAll(`.node.${name}`)].map((node) => node.getAttribute('data-tag'));

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

test('the load table shows the drawings, each sheet as wide as it is on its paper', async () => {
  const element = await open(demoContent());
  const frame = part(element, 'elv-load-table iframe') as HTMLIFrameElement;
  const sheets = () => [...frame.contentDocument?.querySelectorAll<SVGSVGElement>('#one-line svg') ?? []];
  await expect.poll(() => sheets().length, { timeout: 10_000 }).toBeGreaterThan(5);
  expect(new Set(sheets().map((svg) => svg.getAttribute('width')))).toEqual(new Set(['268mm']));
  for (const svg of sheets().slice(0, 3)) expect(touching(svg)).toEqual([]);
  expect(frame.contentDocument!.querySelectorAll('#branches-as-cabled svg').length).toBeGreaterThan(0);
});
