import { describe, expect, test } from 'vitest';
import { connectedCurrent, demandCurrent, limitDiversity, spareCurrent } from '../../src/electrical/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';

/**
 * Rated diversity factors by number of circuits: IEC 61439-2, Table 101 (the same as IEC 60439-1, Table 1), as
 * reprinted in "Understanding the terminology in IEC 61439", Electricity + Control 2019, Table 1. One circuit: 1.0,
 * from memory.
 */
const RATED_DIVERSITY = [
  { circuits: 1, factor: 1 },
  { circuits: 2, factor: 0.9 },
  { circuits: 3, factor: 0.9 },
  { circuits: 4, factor: 0.8 },
  { circuits: 5, factor: 0.8 },
  { circuits: 6, factor: 0.7 },
  { circuits: 9, factor: 0.7 },
  { circuits: 10, factor: 0.6 },
  { circuits: 24, factor: 0.6 },
];

/** Amperes for circuits of 16 A each: circuits × 16 × factor, worked out by hand from the table. */
const SIXTEEN_AMPERE_CIRCUITS: Record<number, number> = {
  1: 16, 2: 28.8, 3: 43.2, 4: 51.2, 5: 64, 6: 67.2, 9: 100.8, 10: 96, 24: 230.4,
};

describe('rated diversity factors of IEC 61439 applied to circuits of 16 A', () => {
  test.each(RATED_DIVERSITY)('$circuits circuits at $factor', ({ circuits, factor }) => {
    const demand = demandCurrent(connectedCurrent(circuits, 16_000), factor);
    expect(demand).toEqual(closeTo(SIXTEEN_AMPERE_CIRCUITS[circuits] ?? NaN, EXACT));
  });
});

describe('continuous loads: protection of at least 1.25 × the load, NEC 210.20(A), 215.3, 409.21', () => {
  test.each([6, 10, 16, 63])('a load that fills %d A to 80 % has no spare left at a target of 0.8', (ratedAmps) => {
    const continuousAmps = ratedAmps / 1.25;
    expect(spareCurrent(ratedAmps, 0.8, continuousAmps)).toEqual(closeTo(0, EXACT));
    expect(limitDiversity(ratedAmps, 0.8, continuousAmps)).toEqual(closeTo(1, EXACT));
  });
});
