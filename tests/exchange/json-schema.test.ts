import Ajv2020 from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { jsonSchema, writeSchedule } from '../../src/exchange/index.ts';
import { SHEET_NAMES, type Cells } from '../../src/schedule/index.ts';
import { sheetRows } from './support.ts';

const validate = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(jsonSchema());
const demo = () => JSON.parse(readFileSync(new URL('../../data/demo.schedule.json', import.meta.url), 'utf8')) as {
  version: number; sheets: Record<string, Cells[]>;
};

describe('the JSON Schema', () => {
  it('is published as it is made', async () => {
    await expect(`${JSON.stringify(jsonSchema(), null, 2)}\n`).toMatchFileSnapshot('../../data/schedule.schema.json');
  });

  it.each(
    [['demo', 'demo.schedule.json'], ['frozen file', '../tests/data/versions/2.schedule.json']]
  )('accepts the %s', (_what, name) => {
    validate(JSON.parse(readFileSync(new URL(`../../data/${name}`, import.meta.url), 'utf8')));
    expect(validate.errors).toBeNull();
  });

  it('accepts whatever is written', () => {
    const sheets = fc.record(Object.fromEntries(SHEET_NAMES.map((name) => [name, sheetRows(name)])));
    fc.assert(fc.property(sheets, (some) => {
      validate(JSON.parse(writeSchedule({ details: { project: 'Mill' }, sheets: some })));
      expect(validate.errors).toBeNull();
    }), { numRuns: 30 });
  });

  it.each<[name: string, path: string, damage: (file: ReturnType<typeof demo>) => unknown]>([
    ['another version', '/version', (file) => ({ ...file, version: 1 })],
    ['a diversity above 1', '/sheets/devices/0/diversity', (file) => { file.sheets.devices![0]!.diversity = 1.4; }],
    ['half a lamp', '/sheets/outputs/0/qty', (file) => { file.sheets.outputs![0]!.qty = 1.5; }],
    ['words for a number', '/sheets/devices/0/qty', (file) => { file.sheets.devices![0]!.qty = 'many'; }],
    ['a rating of nought', '/sheets/supplies/0/rated', (file) => { file.sheets.supplies![0]!.rated = 0; }],
    ['an unknown purpose', '/sheets/supplies/0/purpose', (file) => { file.sheets.supplies![0]!.purpose = 'heating'; }],
    [
      'a text for yes or no', '/sheets/branches/0/terminated',
      (file) => { file.sheets.branches![0]!.terminated = 'perhaps'; },
    ],
    ['a sheet that is no list', '/sheets/feeds', (file) => { (file.sheets as Record<string, unknown>).feeds = {}; }],
  ])('refuses %s', (_name, path, damage) => {
    const file = demo();
    expect(validate(damage(file) ?? file)).toBe(false);
    expect(validate.errors!.map(({ instancePath }) => instancePath)).toContain(path);
  });
});
