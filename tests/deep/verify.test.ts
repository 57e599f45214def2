import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { verifyHtml } from '../../src/report/verify/index.ts';
import { ENGLISH, LANGUAGES } from '../../src/words/index.ts';
import { AGREES, demo, pageOf, verified, written } from '../report/verified.ts';
import { somePanel } from '../terminals/random-wired-panel.ts';

describe.each(LANGUAGES)('in %s', (lang) => {
  test('the demo agrees as a page', async () => {
    expect(await verifyHtml(pageOf(await demo(lang)), ENGLISH)).toEqual(AGREES);
  });

  test('the demo agrees as a workbook', async () => {
    expect(await verified(await written(await demo(lang)))).toEqual(AGREES);
  });
});

test('a page of any schedule agrees', async () => {
  await fc.assert(fc.asyncProperty(somePanel, async (content) => {
    expect(readSchedule(writeSchedule(content)).ok).toBe(true);
    expect(await verifyHtml(pageOf(new LoadSchedule(content)), ENGLISH)).toEqual(AGREES);
  }), { numRuns: 50 });
}, 120_000);

test('a figure anywhere: each cell of the supplies is noticed', async () => {
  const page = pageOf(await demo(), { sheet: 'supplies' });
  const [section] = /<section id="supplies"[\s\S]*?<\/section>/.exec(page)!;
  const cells = [...section.matchAll(/<td class="number[^"]*">([^<]+)<\/td>/g)].filter((_cell, place) => place % 4 === 0);
  expect(cells.length).toBeGreaterThan(10);
  for (const cell of cells) {
    const changed = section.slice(0, cell.index) + cell[0].replace(cell[1]!, '777') + section.slice(cell.index + cell[0].length);
    const { differs } = await verifyHtml(page.replace(section, changed), ENGLISH);
    expect(differs.filter((each) => each.includes('777'))).toHaveLength(1);
  }
}, 60_000);
