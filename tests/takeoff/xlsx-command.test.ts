import { access, mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, it } from 'vitest';
import { makeWorkbook, type MadeSheet } from '../support/make-workbook.ts';
import { runCommand } from './run-command.ts';

const folder = await mkdtemp(path.join(tmpdir(), 'takeoff-xlsx-'));
const ground: MadeSheet = { rows: [['Device', 'Room', 'Qty'], ['Router', 'Hall', 2]] };
const upper: MadeSheet = {
  rows: [['Count of the upper floor'], ['Device', 'Room', 'Qty'], ['Router', 'Attic', 5]], merged: ['A1:C1'],
};

async function file(name: string, bytes: Uint8Array): Promise<string> {
  const full = path.join(folder, name);
  await writeFile(full, bytes);
  return full;
}

it('reads the only sheet of a workbook', async () => {
  const { code, out, warnings } = await runCommand(await file('one.xlsx', makeWorkbook({ Ground: ground })));
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject(
    { read: 2, taken: 2, lines: [{}, { line: 2, type: 'Router', area: 'Ground, Hall', qty: 2 }] }
  );
  expect(warnings).toEqual([expect.stringMatching(/one\.xlsx: Read 2 = taken 2 \+ left out 0 \+ undecided 0\.$/)]);
});

it('reads all of several that are shown, names those that are hidden, and reads the one that is named', async () => {
  const hidden: MadeSheet = { rows: [['Device', 'Qty'], ['Router', 9]], state: 'hidden' };
  const several = await file('several.xlsx', makeWorkbook({ Ground: ground, Upper: upper, Old: hidden }));
  const all = await runCommand(several);
  expect(JSON.parse(all.out)).toMatchObject({ taken: 7, lines: expect.arrayContaining([
    expect.objectContaining({ source: { file: 'several.xlsx', sheet: 'Upper', line: 3 }, qty: 5 }),
  ]) as unknown });
  expect(all.warnings[0]).toBe(`${several}: Hidden sheets are not read: Old. Show them if they count.`);
  const named = await runCommand(several, '--sheet-name', 'Upper');
  expect(JSON.parse(named.out)).toMatchObject(
    { taken: 5, lines: [{ line: 1, outcome: 'left-out' }, {}, { line: 3, area: 'Attic' }] }
  );
  expect(named.warnings).toHaveLength(2);
});

it.each<[why: string, name: string, bytes: Uint8Array, words: string[], message: RegExp]>([
  [
    'a sheet that is not there', 'two.xlsx', makeWorkbook({ Ground: ground, Upper: upper }), ['--sheet-name', 'Roof'],
    /two\.xlsx: There is no sheet “Roof”; the sheets are Ground, Upper\./,
  ],
  [
    'a damaged workbook', 'cut.xlsx', makeWorkbook({ Ground: ground }).subarray(0, 400), [],
    /cut\.xlsx: The workbook is damaged/,
  ],
  [
    'the older format', 'old.xls', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]), [],
    /old\.xls: The workbook is in the older format/,
  ],
  ['a sheet without cells', 'empty.xlsx', makeWorkbook({ Ground: {} }), [], /empty\.xlsx: The takeoff is empty/],
  [
    'the sheet of a text', 'count.csv', new TextEncoder().encode('Device,Qty\nRouter,2\n'), ['--sheet-name', 'Ground'],
    /--sheet-name Ground: .*count\.csv is text and has no sheets\. Leave it out/,
  ],
])('refuses %s with 2 and writes nothing', async (_, name, bytes, words, message) => {
  const output = path.join(folder, `${name}.schedule.json`);
  const { code, out, warnings } = await runCommand(await file(name, bytes), '--output', output, ...words);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(warnings.join('\n')).toMatch(message);
  await expect(access(output)).rejects.toThrow();
});
