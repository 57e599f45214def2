import { utils, write as save, type WorkBook } from '@e965/xlsx';
import fc from 'fast-check';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { readLoadTable } from '../../src/report/xlsx/read-load-table.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { scheduleDigest } from '../../src/report/index.ts';
import { SCHEMA, SHEET_NAMES, type Content, type SheetName } from '../../src/schedule/index.ts';
import { loadWords } from '../../src/words/index.ts';
import { someContent } from '../engine/random-actions.ts';
import { demoContent } from '../report/demo.ts';
import { differences, differencesAfterEdits, marksThatDiffer, openWorkbook, recalculate, writeWorkbook } from '../support/recalculate-workbook.ts';

/** The schedule that a workbook carries, read and written again. */
async function readBack(bytes: Uint8Array): Promise<string> {
  const text = await readLoadTable(bytes);
  const read = text.ok ? readSchedule(text.text) : text;
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return writeSchedule(read.content);
}

/**
 * A workbook as another program saves it. @param bookSST whether it shares texts; else they stand in their cells as
 * `t="str"`.
 */
const resaved = (workbook: WorkBook, bookSST = false) =>
  new Uint8Array(save(workbook, { type: 'array', bookType: 'xlsx', bookSST }) as ArrayBuffer);

describe('the load table as a workbook', () => {
  test('a spreadsheet engine comes to every figure of the demo', async () => {
    const schedule = new LoadSchedule(demoContent());
    const engine = recalculate(schedule, await writeWorkbook(schedule));
    expect(differences(schedule, engine)).toEqual([]);
    engine.destroy();
  });

  test.each(['de', 'fr'])('so it does in %s, where statuses and choices have other words', async (language) => {
    const schedule = new LoadSchedule(demoContent(), { words: await loadWords(language) });
    const bytes = await writeWorkbook(schedule);
    const engine = recalculate(schedule, bytes);
    expect(differences(schedule, engine)).toEqual([]);
    engine.destroy();
    expect(openWorkbook(bytes).SheetNames).not.toContain('Devices');
    expect(await readBack(bytes)).toBe(writeSchedule(schedule.content()));
  });

  test('figures that are changed in the workbook have their consequences, as they have in the schedule', async () => {
    const schedule = new LoadSchedule(demoContent());
    const engine = recalculate(schedule, await writeWorkbook(schedule));
    const formulaAt = (sheet: SheetName, place: number) => engine.getCellFormula({
      sheet: engine.getSheetId(SCHEMA[sheet].title)!, row: place,
      col: SCHEMA[sheet].columns.findIndex(({ key }) => key === 'status'),
    });
    const statusAt = (sheet: SheetName, place: number) => {
      expect(formulaAt(sheet, place)).toBeDefined();
      return schedule.value(sheet, schedule.rows(sheet)[place - 1]!.id, 'status');
    };
    const edited = () => [statusAt('branches', 1), statusAt('ways', 27), statusAt('outputs', 3), statusAt('feeds', 1)];
    const before = edited();
    const edit = (sheet: SheetName, place: number, key: string, value: number) => {
      const col = SCHEMA[sheet].columns.findIndex((column) => column.key === key);
      engine.setCellContents({ sheet: engine.getSheetId(SCHEMA[sheet].title)!, row: place + 1, col }, value);
      schedule.act('edit', [{ op: 'set', sheet, id: schedule.rows(sheet)[place]!.id, key, value }]);
    };
    edit('devices', 30, 'qty', 40);
    edit('devices', 62, 'diversity', 0.35);
    edit('supplies', 1, 'rated', 12);
    edit('types', 0, 'nodes', 3);
    edit('outputs', 2, 'power', 900);
    edit('feeds', 1, 'diversity', 0.5);
    edit('ways', 26, 'rated', 0.5);
    edit('branches', 0, 'reserve', 0.3);
    edit('enclosures', 0, 'height', 900);
    const follows = differencesAfterEdits(schedule, engine);
    expect(follows).toEqual([]);
    expect([before, edited()]).toEqual([['ok', 'ok', 'over', 'near'], ['near', 'over', 'over', 'over']]);
    engine.destroy();
  });

  test('on random schedules too, unknown figures, missing and shared tags included', async () => {
    await fc.assert(fc.asyncProperty(someContent, async (content) => {
      const schedule = new LoadSchedule(content);
      const engine = recalculate(schedule, await writeWorkbook(schedule));
      const found = [...differences(schedule, engine), ...marksThatDiffer(schedule, engine)];
      engine.destroy();
      schedule.dispose();
      expect(found).toEqual([]);
    }), { numRuns: 40 });
  });

  test('tags that a spreadsheet would not tell apart keep their figures, marked as fixed', async () => {
    const schedule = new LoadSchedule({
      details: {}, sheets: {
        supplies: [{ rail: 'l1', rated: 10 }, { rail: 'L1', rated: 10 }, { rail: 'L*', rated: 10 }],
        devices: [
          { rail: 'L1', qty: 1, unitDraw: 1000 }, { rail: 'l1', qty: 2, unitDraw: 1000 },
          { rail: 'L*', qty: 4, unitDraw: 1000 },
        ],
      },
    });
    const bytes = await writeWorkbook(schedule);
    expect(differences(schedule, recalculate(schedule, bytes))).toEqual([]);
    const place = SCHEMA.supplies.columns.findIndex(({ key }) => key === 'demand');
    expect((openWorkbook(bytes).Sheets.Supplies![utils.encode_cell({ r: 0, c: place })] as { v: string }).v)
      .toBe('Demand (A) *');
  });

  test('another reader finds the sheets, headings, number formats, widths and names', async () => {
    const schedule = new LoadSchedule(demoContent());
    const workbook = openWorkbook(await writeWorkbook(schedule));
    expect(workbook.SheetNames.slice(0, 1 + SHEET_NAMES.length)).toEqual(['Load table', ...SHEET_NAMES.map((name) => SCHEMA[name].title)]);
    expect(workbook.SheetNames).toEqual(
      expect.arrayContaining(['Findings', 'Assumptions', 'Before energising', 'Commissioning'])
    );
    expect(workbook.Workbook!.Sheets!.at(-1)).toMatchObject({ name: 'Schedule data', Hidden: 1 });
    const supplies = workbook.Sheets.Supplies!;
    const at = (key: string, row: number) => {
      const place = SCHEMA.supplies.columns.findIndex((column) => column.key === key);
      return supplies[utils.encode_cell({ r: row, c: place })] as { v: unknown; z: string; f?: string };
    };
    expect(at('demand', 0).v).toBe('Demand (A)');
    expect([at('demand', 1).z, at('loading', 1).z, at('units', 1).z]).toEqual(['0.00', '0%', '0']);
    expect(at('demand', 1).f).toMatch(/'Demand by case'/);
    const content = demoContent();
    const plain = openWorkbook(await writeWorkbook(
      new LoadSchedule({ ...content, sheets: { ...content.sheets, cases: [], factors: [] } })));
    const place = utils.encode_cell({ r: 1, c: SCHEMA.supplies.columns.findIndex(({ key }) => key === 'demand') });
    expect((plain.Sheets.Supplies![place] as { f: string }).f).toMatch(/^IF\(\$A2="",0,SUMIF\(Devices!/);
    expect(plain.SheetNames).not.toContain('Demand by case');
    // The others, hidden, tell what was changed since and what is less than the whole.
    const behind = supplies['!cols']!.slice(SCHEMA.supplies.columns.length);
    expect(behind.length).toBeGreaterThan(1);
    expect(behind.filter(({ hidden }) => hidden !== true)).toEqual([]);
    expect(workbook.Workbook!.Names)
      .toContainEqual(
        expect.objectContaining(
          { Name: 'supplies.demand', Ref: expect.stringMatching(/^Supplies!\$[A-Z]+\$2:\$[A-Z]+\$27$/) as string }
        )
      );
    const front = utils.sheet_to_json<string[]>(workbook.Sheets['Load table']!, { header: 1 });
    expect(front).toContainEqual(['SHA-256 of the schedule', scheduleDigest(schedule.content())]);
  });

  // The limits of the format, and what its tables ask for (ECMA-376, part 1, 18.5.1.3; the length of formulas is that
  // of its most common program, from memory).
  test.each(['en', 'de', 'fr'])('headings of a table are told apart, and no formula or list is too long, in %s', async (language) => {
    const parts = unzipSync(await writeWorkbook(new LoadSchedule(demoContent(), { words: await loadWords(language) })));
    const texts = Object.entries(parts).map(([path, bytes]) => [path, strFromU8(bytes)] as const);
    const tables = texts.filter(([path]) => path.startsWith('xl/tables/'));
    expect(tables).toHaveLength(SHEET_NAMES.length);
    for (const [path, text] of tables) {
      const names = [...text.matchAll(/<tableColumn id="\d+" name="([^"]*)"/g)].map(([, name]) => name!.toLowerCase());
      expect([path, names.filter((name, place) => names.indexOf(name) !== place)]).toEqual([path, []]);
    }
    const formulas = texts.flatMap(([, text]) => [...text.matchAll(/<f>([^<]*)<\/f>/g)].map(([, formula]) => formula!));
    expect(Math.max(...formulas.map(({ length }) => length))).toBeLessThan(8192);
    const lists = texts.flatMap(([, text]) => [...text.matchAll(/<formula1>([^<]*)<\/formula1>/g)].map(([, list]) => list!));
    expect(lists.length).toBeGreaterThan(20);
    expect(Math.max(...lists.map(({ length }) => length))).toBeLessThanOrEqual(255 + 10);
  });

  test.each<[string, Content]>([
    ['the demo', demoContent()], ['an empty schedule', { details: {}, sheets: {} }],
    ['texts that mark up, and keys of later versions', {
      details: { remarks: '<a>&amp; "\'\n\ttwo   spaces \u{1f600}' },
      sheets: {
        devices: [{ ref: ']]>', note: '_x000D_', later: 1 }, { note: '\u{1f600}'.repeat(40_000) }],
      }, unknown: { file: { later: [1] } },
    }],
  ])('%s is read back without loss', async (_name, content) => {
    const schedule = new LoadSchedule(content);
    expect(await readBack(await writeWorkbook(schedule))).toBe(writeSchedule(schedule.content()));
  });

  test.each([true, false])('it is read back after another program has saved it, texts shared: %s', async (bookSST) => {
    const schedule = new LoadSchedule(demoContent());
    const saved = resaved(openWorkbook(await writeWorkbook(schedule)), bookSST);
    expect(await readBack(saved)).toBe(writeSchedule(schedule.content()));
    // The other program wrote every cell anew, and changed none.
    expect(await readLoadTable(saved)).toMatchObject({ ok: true, verification: { differs: [], unverified: [] } });
  });

  test('the same schedule makes the same file', async () => {
    const written = () => writeWorkbook(new LoadSchedule(demoContent()));
    expect(await written()).toEqual(await written());
  });

  test('what is no load table is refused with what to do', async () => {
    const bytes = await writeWorkbook(new LoadSchedule());
    expect(await readLoadTable(bytes.slice(0, 400)))
      .toMatchObject({ ok: false, problems: [{ code: 'not-a-workbook' }] });
    const other = resaved({ SheetNames: ['A'], Sheets: { A: utils.aoa_to_sheet([['x']]) } });
    expect(await readLoadTable(other))
      .toMatchObject({ ok: false, problems: [{ message: expect.stringContaining('holds no schedule') as string }] });
  });
});
