import axe from 'axe-core';
import { afterEach, expect, test, vi } from 'vitest';
import type { Content } from '../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';

afterEach(() => {
  removeElements();
  localStorage.clear();
  vi.restoreAllMocks();
});

/** By hand: 10 Ω/km at 20 °C is 1 Ω for 50 m there and back; 1 A loses 1 V of 24 V, 4 A lose 4 V. Devices need 21 V. */
const wired = (): Content => {
  const { details, sheets } = sample();
  return { details, sheets: {
    ...sheets,
    types: [{ type: 'Ampere', draw: 1000, nodes: 1, minVoltage: 21 }],
    conductors: [
      // Each bears the 15 A that the supply may feed for ever, as no way stands before it.
      { conductor: 'Ten', resistance: 10, maxCurrent: 16 }, { conductor: 'Two', resistance: 2, maxCurrent: 20 },
    ],
    supplies: [{ rail: 'L1', purpose: 'lighting', rated: 10 }],
    runs: [{ run: 'R1', rail: 'L1', conductor: 'Ten', length: 50, temperature: 20 }],
    branches: [{ branch: 'B1', limit: 10, reserve: 0.2, terminated: true }],
    devices: [
      { ref: 'D1', type: 'Ampere', qty: 1, rail: 'L1', run: 'R1', branch: 'B1' },
      { ref: 'D2', type: 'Ampere', qty: 1, rail: 'L1', branch: 'B1' },
    ],
  } };
};

const view = (element: Element, words: string) =>
  parts(element, '.views button').find((each) => each.textContent === words)!;
const area = (element: Element) => part(element, 'elv-cell-explanation')!;
const drawn = (element: Element) => part(element, 'elv-picture svg.picture');
const plain = (text: string) => text.replace(/\s+/g, ' ').trim();
const described = (element: Element) => plain(drawn(element)?.querySelector('desc')?.textContent ?? '');
const more = (element: Element) => parts(element, 'elv-cell-explanation .more').map((each) => plain(each.textContent));

test('the voltage along the run of the selected row stands below the rows, and follows an edit', async () => {
  const element = await mountElement({ content: wired() });
  await element.select('runs', 'R1', 'endVoltage');
  view(element, 'Picture').click();
  await expect.poll(() => described(element)).toContain('The lowest voltage is 23.00 V');
  expect(view(element, 'Picture').ariaExpanded).toBe('true');
  const [first] = element.schedule.rows('devices');
  element.schedule.act('More', [{ op: 'set', sheet: 'devices', id: first!.id, key: 'qty', value: 4 }]);
  await expect.poll(() => described(element)).toContain('The lowest voltage is 20.00 V');
});

test('the picture follows the selection, and the area keeps its height whatever is selected', async () => {
  const element = await mountElement({ content: wired() });
  view(element, 'Picture').click();
  await element.updateComplete;
  const height = area(element).offsetHeight;
  const title = () => drawn(element)?.getAttribute('aria-label');
  await element.select('devices', 'D1', 'qty');
  await expect.poll(title).toBe('Voltage along run R1');
  expect(area(element).offsetHeight).toBe(height);
  await element.select('devices', 'D2', 'qty');
  await expect.poll(() => textOf(element, 'elv-cell-explanation .pane')).toMatch(/^Select a run/);
  expect(area(element).offsetHeight).toBe(height);
  await element.select('supplies', 'L1', 'demand');
  await expect.poll(title).toBe('Loading of the supplies');
  await element.select('branches', 'B1', 'nodes');
  await expect.poll(title).toBe('Nodes on the bus branches');
  expect(area(element).offsetHeight).toBe(height);
});

test('the selected row stays in view when the picture takes room from the rows', async () => {
  const content = wired();
  const runs = Array.from(
    { length: 40 }, (_, index) => ({ run: `W${index + 1}`, rail: 'L1', conductor: 'Ten', length: 20 })
  );
  const element = await mountElement({ content: { ...content, sheets: { ...content.sheets, runs } } });
  await element.select('runs', 'W15', 'length');
  view(element, 'Picture').click();
  await expect.poll(() => {
    const cell = parts(element, '.ht_clone_inline_start td').find((each) => each.textContent === 'W15');
    return cell !== undefined
      && cell.getBoundingClientRect().bottom <= part(element, '.rows')!.getBoundingClientRect().bottom;
  }).toBe(true);
});

test('a picture is saved as an SVG file of its own', async () => {
  const element = await mountElement({ content: wired() });
  await element.select('runs', 'R1', 'length');
  view(element, 'Picture').click();
  await expect.poll(() => drawn(element)).not.toBeNull();
  let saved: Blob | undefined;
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    saved = blob as Blob;
    return 'data:,';
  });
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => { /* no file is written */ });
  part(element, 'elv-picture .save')!.click();
  expect(saved?.type).toContain('image/svg+xml');
  const page = new DOMParser().parseFromString(await saved!.text(), 'image/svg+xml');
  expect(page.querySelector('parsererror')).toBeNull();
  expect(page.documentElement.querySelector('title')!.textContent).toBe('Voltage along run R1');
  expect(page.querySelector('style')!.textContent).toContain('.picture');
});

test.each(['light', 'dark'])('axe finds nothing of ours beside an open picture: %s', async (scheme) => {
  document.documentElement.style.colorScheme = scheme;
  const element = await mountElement({ content: wired() });
  await element.select('runs', 'R1', 'length');
  view(element, 'Picture').click();
  await expect.poll(() => drawn(element)).not.toBeNull();
  const { violations } = await axe.run(element, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
  // What the grid library brings is the business of the grid's tests.
  const ours = violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id} ${JSON.stringify(target)}`))
    .filter((each) => !each.includes('elv-schedule-grid'));
  expect(ours).toEqual([]);
  document.documentElement.style.colorScheme = '';
});

test('explanation and picture can be put away, and stay so the next time', async () => {
  const element = await mountElement({ content: wired() });
  view(element, 'Picture').click();
  view(element, 'Explanation').click();
  await element.updateComplete;
  await expect.poll(() => area(element).offsetHeight).toBe(0);
  element.remove();
  const again = await mountElement({ content: wired() });
  expect(area(again).offsetHeight).toBe(0);
  view(again, 'Explanation').click();
  await expect.poll(() => area(again).offsetHeight).toBeGreaterThan(200);
});

test('how long a run may be, and how small its conductor, stands in words', async () => {
  const element = await mountElement({ content: wired() });
  await element.select('devices', 'D1', 'terminalVoltage');
  // 5 % of 24 V are 1.2 V, at 1 A 60 m; the conductor of 10 Ω/km is the smaller of the two.
  await expect.poll(() => more(element))
    .toEqual(['Run R1: with Ten it may be 60.0 m long; Ten is the smallest conductor that does at 50.0 m.']);
  await element.select('runs', 'R1', 'length');
  await expect.poll(() => more(element).filter((each) => each.startsWith('Run R1: '))).toHaveLength(1);
});

test('room for more of the type of the selected row is said for where it stands', async () => {
  const element = await mountElement({ content: wired() });
  await element.select('devices', 'D2', 'qty');
  // 10 A less 2 A; the target is 8 A.
  await expect.poll(() => more(element))
    .toEqual(['Capacity left for 8 more of the type Ampere up to the usable current, 6 up to the target.']);
  await element.select('branches', 'B1', 'nodes');
  // Of 10 nodes 2 are taken; 2 are kept in reserve.
  await expect.poll(() => more(element))
    .toEqual(['Capacity left for 8 more of the type Ampere up to the limit, 6 up to the reserve.']);
  await element.select('supplies', 'L1', 'demand');
  await expect.poll(() => more(element))
    .toEqual(['Capacity left for 8 more of the type Ampere up to the usable current, 6 up to the target.']);
  await element.select('outputs', 'K1', 'current');
  // 60 W ÷ (230 V × 0.9) = 0.29 A each, 1.16 A of 2 A: (2 − 1.16) ÷ 0.29 = 2.9; the target of 1.6 A takes 1.5.
  await expect.poll(() => more(element)[0])
    .toMatch(/^Capacity left for 2 more of this load up to the rating, 1 up to the target\./);
});

test('room on a way is said for the type that most device rows on its runs have', async () => {
  const { details, sheets } = wired();
  const element = await mountElement({ content: { details, sheets: {
    ...sheets, ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: 5 }],
    runs: [{ run: 'R1', way: 'F1', conductor: 'Ten', length: 50 }],
  } } });
  await element.select('ways', 'F1', 'demand');
  // 5 A less 1 A; the target is 4 A.
  await expect.poll(() => more(element))
    .toEqual(['Capacity left for 4 more of the type Ampere up to the rating, 3 up to the target.']);
});
