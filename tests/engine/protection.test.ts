import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Cells } from '../../src/schedule/index.ts';
import { fuseRule } from '../support/independent-fuse.ts';
import { foundWrong } from '../support/independent-protection.ts';
import { enter, findingsAt, scheduleOf } from '../support/schedules.ts';

const KINDS = ['B', 'C', 'D', 'gG', 'fast', 'slow', 'electronic'] as const;
const RULES = [
  'device-other-voltage', 'device-over-run', 'device-over-supply', 'device-over-voltage', 'device-under-voltage', 'run-unprotected',
  'supply-fuse-kind-missing', 'supply-lives-on-diversity-fuse', 'supply-lives-on-diversity-usable',
  'supply-gives-nothing', 'supply-trips-no-fuse', 'run-fuse-may-not-act',
];

const someSupply = fc.record({
  voltage: fc.constantFrom(12, 24, 48), tolerance: fc.constantFrom(0, 0.05, 0.1),
  rated: fc.option(fc.constantFrom(1, 2.5, 4, 6, 10)), units: fc.constantFrom(1, 2), redundant: fc.boolean(),
  maxOutput: fc.constantFrom(1, 1.2, 1.5), fuse: fc.option(fc.constantFrom(1, 2, 4, 6, 10, 16)),
  fuseKind: fc.option(fc.constantFrom(...KINDS)), peak: fc.constantFrom(1, 5),
});
const someCarried = fc.constantFrom(1, 2, 4, 5.5, 6, 9, 15);
const someLength = fc.constantFrom(1, 300);
const someDevice = fc.record({
  voltage: fc.option(fc.constantFrom(12, 21.6, 24, 26.4, 48)), minVoltage: fc.option(fc.constantFrom(10, 20)),
  maxVoltage: fc.option(fc.constantFrom(13, 25.2, 26, 60)), qty: fc.constantFrom(0, 1, 2),
  unitDraw: fc.constantFrom(10, 1000, 3000, 6000, 12_000), diversity: fc.constantFrom(0.25, 0.5, 1),
});

test('runs without a way, devices and all at once are found wrong where an independent calculation finds them so', () => {
  const seen = new Map(RULES.map((rule) => [rule, 0]));
  const given = fc.tuple(someSupply, someCarried, someDevice, someLength);
  fc.assert(fc.property(given, given, (first, second) => {
    const cellsOf = ([supply, maxCurrent, device, length]: typeof first): [Cells, Cells, Cells, Cells, Cells] => {
      const { qty, unitDraw, diversity, ...type } = device;
      return [{ ...supply }, { maxCurrent }, type, { qty, unitDraw, diversity }, { length }];
    };
    const [supply, conductor, type, device, run] = cellsOf(first);
    const schedule = scheduleOf({
      supplies: [{ rail: 'S', seriesDrop: 0, ...supply }], conductors: [{ conductor: 'C', resistance: 10, ...conductor }],
      types: [{ type: 'T', ...type }], runs: [{ run: 'W', rail: 'S', conductor: 'C', ...run }],
      devices: [{ ref: 'D', type: 'T', run: 'W', ...device }],
    });
    for (const each of [first, second]) {
      const now = cellsOf(each);
      (['supplies', 'conductors', 'types', 'devices', 'runs'] as const).forEach((sheet, at) => enter(schedule, sheet, 0, now[at]!));
      const found = (['supplies', 'runs', 'devices'] as const).flatMap((sheet) =>
        findingsAt(schedule, sheet).map(({ rule }) => rule).filter((rule) => RULES.includes(rule)));
      const [feeding, carries, fed, length] = each;
      // 10 Ω/km there and back, at 70 °C, behind 0.3 Ω.
      const ohm = 0.02 * (1 + 0.00393 * 50) * length + 0.3;
      const lowest = feeding.voltage * (1 - feeding.tolerance);
      expect(found.sort()).toEqual(
        [...foundWrong(feeding, carries, fed), ...fuseRule({ ...feeding, lowest, carries, ohm })].sort());
      for (const rule of found) seen.set(rule, seen.get(rule)! + 1);
    }
    schedule.dispose();
  }), { numRuns: 600 });
  for (const [rule, count] of seen) expect([rule, count > 10]).toEqual([rule, true]);
});
