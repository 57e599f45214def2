import axe from 'axe-core';
import { afterEach, describe, expect, test } from 'vitest';
import { cdp } from 'vitest/browser';
import demo from '../../../data/demo.schedule.json?raw';
import { readSchedule } from '../../../src/exchange/index.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import { buildReport, loadTableHtml } from '../../../src/report/index.ts';
import { loadWords } from '../../../src/words/index.ts';

const read = readSchedule(demo);
if (!read.ok) throw new Error(read.problems[0]!.message);
const report = buildReport(new LoadSchedule(read.content), { generated: '2026-11-25' });
const page = loadTableHtml(report, { schedule: demo });

/** Opens the load table in a frame of a width, as a browser opens the file. */
async function open(width: number, text = page): Promise<HTMLIFrameElement> {
  const frame = document.createElement('iframe');
  frame.title = 'Load table';
  frame.style.cssText = `width: ${width}px; height: 700px; border: 0`;
  frame.srcdoc = text;
  const loaded = new Promise((resolve) => { frame.addEventListener('load', resolve, { once: true }); });
  document.body.append(frame);
  await loaded;
  return frame;
}

async function medium(media: '' | 'print'): Promise<void> {
  await (cdp() as unknown as { send(method: string, options: object): Promise<unknown> })
    .send('Emulation.setEmulatedMedia', { media });
}

afterEach(async () => {
  await medium('');
  document.querySelectorAll('iframe').forEach((frame) => { frame.remove(); });
});

describe('the load table on a screen', () => {
  test.each([['a desk', 1280], ['a phone', 375]])('axe finds nothing: %s', async (_name, width) => {
    // Its own policy keeps every script out, the checker's too.
    const { contentWindow } = await open(width, page.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, ''));
    const inside = contentWindow as Window & { eval: (code: string) => void; axe: typeof axe };
    inside.eval(axe.source);
    const { violations } = await inside.axe.run({ resultTypes: ['violations'] });
    expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
  });

  test('on a phone only tables scroll sideways, each in its own frame that takes the focus', async () => {
    const { contentDocument } = await open(375);
    expect(contentDocument!.documentElement.scrollWidth).toBeLessThanOrEqual(375);
    for (const scroller of contentDocument!.querySelectorAll<HTMLElement>('.scroll')) expect(scroller.tabIndex).toBe(0);
  });

  test('what the reader sees holds no JSON', async () => {
    const { contentDocument } = await open(1280);
    expect(contentDocument!.body.innerText).not.toContain('elv-load-schedule",');
    expect(contentDocument!.querySelector('template')).not.toBeNull();
  });
});

/** Room between the margins of 11 mm, in CSS pixels of 1/96 inch. */
const between = (millimetres: number) => Math.floor((millimetres - 22) / 25.4 * 96);

const PAPERS = [['A4-portrait', 210], ['A4-landscape', 297], ['A3-portrait', 297], ['A3-landscape', 420]] as const;

// The narrowest paper in every language, all papers in that of the longest words.
const PRINTED = ['en', 'de', 'fr'].flatMap((language) =>
  PAPERS.slice(0, language === 'de' ? undefined : 1).map(([paper, width]) => ({ language, paper, width })));

test.each(PRINTED)(
'in $language nothing is cut on $paper, headings repeat, and no row is split', async ({ language, paper, width }) => {
  await medium('print');
  const schedule = new LoadSchedule(read.content, { words: await loadWords(language) });
  const { contentDocument } =
    await open(between(width), loadTableHtml(buildReport(schedule, { generated: '2026-11-25' }), { paper }));
  const { body } = contentDocument!;
  const tables = [...body.querySelectorAll('table')];
  expect(tables.length).toBeGreaterThan(20);
  for (const table of tables) {
    const style = (of: Element) => contentDocument!.defaultView!.getComputedStyle(of);
    const section = table.closest('section')!.id;
    expect([section, table.getBoundingClientRect().width <= body.clientWidth + 1]).toEqual([section, true]);
    expect(style(table.tHead!).display).toBe('table-header-group');
    expect(style(table.rows[1]!).breakInside).toBe('avoid');
    const cut = [...table.querySelectorAll('td, th')]
      .filter((cell) => cell.scrollWidth > cell.clientWidth + 1).map((cell) => cell.textContent);
    expect([section, cut]).toEqual([section, []]);
  }
});
