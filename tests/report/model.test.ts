import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport, CAUTIONS, scheduleDigest, type Report } from '../../src/report/index.ts';
import { STANDARDS } from '../../src/report/model/standards.ts';
import { namesStandard, sourcesOf } from '../../src/report/model/standards-table.ts';
import { SCHEMA, SHEET_NAMES, type Content } from '../../src/schedule/index.ts';
import { closeTo } from '../support/close-to.ts';
import { scheduleOf } from '../support/schedules.ts';
import { demoContent } from './demo.ts';

const OPTIONS = { generated: '2026-11-25' };
const demo = new LoadSchedule(demoContent());
const report = buildReport(demo, OPTIONS);

const sectionOf = ({ sections }: Report, name: string) => sections.find((each) => each.name === name)!;
const texts = (of: Report, name: string, table = 0) =>
  sectionOf(of, name).tables[table]!.rows.map(({ cells }) => cells.map(({ text }) => text));

test('the list of protections has each cell that inspectors ask for', () => {
  const of = buildReport(scheduleOf({
    feeds: [{ feed: 'F1', rated: 10, curve: 'C' }, { feed: 'F2' }],
    supplies: [
      { rail: 'L1', rated: 20, fuse: 16, fuseKind: 'gG', feed: 'F1' }, { rail: 'L2', rated: 5 }, { rail: 'L3', rated: 5, fuse: 6 },
    ],
    outputs: [{ output: 'K1', feed: 'F1' }],
    ways: [
      { way: 'A', rail: 'L1', kind: 'gG', rated: 10 }, { way: 'B', rail: 'L1', kind: 'B', rated: 6 },
      { way: 'C', rail: 'L1', kind: 'gG', rated: 12.5, trip: 6 }, { way: 'D', rail: 'L2', kind: 'electronic', rated: 2 },
      { way: 'E', rail: 'L3' },
    ],
    runs: [{ run: 'W1', way: 'A' }, { run: 'W2', way: 'A' }, { run: 'W3', way: 'B', secondWay: 'C' }],
  }), OPTIONS);
  // A mains breaker C trips at 10 × its rating on alternating current; behind supplies gG at 7 ×, B at 1.5 × 5 ×, an
  // electronic channel at 1.8 ×. gG stays whole before gG of a rating that is two steps lower: 10 of 16, not 12.5.
  expect(sectionOf(of, 'protections').tables[0]!.columns.map(({ title }) => title)).toEqual(
    ['Protection', 'Rail', 'Kind of protection', 'Rated (A)', 'Trip (A)', 'Protects', 'Discrimination']);
  expect(texts(of, 'protections')).toEqual([
    ['F1', '', 'C', '10', '100', 'L1, K1', 'not judged here'],
    ['F2', '', 'not known', '', '', '', 'not judged here'],
    ['Fuse of L1', 'L1', 'gG', '16', '112', 'all of L1', 'no fuse before it'],
    ['Fuse of L3', 'L3', 'not known', '6', '', 'all of L3', 'no fuse before it'],
    ['A', 'L1', 'gG', '10', '70', 'W1, W2', 'discriminates against the fuse of its supply'],
    ['B', 'L1', 'B', '6', '45', 'W3 (fed from two ways)', 'not shown'],
    ['C', 'L1', 'gG', '12.5', '75', 'W3 (fed from two ways)', 'does not discriminate'],
    ['D', 'L2', 'electronic', '2', '3.6', '', 'no fuse before it'],
    ['E', 'L3', 'not known', '', '', '', 'not shown'],
  ]);
});

describe('the load table of the demo', () => {
  test('has every part, in the order in which it is used', () => {
    expect(report.sections.map(({ name }) => name)).toEqual([
      'revisions', 'summary', 'panels', 'findings', 'accepted', 'one-line', 'supplies', 'ways',
      'protections', 'branches', 'branches-as-cabled', 'runs', 'run-pictures', 'modules', 'outputs', 'feeds',
      'enclosures', 'rails', 'cases', 'wiring', 'inside', 'cables', 'spare', 'devices-per-rail',
      'devices-per-branch', 'types', 'conductors', 'contacts', 'notes', 'assumptions', 'explanations',
      'not-judged', 'checklist', 'measuring',
      'commissioning',
    ]);
    expect(report.cautions).toEqual(CAUTIONS);
    expect(report.issue).toEqual(
      {
        generated: 'Nov 25, 2026', software: expect.stringMatching(/^\S+ \d/) as string,
        digest: scheduleDigest(demo.content()),
      }
    );
  });

  test('every row has a cell for each column', () => {
    for (const { name, tables } of report.sections) {
      for (const { columns, rows } of tables) {
        for (const { cells } of rows) expect([name, cells.length]).toEqual([name, columns.length]);
      }
    }
  });

  test('every device stands once under its rail, and once under its branch if it has one', () => {
    const refs = (name: string) => sectionOf(report, name).tables
      .flatMap(({ rows }) => rows.filter(({ isTotal }) => !isTotal).map(({ cells }) => cells[1]!.text));
    const rows = demo.rows('devices').map(({ cells }) => cells);
    expect(refs('devices-per-rail').sort()).toEqual(rows.map(({ ref }) => ref).sort());
    expect(refs('devices-per-branch').sort())
      .toEqual(rows.filter(({ branch }) => branch !== undefined).map(({ ref }) => ref).sort());
  });

  test('subtotals of rails are the totals of the supplies, with what their runs and outputs add', () => {
    const { tables } = sectionOf(report, 'devices-per-rail');
    const supplies = sectionOf(report, 'supplies').tables.at(-1)!;
    const shown = (of: typeof supplies, row: (typeof supplies)['rows'][number], title: string) =>
      Number(row.cells[of.columns.findIndex((column) => column.title.startsWith(title))]!.text.replace('≥', ''));
    let inWorst = 0;
    for (const [index, table] of tables.entries()) {
      // Below the sum of the lines stands what is asked in the worst case, where that is a named one.
      const isWorst = (row: (typeof table)['rows'][number]) => row.cells.some(({ text }) => text.startsWith('Worst case: '));
      const rows = table.rows.filter((row) => !isWorst(row));
      const [total, worst] = [rows.at(-1)!, table.rows.find(isWorst)];
      expect([total.isTotal, table.rows.at(-1)]).toEqual([true, worst ?? total]);
      if (worst !== undefined) inWorst += 1;
      for (const title of ['Connected', 'Demand']) {
        const lines = rows.filter((row) => row !== total).reduce((sum, row) => sum + shown(table, row, title), 0);
        // Each line is written to a hundredth.
        expect(shown(table, total, title)).toEqual(closeTo(lines, { absolute: 0.005 * rows.length, relative: 0 }));
        const whole = title === 'Demand' ? worst ?? total : total;
        expect(shown(table, whole, title))
          .toEqual(closeTo(shown(supplies, supplies.rows[index]!, title), { absolute: 0.01, relative: 0 }));
      }
    }
    expect(inWorst).toBe(demo.rows('supplies').filter(({ id }) => demo.value('supplies', id, 'worstCase') !== null).length);
    expect(tables.length).toBe(demo.rows('supplies').length);
  });

  test('conductors that do not say what they carry are a line each, with the runs that wait, and not one for each run', () => {
    const content = demoContent();
    const conductors = content.sheets.conductors!.map(({ maxCurrent: _maxCurrent, ...cells }) => cells);
    const unsure = buildReport(new LoadSchedule({ ...content, sheets: { ...content.sheets, conductors } }), OPTIONS);
    const told = (name: string) => texts(unsure, name).map((cells) => cells.join(' ')).filter((text) => /what it(s conductor)? carries/.test(text));
    const waiting = told('findings').map((text) => Number(/(\d+) runs? waits? for it/.exec(text)![1]));
    // Every run of the demo is on one of its eight conductors.
    expect([waiting.length, waiting.reduce((sum, each) => sum + each, 0)]).toEqual([8, content.sheets.runs!.length]);
    expect(told('notes')).toEqual([]);
  });

  test('the summary counts every row that has a status', () => {
    expect(texts(report, 'summary').map((cells) => cells.at(-1))).toEqual(
      [
        'supplies', 'ways', 'branches', 'runs', 'modules', 'outputs', 'feeds', 'enclosures', 'terminals',
      ].map((sheet) => String(demo.rows(sheet as 'runs').length)));
  });
});

test('findings are open, accepted with reason, name and date, or open again', () => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 1 }],
    devices: [{ ref: 'D1', rail: 'L1', qty: 1, unitDraw: 12_000 }, { ref: 'D2', rail: 'L2', qty: 1, unitDraw: 2000 }],
  });
  const by = { reason: 'on order', name: 'N. N.', date: '2026-03-02' };
  for (const finding of schedule.findings.filter(({ rule }) => rule === 'supply-over-usable')) {
    schedule.accept(finding, by);
  }
  schedule.act('More', [{ op: 'set', sheet: 'devices', id: 1, key: 'unitDraw', value: 3000 }]);
  const built = buildReport(schedule, OPTIONS);
  expect(texts(built, 'accepted')[0]!.slice(-3)).toEqual(['on order', 'N. N.', 'Mar 2, 2026']);
  expect(texts(built, 'accepted')).toHaveLength(1);
  expect(texts(built, 'findings').find((cells) => cells[3] === 'L2')!.at(-1))
    .toContain('It was accepted by N. N. on Mar 2, 2026 and has grown worse since.');
});

test('assumptions name each default and factor, with how many rows use it and where it comes from', () => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 5, target: 0.7 }], types: [
      { type: 'T', draw: 100, diversity: 0.5 }, { type: 'W', power: 12 },
    ],
    devices: [
      { rail: 'L1', type: 'T', qty: 1 }, { rail: 'L1', type: 'T', qty: 1, diversity: 0.9 },
      { rail: 'L1', type: 'W', qty: 1 },
    ],
  });
  const lines = texts(buildReport(schedule, OPTIONS), 'assumptions').map((cells) => cells.slice(0, 5).join(' | '));
  for (const line of [
    'Supplies | Voltage | 24.00\u00a0V | 2 | default', 'Supplies | Target | 80\u202f% | 1 | default',
    'Supplies | Target | 70\u202f% | 1 | entered',
    'Devices | Diversity | 50\u202f% | 1 | diversity of the device type',
    'Devices | Diversity | 90\u202f% | 1 | entered',
    'Devices | Diversity | 100\u202f% | 1 | 1, as neither the row nor its type says otherwise',
    'Devices | Unit draw |  | 2 | draw of the device type',
    'Devices | Unit draw |  | 1 | power of the device type ÷ voltage of the supply × 1000',
  ]) expect(lines).toContain(line);
});

test('each standard that the schema names is in the list of standards', () => {
  const sources = SHEET_NAMES.flatMap((sheet) => SCHEMA[sheet].columns.flatMap(sourcesOf));
  const name = /\b(?:(?:ISO\/)?IEC(?: TR)?|ISO|EN|BS|NEC|UL|NFPA|CiA) \d[\d-]*|\bTIA-\d+(?:-[A-Z])?/g;
  const numbers = sources.flatMap((source) => source.match(name) ?? []);
  expect(numbers.length).toBeGreaterThan(10);
  for (const number of numbers) {
    expect([number, STANDARDS.some((each) => namesStandard(number, each.number))]).toEqual([number, true]);
  }
  for (const { number } of STANDARDS) {
    expect([number, sources.some((source) => namesStandard(source, number))]).toEqual([number, true]);
  }
  expect(namesStandard('category AC-3, IEC 60947-4-1', 'IEC 60947')).toBe(false);
});

test('what was measured stands beside what was worked out, with a verdict; what was not is left to be written', () => {
  const schedule = scheduleOf({
    supplies: [
      { rail: 'L1', rated: 10, measuredCurrent: 5.1 }, { rail: 'L2', rated: 10, measuredCurrent: 9 },
      { rail: 'L3', rated: 10 },
    ],
    devices: [{ rail: 'L1', qty: 1, unitDraw: 5000 }, { rail: 'L2', qty: 1, unitDraw: 5000 }],
  });
  const { rows } = sectionOf(buildReport(schedule, OPTIONS), 'commissioning').tables[0]!;
  expect(rows.map(({ cells }) => cells.at(-1)!))
    .toMatchObject(
      [
        { text: 'as calculated' }, { text: expect.stringContaining('9.00 A measured, 5.00 A calculated') as string },
        { toFill: true },
      ]
    );
  expect(rows[2]!.cells.filter(({ toFill }) => toFill)).toHaveLength(3);
});

test('what was measured has a table of its own on a wide sheet, with the rows that were measured', () => {
  const { tables } = sectionOf(report, 'runs');
  // How cables are laid has one too, or the entries would not fit a page.
  expect(tables.map(({ title }) => title)).toEqual(['Entries', 'Cable schedule', 'As measured', 'Calculated']);
  expect(texts(report, 'runs', 1)[0]).toEqual(['1', 'L1-W1', 'Foyer', '2', 'M20']);
  // The runs of the demo that were measured, with their row numbers, in the order of the file.
  expect(texts(report, 'runs', 2)).toEqual([
    ['1', 'L1-W1', '3.50', '23.40'], ['9', 'L2-W2', '1.79', '23.50'], ['18', 'P1-W2', '0.00', '0.20'],
  ]);
});

test('number and client of the document stand in its title block where they are entered', () => {
  const titles = (details: Content['details']) =>
    buildReport(new LoadSchedule({ details, sheets: {} }), OPTIONS).details.map(({ title, text }) => [title, text]);
  const without = titles({ project: 'P' });
  expect(without.map(([title]) => title)).not.toContain('Client');
  expect(titles({ project: 'P', client: 'C', documentNumber: 'E-17' }))
    .toEqual([...without, ['Document no.', 'E-17'], ['Client', 'C']]);
});

test('revisions come from the history, and the present one from the details where it is not there yet', () => {
  const content = {
    details: { revision: 'B', date: '2026-02-01', preparedBy: 'N. N.' }, sheets: {},
    revisions: [{ revision: 'A', date: '2026-01-01', name: 'M. M.', text: 'First issue' }],
  };
  const of = (revision: string) => texts(
    buildReport(new LoadSchedule({ ...content, details: { ...content.details, revision } }), OPTIONS), 'revisions'
  );
  expect(of('B')).toEqual([['A', 'Jan 1, 2026', 'M. M.', 'First issue'], ['B', 'Feb 1, 2026', 'N. N.', 'This issue']]);
  expect(of('A')).toHaveLength(1);
});

test('an empty schedule has a load table without sheets', () => {
  expect(buildReport(new LoadSchedule(), OPTIONS).sections.map(({ name }) => name))
    .toEqual(['summary', 'findings', 'not-judged', 'checklist']);
});

test('one sheet alone is printed with the findings on it', () => {
  const { sections } = buildReport(demo, { ...OPTIONS, sheet: 'branches' });
  expect(sections.map(({ name }) => name)).toEqual(['findings', 'notes', 'branches', 'explanations']);
  expect(new Set(sections[0]!.tables[0]!.rows.map(({ cells }) => cells[1]!.text))).toEqual(new Set(['Branches']));
});
