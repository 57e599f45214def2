import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Cells } from '../../src/schedule/index.ts';
import { foundWrong } from '../support/independent-protection.ts';
import { enter, findingsAt, scheduleOf } from '../support/schedules.ts';

const KINDS = ['B', 'C', 'D', 'gG', 'fast', 'slow', 'electronic'] as const;
const RULES = [
  'device-other-voltage', 'device-over-run', 'device-over-supply', 'device-over-voltage', 'run-unprotected',
  'supply-fuse-kind-missing', 'supply-lives-on-diversity-fuse', 'supply-lives-on-diversity-usable',
];

const someSupply = fc.record({
  voltage: fc.constantFrom(12, 24, 48), tolerance: fc.constantFrom(0, 0.05, 0.1),
  rated: fc.option(fc.constantFrom(1, 2.5, 4, 6, 10)), units: fc.constantFrom(1, 2), redundant: fc.boolean(),
  maxOutput: fc.constantFrom(1, 1.2, 1.5), fuse: fc.option(fc.constantFrom(1, 2, 4, 6, 10, 16)),
  fuseKind: fc.option(fc.constantFrom(...KINDS)),
});
const someCarried = fc.constantFrom(1, 2, 4, 5.5, 6, 9, 15);
const someDevice = fc.record({
  voltage: fc.option(fc.constantFrom(12, 21.6, 24, 26.4, 48)), minVoltage: fc.option(fc.constantFrom(10, 20)),
  maxVoltage: fc.option(fc.constantFrom(13, 25.2, 26, 60)), qty: fc.constantFrom(0, 1, 2),
  unitDraw: fc.constantFrom(10, 1000, 3000, 6000, 12_000), diversity: fc.constantFrom(0.25, 0.5, 1),
});

test('runs without a way, devices and all at once are found wrong where an independent calculation finds them so', () => {
  const seen = new Map(RULES.map((rule) => [rule, 0]));
  const given = fc.tuple(someSupply, someCarried, someDevice);
  fc.assert(fc.property(given, given, (first, second) => {
    const cellsOf = ([supply, maxCurrent, device]: typeof first): [Cells, Cells, Cells, Cells] => {
      const { qty, unitDraw, diversity, ...type } = device;
      return [{ ...supply }, { maxCurrent }, type, { qty, unitDraw, diversity }];
    };
    const [supply, conductor, type, device] = cellsOf(first);
    const schedule = scheduleOf({
      supplies: [{ rail: 'S', ...supply }], conductors: [{ conductor: 'C', resistance: 10, ...conductor }],
      types: [{ type: 'T', ...type }], runs: [{ run: 'W', rail: 'S', conductor: 'C', length: 1 }],
      devices: [{ ref: 'D', type: 'T', run: 'W', ...device }],
    });
    for (const each of [first, second]) {
      const now = cellsOf(each);
      (['supplies', 'conductors', 'types', 'devices'] as const).forEach((sheet, at) => enter(schedule, sheet, 0, now[at]!));
      const found = (['supplies', 'runs', 'devices'] as const).flatMap((sheet) =>
        findingsAt(schedule, sheet).map(({ rule }) => rule).filter((rule) => RULES.includes(rule)));
      expect(found.sort()).toEqual(foundWrong(...each));
      for (const rule of found) seen.set(rule, seen.get(rule)! + 1);
    }
    schedule.dispose();
  }), { numRuns: 300 });
  for (const [rule, count] of seen) expect([rule, count > 10]).toEqual([rule, true]);
});
