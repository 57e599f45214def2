import { read, utils, write } from '@e965/xlsx';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { runTable } from '../../src/cli/run-table.ts';
import { isScheduleText } from '../../src/exchange/index.ts';
import { SCHEMA } from '../../src/schedule/index.ts';

const DEMO = fileURLToPath(new URL('../../data/demo.schedule.json', import.meta.url));
let folder: string;
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'edited-')); });
afterAll(async () => { await rm(folder, { recursive: true }); });

async function run(...words: string[]) {
  let out = '';
  const warnings: string[] = [];
  const code = await runTable(words, { out: (text) => { out += text; }, warn: (line) => { warnings.push(line); } });
  return { code, out, warnings };
}

it('names the cells of a load table that were edited, and takes the schedule as it was issued', async () => {
  const [original, edited] = [join(folder, 'load-table.xlsx'), join(folder, 'back.xlsx')];
  expect(await run(DEMO, '--format', 'xlsx', '--output', original)).toMatchObject({ code: 0, warnings: [] });
  const issued = await run(original);
  expect(issued.warnings).toEqual([]);
  const workbook = read(await readFile(original), { cellFormula: true });
  const place = utils.encode_cell({ r: 1, c: SCHEMA.supplies.columns.findIndex(({ key }) => key === 'rated') });
  workbook.Sheets.Supplies![place] = { t: 'n', v: 77 };
  await writeFile(edited, write(workbook, { type: 'buffer', bookType: 'xlsx' }) as Uint8Array);
  const back = await run(edited);
  expect(back.out).toBe(issued.out);
  expect(back.warnings).toEqual([
    expect.stringMatching(/back\.xlsx: the schedule that it carries is opened\./),
    expect.stringMatching(
      /^\S+back\.xlsx: Supplies, L1, Rated: [\d.]+\u00a0A in the schedule, 77\.00\u00a0A on the worksheet\.$/
    ),
  ]);
});

it.each([
  ['x.schedule.json', '{}', true], ['x.json', '', true], ['x.html', 'cut off', true], ['x', ' \ufeff{ }', true], [
    'x.txt', '<!doctype html>', true,
  ],
  ['x.csv', '{"format": 1}', true], ['x.csv', 'Ref,Qty', false], ['x', 'Ref;Qty', false], ['x.txt', '', false],
])('takes %s with «%s» for a whole schedule: %s', (name, text, isSchedule) => {
  expect(isScheduleText({ name, text })).toBe(isSchedule);
});
