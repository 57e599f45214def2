import { expect, test } from 'vitest';
import { checklistSection } from '../../src/report/model/checklist-section.ts';
import { wiringSection } from '../../src/report/model/wiring-sections.ts';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { scheduleOf } from '../support/schedules.ts';

const at = (number: number, cells: Cells): Cells =>
  ({ terminal: `+KP-1-X1:${number}`, strip: '+KP-1-X1', enclosure: 'KP-1', ...cells });
const plus = (cells: Cells = {}): Cells => ({ potential: 'F1 L+', outside: 'R1', bridge: 'F1 L+', ...cells });
const panel = (terminals: readonly Cells[], more: Content['sheets'] = {}) => scheduleOf({
  enclosures: [{ enclosure: 'KP-1' }], supplies: [{ rail: 'L1', rated: 10, enclosure: 'KP-1', units: 2 }, { rail: 'L2', rated: 5, enclosure: 'KP-1' }],
  ways: [{ way: 'F1', rail: 'L1', kind: 'gG', rated: 4 }, { way: 'F2', rail: 'L1', kind: 'B', rated: 4 }], runs: [{ run: 'R1', way: 'F1' }],
  branches: [{ branch: 'B1', limit: 10, terminated: true, enclosure: 'KP-1' }, { branch: 'B2', limit: 10 }], ...more, terminals,
});
const checks = (schedule: ReturnType<typeof panel>) =>
  checklistSection(schedule).tables[0]!.rows.map(({ cells }) => cells[1]!.text);

test('the wiring list says how far it is; what is not ticked yet is a box to be ticked by hand', () => {
  const as = (core: string) => `– · F1 L+ · R1 · ${core} · F1 L+`;
  const { sentences, tables } = wiringSection(panel([
    at(1, plus({ core: '1', wired: true, wiredAs: as('1'), checked: true, checkedAs: as('1') })),
    at(2, plus({ core: '3', wired: true, wiredAs: as('4') })), at(3, plus({ core: '5' })), at(4, {}),
  ]))!;
  const progress = '1 of 3 wired, 1 checked; 1 changed since it was ticked';
  expect(sentences.slice(1)).toEqual([
    `KP-1: ${progress}.`,
    // The second core of R1, and the bus, are on none of these.
    '2 cables are not, or not wholly, on terminals and missing here: B1, R1. Lay the terminals out before wiring.',
  ]);
  expect(tables.map(({ title, sentence }) => [title, sentence])).toEqual([['Strip +KP-1-X1', progress]]);
  expect(tables[0]!.columns.slice(-2).map(({ title }) => title)).toEqual(['Wired', 'Checked']);
  const boxes = tables[0]!.rows.map(({ cells }) => cells.slice(-2).map(({ text }) => text));
  expect(boxes).toEqual([
    ['☑', '☑'], ['changed', '☐'], ['☐', '☐'], ['', ''],
  ]);
});

test('the checklist names what the schedule knows of terminals, supplies and terminators', () => {
  const schedule = panel([
    at(1, plus({ core: '1', inside: 'F1:2' })), at(2, plus({ core: '3' })), at(3, plus({ core: '5', partition: true })),
    at(4, { potential: 'L1 L-', inside: 'L1:-', bridge: 'alone' }),
    { terminal: '+KP-1-X4:1', strip: '+KP-1-X4', enclosure: 'KP-1', potential: 'B1 +', inside: 'B1:R1' },
    { terminal: '+KP-1-X4:2', strip: '+KP-1-X4', enclosure: 'KP-1', potential: 'B1 -', inside: 'B1:R2' },
  ]);
  const said = checks(schedule);
  for (const check of [
    'On +KP-1-X1 1 bridge is fitted as listed, and no others: F1 L+ (1–3).', 'No bridge is fitted on +KP-1-X4.',
    'Partition plates are fitted: +KP-1-X1: 1, behind 3.',
    'End plates are fitted at the open side of every row of terminals: +KP-1-X1, +KP-1-X4.',
    'End plates are fitted at the open side of the fuse holders: F1.',
    'Plus and minus are right way round at the supplies and behind every way: L1, L2.',
    'No supply is in parallel with another, but units of one supply: L1 with 2 units.',
    'Both ends of every bus branch are terminated: B1 (marked as terminated), one of them on +KP-1-X4:1, +KP-1-X4:2, B2 (not marked as terminated).',
  ]) expect(said).toContain(check);
});

test('where there are no terminals, or no partitions, it says what to look for; two supplies of one rail are named', () => {
  const bare = checks(panel([]));
  expect(bare).toContain('Bridges are fitted only where terminals are meant to be commoned.');
  expect(bare.some((check) => check.includes('On +KP'))).toBe(false);
  const twice = checks(panel([at(1, plus({ core: '1' }))], { supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L1', rated: 5 }] }));
  expect(twice).toContain('No supply is in parallel with another: each feeds its rail alone.');
  expect(twice).toContain('Two supplies that are not units of one are entered for L1: they are not in parallel, or are entered as units.');
  expect(twice).toContain('No partition plate is entered; strips with mains and with extra-low voltage stand apart from each other.');
});
