import { describe, expect, test } from 'vitest';
import { explainCell } from '../../src/explanations.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, removeRows, findColumn, SHEET_NAMES, type Content } from '../../src/schedule/index.ts';
import { loadWords, type Words } from '../../src/words/index.ts';
import { BRANCH_AND_FEED_CASES } from '../findings/branch-feed-cases.ts';
import { CASE_CASES, LATER_CASES } from '../findings/case-cases.ts';
import { TERMINAL_CASES } from '../findings/terminal-cases.ts';
import { CAUSE_CASES } from '../findings/cause-cases.ts';
import { DEVICE_AND_CELL_CASES } from '../findings/device-and-cell-cases.ts';
import { MEASURED_CASES } from '../findings/measured-cases.ts';
import { OUTPUT_CASES } from '../findings/output-cases.ts';
import { PANEL_CASES } from '../findings/panel-cases.ts';
import { RAIL_CASES } from '../findings/rail-cases.ts';
import { RUN_AND_ENCLOSURE_CASES } from '../findings/run-and-enclosure-cases.ts';
import { SECOND_WAY_CASES } from '../findings/second-way-cases.ts';
import { SUPPLY_CASES } from '../findings/supply-cases.ts';
import { VOLTAGE_CASES } from '../findings/voltage-cases.ts';
import { WAY_CASES } from '../findings/way-cases.ts';
import { demoContent } from '../report/demo.ts';
import { ENGLISH_LEFT } from '../support/english-left.ts';
import { messagesSaidIn } from '../support/messages.ts';
import { outside, recordedWords } from '../support/pseudo-words.ts';
import { withoutEngine } from '../support/without-engine.ts';

const CASES = [
  ...SUPPLY_CASES, ...BRANCH_AND_FEED_CASES, ...OUTPUT_CASES, ...DEVICE_AND_CELL_CASES, ...RUN_AND_ENCLOSURE_CASES,
  ...MEASURED_CASES, ...PANEL_CASES, ...WAY_CASES, ...CAUSE_CASES, ...VOLTAGE_CASES,
  ...SECOND_WAY_CASES, ...CASE_CASES, ...TERMINAL_CASES, ...RAIL_CASES,
];

/** A rail with each of these formulas as its rating. */
const rated = (...formulas: string[]) => formulas.map((formula, row) => ({ rail: `L${row}`, rated: formula }));

/** What the cases of the rules leave unsaid: cases, other faults of formulas, other remedies, rows without a tag. */
const MORE: readonly Content['sheets'][] = [
  { terminals: [{ outside: 'R9' }] },
  { enclosures: [{ enclosure: 'E1', rails: 2, railLength: 400 }], modules: [{ enclosure: 'E1', width: 450 }] },
  { terminals: [{ terminal: 'X1:1', strip: 'X1', wired: true, wiredAs: 'F1:2', checked: true, checkedAs: 'F1:2' }] },
  {
    feeds: [{ feed: 'M1', rated: 16 }], outputs: [{ output: 'Q1', feed: 'M1' }, { output: 'Q2', feed: 'M1' }],
    terminals: ['M1', 'Q1', 'Q2'].map((outside, at) => (
      { terminal: `X1:${at}`, strip: 'X1', potential: 'M1 N', outside, core: 'N', bridge: 'n', maxSize: 2.5 })),
  },
  ...LATER_CASES.map(({ sheets }) => sheets),
  {
    supplies: [{ rail: 'P1', rated: 1 }], devices: [{ ref: 'D1', qty: 1, unitDraw: 2000, rail: 'P1', group: 'g', diversity: 0 }],
    cases: [{ case: 'A' }, { hours: 1 }], factors: [{ case: 'A', group: 'g', factor: 1 }, { factor: 1 }],
  },
  {
    supplies: rated('=0-1', '=SQRT(0-1)', '="x"', '=[supplies.voltage#6]', '=[supplies.rated#5]',
      '=MATCH(9;[supplies.rated#1:#2];0)', '=10/4', '=ROUND(1;2;3)', '=LX*2',
      '=[supplies.rated#2]'),
    devices: [{ ref: 'D1', rail: 'L9', qty: 1, unitDraw: 10 }],
  },
  {
    devices: [{ qty: '=[unitDraw]' }, { ref: 'D2', qty: 1 }, { ref: 'D3', qty: 1, rail: 'L1', type: 'T' }],
    types: [{ type: 'T', power: 5 }],
  },
  {
    devices: [{}, { ref: 'D1', note: 'spare' }, { note: 'spare' }], types: [{ draw: 1 }], supplies: [{ rated: 1 }],
    branches: [{ limit: 1 }], runs: [{ length: 1 }], ways: [{ rated: 1 }],
  },
  {
    conductors: [{ resistance: 1 }], outputs: [{ power: 1 }], contacts: [{ lamp: 1 }], feeds: [{ rated: 1 }],
    enclosures: [{ height: 1 }],
  },
  {
    types: [{ type: 'T', draw: 1 }, { type: 'T', draw: 2 }],
    devices: [{ ref: 'D1', qty: 1, type: 'T', diversity: 2, run: 'W1' }, { ref: 'D1', qty: 2 }],
    supplies: [{ rail: 'L1', rated: 1 }], runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 5 }],
    conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 16 }],
  },
  { supplies: [{ rail: 'L1', rated: 10, fullUpTo: 40, lessPerKelvin: 0.02 }] },
  // Nothing of a run is over, and what decouples its supply is not known; and a row without a tag that lacks voltage.
  {
    supplies: [{ rail: 'L1', rated: 5, units: 2, redundant: true }, { rail: 'L2', rated: 5 }],
    types: [{ type: 'T', minVoltage: 23.9 }], conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 16 }],
    runs: ['L1', 'L2'].map((rail) => ({ run: `W-${rail}`, rail, conductor: 'C', length: 50, maxDrop: 0.5 })),
    devices: ['L1', 'L2'].map((rail) => ({ type: 'T', qty: 1, unitDraw: 2000, rail, run: `W-${rail}` })),
  },
  // Rows without a ref, of four types, that are not made for their rail; units that nobody knows how they are
  // decoupled.
  {
    supplies: [{ rail: 'L1', rated: 10, voltage: 12, tolerance: 0.1, units: 2, redundant: true }],
    types: [1, 2, 3, 4].map((at) => ({ type: `T${at}`, draw: 1 })), devices: [1, 2, 3, 4].map((at) => ({ type: `T${at}`, qty: 1, rail: 'L1' })),
  },
  // What else is in the way of another cable, and of another fuse.
  {
    supplies: [{ rail: 'L1', rated: 5, fuse: 63, enclosure: 'E' }], enclosures: [{ enclosure: 'E' }],
    types: [{ type: 'T', minVoltage: 10 }], conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 16 }],
    ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 6 }],
    runs: [{ run: 'W1', way: 'F1', conductor: 'C', length: 90, measuredCurrent: 9 }],
    devices: [{ ref: 'D1', type: 'T', qty: 1, unitDraw: 5500, run: 'W1' }],
  },
  // What another row holds tells nothing: a fuse, a voltage of a type.
  {
    supplies: [{ rail: 'L1', rated: 10, fuse: '=1/0' }, { rail: 'L2', rated: 10 }],
    ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 2 }],
    types: [{ type: 'T', draw: 1, maxVoltage: '=1/0' }], devices: [{ ref: 'D1', type: 'T', qty: 1, rail: 'L2' }],
  },
  // Statuses that follow from what another row lacks, or from a tag that stands twice.
  {
    enclosures: [{ enclosure: 'E', height: 2000, width: 2000, depth: 1000, mounting: 'free', ambient: 20, otherLoss: 0 }],
    supplies: [
      { rail: 'L1', rated: '=2*[supplies.demand@L2]' }, { rail: 'L2', rated: 10, enclosure: 'E', offAt: 60 },
    ],
    contacts: [{ contact: 'K', resistive: 10 }, { contact: 'K', resistive: 10 }],
    outputs: [{ output: 'Q1', contact: 'K', kind: 'resistive', power: 100 }],
    devices: [{ ref: 'D1', qty: 2, unitDraw: 1000, rail: 'L2' }, { ref: 'D2', unitDraw: 1000, rail: 'L2' }],
  },
  // A way for which the other loads of its supply leave nothing.
  {
    supplies: [{ rail: 'L1', rated: 5 }], ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 1 }],
    devices: [{ ref: 'D1', qty: 1, unitDraw: 5000, rail: 'L1' }],
  },
  // A run without a way, on a conductor that the supply would overload at any length.
  {
    supplies: [{ rail: 'L1', rated: 10 }], devices: [{ ref: 'D1', qty: 1, unitDraw: 1000, run: 'W1' }],
    conductors: [{ conductor: 'C', resistance: 25, maxCurrent: 6 }, { conductor: 'D', resistance: 5, maxCurrent: 20 }],
    runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 30 }],
  },
  // Supplies that live on diversity, redundant units, devices of another voltage, runs that only a fuse protects.
  {
    supplies: [
      { rail: 'L1', rated: 10, fuse: 8 }, { rail: 'L2', rated: 10, units: 2, redundant: true },
      { rail: 'L3', rated: 10, fuse: 10, fuseKind: 'gG' },
    ],
    types: [{ type: 'low', voltage: 12, draw: 1 }, { type: 'weak', draw: 1, maxVoltage: 20 }],
    conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 9 }],
    runs: ['L1', 'L2', 'L3'].map((rail) => ({ run: `W-${rail}`, rail, conductor: 'C', length: 5 })),
    devices: [
      { ref: 'D1', rail: 'L1', qty: 40, unitDraw: 1000, diversity: 0.1 }, { ref: 'D2', rail: 'L1', qty: 1, type: 'low' },
      { ref: 'D3', rail: 'L1', qty: 1, type: 'weak' }, { ref: 'D4', qty: 1, unitDraw: 10, run: 'W-L2' },
    ],
  },
  {
    types: [{ type: 'T', minVoltage: 23.9 }], supplies: [{ rail: 'L1', rated: 10 }], conductors: [
      { conductor: 'C', resistance: 10 }, { conductor: 'X', resistance: 0.1, maxCurrent: 20 },
    ],
    runs: [
      { run: 'W1', rail: 'L1', conductor: 'C', length: 50 },
      { run: 'W2', rail: 'L1', conductor: 'C', length: 50, way: 'F1' },
    ],
    ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: 20 }],
    devices: [
      { ref: 'D1', type: 'T', qty: 1, unitDraw: 2000, rail: 'L1', run: 'W1' },
      { ref: 'D2', type: 'T', qty: 1, unitDraw: 2000, rail: 'L1', run: 'W2' },
    ],
  },
  {
    types: [{ type: 'T', minVoltage: 20 }], supplies: [{ rail: 'L1', rated: 10 }],
    conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 1 }, { conductor: 'X', resistance: 1, maxCurrent: 10 }],
    runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 50 }], devices: [
      { ref: 'D1', type: 'T', qty: 1, unitDraw: 2000, rail: 'L1', run: 'W1' },
    ],
  },
  // A way whose supply has no rating, and one that acts on no short circuit, with its run.
  {
    supplies: [{ rail: 'L1' }], ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: 2 }],
    conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 9 }],
    runs: [{ run: 'W1', way: 'F1', conductor: 'C', length: 5 }],
    devices: [{ ref: 'D1', qty: 1, unitDraw: 10, run: 'W1' }],
  },
  {
    supplies: [{ rail: 'L1', rated: 5 }], ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: 2 }],
    conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 9 }],
    runs: [{ run: 'W1', way: 'F1', conductor: 'C', length: 5 }],
    devices: [{ ref: 'D1', qty: 1, unitDraw: 10, run: 'W1' }],
  },
  {
    modules: [{ common: 1 }, { module: 'M', common: 5 }], contacts: [{ contact: 'K', resistive: 5 }],
    outputs: [{ output: 'Q1', module: 'M', contact: 'K', kind: 'resistive', power: 1, ratedCurrent: '=1/0' }],
  },
  { conductors: [{ conductor: 'C', resistance: -1 }], contacts: [{ contact: 'K', lamp: -1 }] },
  // Rows that wait for what others tell, and starts of devices without tags.
  {
    types: [{ type: 'T', draw: 1000, inrush: 9 }], supplies: [
      { rail: 'L1', rated: 5, overload: 'retries', enclosure: 'E1', offAt: 60 }, { rail: 'L2', rated: 5, battery: 100, standbyHours: 1 },
    ],
    enclosures: [{ enclosure: 'E1', rails: 1, railLength: 400 }], branches: [{ branch: 'B1', limit: 9, maxCable: 40 }],
    runs: [{ run: 'W1', branch: 'B1' }],
    devices: [{ qty: 1, type: 'T', rail: 'L1' }, { qty: 1, unitDraw: 10, rail: 'L1' }, { qty: 1, unitDraw: 10, rail: 'L2' }],
  },
  // A way and units that a larger rating would put right; what a fuse does at a run not wholly known; a warm run.
  {
    supplies: [{ rail: 'L1', rated: 10, peak: 5, units: 2 }, { rail: 'L2', rated: 10, peak: 5, fuse: 2, fuseKind: 'B' }],
    ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 2 }, { way: 'F2', rail: 'L1', kind: 'B', rated: 2 }],
    types: [{ type: 'T', minVoltage: 23.9 }], conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 9 }],
    runs: [
      { run: 'W1', way: 'F1', conductor: 'C', length: 5 }, { run: 'W2', rail: 'L2', conductor: 'C', length: 5 },
      { run: 'W3', way: 'F2', conductor: 'C', length: 90, ambient: 70 },
    ],
    devices: [
      { ref: 'D1', qty: 3, unitDraw: 1000, run: 'W1' }, { ref: 'D2', qty: 1, run: 'W2' },
      { ref: 'D3', qty: 1, unitDraw: 1000, type: 'T', run: 'W3' }, { ref: 'D4', qty: 20, unitDraw: 1000, rail: 'L1' },
    ],
  },
  // A total that a row feeds and reads, and a formula that reads that row.
  {
    supplies: [{ rail: 'L1', rated: 10 }],
    devices: [
      { ref: 'D1', rail: 'L1', unitDraw: 10, qty: '=[supplies.connected#1]' }, { ref: 'D2', qty: '=[devices.qty@D1]' },
    ],
  },
  ...[0.5, 2].map((factor) => ({
    supplies: [
      { rail: 'L1', rated: 10, measuredCurrent: factor, measuredVoltage: 24 * factor },
    ], conductors: [{ conductor: 'C', resistance: 10 }],
    types: [{ type: 'T', draw: 1000 }],
    runs: [
      { run: 'W1', rail: 'L1', conductor: 'C', length: 50, measuredCurrent: factor, measuredVoltage: 23 * factor },
    ],
    devices: [{ ref: 'D1', qty: 1, rail: 'L1', run: 'W1', type: 'T' }],
  })),
  {
    types: [{ type: 'T', minVoltage: 25 }], supplies: [{ rail: 'L1', rated: 10 }], conductors: [{
      conductor: 'C', resistance: 10,
    }],
    runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 50 }], devices: [
      { ref: 'D1', type: 'T', qty: 1, unitDraw: 2000, rail: 'L1', run: 'W1' },
    ],
  },
];

/** Everything that is found in these schedules, and why each status is what it is. */
function saidOf(schedules: readonly Content[], words: Words): string[] {
  return schedules.flatMap((content) => {
    const schedule = new LoadSchedule(content, { words });
    const explained = SHEET_NAMES.filter((sheet) => findColumn(sheet, 'status') !== undefined)
      .flatMap((sheet) => schedule.rows(sheet).flatMap(({ id }) => explainCell(schedule, sheet, id, 'status') ?? []))
      .flatMap(({ title, words: rule, numbers, result, source, parts }) =>
        [title, rule, numbers ?? '', result, source, ...parts.flatMap(({ label, text }) => [label, text])]);
    for (const finding of schedule.findings) schedule.accept(finding, { reason: '1', name: '1', date: '2026-01-02' });
    const accepted = schedule.rows('supplies').flatMap(({ id }) => explainCell(schedule, 'supplies', id, 'status')?.result ?? []);
    while (schedule.undo() !== undefined) { /* nothing is accepted any more */ }
    const remedies = schedule.findings.flatMap((finding) => schedule.remedy(finding)?.label ?? []);
    const said = [...schedule.findings.map(({ message }) => message), ...remedies, ...explained, ...accepted];
    if (schedule.rows('supplies').length > 2) {
      // A formula loses the row that it refers to.
      schedule.act('Deletion', removeRows(schedule.document, 'supplies', [schedule.rows('supplies')[1]!.id]));
      said.push(...schedule.findings.map(({ message }) => message));
    }
    schedule.dispose();
    return said;
  });
}

const ofCases = (): Content[] =>
  [...CASES.map(({ sheets }) => sheets), ...MORE].map((sheets) => ({ details: {}, sheets }));

/** Tags and texts that a person put in, which no language translates; not the values of a list. */
const DATA = new Set([...ofCases(), demoContent()].flatMap(({ sheets }) => SHEET_NAMES.flatMap((sheet) =>
  (sheets[sheet] ?? []).flatMap((row) => Object.entries(row).flatMap(([key, value]) =>
    typeof value === 'string' && findColumn(sheet, key) !== undefined
      && columnOf(sheet, key).kind !== 'choice' ? [value] : [])))));
const ANY_DATA = new RegExp(String.raw`(?<![\p{L}\d])(?:${[...DATA].sort((one, other) => other.length - one.length)
  .map((each) => each.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)).join('|')})(?![\p{L}\d])`, 'gu');
const withoutData = (text: string): string => text.replaceAll(ANY_DATA, ' ');

/**
 * What no schedule brings about: a state that is said elsewhere, and faults that only a new formula engine could have.
 */
const UNREACHED = new Set([
  'note', '{name}: the formula in {column} cannot be read. Arguments are separated by ; and decimals by a point: correct it.',
  '{name}: the formula in {column} cannot be calculated. Simplify it.',
]);

describe('in a language that nobody speaks', () => {
  const { words, messages } = recordedWords();

  test('everything is said through the words, and every message of the findings is among it', async () => {
    const page = await withoutEngine();
    const waiting = new page.LoadSchedule({ details: {}, sheets: { supplies: rated('=2*3') } }, { words });
    const said = [
      ...saidOf([...ofCases(), demoContent()], words), ...waiting.findings.map(({ message }) => message),
    ];
    waiting.dispose();
    expect(said.length).toBeGreaterThan(400);
    expect(said.filter((text) => /\p{L}/u.test(withoutData(outside(text).left)))).toEqual([]);
    expect(messagesSaidIn('src/findings/').filter((message) => !messages.has(message) && !UNREACHED.has(message)))
      .toEqual([]);
  });
});

/** The figures of a text, with the point that English has. */
const figuresOf = (text: string): string[] => (text.replaceAll(',', '.').match(/\d+(?:\.\d+)?/g) ?? []).sort();

describe.each(['de', 'fr'])('in %s', (language) => {
  test('nothing is left in English, and nothing has a hole or a decimal point', async () => {
    const said = saidOf([...ofCases(), demoContent()], await loadWords(language));
    expect(said.filter((text) => ENGLISH_LEFT.test(withoutData(text)))).toEqual([]);
    expect(said.filter((text) => /undefined|NaN|\[object|\{|\}|⟦/.test(text))).toEqual([]);
    expect(said.filter((text) => /\d\.\d/.test(withoutData(text)))).toEqual([]);
  });

  test('every finding has the figures that it has in English', async () => {
    const words = await loadWords(language);
    for (const { rule, sheets, message } of CASES) {
      const found = new LoadSchedule(
        { details: {}, sheets }, { words }
      ).findings.filter((finding) => finding.rule === rule);
      expect(found.map((finding) => figuresOf(finding.message)), rule).toContainEqual(figuresOf(message));
    }
  });
});
