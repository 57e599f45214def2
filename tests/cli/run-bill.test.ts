import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runBill } from '../../src/cli/run-bill.ts';

let folder: string;
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'bill-')); });
afterAll(async () => { await rm(folder, { recursive: true }); });

async function run(files: Readonly<Record<string, string>>, ...words: string[]) {
  let out = '';
  const warnings: string[] = [];
  for (const [name, text] of Object.entries(files)) await writeFile(join(folder, name), text);
  const code = await runBill([...Object.keys(files).map((name) => join(folder, name)), ...words], {
    out: (text) => { out += text; },
    warn: (line) => { warnings.push(line.replaceAll(`${folder}/`, '')); },
  });
  return { code, out, warnings };
}

const FILES = {
  'types.csv': 'Type,Part number,Price\nSensor,0077,12.5\n',
  'supplies.csv': 'Rail,Rated (A),Enclosure\nC1,5,P1\n',
  'devices.csv': 'Ref,Type,Qty,Rail\nD1,Sensor,3,C1\nD2,Sensor,,C1\n',
};
const JSON_OLD = JSON.stringify({
  format: 'elv-load-schedule', version: 2, details: {},
  sheets: { devices: [{ type: 'Sensor', qty: 5, rail: 'C1' }], supplies: [{ rail: 'C1', rated: 5, enclosure: 'P1' }] },
});

describe('bill', () => {
  it('prints the items, and says what it could not count', async () => {
    const { code, out, warnings } = await run(FILES);
    expect(code).toBe(0);
    const { items, sums } = JSON.parse(out) as { items: Record<string, unknown>[]; sums: unknown[] };
    expect(items[0]).toMatchObject({
      panel: 'P1', kind: 'device', item: 'Sensor', quantity: 3, unit: 'pcs', partNumber: '0077', price: 12.5, amount: 37.5,
    });
    expect(items).toHaveLength(2);
    expect(sums).toHaveLength(2);
    expect(warnings).toEqual(['Sensor: 1 row is not counted, as the quantity is not known.']);
  });

  it('compares with an older schedule', async () => {
    await writeFile(join(folder, 'old.schedule.json'), JSON_OLD);
    const { out } = await run(FILES, '--since', join(folder, 'old.schedule.json'));
    expect((JSON.parse(out) as { changes: unknown }).changes)
      .toEqual([{ key: 'device/Sensor', panel: 'P1', kind: 'device', item: 'Sensor', unit: 'pcs', before: 5, after: 3, difference: -2, amount: null }]);
    expect(JSON.parse(out)).toMatchObject({ changesInAll: [{ panel: null, item: 'Sensor', difference: -2 }] });
  });

  it('writes CSV, and a workbook to a file', async () => {
    expect((await run(FILES, '--format', 'csv')).out.split('\r\n')[1]).toMatch(/^P1,device\/Sensor,Device,Sensor,3,pcs,0077,12\.5,37\.5,/);
    const output = join(folder, 'bill.xlsx');
    expect((await run(FILES, '--format', 'xlsx', '--output', output)).code).toBe(0);
    expect((await readFile(output)).subarray(0, 2).toString()).toBe('PK');
  });

  it.each<[string, string[], RegExp]>([
    ['an unknown format', ['--format', 'pdf'], /^--format pdf is not known/],
    ['a workbook for the terminal', ['--format', 'xlsx'], /^--format xlsx is no text/],
    ['an allowance that is none', ['--allowance', 'much'], /^--allowance much is no percentage/],
    ['an unknown panel', ['--panel', 'P9'], /^--panel P9 is not known. Give one of P1\./],
  ])('refuses %s', async (_case, words, says) => {
    const { code, out, warnings } = await run(FILES, ...words);
    expect([code, out]).toEqual([2, '']);
    expect(warnings.join('\n')).toMatch(says);
  });

  it('says what it does', async () => {
    expect((await run({}, '--help')).out).toContain('elv-bill INPUT');
    expect((await run({})).warnings.join()).toMatch(/^No input is named/);
  });
});
