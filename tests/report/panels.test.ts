import { read as readFile } from '@e965/xlsx';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { isInSight } from '../../src/engine/index.ts';
import { readCsv, writeCsv, writeSchedule } from '../../src/exchange/index.ts';
import { buildReport, loadTableHtml, loadTableXlsx, panelView, tableJson } from '../../src/report/index.ts';
import { readLoadTable } from '../../src/report/xlsx/index.ts';
import { scheduleOf } from '../support/schedules.ts';

const schedule = scheduleOf({
  enclosures: [{ enclosure: 'P1' }, { enclosure: 'P2' }], types: [{ type: 'Lamp', draw: 500, nodes: 2 }],
  supplies: [{ rail: 'L1', rated: 10, units: 2, enclosure: 'P1' }, { rail: 'L2', rated: 5, enclosure: 'P2', voltage: 12 }],
  ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: 4 }], branches: [{ branch: 'B1', limit: 5, enclosure: 'P1' }],
  devices: [
    { ref: 'D1', type: 'Lamp', qty: 4, rail: 'L1', branch: 'B1', diversity: 0.5 }, { ref: 'D2', type: 'Lamp', qty: 1, rail: 'L2' },
    { ref: 'D3', type: 'Lamp', rail: 'L2' }, { ref: 'D4', type: 'Lamp', qty: 9 },
  ],
});

test('panels stand side by side, with what each has and asks for', () => {
  const { sections } = buildReport(schedule, { generated: '2026-11-30' });
  const { tables: [table] } = sections.find(({ name }) => name === 'panels')!;
  // P1: 4 × 0.5 A × 24 V, half of it expected; 8 nodes. P2: 0.5 A × 12 V, and a row of unknown quantity.
  expect(table!.rows.map(({ cells }) => cells.map(({ text }) => text))).toEqual([
    ['P1', '4', '2', '48', '24', '1', '1', '8', '0', '0'],
    ['P2', '≥\u00a01', '1', '≥\u00a06', '≥\u00a06', '0', '0', '≥\u00a02', '0', '0'],
    ['In no panel', '9', '0', '0', '0', '0', '0', '18', '0', '0'],
  ]);
});

test('one panel has its rows and findings, the lists, and figures as they are', () => {
  const json = tableJson(panelView(schedule, 'P1'));
  const counts = Object.entries(json.sheets).map(([sheet, rows]) => [sheet, rows.length]);
  expect(counts.filter(([, count]) => count !== 0)).toEqual([
    ['devices', 1], ['types', 1], ['supplies', 1], ['ways', 1], ['branches', 1], ['enclosures', 1],
  ]);
  expect(json.findings.some(({ sheet }) => sheet === 'branches')).toBe(true);
  expect(json.findings.some(({ sheet, tag }) => sheet === 'devices' && tag === 'D3')).toBe(false);
  const report = buildReport(schedule, { generated: '2026-11-30', panel: 'P2' });
  expect(report.subject).toBe('P2');
  const html = loadTableHtml(report, {});
  expect(html).toContain('D3');
  expect(html).not.toContain('D1');
  expect(schedule.rows('devices')).toHaveLength(4);
});

test.each([[12, 'devices', 1], [12, 'supplies', 2], [24, undefined, 2]])(
  'a run fed from another panel is not over for nothing: devices of %d V on 24 V are told in both, at the %s', (
    voltage, told, rows,
  ) => {
    const fed = scheduleOf({
      enclosures: [{ enclosure: 'P1' }, { enclosure: 'P2' }], types: [{ type: 'T', draw: 100, voltage }],
      supplies: [{ rail: 'L1', rated: 10, enclosure: 'P1' }],
      ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 2, enclosure: 'P2' }], runs: [{ run: 'W1', way: 'F1' }],
      devices: ['D1', 'D2'].slice(0, rows).map((ref) => ({ ref, type: 'T', qty: 1, run: 'W1' })),
    });
    for (const panel of ['P1', 'P2']) {
      const over = panelView(fed, panel).findings.filter(({ severity }) => severity === 'over').map(({ sheet }) => sheet);
      expect(over).toEqual(told === undefined ? [] : [told]);
      expect(() => loadTableHtml(buildReport(fed, { generated: '2026-11-30', panel }), {})).not.toThrow();
    }
  });

test('a workbook of one panel hides what belongs to others, keeps every figure, and is read back whole', async () => {
  const bytes = await loadTableXlsx(schedule, buildReport(schedule, { generated: '2026-11-30', panel: 'P2' }));
  const book = readFile(bytes, { type: 'array', cellStyles: true });
  // Line 1 has the headings; the devices of P2 are D2 and D3 on lines 3 and 4.
  const hidden = (sheet: string) => (book.Sheets[sheet]!['!rows'] as ({ hidden?: boolean } | undefined)[] | undefined ?? [])
    .flatMap((row, at) => row?.hidden === true ? [at + 1] : []);
  expect(['Devices', 'Supplies', 'Enclosures', 'Types'].map(hidden)).toEqual([[2, 5], [2], [2], []]);
  const shownSheets = book.Workbook!.Sheets!.filter(({ Hidden }) => Hidden === 0).map(({ name }) => name);
  expect(shownSheets).toContain('Supplies');
  expect(shownSheets).not.toContain('Ways');
  // Of D1, in another panel, 4 × 0.5 A; its total stays a formula over all rows.
  const cells = Object.values(book.Sheets.Supplies!) as { f?: string; v?: unknown }[];
  const cell = cells.find(({ f }) => f?.includes('SUMIF(Devices!') ?? false);
  expect(cell).toMatchObject({ v: 2 });
  const verification = { differs: [], unverified: [] };
  expect(await readLoadTable(bytes)).toMatchObject({ ok: true, verification, text: writeSchedule(schedule.content()) });
});

test('panels stand side by side in the workbook too', async () => {
  const book = readFile(await loadTableXlsx(schedule, buildReport(schedule, { generated: '2026-11-30' })), { type: 'array' });
  expect(book.SheetNames).toContain('Panels');
  expect(book.Sheets.Panels!.A6).toMatchObject({ v: 'P1' });
  expect((book.Sheets.Devices!['!rows'] ?? []).filter(Boolean)).toEqual([]);
});

test('what is in no panel is a choice of its own', () => {
  expect(tableJson(panelView(schedule, null)).sheets.devices).toMatchObject([{ ref: 'D4' }]);
  expect(buildReport(schedule, { generated: '2026-11-30', panel: null }).subject).toBe('In no panel');
});

test('a sheet of one panel as CSV stands on its own, its formulas too', () => {
  const whole = scheduleOf({
    enclosures: [{ enclosure: 'P1' }, { enclosure: 'P2' }], types: [{ type: 'Lamp', draw: 500, nodes: 2 }],
    supplies: [{ rail: 'L1', rated: 10, enclosure: 'P1' }, { rail: 'L2', rated: 5, enclosure: 'P2' }],
    devices: [
      { ref: 'D1', type: 'Lamp', qty: 4, rail: 'L1' }, { type: 'Lamp', qty: 5, rail: 'L2' },
      { ref: 'D3', type: 'Lamp', qty: '=[devices.qty#2]+1', rail: 'L2' }, { ref: 'D4', type: 'Lamp', qty: '=SUM([devices.qty#2:#3])', rail: 'L2' },
      { ref: 'D5', type: 'Lamp', qty: '=[devices.qty#2]*2', rail: 'L1' }, { ref: 'D6', type: 'Lamp', qty: '=SUM([devices.qty#1:#2])', rail: 'L2' },
      { ref: 'D7', type: 'Lamp', qty: '=[devices.qty@D3]+[distance]', distance: 1, rail: 'L2' },
      { ref: 'D8', type: 'Lamp', qty: '=[devices.qty@D1]', rail: 'L2' },
    ],
  });
  const csv = (panel: string) => writeCsv(whole, 'devices', (id) => isInSight(whole, 'devices', id, panel));
  const qty = (text: string) => Papa.parse<Record<string, string>>(text, { header: true }).data
    .flatMap((row) => row.Qty === undefined ? [] : [[row.Ref, row.Qty]]);
  expect(qty(csv('P2'))).toEqual([
    // The second row is the first of the file; D1 is not in it, so that the sum that takes it in is its figure, 4 + 5.
    ['', '5'], ['D3', "'=[devices.qty#1]+1"], ['D4', "'=SUM([devices.qty#1:#2])"], ['D6', '9'],
    ['D7', "'=[devices.qty@D3]+[distance]"], ['D8', '4'],
  ]);
  expect(qty(csv('P1'))).toEqual([['D1', '4'], ['D5', '10']]);
  const read = readCsv(csv('P2'), 'devices');
  if (!read.ok) throw new Error('The CSV cannot be read back.');
  const alone = scheduleOf({ types: [{ type: 'Lamp' }], supplies: [{ rail: 'L2' }], devices: read.rows });
  // 5; 5 + 1; 5 + 6; 4 + 5; 6 + 1; 4
  expect(alone.rows('devices').map(({ id }) => alone.value('devices', id, 'qty'))).toEqual([5, 6, 11, 9, 7, 4]);
});

test('feeds, modules and their outputs belong to the panel that they are mounted in, in filter and load table', () => {
  const mains = scheduleOf({
    enclosures: [{ enclosure: 'P1' }, { enclosure: 'P2' }],
    feeds: [{ feed: 'F1', rated: 10, enclosure: 'P1' }, { feed: 'F2', rated: 16, enclosure: 'P2' }, { feed: 'F3', rated: 6 }],
    modules: [{ module: 'K1', outputs: 4, enclosure: 'P1' }, { module: 'K2', outputs: 8, enclosure: 'P2' }],
    outputs: [
      { output: 'O1', module: 'K1', kind: 'resistive', power: 230, feed: 'F1' }, { output: 'O2', module: 'K2', kind: 'resistive', power: 460, feed: 'F1' },
      { output: 'O3', kind: 'resistive', power: 690, feed: 'F2' },
    ],
  });
  const tags = (panel: string | null) => (['feeds', 'modules', 'outputs'] as const).map((sheet) =>
    panelView(mains, panel).rows(sheet).map(({ cells }) => cells.feed ?? cells.module ?? cells.output).join());
  const outputs = (panel: string | null) => panelView(mains, panel).rows('outputs').map(({ cells }) => cells.output).join();
  expect([tags('P1').slice(0, 2), outputs('P1')]).toEqual([['F1', 'K1'], 'O1']);
  expect([tags('P2').slice(0, 2), outputs('P2')]).toEqual([['F2', 'K2'], 'O2']);
  expect([tags(null).slice(0, 2), outputs(null)]).toEqual([['F3', ''], 'O3']);
  // F1 carries what is switched in both panels: 230 + 460 W at 230 V; its figure is that of the whole.
  const [feed] = tableJson(panelView(mains, 'P1')).sheets.feeds!;
  expect(feed).toMatchObject({ feed: 'F1', connected: 3 });
  const html = loadTableHtml(buildReport(mains, { generated: '2026-11-30', panel: 'P1' }), {});
  expect(['F1', 'K1', 'O1'].every((tag) => html.includes(`>${tag}<`))).toBe(true);
  expect(['F2', 'K2', 'O2', 'F3', 'O3'].some((tag) => html.includes(`>${tag}<`))).toBe(false);
  const { tables: [table] } = buildReport(mains, { generated: '2026-11-30' }).sections.find(({ name }) => name === 'panels')!;
  expect(table!.rows.map(({ cells }) => [cells[0]!.text, cells[8]!.text])).toEqual([['P1', '1'], ['P2', '1'], ['In no panel', '1']]);
  mains.dispose();
});
