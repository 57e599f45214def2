import { spawnSync } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser } from '../../src/cli/find-browser.mjs';
import { sectionPages } from '../../src/cli/section-pages.ts';
import { runTable } from '../../src/cli/run-table.ts';
import { writeSchedule } from '../../src/exchange/index.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { LANGUAGES } from '../../src/words/index.ts';

const demoIn = (lang: string) =>
  fileURLToPath(new URL(`../../data/demo.${lang === 'en' ? '' : `${lang}.`}schedule.json`, import.meta.url));

let folder: string;
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'pages-')); });
afterAll(async () => { await rm(folder, { recursive: true }); });

async function print(input: string, ...words: string[]): Promise<string> {
  const output = join(folder, 'table.pdf');
  const warnings: string[] = [];
  const code = await runTable([input, '--format', 'pdf', '--output', output, ...words], {
    out: () => undefined, warn: (line) => { warnings.push(line); },
  });
  expect({ code, warnings }).toEqual({ code: 0, warnings: [] });
  return (await readFile(output)).toString('latin1');
}

const pagesOf = (document: string): number => [...document.matchAll(/\/Type \/Page\b(?!s)/g)].length;

/** 1,000 device rows on 100 runs, of which many are over their limits. */
function large(): string {
  const count = <Each>(length: number, each: (index: number) => Each) =>
    Array.from({ length }, (_none, index) => each(index));
  return writeSchedule({ details: { project: 'Large', revision: 'A' }, sheets: {
    enclosures: count(4, (index): Cells => ({ enclosure: `P${index}` })),
    supplies: count(16, (index) => ({ rail: `L${index}`, rated: 20, enclosure: `P${index % 4}` })),
    ways: count(100, (index) => ({ way: `L${index % 16}-F${index}`, rail: `L${index % 16}`, kind: 'electronic', rated: 4 })),
    branches: count(20, (index) => ({ branch: `B${index}`, limit: 64, enclosure: `P${index % 4}` })),
    conductors: [{ conductor: '1.5', size: 1.5, resistance: 12.1 }],
    types: [{ type: 'Lamp', draw: 150, nodes: 1, minVoltage: 21 }],
    runs: count(100, (index) => ({ run: `W${index}`, rail: `L${index % 16}`, way: `L${index % 16}-F${index}`, conductor: '1.5', length: 10 + index, branch: `B${index % 20}` })),
    devices: count(1000, (index) => ({ ref: `D${index}`, type: 'Lamp', qty: 1 + index % 3, run: `W${index % 100}`, rail: `L${index % 100 % 16}`, branch: `B${index % 20}`, area: `Room ${index % 50}` })),
    outputs: count(60, (index) => ({ output: `K${index}`, load: `Load ${index}`, power: 100, voltage: 230 })),
  } });
}

describe.runIf(findBrowser() !== undefined)('how long a load table is', () => {
  it.each(LANGUAGES)('short has four to six pages for the demo in %s', async (lang) => {
    const pages = pagesOf(await print(demoIn(lang), '--form', 'short', '--lang', lang));
    expect(pages).toBeGreaterThanOrEqual(4);
    expect(pages).toBeLessThanOrEqual(6);
  }, 300_000);

  it('short has at most twelve pages for 1,000 devices', async () => {
    const input = join(folder, 'large.schedule.json');
    await writeFile(input, large());
    expect(pagesOf(await print(input, '--form', 'short'))).toBeLessThanOrEqual(12);
  }, 300_000);

  it.each(LANGUAGES.filter((lang) => lang !== 'en'))('for the site has at most 24 pages for the demo in %s', async (lang) => {
    expect(pagesOf(await print(demoIn(lang), '--form', 'site', '--lang', lang))).toBeLessThanOrEqual(24);
  }, 300_000);

  it('for the site has at most 24 pages for the demo, for one panel fewer, and names those on which sections begin', async () => {
    const ofOne = pagesOf(await print(demoIn('en'), '--form', 'site', '--panel', 'KP-2'));
    const document = Buffer.from(await print(demoIn('en'), '--form', 'site'), 'latin1');
    const whole = pagesOf(document.toString('latin1'));
    expect(whole).toBeLessThanOrEqual(24);
    expect(ofOne).toBeLessThan(whole / 2);
    const titles = ['Findings', 'Ways', 'Protections and settings', 'Modules', 'Mounting rails', 'Wiring list', 'Conductors inside', 'Cable schedule', 'Spare ways', 'Before energising', 'Measuring sheet', 'Commissioning'];
    const pages = sectionPages(document, titles.length)!;
    expect(pages.toSorted((a, b) => a - b)).toEqual(pages);
    const { status, stdout } = spawnSync('pdftotext', ['-layout', '-l', '1', join(folder, 'table.pdf'), '-'], { encoding: 'utf8' });
    // An independent reader, where it is installed.
    if (status !== 0) return;
    for (const [index, title] of titles.entries()) expect(stdout).toMatch(new RegExp(`${title} +${pages[index]!}\\b`));
  }, 300_000);

  it('has a bookmark for each section', async () => {
    const document = await print(demoIn('en'), '--form', 'short');
    const titles = [...document.matchAll(/\/Title \(([^)]*)\)\n\/Dest \[/g)].map(([, title]) => title);
    expect(titles).toEqual([
      'Revisions', 'Summary', 'Panels', 'Findings', 'Accepted findings', 'Supplies', 'Ways', 'Branches',
      'Runs', 'Outputs', 'Feeds', 'Cases and factors', 'Not judged here', 'Commissioning',
      // What holds them is written behind them.
      'Load table',
    ]);
  }, 300_000);
});
