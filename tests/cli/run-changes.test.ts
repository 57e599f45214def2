import { createHash } from 'node:crypto';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { runChanges } from '../../src/cli/run-changes.ts';
import { runTable } from '../../src/cli/run-table.ts';

let folder: string;
const schedule = (qty: number, rated: number) => JSON.stringify({
  format: 'elv-load-schedule', version: 2, details: { revision: String(qty) },
  sheets: { devices: [{ ref: 'D1', rail: 'R1', qty, unitDraw: 500 }], supplies: [{ rail: 'R1', rated }] },
});
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'changes-'));
  await writeFile(join(folder, 'old.schedule.json'), schedule(3, 10));
  await writeFile(join(folder, 'new.schedule.json'), schedule(30, 10));
});
afterAll(async () => { await rm(folder, { recursive: true }); });

async function run(command: typeof runTable, ...words: string[]) {
  let out = '';
  const warnings: string[] = [];
  const code = await command(words.map((word) => /\.(json|html)$/.test(word)
    && !word.startsWith('/') ? join(folder, word) : word), {
    out: (text) => { out += text; }, warn: (line) => { warnings.push(line); },
  });
  return { code, out, warnings };
}

it('says what changed, and what that did', async () => {
  const { code, out } = await run(runChanges, 'old.schedule.json', 'new.schedule.json');
  expect(code).toBe(0);
  expect(out).toContain('D1: changed: Qty 3 → 30');
  // 30 × 0.5 A = 15 A on 10 A
  expect(out).toMatch(/Supplies, R1: .*Demand 1\.50\sA → 15\.00\sA; .*Status within limits → over/);
});

it('gives the same to programs, unrounded', async () => {
  const { out } = await run(runChanges, 'old.schedule.json', 'new.schedule.json', '--format', 'json');
  expect(JSON.parse(out)).toMatchObject(
    { rows: [{ kind: 'changed', tag: 'D1', values: [{ key: 'qty', before: 3, after: 30 }] }] }
  );
});

it('writes a load table in HTML that is read like a schedule, with the changes since another in it', async () => {
  expect(
    await run(
      runTable, 'new.schedule.json', '--format', 'html', '--since', 'old.schedule.json', '--output',
      join(folder, 'new.html')
    )
  )
    .toMatchObject({ code: 0, warnings: [] });
  expect(await readFile(join(folder, 'new.html'), 'utf8')).toContain('<h2>Changes</h2>');
  expect(await run(runChanges, 'new.html', 'new.schedule.json'))
    .toMatchObject({ code: 0, out: 'Nothing is different.\n' });
});

it('writes the whole load table as CSV', async () => {
  const { code, out } = await run(runTable, 'new.schedule.json', '--format', 'csv', '--whole');
  expect(code).toBe(0);
  expect(out).toContain('Devices per rail');
});

it('tells whether the digits on paper are those of the file', async () => {
  // As the software writes it on one line, every sheet in its place.
  const file = '{"format":"elv-load-schedule","version":2,"details":{"revision":"30"},"sheets":{'
    + '"devices":[{"ref":"D1","qty":30,"rail":"R1","unitDraw":500}],"types":[],"supplies":[{"rail":"R1","rated":10}],"ways":[],"branches":[],'
    + '"runs":[],"conductors":[],"modules":[],"outputs":[],"contacts":[],"feeds":[],"enclosures":[],"terminals":[],"cases":[],"factors":[]}}';
  const digest = createHash('sha256').update(file).digest('hex');
  const check = (hex: string) => run(runTable, 'new.schedule.json', '--check-digest', hex);
  expect(await check(digest)).toMatchObject({ code: 0, out: 'The digits are those of this schedule.\n' });
  expect(await check(digest.slice(0, 16))).toMatchObject({ code: 0 });
  expect(await check('0'.repeat(16))).toMatchObject({ code: 1, out: expect.stringContaining(digest) as string });
  expect(await check('12 34')).toMatchObject({ code: 2, out: '' });
});

it('counts what is over even where it was accepted, unless told to let it pass', async () => {
  const accepted = {
    ...JSON.parse(schedule(30, 10)) as object,
    accepted: [
      {
        sheet: 'supplies', tag: 'R1', rule: 'supply-over-usable', key: 'demand', reason: 'on order', name: 'N. N.',
        date: '2026-03-02', value: 15, limit: 10,
      },
    ],
  };
  await writeFile(join(folder, 'accepted.schedule.json'), JSON.stringify(accepted));
  const strict = await run(runTable, 'accepted.schedule.json', '--check');
  expect(strict).toMatchObject(
    { code: 1, warnings: [expect.stringContaining('(accepted by N. N., Mar 2, 2026: on order)')] }
  );
  expect(await run(runTable, 'accepted.schedule.json', '--check', '--pass-accepted'))
    .toMatchObject({ code: 0, warnings: [] });
});

it.each([
  [['old.schedule.json'], 'Two schedules are compared; 1 named.'], [
    ['old.schedule.json', 'new.schedule.json', '--format', 'pdf'], '--format pdf is not known.',
  ],
  [['old.schedule.json', 'nowhere.json'], 'there is no such file'], [['--colour'], 'Unknown option'],
])('refuses %s', async (words, line) => {
  expect(await run(runChanges, ...words))
    .toMatchObject({ code: 2, out: '', warnings: [expect.stringContaining(line)] });
});

it('prints its help', async () => {
  expect((await run(runChanges, '--help')).out).toContain('OLD NEW');
});

it('writes a workbook that is read like a schedule', async () => {
  const path = join(folder, 'new.xlsx');
  expect(await run(runTable, 'new.schedule.json', '--format', 'xlsx', '--output', path))
    .toMatchObject({ code: 0, warnings: [] });
  expect(await run(runChanges, path, 'new.schedule.json')).toMatchObject({ code: 0, out: 'Nothing is different.\n' });
  expect(await run(runTable, 'new.schedule.json', '--format', 'xlsx'))
    .toMatchObject({ code: 2, warnings: [expect.stringContaining('--output')] });
});

it('says what a variant would change, and refuses one that is not there by naming those that are', async () => {
  const supplies = [{ rail: 'R1', rated: 10 }];
  const file = {
    ...JSON.parse(schedule(30, 10)) as object,
    variants: [{ name: 'Larger', base: { sheets: { supplies } }, tried: { sheets: { supplies: [{ rail: 'R1', rated: 40 }] } } }],
  };
  await writeFile(join(folder, 'kept.schedule.json'), JSON.stringify(file));
  const { code, out, warnings } = await run(runChanges, 'kept.schedule.json', '--variant', 'Larger');
  expect([code, warnings]).toEqual([0, []]);
  expect(out).toContain('R1: changed: Rated 10.00\u00a0A → 40.00\u00a0A');
  // 15 A of 10 A, of 40 A.
  expect(out).toMatch(/Loading 150\s%/);
  expect(out).not.toContain('Variants');
  const other = await run(runChanges, 'kept.schedule.json', '--variant', 'Smaller');
  expect(other.code).toBe(2);
  expect(other.warnings.join()).toContain('The schedule has no variant “Smaller”. Give one of “Larger”.');
  expect((await run(runChanges, 'kept.schedule.json', 'new.schedule.json', '--variant', 'Larger')).code).toBe(2);
});
