import { read as readFile, utils } from '@e965/xlsx';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { explainCell } from '../../src/explanations.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport, loadTableCsv, loadTableHtml, loadTableXlsx } from '../../src/report/index.ts';
import { columnOf, formatCell, SCHEMA, SHEET_NAMES, type Column } from '../../src/schedule/index.ts';
import { amps, degrees, ENGLISH, kelvins, percent, roundedDown, roundedUp, volts } from '../../src/words/index.ts';
import { demoContent } from './demo.ts';

/** The number that a text of the screen shows; a share as it is stored. */
function shownNumber(text: string): number {
  const plain = Number(text.replace('−', '-').replace(/[\u2009\u202f\u00a0%]/g, ''));
  return text.endsWith('%') ? plain / 100 : plain;
}

const demo = new LoadSchedule(demoContent());
const RUN_LIMITS = ['run-under-voltage', 'run-over-drop', 'run-no-working-voltage', 'run-may-not-clear'];

describe('a run that is given the longest length that is shown for it', () => {
  const runs = demo.rows('runs').filter(({ id }) => Number(demo.value('runs', id, 'maxLength')) > 0);

  test('is tried for all of the demo but two, which fail at any length', () => {
    expect([demo.rows('runs').length, runs.length]).toEqual([28, 26]);
  });

  test.each(runs.map(({ id, cells }) => [String(cells.run), id] as const))('%s keeps to its limits', (tag, id) => {
    const schedule = new LoadSchedule(demoContent());
    const length =
      shownNumber(formatCell(columnOf('runs', 'maxLength'), schedule.value('runs', id, 'maxLength'), ENGLISH, 'show'));
    // The longest length is that with all distances scaled along.
    const factor = length / Number(schedule.value('runs', id, 'length'));
    const devices = schedule.members('devices', 'run', id).flatMap((device) => {
      const distance = schedule.value('devices', device, 'distance');
      return typeof distance === 'number'
        ? [{ op: 'set', sheet: 'devices', id: device, key: 'distance', value: distance * factor } as const]
        : [];
    });
    schedule.act('longest', [{ op: 'set', sheet: 'runs', id, key: 'length', value: length }, ...devices]);
    const found = schedule.findings.filter((finding) => finding.tag === tag && RUN_LIMITS.includes(finding.rule));
    expect(found.map(({ message }) => message)).toEqual([]);
  });
});

test('L2-W8 of the demo: 10.48 m is its longest, and 10.4 m is said everywhere', async () => {
  const { id } = demo.rows('runs').find(({ cells }) => cells.run === 'L2-W8')!;
  // 48 W at 95 % of 24 V are 2.1053 A, of which 1.2 V are 0.57 Ω. Rated 8.5 A in air of 40 °C, 2 A in air of 30 °C make
  // it 70 − (40 ÷ 30 − (2 ÷ 8.5)²) × 30 = 31.66 °C warm: 2 × 26 Ω/km × (1 + 0.00393 × 11.66) = 54.383 mΩ/m.
  expect(demo.value('runs', id, 'maxLength')).toBeCloseTo(10.481, 3);
  // At most, as it is not wholly known what its supply has for a short circuit.
  expect(explainCell(demo, 'runs', id, 'maxLength')!.result).toBe('≤ 10.4\u00a0m');
  const report = buildReport(demo, { generated: '2026-11-25', sheet: 'runs' });
  // 1.2 V ÷ 2.1053 A over 60 m are 9.5 mΩ/m: 4 mm², at 30.18 °C 2 × 4.61 × 1.040 = 9.59, is too thin by a little.
  // Behind its row number and its tag, the line of the worked-out columns has longest and conductor, and last
  // the status.
  expect(loadTableCsv(report)).toMatch(/^\d+,L2-W8,.*,≤10\.4,6 mm² solid,.*,over limit\r$/m);
  expect(loadTableHtml(report, {})).toMatch(/L2-W8(?:(?!<\/tr>).)*>≤10\.4</s);
  const sheet = readFile(await loadTableXlsx(demo, report), { type: 'array' }).Sheets.Runs;
  const place = SCHEMA.runs.columns.findIndex(({ key }) => key === 'maxLength');
  expect((sheet![utils.encode_cell({ r: demo.document.position('runs', id) + 1, c: place })] as { v: number }).v)
    .toBe(10.4);
});

/** Values of every size, exact ones, and such as the arithmetic makes of them. */
const values = fc.oneof(
  fc.double({ min: -100_000, max: 100_000, noNaN: true }), fc.double({ min: -0.1, max: 0.1, noNaN: true }),
  fc.integer({ min: -100_000, max: 100_000 }).map((hundredths) => hundredths / 100),
  fc.tuple(fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 0, max: 9999 }))
    .map(([one, other]) => one / 100 - other / 100),
);

describe('a limit that is shown', () => {
  const limits = SHEET_NAMES.flatMap((sheet) => SCHEMA[sheet].columns.filter(({ safeSide }) => safeSide !== undefined)
    .map((column): [string, Column] => [`${sheet}.${column.key}`, column]));

  test.each(limits)('never passes the true one: %s', (_name, column) => {
    fc.assert(fc.property(values, (value) => {
      const shown = shownNumber(formatCell(column, value, ENGLISH, 'show'));
      const [less, more] = column.safeSide === 'down' ? [shown, value] : [value, shown];
      const step = 10 ** -(column.decimals ?? (column.unit === 'A' ? 2 : 0)) / (column.kind === 'ratio' ? 100 : 1);
      expect(less - more).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(value), step));
      // No further off than a step.
      expect(more - less).toBeLessThan(step * (1 + 1e-9) + 1e-9 * Math.abs(value));
    }));
  });

  test.each([
    [
      'runs.maxLength', 'runs.minVoltage', 'supplies.usable', 'supplies.spare', 'supplies.limitDiversity',
      'outputs.headroom', 'feeds.spare',
    ],
  ])('%s and others are limits', (...names) => {
    expect(limits.map(([name]) => name)).toEqual(expect.arrayContaining(names));
  });

  // 8 × 0.55 − 1.9 = 2.5000000000000004 and 0.3 − 0.2 − 0.1 = −2.8e-17 in binary floating point; by hand 2.5 and 0.
  test.each(
    [
      [8 * 0.55 - 1.9, '2.50'], [0.3 - 0.2 - 0.1, '0.00'], [2.4999999999999996, '2.50'], [-0.101, '−0.11'],
      [7.996, '7.99'],
    ]
  )(
    'the noise of the arithmetic takes no step: %d is %s', (value, text) => {
      expect(formatCell(columnOf('supplies', 'spare'), value, ENGLISH, 'show')).toBe(text);
    });
});

describe('a limit in a sentence', () => {
  test.each(
    [['A', amps], ['V', volts], ['°C', degrees], ['K', kelvins], ['%', percent]] as const
  )('in %s never passes the true one', (_unit, write) => {
    fc.assert(fc.property(values, values, (limit, other) => {
      const scale = write === percent ? 100 : 1;
      const [down, up] = [roundedDown(write(limit, other)), roundedUp(write(limit, other))];
      expect(down.value - limit * scale).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(limit * scale), 1));
      expect(limit * scale - up.value).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(limit * scale), 1));
      // As written, too, a value beyond the limit stands beyond it, as far as sentences have decimals.
      if (other - limit > 1e-6) expect(write(other, limit).value).toBeGreaterThan(down.value);
    }));
  });

  test('what may be used is said no larger than it is, and what is too much no smaller', () => {
    // 8 A derated to 0.9995 are 7.996 A; 8.1 A are asked for, 0.104 A too much.
    const schedule = new LoadSchedule({
      details: {}, sheets: {
        supplies: [{ rail: 'L1', rated: 8, derating: 0.9995 }], devices: [
          { rail: 'L1', qty: 1, unitDraw: 8100, diversity: 1 },
        ],
      },
    });
    const { message } = schedule.findings.find(({ rule }) => rule === 'supply-over-usable')!;
    expect(message).toContain('demand 8.10 A exceeds the usable 7.99 A by 0.11 A');
  });
});
