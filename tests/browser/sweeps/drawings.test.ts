import axe from 'axe-core';
import { afterEach, describe, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { part, removeElements, sample } from '../element-mount.ts';
import { demoContent } from '../support/demo-content.ts';
import { draw, svgOf, titleOf, touching } from '../support/drawings.ts';
import { open } from '../support/load-table.ts';
import { press } from '../work-support.ts';

afterEach(async () => {
  removeElements();
  document.documentElement.style.colorScheme = '';
  await page.viewport(1280, 800);
});

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
