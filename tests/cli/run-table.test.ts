import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runTable } from '../../src/cli/run-table.ts';
import { readCsv } from '../../src/exchange/index.ts';
import { inputColumns, SCHEMA, SHEET_NAMES, type CellValue } from '../../src/schedule/index.ts';

let folder: string;
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'table-')); });
afterAll(async () => { await rm(folder, { recursive: true }); });

/** Files that the command is given, by name. */
/** A schedule with an acceptance for each of two rails, of which a CSV file holds one. */
const ACCEPTED = ['R1', 'R2'].map((tag) => (
  { sheet: 'supplies', tag, rule: 'supply-over-usable', reason: 'r', name: 'n', date: '2026-01-05', value: 9, limit: 1 }));

const FILES = {
  'supplies.csv': 'Rail;Voltage;Rated\r\nR1;;10\r\nR2;12;2,5\r\n',
  'devices.csv': 'Ref,Type,Qty,Rail,Unit draw\nD1,T,3,R1,\nD2,,2,R2,6 W\n',
  'types.csv': 'Type,Draw (A)\nT,0.35\n',
  'bus-types.csv': 'Type,Draw (A),Nodes\nT,0.35,\nU,0.1,0\n',
  'bus-devices.csv': 'Ref,Type,Qty,Rail,Branch\nD1,T,3,R1,B1\nD2,T,2,R1,B2\nD3,U,5,R1,B1\nD4,T,1,R1,\n',
  'branches.csv': 'Branch,Limit,Terminated\nB1,TIA-485-A,yes\nB2,,yes\n',
  'over.csv': 'rail,rated\nR1,1\n',
  'draws.csv': 'ref,qty,rail,unitDraw\nD1,4,R1,500\n',
  'bad.csv': 'Ref,Qty,Diversity\nD1,many,0.5\nD2,1,70\n',
  'unknown.csv': 'Ref,Qty,Rail,Colour\nD1,1,R1,red\n',
  'reference.csv': "Ref,Qty\nD1,'=[supplies.rated#9]\n",
  'bad.json': '{\n  "format": "elv-load-schedule",\n  "version": 2,\n  "sheets": { "devices": [{ "qty": -1 }] }\n}\n',
  'accepted.schedule.json': JSON.stringify({
    format: 'elv-load-schedule', version: 2, accepted: ACCEPTED, sheets: { supplies: [{ rail: 'R1' }, { rail: 'R2' }] },
  }),
  'panels.schedule.json': JSON.stringify({
    format: 'elv-load-schedule', version: 2, details: {}, sheets: {
      enclosures: [{ enclosure: 'P1' }, { enclosure: 'P2' }], feeds: [{ feed: 'F1', rated: 10, enclosure: 'P1' }],
      supplies: [{ rail: 'R1', rated: 10, enclosure: 'P1' }, { rail: 'R2', rated: 1, enclosure: 'P2' }],
      devices: [{ ref: 'D1', qty: 3, unitDraw: 500, rail: 'R1' }, { ref: 'D2', qty: 4, unitDraw: 500, rail: 'R2' }],
    },
  }),
  // AWG 24 carries 2 A (NFPA 79), and nothing opens it.
  'thin.schedule.json': JSON.stringify({
    format: 'elv-load-schedule', version: 2, sheets: {
      supplies: [{ rail: 'L1', rated: 40, units: 2 }], conductors: [{ conductor: 'AWG 24', resistance: 84.2, maxCurrent: 2 }],
      runs: [{ run: 'W1', rail: 'L1', conductor: 'AWG 24', length: 5 }], devices: [{ ref: 'D1', qty: 1, unitDraw: 100, run: 'W1' }],
    },
  }),
  'dead.schedule.json': JSON.stringify({
    format: 'elv-load-schedule', version: 2, sheets: {
      supplies: [{ rail: 'L1', rated: 10, measuredVoltage: 0, measuredCurrent: 0 }],
      devices: [{ ref: 'D1', qty: 1, unitDraw: 1000, rail: 'L1' }],
    },
  }),
  'good.schedule.json': JSON.stringify({
    format: 'elv-load-schedule', version: 2, details: { project: 'Mill <b>&' },
    sheets: { supplies: [{ rail: 'R1', rated: 10 }], devices: [{ ref: '<i>', qty: 3, unitDraw: 500, rail: 'R1' }] },
  }),
};
type FileName = keyof typeof FILES;

async function run(...words: string[]): Promise<{ code: number; out: string; warnings: string[] }> {
  let out = '';
  const warnings: string[] = [];
  const paths = await Promise.all(words.map(async (word) => {
    if (!(word in FILES)) return word;
    const path = join(folder, word);
    await writeFile(path, FILES[word as FileName]);
    return path;
  }));
  const code = await runTable(paths, {
    out: (text) => { out += text; },
    warn: (line) => { warnings.push(line.replaceAll(`${folder}/`, '')); },
  });
  return { code, out, warnings };
}

interface Printed {
  details: Record<string, string>;
  sheets: Record<string, Record<string, CellValue>[]>;
  findings: { rule: string; severity: string; sheet: string; row: number }[];
}

async function json(...words: string[]): Promise<Printed> {
  const { code, out, warnings } = await run(...words);
  expect({ code, warnings }).toMatchObject({ code: 0 });
  return JSON.parse(out) as Printed;
}

describe('table', () => {
  it('takes sheets in CSV together: 3 × 0.35 A on one rail, 2 × 6 W ÷ 12 V on the other', async () => {
    const { sheets } = await json('devices.csv', 'types.csv', 'supplies.csv');
    expect(sheets.devices!.map(({ unitDraw, connected }) => [unitDraw, connected])).toEqual([[350, 1.05], [500, 1]]);
    expect(sheets.supplies!.map(({ demand, loading, status }) => [demand, loading, status]))
      .toEqual([[1.05, expect.closeTo(0.105, 12), 'ok'], [1, 0.4, 'ok']]);
  });

  it('counts the rows that wait for nodes which a type does not say, and makes up no limit', async () => {
    const { sheets, findings } = await json('bus-devices.csv', 'bus-types.csv', 'branches.csv', 'supplies.csv');
    expect(sheets.devices!.map(({ nodes }) => nodes)).toEqual([null, null, 0, null]);
    expect(sheets.branches).toMatchObject([
      { branch: 'B1', limit: 32, nodes: 0, status: 'incomplete' }, {
        branch: 'B2', limit: null, free: null, status: 'incomplete',
      },
    ]);
    const ofBus = findings.filter(({ rule }) => /^(type|device)-nodes|^branch-limit/.test(rule));
    expect(ofBus).toMatchObject([
      {
        rule: 'type-nodes-missing', severity: 'incomplete', sheet: 'types', row: 1, tag: 'T', key: 'nodes', waiting: 2,
      },
      { rule: 'branch-limit-missing', severity: 'incomplete', sheet: 'branches', row: 2, tag: 'B2', key: 'limit' },
    ]);
  });

  it('writes one panel alone, and judges it alone', async () => {
    const [one, other] = [await json('panels.schedule.json', '--panel', 'P1'), await json('panels.schedule.json', '--panel', 'P2')];
    expect([one, other].map(({ sheets }) => ['devices', 'supplies', 'feeds', 'enclosures'].map((sheet) => sheets[sheet]!.length)))
      .toEqual([[1, 1, 1, 1], [1, 1, 0, 1]]);
    // 4 × 0.5 A of 1 A are over in P2; figures are those of the whole schedule.
    expect([one, other].map(({ sheets }) => [sheets.supplies![0]!.rail, sheets.supplies![0]!.connected])).toEqual([['R1', 1.5], ['R2', 2]]);
    const checks = await Promise.all(['P1', 'P2'].map((panel) => run('panels.schedule.json', '--panel', panel, '--check')));
    expect(checks.map(({ code }) => code)).toEqual([0, 1]);
    expect((await run('panels.schedule.json', '--panel', 'P2', '--sheet', 'devices', '--format', 'csv')).out).toMatch(/D2/);
    expect((await run('panels.schedule.json', '--panel', 'P2', '--sheet', 'devices', '--format', 'csv')).out).not.toMatch(/D1/);
    expect((await run('panels.schedule.json', '--panel', 'P1', '--format', 'html')).out).not.toMatch(/>D2</);
    expect(await run('panels.schedule.json', '--panel', 'P9')).toMatchObject({ code: 2, warnings: ['--panel P9 is not known. Give one of P1, P2.'] });
  });

  it('gives every key of every sheet, with defaults filled in', async () => {
    const { sheets, details } = await json('good.schedule.json');
    expect(Object.keys(sheets)).toEqual([...SHEET_NAMES]);
    expect(details).toEqual({ project: 'Mill <b>&' });
    expect(Object.keys(sheets.supplies![0]!)).toEqual(SCHEMA.supplies.columns.map(({ key }) => key));
    expect(sheets.supplies![0]).toMatchObject({
      voltage: 24, units: 1, redundant: false, derating: 1, target: 0.8, fuse: null, demand: 1.5, loading: 0.15,
    });
    expect(sheets.devices![0]).toMatchObject({ diversity: 1, demand: 1.5 });
  });

  it('puts a sheet in CSV in the place of that of the schedule', async () => {
    const { sheets } = await json('good.schedule.json', 'draws.csv');
    expect(sheets.supplies![0]).toMatchObject({ rail: 'R1', demand: 2 });
  });

  it('gives one sheet when it is named', async () => {
    const { sheets, findings } = await json('good.schedule.json', '--sheet', 'supplies');
    expect(Object.keys(sheets)).toEqual(['supplies']);
    expect(new Set(findings.map(({ sheet }) => sheet))).toEqual(new Set(['supplies']));
  });

  it('writes CSV that it reads again', async () => {
    const { out } = await run('good.schedule.json', '--format', 'csv', '--sheet=devices');
    expect(readCsv(out)).toEqual({
      ok: true, sheet: 'devices', rows: [{ ref: '<i>', qty: 3, unitDraw: 500, rail: 'R1' }], lines: [2], notes: [],
    });
  });

  it('needs no name of a sheet in CSV when the input has one', async () => {
    const { code, out } = await run('types.csv', '--format', 'csv');
    expect(code).toBe(0);
    expect(out.split('\r\n')[0]).toBe(inputColumns('types').map(({ title, unit }) =>
      unit ? `${title} (${unit})` : title).join(','));
  });

  it('prints a page without scripts, its texts escaped, with cautions', async () => {
    const { out } = await run('good.schedule.json', '--format', 'html');
    expect(out).toContain('<!doctype html>');
    expect(out).toContain('Mill &lt;b&gt;&amp;');
    expect(out).toContain('<td class="tag">&lt;i&gt;</td>');
    expect(out).toContain('competent person');
    expect(out.replaceAll('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(/<script|<i>|\son\w+=|https?:/);
  });

  it('writes to a file', async () => {
    const path = join(folder, 'out.json');
    expect(await run('good.schedule.json', '--output', path)).toEqual({ code: 0, out: '', warnings: [] });
    expect(JSON.parse(await readFile(path, 'utf8'))).toHaveProperty('sheets.supplies');
  });

  it('notes what was left out, beside the result', async () => {
    const { code, out, warnings } = await run('unknown.csv');
    expect(code).toBe(0);
    expect(warnings).toEqual(['unknown.csv: Left out, as the sheet has no such column: “Colour”.']);
    expect(() => { JSON.parse(out); }).not.toThrow();
  });

  it('notes what was accepted of rows that a sheet in CSV does not hold', async () => {
    const { code, warnings } = await run('accepted.schedule.json', 'over.csv');
    expect([code, warnings]).toEqual([
      0, ['over.csv: What was accepted of R2 has no row any more; it is kept and written back.'],
    ]);
  });

  it('exits with 1 when it is to check and something is over', async () => {
    const { code, out, warnings } = await run('over.csv', 'draws.csv', '--check');
    expect(code).toBe(1);
    expect((JSON.parse(out) as Printed).sheets.supplies![0]).toMatchObject({ demand: 2, status: 'over' });
    expect(warnings.join()).toContain('over: supplies, row 1 (R1)');
    expect((await run('over.csv', 'draws.csv')).code).toBe(0);
    expect((await run('good.schedule.json', '--check')).code).toBe(0);
  });

  it.each([
    ['thin.schedule.json', 'run-unprotected', 'over: runs, row 1 (W1)', 'feeds 120.00 A for ever without a fuse'],
    ['dead.schedule.json', 'supply-measured-dead', 'over: supplies, row 1 (L1)', 'it is dead'],
  ] as const)('exits with 1 for %s', async (file, rule, warned, said) => {
    const { code, out, warnings } = await run(file, '--check');
    expect(code).toBe(1);
    expect((JSON.parse(out) as Printed).findings.filter(({ severity }) => severity === 'over').map((each) => each.rule)).toEqual([rule]);
    expect(warnings.join().replaceAll('\u00a0', ' ')).toContain(warned);
    expect(out.replaceAll('\u00a0', ' ')).toContain(said);
  });

  it('prints its help', async () => {
    const { code, out } = await run('--help');
    expect(code).toBe(0);
    for (const word of ['--sheet', '--format', '--output', '--check', 'INPUT', ...SHEET_NAMES]) expect(out)
      .toContain(word);
  });

  it.each<[name: string, words: string[], lines: string[]]>([
    [
      'every bad cell of a sheet', ['bad.csv'],
      ['bad.csv:2:2: Line 2, Qty: “many”', 'bad.csv:3:3: Line 3, Diversity: “70”'],
    ],
    ['a bad cell of a schedule', ['bad.json'], ['bad.json:4:36: devices, row 1, Qty: “-1”']],
    ['the bad file among good ones', ['good.schedule.json', 'bad.csv'], ['bad.csv:2:2: ', 'bad.csv:3:3: ']],
    [
      'a formula that names a row of another sheet in vain', ['reference.csv'],
      ['reference.csv: devices, row 1, Qty: '],
    ],
    ['a file that is not there', ['nowhere.csv'], ['nowhere.csv: there is no such file.']],
    ['a sheet that comes twice', ['supplies.csv', 'over.csv'], ['over.csv: holds supplies, as supplies.csv does.']],
    ['two schedules', ['good.schedule.json', 'bad.json'], ['bad.json: is a second schedule.']],
    ['no input', [], ['No input is named.']],
    ['an unknown option', ['good.schedule.json', '--colour'], ["Unknown option '--colour'. elv-table --help"]],
    ['an option without its value', ['good.schedule.json', '--sheet'], ["Option '--sheet <value>' argument missing."]],
    [
      'an unknown sheet', ['good.schedule.json', '--sheet', 'lamps'],
      ['--sheet lamps is not known. Give one of devices,'],
    ],
    [
      'an unknown format', ['good.schedule.json', '--format', 'docx'],
      ['--format docx is not known. Give one of json, csv, html'],
    ],
    [
      'a document without a file', ['good.schedule.json', '--format', 'pdf'],
      ['--format pdf is no text for the terminal.'],
    ],
    ['a form for JSON', ['good.schedule.json', '--form', 'short'], ['--form, --without and --all-pictures go with']],
    ['a form for a workbook', ['good.schedule.json', '--format', 'xlsx', '--output', 'x.xlsx', '--without', 'ways'], ['--form, --without']],
    ['a form that it does not know', ['good.schedule.json', '--format', 'html', '--form', 'long'], ['--form long is not known. Give one of full, short, site']],
    ['a section that it does not know', ['good.schedule.json', '--format', 'html', '--without', 'way'], ['--without way is not known.']],
    ['paper for JSON', ['good.schedule.json', '--paper', 'A4-portrait'], ['--paper goes with']],
    [
      'a size of paper that it does not know', ['good.schedule.json', '--format', 'html', '--paper', 'A5'],
      ['--paper A5 is not known. Give one of A4-landscape,'],
    ],
    [
      'the whole of what is whole', ['good.schedule.json', '--format', 'html', '--whole'],
      ['--whole goes with --format csv'],
    ],
    ['changes where there is no place for them', ['good.schedule.json', '--since', 'bad.json'], ['--since goes with']],
    [
      'one sheet of a workbook', ['good.schedule.json', '--format', 'xlsx', '--sheet', 'devices', '--output', 'x'],
      ['--sheet does not go with'],
    ],
    ['CSV of several sheets', ['good.schedule.json', '--format', 'csv'], ['A CSV file holds one sheet;']],
    [
      'a file that cannot be written', ['good.schedule.json', '--output', '/nowhere/x'],
      ['/nowhere/x: cannot be written'],
    ],
  ])('refuses %s with 2 and prints no result', async (_name, words, lines) => {
    const { code, out, warnings } = await run(...words);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(warnings).toHaveLength(lines.length);
    for (const [index, line] of lines.entries()) expect(warnings[index]).toContain(line);
  });
});
