import fc from 'fast-check';
import loadHighs from 'highs';
import { expect, test } from 'vitest';
import type { Pattern } from '../../src/allocation/packing/pattern.ts';
import { Programme } from '../../src/allocation/packing/programme.ts';

interface Task {
  readonly items: readonly { readonly count: number; readonly cost: number }[];
  /** Number of bins of each kind. */
  readonly kinds: readonly number[];
  readonly patterns: readonly Pattern[];
}

const highs = await loadHighs();

/** Least size left outside, by an independent solver. */
function byReference({ items, kinds, patterns }: Task): number {
  const sum = (terms: readonly string[]) => terms.length === 0 ? '0 t0' : terms.join(' + ');
  const using = (fits: (pattern: Pattern) => number) =>
    patterns.flatMap((pattern, place) => fits(pattern) > 0 ? [`${fits(pattern)} t${place}`] : []);
  const solved = highs.solve([
    'Minimize', ` size: ${items.map(({ cost }, item) => `${cost} o${item}`).join(' + ')}`, 'Subject To',
    ...items.map(({ count }, item) =>
      ` held${item}: ${[...using(({ fill }) => fill[item]!), `o${item}`].join(' + ')} >= ${count}`),
    ...kinds.map((count, kind) => ` used${kind}: ${sum(using((pattern) => pattern.kind === kind ? 1 : 0))} <= ${count}`),
    'End',
  ].join('\n'));
  expect(solved.Status).toBe('Optimal');
  return solved.ObjectiveValue;
}

/** The same by the programme, to which the dearest pattern is given until none is a gain. */
function byProgramme({ items, kinds, patterns }: Task): number {
  const programme = new Programme([...items.map(({ count }) => count), ...kinds], items.map(({ cost }) => cost));
  for (let pivot = 0; pivot < 1000; pivot += 1) {
    const prices = programme.prices();
    if (programme.enterSlack(prices)) continue;
    const gains = patterns.map(({ kind, fill }) =>
      fill.reduce((sum, count, item) => sum + count * prices[item]!, prices[items.length + kind]!));
    const most = Math.max(...gains);
    if (most < 1e-9) return programme.outside();
    programme.enter(patterns[gains.indexOf(most)]!);
  }
  throw new Error('It comes to no end.');
}

const tasks: fc.Arbitrary<Task> = fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 3 }))
  .chain(([width, height]) => fc.record({
    items: fc.array(fc.record({
      count: fc.integer({ min: 1, max: 6 }), cost: fc.integer({ min: 1, max: 9 }),
    }), { minLength: width, maxLength: width }),
    kinds: fc.array(fc.integer({ min: 1, max: 6 }), { minLength: height, maxLength: height }),
    patterns: fc.array(fc.record({
      kind: fc.integer({ min: 0, max: height - 1 }),
      fill: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: width, maxLength: width }),
    }), { minLength: 1, maxLength: 10 }),
  }));

test('everything is held where a solver of linear programmes can hold it, and no less stays outside than there', () => {
  fc.assert(fc.property(tasks, (task) => {
    const [outside, least] = [byProgramme(task), byReference(task)];
    expect(outside).toBeGreaterThan(least - 1e-6);
    expect(outside < 1e-6).toBe(least < 1e-6);
  }), { numRuns: 400 });
});
