import { afterEach, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import axe from 'axe-core';
import { mountElement, part, parts, removeElements } from './element-mount.ts';
import { openWork } from './work-support.ts';

afterEach(async () => {
  removeElements();
  document.documentElement.style.colorScheme = '';
  document.body.style.background = '';
  await page.viewport(1280, 800);
});
const content = {
  details: { project: 'Boat house', panel: 'KP-1' },
  sheets: {
    types: [
      { type: 'Blind drive 24 V', draw: 1500, nodes: 0, group: 'blinds', diversity: 0.25 }, { type: 'Lamp', draw: 500, nodes: 0, group: 'lamps' },
      { type: 'Sensor', draw: 100, nodes: 1, group: 'sensors' }, { type: 'Door holder', draw: 400, nodes: 0 },
    ],
    supplies: [{ rail: 'P1', rated: 10, target: 0.8, feed: 'X1', efficiency: 0.9, inputPowerFactor: 0.9 }, { rail: 'P2', rated: 10, target: 0.8, feed: 'X1', efficiency: 0.9, inputPowerFactor: 0.9 }, { rail: 'P3' }],
    feeds: [{ feed: 'X1', rated: 6 }],
    conductors: [{ conductor: 'c', resistance: 13.3, maxCurrent: 16 }],
    ways: [{ way: 'F1', rail: 'P1', kind: 'B', rated: 6 }, { way: 'F2', rail: 'P1', kind: 'B', rated: 6 }, { way: 'F3', rail: 'P2', kind: 'electronic', rated: 4 }],
    runs: [{ run: 'W1', way: 'F1', conductor: 'c', length: 30, basis: 'demand' }, { run: 'W2', way: 'F2', conductor: 'c', length: 20 }, { run: 'W3', way: 'F3', conductor: 'c', length: 20, basis: 'demand' }],
    devices: [
      { ref: 'D1', type: 'Blind drive 24 V', qty: 4, run: 'W1' }, { ref: 'D2', type: 'Lamp', qty: 8, run: 'W2' },
      { ref: 'D3', type: 'Sensor', qty: 10, rail: 'P1' }, { ref: 'D4', type: 'Lamp', qty: 7, run: 'W3' }, { ref: 'D5', type: 'Door holder', qty: 2, rail: 'P2' },
      { ref: 'D6', type: 'Lamp', qty: 2, rail: 'P3' },
    ],
    cases: [{ case: 'Evening', hours: 4 }, { case: 'Wind alarm', together: true }, { case: 'Cleaning', hours: 2 }, { case: 'Night', hours: 8, standby: true }],
    factors: ([['Evening', 0.25, 1], ['Wind alarm', 1, 0.8], ['Cleaning', 0.5, 1], ['Night', 0, 0.1]] as const)
      .flatMap(([name, blinds, lamps]) => [
        { case: name, group: 'blinds', factor: blinds }, { case: name, group: 'lamps', factor: lamps },
        ...name === 'Night' ? [] : [{ case: name, group: 'sensors', factor: 1 }],
      ]),
  },
};
test.each([[390, 'light'], [800, 'dark'], [1280, 'light'], [1920, 'dark'], [390, 'dark'], [1280, 'dark']] as const)('shots at %s %s', { timeout: 90_000 }, async (width, scheme) => {
  await page.viewport(width, width === 390 ? 844 : 800);
  document.documentElement.style.colorScheme = scheme;
  document.body.style.background = scheme === 'dark' ? '#000' : '#fff';
  const element = await mountElement({ content });
  await openWork(element, 'cases');
  for (const view of ['compare', 'factors', 'matters']) {
    part(element, `[data-view=${view}]`)!.click();
    await expect.poll(() => part(element, { compare: '.loadings', factors: '.matrix', matters: '.least' }[view]!)).not.toBeNull();
    part(element, '.loadings .cell.worst')?.click();
    await new Promise((r) => { setTimeout(r, 300); });
    await page.screenshot({ path: `/work/area/dist/shots/${view}-${width}-${scheme}.png` });
    if (width === 390) {
      const beyond = parts(element, '.work:not([hidden]) *').filter((each) => each.getBoundingClientRect().right > 391 && each.closest('table') === null && !each.matches('.unseen, table'));
      console.log(view, scheme, beyond.map((each) => each.outerHTML.slice(0, 100)));
    }
    if (width === 1280) {
      const { violations } = await axe.run(element, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'], rules: { region: { enabled: false }, 'page-has-heading-one': { enabled: false } }, resultTypes: ['violations'] });
      console.log(view, scheme, violations.flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary }) => `${id}: ${JSON.stringify(target)} ${failureSummary ?? ''}`)).slice(0, 6));
    }
  }
});
