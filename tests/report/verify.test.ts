import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runTable } from '../../src/cli/run-table.ts';
import { writeSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { verifyHtml } from '../../src/report/verify/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { AGREES, demo, pageOf, verified, written } from './verified.ts';

const DIGEST = 'The SHA-256 that is shown is not that of the schedule that the file carries: one of the two was changed after it was made.';

/** Changes a page at one place, which must be there. */
function tampered(page: string, from: string | RegExp, to: string): string {
  const changed = page.replace(from, to);
  expect(changed).not.toBe(page);
  return changed;
}

describe('a load table in HTML, made anew of the schedule that it carries', () => {
  test('the demo agrees', async () => {
    expect(await verifyHtml(pageOf(await demo()), ENGLISH)).toEqual(AGREES);
  });

  test('one of a panel, of a sheet, and of what is in no panel agree too', async () => {
    for (const options of [{ panel: 'KP-2' }, { panel: null }, { sheet: 'runs' as const }, { paper: 'A3-portrait' as const }]) {
      expect(await verifyHtml(pageOf(await demo(), options), ENGLISH)).toEqual(AGREES);
    }
  });

  test('a figure that was typed over is named with its place', async () => {
    const page = pageOf(await demo());
    const { differs } = await verifyHtml(tampered(page, '>16.07<', '>15.07<'), ENGLISH);
    expect(differs).toEqual([
      'Conductors inside, From part to part, L1:F/2, Current (A): “15.07” is shown, and “16.07” follows from the schedule that the file carries.',
    ]);
  });

  test('a value of the schedule that it carries, and the digest, are noticed', async () => {
    const page = pageOf(await demo());
    const inside = tampered(page, /(&quot;run&quot;:\s?&quot;L1-W1&quot;[\s\S]*?&quot;length&quot;:\s?)26/, '$127');
    const { differs } = await verifyHtml(inside, ENGLISH);
    expect(differs).toContain(DIGEST);
    expect(differs.some((each) => each.includes('L1-W1') && each.includes('“26.0” is shown, and “27.0” follows'))).toBe(true);
    const digest = tampered(page, /<dd>[0-9a-f]{64}<\/dd>/, `<dd>${'0'.repeat(64)}</dd>`);
    expect((await verifyHtml(digest, ENGLISH)).differs).toEqual([DIGEST]);
  });

  test('a row or a finding that was taken out or put in, a picture, and what hides something', async () => {
    const page = pageOf(await demo());
    const out = await verifyHtml(tampered(page, /(<section id="findings"[\s\S]*?<tbody>\s*)<tr[\s\S]*?<\/tr>/, '$1'), ENGLISH);
    expect(out.differs[0]).toMatch(/follows from the schedule and is not shown\.$/);
    const added = tampered(page, /(<section id="feeds"[\s\S]*?<tbody>\s*)/, '$1<tr class="row"><td class="tag">F99</td></tr>');
    expect((await verifyHtml(added, ENGLISH)).differs).toEqual(['Feeds, Entries, F99: “F99” is shown and does not follow from the schedule.']);
    const picture = await verifyHtml(tampered(page, /(<figure><svg[\s\S]*?<title[^>]*>)/, '$1Not '), ENGLISH);
    expect(picture.differs).toEqual([expect.stringMatching(/the picture is not the one that follows from the schedule\.$/)]);
    const hidden = await verifyHtml(tampered(page, '<section id="findings"', '<section hidden id="findings"'), ENGLISH);
    expect(hidden.differs).toEqual(['The markup of the page is not as it was written: something may be hidden, or added.']);
    const styled = await verifyHtml(tampered(page, '</style>', '#findings { display: none }</style>'), ENGLISH);
    expect(styled.differs).toEqual(hidden.differs);
  });

  test('what cannot be compared is said, and never called well', async () => {
    const schedule = await demo();
    const since = await verifyHtml(pageOf(schedule, { since: new LoadSchedule() }), ENGLISH);
    expect(since).toEqual({ differs: [], unverified: [expect.stringContaining('since an older schedule were not compared')] });
    const page = pageOf(schedule);
    const unsaid = await verifyHtml(tampered(page, / data-scope="[^"]*"/, ''), ENGLISH);
    expect(unsaid).toEqual({ differs: [], unverified: [expect.stringContaining('does not say how it was made')] });
    for (const scope of ['null', '[]', '{', '{&quot;generated&quot;:1}']) {
      const odd = await verifyHtml(tampered(page, / data-scope="[^"]*"/, ` data-scope="${scope}"`), ENGLISH);
      expect(odd.unverified).toEqual(unsaid.unverified);
    }
    const software = await verifyHtml(page.replaceAll('elv-load-schedule 0', 'elv-load-schedule 9'), ENGLISH);
    expect(software.differs.length + software.unverified.length).toBeGreaterThan(0);
  });
});

describe('a load table as a workbook, made anew of the schedule that it carries', () => {
  /** Changes the worksheet that holds a text, at one place. */
  const changedIn = (bytes: Uint8Array, holds: string, from: string | RegExp, to: string): Uint8Array => {
    const parts = unzipSync(bytes);
    const name = Object.keys(parts).find((each) => each.startsWith('xl/worksheets/') && strFromU8(parts[each]!).includes(holds))!;
    return zipSync({ ...parts, [name]: strToU8(tampered(strFromU8(parts[name]!), from, to)) });
  };

  test('the demo agrees, in German', async () => {
    expect(await verified(await written(await demo('de')))).toEqual(AGREES);
  });

  test('a figure, the digest, and a value of the schedule that it carries are noticed', async () => {
    const bytes = await written(await demo());
    const figure = changedIn(bytes, '>Usable (A)<', /(<c r="H2"[^>]*><f>[^<]*<\/f><v>)20</, '$121<');
    expect((await verified(figure)).differs).toEqual([expect.stringMatching(/^Supplies, H2: “21” is shown, and “20” follows/)]);
    const digest = changedIn(bytes, 'SHA-256 of the schedule', /[0-9a-f]{64}/, '0'.repeat(64));
    expect((await verified(digest)).differs).toEqual([DIGEST]);
    const inside = changedIn(bytes, '&quot;sheets&quot;', /(&quot;run&quot;:&quot;L1-W1&quot;.*?&quot;length&quot;:)26/, '$127');
    const { differs } = await verified(inside);
    expect(differs.length).toBeGreaterThan(0);
    expect(differs[0]).toContain('L1-W1');
  });

  test('the terminal names the places and exits with 1, with 0 where all agrees, with 2 where there is nothing to compare', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'verify-'));
    const [html, other, xlsx, json] = ['a.html', 'b.html', 'c.xlsx', 'd.json'].map((name) => join(folder, name)) as [string, string, string, string];
    const schedule = await demo();
    const page = pageOf(schedule);
    await writeFile(html, page);
    await writeFile(other, tampered(page, '>16.07<', '>15.07<'));
    await writeFile(xlsx, await written(schedule));
    await writeFile(json, writeSchedule(schedule.content()));
    const run = async (...words: string[]) => {
      let [out, warned] = ['', ''];
      const code = await runTable(words, { out: (text) => { out += text; }, warn: (text) => { warned += text; } });
      return { code, out, warned };
    };
    expect(await run(html, xlsx, '--verify')).toMatchObject({ code: 0, out: expect.stringContaining('agree') as string });
    expect(await run(html, other, '--verify')).toMatchObject({ code: 1, out: expect.stringContaining(`${other}: Conductors inside`) as string });
    expect(await run(json, '--verify')).toMatchObject({ code: 2, warned: expect.stringContaining('carries no schedule') as string });
  });
});
