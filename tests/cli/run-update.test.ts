import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runUpdate } from '../../src/cli/run-update.ts';

let folder: string;
const schedule = {
  format: 'elv-load-schedule', version: 2, details: {},
  sheets: {
    devices: [{ ref: 'D1', type: 'Valve', qty: 2 }],
    types: [{ type: 'Valve', draw: 120 }, { type: 'Lamp', draw: '=50*5' }, { type: 'Old' }],
    contacts: [{ contact: 'R1', resistive: 16 }],
  },
};
const office = {
  format: 'elv-load-schedule', version: 2,
  sheets: { types: [{ type: 'Valve', draw: 130 }, { type: 'Lamp', draw: 260 }], contacts: [{ contact: 'R2', resistive: 10 }], devices: [{ ref: 'D9' }] },
};
const FILES = {
  'job.schedule.json': JSON.stringify(schedule), 'office.schedule.json': JSON.stringify(office),
  'types.csv': 'Type,Draw (mA)\nValve,130\nBlind,90\n,7\n', 'bad.csv': 'Type,Draw (mA)\nValve,much\n',
  'devices.csv': 'Ref,Type,Qty\nD1,Valve,3\n', 'formula.csv': 'Type,Draw (mA)\nValve,=[devices.qty@D7]\n',
  'empty.schedule.json': JSON.stringify({ format: 'elv-load-schedule', version: 2, sheets: { devices: [{ ref: 'D9' }] } }),
};

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'update-'));
  for (const [name, text] of Object.entries(FILES)) await writeFile(join(folder, name), text);
});
afterAll(async () => { await rm(folder, { recursive: true }); });

async function run(...words: string[]) {
  let out = '';
  const warnings: string[] = [];
  const code = await runUpdate(words.map((word) => /\.(json|csv)$/.test(word) ? join(folder, word) : word), {
    out: (text) => { out += text; }, warn: (line) => { warnings.push(line.replaceAll(`${folder}/`, '')); },
  });
  const written = async () => {
    const text = await readFile(join(folder, 'out.schedule.json'), 'utf8');
    return (JSON.parse(text) as { readonly sheets: Record<string, unknown[]> }).sheets;
  };
  const json = () => JSON.parse(out) as { readonly lists: readonly Record<string, unknown>[] };
  return { code, out, warnings, written, json };
}

describe('the command update', () => {
  it('says what a list changes, cell by cell, and writes the schedule with it', async () => {
    const { code, json, warnings, written } =
      await run('job.schedule.json', 'types.csv', '--output', 'out.schedule.json');
    expect(code).toBe(0);
    expect(json()).toMatchObject({
      how: 'update',
      lists: [{
        sheet: 'types', added: 1, same: 0, notInList: 2,
        changed: [{ tag: 'Valve', row: 1, cells: [{ key: 'draw', before: 120, after: 130 }] }],
        leftOut: [{ line: 4, tag: '' }],
      }],
    });
    expect(warnings).toEqual(['types.csv: Line 4: it has no Type, which would name its row. Enter one.']);
    expect((await written()).types)
      .toEqual([{ type: 'Valve', draw: 130 }, { type: 'Lamp', draw: '=50*5' }, { type: 'Old' }, { type: 'Blind', draw: 90 }]);
  });

  it('takes the lists of a schedule, leaving its other sheets and the formulas of a person', async () => {
    const { json, written } = await run('job.schedule.json', 'office.schedule.json', '--output', 'out.schedule.json');
    expect(json().lists).toMatchObject([
      { sheet: 'types', changed: [{ tag: 'Valve' }, { tag: 'Lamp', cells: [{ before: '=50*5', after: 260, kept: true }] }] },
      { sheet: 'contacts', added: 1, notInList: 1 },
    ]);
    const sheets = await written();
    expect(sheets).toMatchObject({
      devices: schedule.sheets.devices, types: [{ draw: 130 }, { draw: '=50*5' }, {}], contacts: [{}, { contact: 'R2' }],
    });
    await run('job.schedule.json', 'office.schedule.json', '--replace-formulas', '--output', 'out.schedule.json');
    expect((await written()).types).toMatchObject([{}, { type: 'Lamp', draw: 260 }, {}]);
  });

  it('appends or replaces when asked to', async () => {
    const appended = await run('job.schedule.json', 'devices.csv', '--how', 'append', '--output', 'out.schedule.json');
    expect(appended.json().lists).toMatchObject([{ sheet: 'devices', rows: 1, before: 1 }]);
    expect((await appended.written()).devices).toMatchObject([{ qty: 2 }, { qty: 3 }]);
    const replaced = await run('job.schedule.json', 'devices.csv', '--how', 'replace', '--output', 'out.schedule.json');
    expect((await replaced.written()).devices).toMatchObject([{ ref: 'D1', qty: 3 }]);
  });

  it.each([
    [['job.schedule.json'], /Name a schedule, then the lists/],
    [['job.schedule.json', 'types.csv', '--how', 'merge'], /--how merge is not known\. Give one of update, append, replace/],
    [['job.schedule.json', 'types.csv', '--sheet', 'cables'], /--sheet cables is not known/],
    [['job.schedule.json', 'bad.csv'], /^bad\.csv:2:2: Line 2, Draw \(mA\): /],
    [['job.schedule.json', 'empty.schedule.json'], /^empty\.schedule\.json: It has no rows on the sheets that are taken/],
    [['job.schedule.json', 'formula.csv', '--how', 'append'], /^formula\.csv: types, row 4, Draw \(mA\): .*“D7”/],
  ])('refuses %j', async (words, reason) => {
    const { code, out, warnings } = await run(...words);
    expect([code, out]).toEqual([2, '']);
    expect(warnings[0]).toMatch(reason);
  });

  it('explains itself', async () => {
    expect(await run('--help')).toMatchObject({ code: 0, out: expect.stringContaining('elv-update SCHEDULE LIST…') as string });
  });
});
