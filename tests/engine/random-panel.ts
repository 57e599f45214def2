import fc from 'fast-check';
import type { Content } from '../../src/schedule/index.ts';

const someType = fc.record({
  load: fc.constantFrom('current', 'power'), draw: fc.constantFrom(20, 150, 400), minVoltage: fc.constantFrom(18, 20.4, 22),
  maxVoltage: fc.constant(30), diversity: fc.constantFrom(1, 0.6, 0.25), inrush: fc.constantFrom(0, 0.3, 1.5),
  nodes: fc.constantFrom(0, 1, 2),
});

/** One supply with a way, a run and a branch behind it, of which everything is known that is asked for. */
export const somePanel = fc.record({
  types: fc.tuple(someType, someType),
  supply: fc.record({
    rated: fc.constantFrom(5, 10, 20), tolerance: fc.constantFrom(0, 0.02), overload: fc.constantFrom(null, 'holds', 'retries'),
    peak: fc.constantFrom(1, 1.5), fuse: fc.constantFrom(null, 4, 10),
  }),
  way: fc.record({ kind: fc.constantFrom('electronic', 'B'), rated: fc.constantFrom(1, 2, 4, 6) }),
  other: fc.constantFrom(null, { kind: 'B', rated: 1 }, { kind: 'electronic', rated: 2 }),
  run: fc.record({
    length: fc.integer({ min: 5, max: 120 }), basis: fc.constantFrom('connected', 'demand'),
    maxDrop: fc.constantFrom(0.03, 0.05, 0.2),
  }),
  branch: fc.record({ limit: fc.constantFrom(10, 64), reserve: fc.constantFrom(0, 0.2) }),
  qty: fc.tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 0, max: 4 })), place: fc.constantFrom(0.2, 0.6, 1),
});

export type Panel = typeof somePanel extends fc.Arbitrary<infer Value> ? Value : never;

/** Its rows, with so many more of the first type at the place of the first device row. */
export function panelSheets({ types, supply, way, other, run, branch, qty, place }: Panel, more: number): Content['sheets'] {
  const on = { rail: 'A', run: 'W', branch: 'P' };
  return {
    types: types.map((type, at) => ({ type: `T${at}`, ...type })),
    supplies: [{ rail: 'A', ...supply, ...(supply.fuse === null ? {} : { fuseKind: 'gG' }) }],
    ways: [{ way: 'F', rail: 'A', ...way }, ...other === null ? [] : [{ way: 'G', rail: 'A', ...other }]],
    conductors: [
      { conductor: 'c', resistance: 13.3, maxCurrent: 16 }, { conductor: 'thick', resistance: 4.95, maxCurrent: 30 },
    ],
    branches: [{ branch: 'P', ...branch, terminated: true }],
    runs: [{ run: 'W', way: 'F', conductor: 'c', ...run }],
    devices: [
      { ref: 'D0', type: 'T0', qty: qty[0], ...place === 1 ? {} : { distance: place * run.length }, ...on },
      { ref: 'D1', type: 'T1', qty: qty[1], ...on },
      ...more === 0 ? [] : [{ ref: 'D2', type: 'T0', qty: more, ...place === 1 ? {} : { distance: place * run.length }, ...on }],
    ],
  };
}
