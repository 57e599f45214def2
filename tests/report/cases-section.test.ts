import { describe, expect, test } from 'vitest';
import { buildReport, loadTableCsv, loadTableHtml } from '../../src/report/index.ts';
import type { ReportSection } from '../../src/report/model/index.ts';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { scheduleOf } from '../support/schedules.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';

const CASES: Cells[] = [
  { case: 'evening', hours: 6, note: 'owner' }, { case: 'day', hours: 18 }, { case: 'wind alarm', together: true },
];
/** Blinds of 6 A and lamps of 4 A on 10 A that may be used, and a sensor that belongs to no group on another supply. */
const sheets = (more: Content['sheets'] = {}): Content['sheets'] => ({
  supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }], feeds: [{ feed: 'F1', rated: 6 }],
  devices: [
    { ref: 'D1', qty: 6, unitDraw: 1000, rail: 'L1', group: 'blinds' }, { ref: 'D2', qty: 8, unitDraw: 500, rail: 'L1', group: 'lamps' },
    { ref: 'D3', qty: 1, unitDraw: 2000, diversity: 0.5, rail: 'L2' },
  ],
  cases: CASES,
  factors: [
    { case: 'evening', group: 'blinds', factor: 0.2, note: 'as measured' }, { case: 'evening', group: 'lamps', factor: 0.9 },
    { case: 'wind alarm', group: 'blinds', factor: 1, note: 'as measured' },
    { case: 'wind alarm', group: 'lamps', factor: 0.5, of: 'demand' }, { case: 'day', group: 'lamps', factor: 0.25 },
  ],
  ...more,
});
const sectionOf = (of: Content['sheets'], details: Content['details'] = {}): ReportSection | undefined =>
  buildReport(new LoadSchedule({ details, sheets: of }), { generated: '2026-11-30' }).sections.find(({ name }) => name === 'cases');
const table = (section: ReportSection, title: string) => {
  const found = section.tables.find((each) => each.title === title)!;
  return [found.columns.map((column) => column.title), ...found.rows.map(({ cells }) => cells.map(({ text }) => text))];
};
const titles = (section: ReportSection) => section.tables.map(({ title }) => title);

test('a schedule without cases has no such section', () => {
  expect(sectionOf(sheets({ cases: [], factors: [] }))).toBeUndefined();
});

describe('the section of cases', () => {
  const section = sectionOf(sheets(), { preparedBy: 'A. Person' })!;

  test('has what each case gives each group, and who decided it', () => {
    expect(table(section, 'What is on of each group')).toEqual([
      ['Load group', 'evening', 'day', 'wind alarm'],
      ['blinds', '20\u202f%', 'own diversity', '100\u202f%'], ['lamps', '90\u202f%', '25\u202f%', '50\u202f% of demand'],
    ]);
    expect(table(section, 'Notes on factors').slice(1)).toEqual([['evening: blinds; wind alarm: blinds', 'as measured']]);
    expect(section.sentences).toContain('Prepared by A. Person; who decided a factor stands in the notes.');
    expect(table(section, 'Power and energy')[1]).toContain('owner');
  });

  test('has the loading in each case, with the worst by its name and what is too much by its shape', () => {
    // L1 of 10 A: own 6 + 4; evening 1.2 + 3.6; day 6 + 1; wind alarm 6 + 2. L2 has no group: 1 A in all of them.
    expect(table(section, 'Loading in each case')).toEqual([
      ['Sheet', 'Tag', 'Worst case', 'own diversity', 'evening', 'day', 'wind alarm'],
      ['Supplies', 'L1', 'own diversity', '100\u202f%', '48\u202f%', '70\u202f%', '80\u202f%'],
      ['Supplies', 'L2', 'own diversity', '10\u202f%', '10\u202f%', '10\u202f%', '10\u202f%'],
      ['Feeds', 'F1', 'own diversity', '0\u202f%', '0\u202f%', '0\u202f%', '0\u202f%'],
    ]);
    expect(section.tables.find(({ title }) => title === 'Loading in each case')!.rows[0]!.cells.map(({ state }) => state))
      .toEqual([undefined, undefined, undefined, 'near', undefined, undefined, undefined]);
  });

  test('has energy, average, load factor, diversity and coincidence of a day', () => {
    // L1 gives 4.8 A in the evening and 7 A by day, L2 1 A: 139.2 W for 6 h, 192 W for 18 h, 4.2912 kWh in all, 178.8 W
    // in the mean, which is 93.1 % of 192 W.
    const [, l1, l2, all] = table(section, 'Supplies over a day');
    expect(l1).toEqual(['L1', '168', 'day', '155', '92.1\u202f%', '3.72', '1356.05']);
    expect(l2).toEqual(['L2', '24', 'evening', '24', '100.0\u202f%', '0.58', '210.24']);
    expect(all).toEqual(['All together', '192', 'day', '179', '93.1\u202f%', '4.29', '1566.29']);
    const groups = section.tables.find(({ title }) => title === 'Groups over a day')!;
    // 144 W of blinds by day, 86.4 W of lamps in the evening, 24 W of no group: 254.4 W on 192 W.
    expect(groups.rows.map(({ cells: [name, most, of] }) => [name!.text, most!.text, of!.text])).toEqual([
      ['blinds', '144', 'day'], ['lamps', '86', 'evening'], ['In no group', '24', 'evening'], ['All together', '192', 'day'],
    ]);
    expect(groups.sentence).toBe('diversity factor 1.325, coincidence factor 0.755');
    expect(section.sentences.at(-1)).toBe('The hours come to a day. A year has 365 days that are alike.');
  });

  test.each<[string, (number | null)[], string]>([
    ['too few', [6, 16, null], 'The hours of the cases come to 22 of 24: 2 h are in no case, so energy, average and load factor of a day are not known.'],
    ['too many', [6, 19.5, null], 'The hours of the cases come to 25.5, 1.5 h more than a day has, so energy, average and load factor of a day are not known.'],
    ['none', [null, null, null], 'No case has hours, so energy, average and load factor are not known.'],
  ])('says what is not known where there are %s hours', (_what, hours, sentence) => {
    const without = sectionOf(sheets({ cases: CASES.map((row, at) => ({ ...row, hours: hours[at]! })) }))!;
    expect(without.sentences.at(-1)).toBe(sentence);
    expect(titles(without)).toEqual(['What is on of each group', 'Notes on factors', 'Loading in each case', 'Power and energy']);
  });

  test('shows what is partial as at least that, and no ratio of it', () => {
    const [, l1] = table(sectionOf(sheets({
      devices: [...sheets().devices!, { ref: 'D4', unitDraw: 10, rail: 'L1', group: 'lamps' }],
    }))!, 'Supplies over a day');
    expect(l1).toEqual(['L1', '≥168', 'day', '≥155', 'not known', '≥3.72', '≥1356.05']);
  });

  test('turns round where there are more cases than groups, and is parted with the names of the rows', () => {
    const hourly = Array.from({ length: 24 }, (_hour, at): Cells => ({ case: `hour ${at}`, hours: 1 }));
    const schedule = scheduleOf(sheets({
      cases: hourly, factors: hourly.map(({ case: of }, at): Cells => ({ case: of!, group: 'lamps', factor: at / 23, note: 'all alike' })),
    }));
    const report = buildReport(schedule, { generated: '2026-11-30' });
    const many = report.sections.find(({ name }) => name === 'cases')!;
    expect(table(many, 'What is on of each group').slice(0, 2)).toEqual([['Case', 'blinds', 'lamps'], ['hour 0', 'own diversity', '0\u202f%']]);
    expect(table(many, 'Notes on factors')[1]).toEqual(['all factors', 'all alike']);
    // Sheet, tag and worst case stand before each part of the table; the print has them all, CSV one table.
    const html = loadTableHtml(report);
    const loadings = html.slice(html.indexOf('Loading in each case'), html.indexOf('Power and energy'));
    expect(loadings.match(/<th scope="col" class="text">Worst case<\/th>/g)!.length).toBeGreaterThan(1);
    expect(loadings.match(/<td class="tag">L1<\/td>/g)!.length).toBe(loadings.match(/Worst case<\/th>/g)!.length);
    expect(loadTableCsv(report)).toContain('Sheet,Tag,Worst case,own diversity,hour 0,hour 1');
  });
});
