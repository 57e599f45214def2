import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { runTerminals } from '../../src/cli/run-terminals.ts';

let folder: string;
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'terminals-')); });
afterAll(async () => { await rm(folder, { recursive: true }); });

async function run(...words: string[]) {
  let out = '';
  const warnings: string[] = [];
  const code = await runTerminals(words, { out: (text) => { out += text; }, warn: (line) => { warnings.push(line); } });
  return { code, out, warnings };
}

it('lays terminals out into a file, says what it left out, and writes the lists of that file', async () => {
  const [input, output] = [join(folder, 'a.schedule.json'), join(folder, 'b.schedule.json')];
  await writeFile(input, JSON.stringify({
    format: 'elv-load-schedule', version: 2, details: {}, sheets: { supplies: [{ rail: 'L1' }], runs: [{ run: 'R1', rail: 'L1' }, { run: 'R2' }] },
  }));
  const first = await run(input, '--output', output);
  expect(first.code).toBe(0);
  expect(JSON.parse(first.out)).toEqual({
    came: ['-X2:1', '-X3:1'], changed: [], gone: [], reused: [], kept: 0, leftOut: [{ sheet: 'runs', row: 2, why: 'railless' }],
  });
  expect(first.warnings).toEqual(['Runs, row 2: R2 names no rail, so no terminals are laid out for it. Enter its way or its rail.']);
  expect(JSON.parse((await run(output, '--output', output)).out)).toMatchObject({ came: [], changed: [], gone: [], kept: 2 });
  const sheets = (JSON.parse(await readFile(output, 'utf8')) as { sheets: { terminals: object[] } }).sheets;
  expect(sheets.terminals[0]).toMatchObject({ terminal: '-X2:1', potential: 'L1 L+', inside: 'L1:+', outside: 'R1', core: '1' });
  expect((await run(output, '--list', 'wiring', '--format', 'csv')).out.split('\r\n')[0]).toMatch(/^terminal,strip,/);
  expect(JSON.parse((await run(output, '--list', 'labels')).out)).toContainEqual({ kind: 'terminal', text: '-X2:1', count: 1 });
});

it.each<[string, string[], RegExp]>([
  ['no input', [], /No input is named/], ['a list that is not known', ['x.json', '--list', 'plan'], /--list plan is not known/],
  ['a form that is not known', ['x.json', '--format', 'xlsx'], /--format xlsx is not known/],
])('refuses %s with exit code 2', async (_what, words, said) => {
  const { code, warnings } = await run(...words);
  expect([code, warnings.join(' ')]).toEqual([2, expect.stringMatching(said)]);
});

it('puts parts on mounting rails with --rails, keeps what stands unless anew, and says what an enclosure needs', async () => {
  const [input, output] = [join(folder, 'c.schedule.json'), join(folder, 'd.schedule.json')];
  await writeFile(input, JSON.stringify({
    format: 'elv-load-schedule', version: 2, details: {}, sheets: {
      enclosures: [{ enclosure: 'E1', rails: 3, railLength: 400 }],
      modules: [250, 250, 250, 210].map((width, at) => ({ module: `K${at + 1}`, enclosure: 'E1', width, ...at === 0 ? { mountedOn: 3 } : {} })),
    },
  }));
  const first = await run(input, '--rails', '--output', output);
  expect((JSON.parse(first.out) as { rails: unknown }).rails).toEqual([{
    enclosure: 'E1', length: 400, outcome: 'none', without: ['K4'],
    rails: [{ used: 250, parts: ['K2'] }, { used: 250, parts: ['K3'] }, { used: 250, parts: ['K1'] }],
  }]);
  expect(first.warnings.map((line) => line.replace(/\s/gu, ' '))).toEqual([
    'E1: with its reserve of 20 %, everything is put whole on 4 rails of 400 mm, 4 rails of 324 mm (18 modules), 4 rails of 432 mm (24 modules), 2 rails of 648 mm (36 modules).',
    'E1: its widest part does not fit on a rail of 216 mm.',
    'E1: which cooling surface its heat of 20.0 W needs is known once its highest inside temperature is entered.',
  ]);
  const modules = async () => (JSON.parse(await readFile(output, 'utf8')) as { sheets: { modules: { mountedOn?: number }[] } }).sheets.modules.map(({ mountedOn }) => mountedOn);
  expect(await modules()).toEqual([3, 1, 2, undefined]);
  await run(input, '--rails', '--anew', '--output', output);
  expect(await modules()).toEqual([1, 2, 3, undefined]);
});
