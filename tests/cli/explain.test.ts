import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { runTable } from '../../src/cli/run-table.ts';
import type { ExplainedFigure } from '../../src/report/index.ts';
import { explainCell } from '../../src/explanations.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { readSchedule } from '../../src/exchange/index.ts';
import { computedColumns, SHEET_NAMES, tagOf } from '../../src/schedule/index.ts';

const DEMO = fileURLToPath(new URL('../../data/demo.schedule.json', import.meta.url));

async function run(...words: string[]) {
  let out = '';
  const warnings: string[] = [];
  const code = await runTable(
    [DEMO, ...words], { out: (text) => { out += text; }, warn: (line) => { warnings.push(line); } },
  );
  return { code, out, warnings };
}

async function explained(...places: string[]): Promise<ExplainedFigure[]> {
  const { code, out, warnings } = await run('--sheet', 'feeds', ...places.flatMap((place) => ['--explain', place]));
  expect({ code, warnings }).toEqual({ code: 0, warnings: [] });
  return (JSON.parse(out) as { explain: ExplainedFigure[] }).explain;
}

/** Spaces of every width as plain ones. */
const plain = (text: string | null) => text?.replaceAll(/[\u00a0\u2009\u202f]/g, ' ');

describe('--explain', () => {
  test('gives rule, numbers, result and source of a figure, by the tag or the number of its row', async () => {
    const [byTag, byNumber] = await explained('supplies:C2:loading', 'supplies:6:loading');
    expect(byNumber).toEqual(byTag);
    // 2.093 A by hand in the test of the demo. Room controllers and a switch draw constant power, which is more where
    // the cable drops their voltage: 1.036 A for 8 × 3 W ÷ 24 V = 1 A, 0.257 A for 2 × 3 W ÷ 24 V = 0.25 A. In all
    // 2.136 A.
    expect(byTag).toMatchObject(
      { sheet: 'supplies', row: 6, key: 'loading', title: 'Loading', words: 'demand ÷ usable' }
    );
    expect(plain(byTag!.numbers)).toBe('2.14 A ÷ 5.00 A');
    expect(plain(byTag!.text)).toBe('Loading = demand ÷ usable = 2.14 A ÷ 5.00 A = 43 %');
  });

  test('several places in the order in which they are given; absent without the option', async () => {
    const figures = await explained('runs:L2-W4:drop', 'devices:1:unitDraw', 'branches:B1:status');
    expect(figures.map(({ sheet, key }) => [sheet, key]))
      .toEqual([['runs', 'drop'], ['devices', 'unitDraw'], ['branches', 'status']]);
    expect(JSON.parse((await run('--sheet', 'feeds')).out)).not.toHaveProperty('explain');
  });

  test('a status is explained by the findings that make it', async () => {
    const [over] = await explained('supplies:P1:status');
    expect(over).toMatchObject({ title: 'Status', result: 'over limit' });
    // 21.17 A of devices, by hand in the test of the demo, and 0.03 A that the cables of P1-W1, 2, 5 and 6 cost.
    expect(plain(over!.numbers)).toContain('Rail P1: demand 21.20 A exceeds the lower of the usable 20.00 A and its fuse of 20.00 A');
    const [within] = await explained('supplies:C2:status');
    expect(within).toMatchObject({ result: 'within limits', numbers: expect.stringContaining('no limit is passed and no entry is missing; ') as string });
  });

  test.each([
    ['supplies', 'is not a place. Give SHEET:ROW:KEY'],
    ['rails:1:demand', 'there is no sheet rails. Give one of devices, types,'],
    ['supplies:1:watts', 'the sheet supplies has no key watts. Give one of rail, purpose,'],
    [
      'supplies:7:demand',
      'the sheet supplies has no row 7. Give a number from 1 to 6, or a tag: L1, L2, P1, P2, C1, C2.',
    ],
    ['supplies:0:demand', 'has no row 0.'],
    ['supplies:L9:demand', 'has no row L9.'],
    ['supplies:L1:note', 'there is no figure to explain. Figures of the sheet supplies stand in usable, connected, demand, worstCase, loading,'],
  ])('%s is refused, and says what is allowed', async (place, problem) => {
    const { code, out, warnings } = await run('--explain', place, '--explain', 'supplies:L1:demand');
    expect({ code, out, count: warnings.length }).toEqual({ code: 2, out: '', count: 1 });
    expect(warnings[0]).toContain(`--explain ${place}: `);
    expect(warnings[0]).toContain(problem);
  });

  test('goes with JSON alone', async () => {
    const { code, warnings } = await run('--format', 'csv', '--sheet', 'supplies', '--explain', 'supplies:L1:demand');
    expect([code, warnings[0]]).toEqual(
      [2, expect.stringContaining('--explain goes with --format json, not with csv')]
    );
  });
});

describe('every figure of the demo', () => {
  const read = readSchedule(readFileSync(DEMO, 'utf8'));
  const schedule = new LoadSchedule(read.ok ? read.content : undefined);
  const isLacking = (text: string | undefined) => text === undefined || /\{|\}|undefined|NaN|null/.test(text);

  test.each(SHEET_NAMES.filter((sheet) => computedColumns(sheet).length > 0))('%s: has rule, result and source',
    (sheet) => {
    const lacking = schedule.rows(sheet).flatMap((row) => computedColumns(sheet).flatMap(({ key }) => {
      const explanation = explainCell(schedule, sheet, row.id, key);
      const { words, result, source, numbers = '' } = explanation ?? {};
      return [words, result, source, numbers].some(isLacking) || source === '' ? [`${tagOf(sheet, row)}.${key}`] : [];
    }));
    expect(lacking).toEqual([]);
  });

  test('the load table has an example of each, with its source', async () => {
    const { out } = await run('--format', 'html');
    const section = /<section id="explanations"[^>]*>(.*?)<\/section>/s.exec(out)![1]!;
    for (const sheet of SHEET_NAMES) {
      for (const { title, key } of computedColumns(sheet)) {
        const known = schedule.rows(sheet).some(({ id }) => schedule.value(sheet, id, key) !== null);
        if (known) expect(section).toContain(`>${title}</td>`);
      }
    }
    expect(plain(section)).toContain('IEC 60364-4-43, 433.1');
  });
});
