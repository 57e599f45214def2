import { spawnSync } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser } from '../../src/cli/find-browser.mjs';
import { printPdf } from '../../src/cli/print-pdf.ts';
import { runTable } from '../../src/cli/run-table.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport, PAPERS, scheduleDigest } from '../../src/report/index.ts';
import { demoContent } from '../report/demo.ts';

const DEMO = fileURLToPath(new URL('../../data/demo.schedule.json', import.meta.url));
/** Long and short side in points: 297 × 210 mm and 420 × 297 mm of ISO 216. */
const SIDES = { A4: [841.9, 595.3], A3: [1190.6, 841.9] } as const;

let folder: string;
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'print-')); });
afterAll(async () => { await rm(folder, { recursive: true }); });

async function print(...words: string[]) {
  const warnings: string[] = [];
  const output = join(folder, 'table.pdf');
  const code = await runTable([DEMO, '--format', 'pdf', '--output', output, ...words], {
    out: () => undefined, warn: (line) => { warnings.push(line); },
  });
  return { code, warnings, output };
}

/** What an independent reader finds in a document, where it is installed. */
function readText(path: string): string | undefined {
  const { status, stdout } = spawnSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8', maxBuffer: 1 << 26 });
  return status === 0 ? stdout : undefined;
}

describe.runIf(findBrowser() !== undefined)('the load table as a document', () => {
  it.each(PAPERS)('is printed on %s, with the digest and the number on each page', async (paper) => {
    // All of it takes the browser longest.
    const form = paper === 'A4-landscape' ? 'full' : 'site';
    const { code, warnings, output } = await print('--paper', paper, '--form', form);
    expect({ code, warnings }).toEqual({ code: 0, warnings: [] });
    const bytes = (await readFile(output)).toString('latin1');
    const boxes = [...bytes.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)]
      .map((found) => [Number(found[1]), Number(found[2])]);
    const [size, way] = paper.split('-') as ['A4' | 'A3', string];
    const sides = way === 'landscape' ? SIDES[size] : [...SIDES[size]].reverse();
    expect(boxes.length).toBeGreaterThan(5);
    for (const box of boxes) for (const [index, side] of box.entries()) expect(Math.abs(side - sides[index]!))
      .toBeLessThan(1);
    const text = readText(output);
    if (text === undefined) return;
    const pages = text.split('\f').slice(0, -1);
    expect(pages).toHaveLength(boxes.length);
    const digest = scheduleDigest(demoContent());
    pages.forEach((page, index) => {
      expect(page).toContain(`Page ${index + 1} of ${pages.length}`);
      expect(page).toContain(digest);
    });
    const report = buildReport(new LoadSchedule(demoContent()), { generated: '', form });
    const squeezed = text.replace(/\s+/g, '');
    for (const { title } of report.sections) expect(squeezed).toContain(title.replace(/\s+/g, ''));
    for (const caution of report.cautions) expect(squeezed).toContain(caution.replace(/\s+/g, ''));
  }, 300_000);
});

it('says what is missing where there is no browser that prints', async () => {
  const before = process.env.BROWSER_PATH;
  try {
    process.env.BROWSER_PATH = join(folder, 'nowhere');
    expect(await print()).toMatchObject({ code: 2, warnings: [expect.stringContaining('there is no such file')] });
    const broken = join(folder, 'broken');
    await writeFile(broken, 'exit 3', { mode: 0o755 });
    process.env.BROWSER_PATH = broken;
    expect(await print()).toMatchObject({ code: 2, warnings: [expect.stringContaining('did not print')] });
    const slow = join(folder, 'slow');
    await writeFile(slow, '#!/bin/sh\nexec sleep 20', { mode: 0o755 });
    process.env.BROWSER_PATH = slow;
    await expect(printPdf('<p>', 300)).rejects.toThrow('had not printed after 0.3 s: the load table is too long for it. Print less of it');
  } finally {
    if (before === undefined) delete process.env.BROWSER_PATH;
    else process.env.BROWSER_PATH = before;
  }
});
