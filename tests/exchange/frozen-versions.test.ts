import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { CellValue, InputColumn, Sheet } from '../../src/schedule/index.ts';
import { SHEET_NAMES, type SheetName } from '../../src/schedule/schema/column.ts';
import type { Figures } from '../support/figures.ts';

const folder = new URL('../data/versions/', import.meta.url);
const fileOf = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
const frozenFigures = (version: number) => JSON.parse(fileOf(`${version}.figures.json`)) as Figures;

/** Opens the frozen file of a version, by whatever code there is at the time. */
async function open(version: number) {
  // Modules are loaded anew in between, and the engine is given to those that are there.
  await import('../../src/engine/engine-at-once.define.ts');
  const { LoadSchedule } = await import('../../src/load-schedule.ts');
  const { readSchedule, writeSchedule } = await import('../../src/exchange/index.ts');
  const { figuresOf } = await import('../support/figures.ts');
  const read = readSchedule(fileOf(`${version}.schedule.json`));
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  const schedule = new LoadSchedule(read.content);
  return { schedule, notes: read.notes, figuresOf, written: writeSchedule(schedule.content(), { pretty: true }) };
}

/** Holds what a file comes to against its frozen figures; columns that are newer than these do not count. */
async function expectFigures(version: number): Promise<void> {
  const [frozen, { schedule, figuresOf }] = [frozenFigures(version), await open(version)];
  const close = (value: CellValue): unknown => (typeof value === 'number' ? expect.closeTo(value, 9) : value);
  const found = figuresOf(schedule, (sheet, { key }) => key in ((frozen.sheets as Partial<Figures['sheets']>)[sheet]?.[0] ?? {}));
  // Sheets that are newer than the figures do not count either.
  const sheets = Object.fromEntries(Object.entries(found.sheets).filter(([sheet]) => sheet in frozen.sheets));
  expect({ ...found, sheets }).toEqual({
    accepted: frozen.accepted,
    sheets: Object.fromEntries(Object.entries(frozen.sheets).map(([sheet, rows]) =>
      [sheet, rows.map((row) => Object.fromEntries(Object.entries(row).map(([key, value]) => [key, close(value)])))])),
  });
}

const VERSIONS = [1, 2];

describe.each(VERSIONS)('the frozen file of version %i', (version) => {
  test('opens with its figures', () => expectFigures(version));

  test('keeps what is not known, acceptances and revisions', async () => {
    const { written, notes } = await open(version);
    const [before, after] = [fileOf(`${version}.schedule.json`), written]
      .map((text) => JSON.parse(text) as Record<string, unknown>);
    const { details, accepted, revisions, office, sheets } = after!;
    expect([details, revisions, office]).toEqual([before!.details, before!.revisions, { id: 7 }]);
    expect(sheets).toMatchObject({ lists: [{ key: 'x' }] });
    expect((sheets as Record<SheetName, object[]>).devices[7]).toMatchObject({ maker: 'someone' });
    expect(accepted).toContainEqual(expect.objectContaining({ tag: 'L1', ticket: 'T-7' }));
    // The client is a detail that is known by now.
    expect(notes.filter((note) => note.includes('unknown key'))).toHaveLength(2);
  });
});

test('a file of version 1 is written as the frozen one of version 2, which comes to the same', async () => {
  const { written, schedule, figuresOf } = await open(1);
  await expect(written).toMatchFileSnapshot('../data/versions/2.schedule.json');
  const { sheets, accepted } = figuresOf(schedule);
  const lines = (rows: readonly object[]) =>
    `[\n${rows.map((row) => `      ${JSON.stringify(row)}`).join(',\n')}\n    ]`;
  const text = Object.entries(sheets).map(([sheet, rows]) => `    "${sheet}": ${lines(rows)}`).join(',\n');
  await expect(`{\n  "sheets": {\n${text}\n  },\n  "accepted": ${JSON.stringify(accepted, null, 4)}\n}\n`)
    .toMatchFileSnapshot('../data/versions/2.figures.json');
});

const INSERTED: InputColumn = {
  role: 'input', key: 'inserted', title: 'Inserted', kind: 'number', help: 'A column of a later version.',
};

/** Has the schema from now on a column more on every sheet. @param at its place among the other columns. */
function insertColumns(at: (columns: number) => number): void {
  for (const sheet of SHEET_NAMES) {
    vi.doMock(`../../src/schedule/schema/${sheet}.ts`, async (original) => {
      const module = await original<Record<string, unknown>>();
      const made = module[sheet] as Sheet;
      return { ...module, [sheet]: { ...made, columns: made.columns.toSpliced(at(made.columns.length), 0, INSERTED) } };
    });
  }
  vi.resetModules();
}

afterEach(() => {
  for (const sheet of SHEET_NAMES) vi.doUnmock(`../../src/schedule/schema/${sheet}.ts`);
  vi.resetModules();
});

describe.each(VERSIONS)('version %i keeps its figures with a column more on every sheet', (version) => {
  test.each<[string, (columns: number) => number]>([
    ['at the front', () => 0], ['behind the tag', () => 1], [
      'in the middle', (columns) => Math.floor(columns / 2),
    ], ['at the end', (columns) => columns],
  ])('%s', async (_where, at) => {
    insertColumns(at);
    const { SCHEMA } = await import('../../src/schedule/index.ts');
    for (const { columns } of Object.values(SCHEMA)) expect(columns.findIndex(({ key }) => key === 'inserted'))
      .toBe(at(columns.length - 1));
    await expectFigures(version);
  });
});
