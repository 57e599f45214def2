import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  alternatingCurrent, connectedCurrent, contactRating, demandCurrent, deviceNodes, drawFromPower, exceeds, freeNodes,
  headroom, inrushHeadroom, inrushTotal, limitDiversity, loadingRatio, spareCurrent, supplyLoss, usableCurrent,
} from '../../src/electrical/index.ts';
import { closeTo } from '../support/close-to.ts';

const quantity = fc.integer({ min: 0, max: 5000 });
const milliamps = fc.double({ min: 0, max: 20_000, noNaN: true });
const amps = fc.double({ min: 0, max: 500, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const positiveAmps = fc.double({ min: 0.01, max: 500, noNaN: true });
const positiveShare = fc.double({ min: 0.01, max: 1, noNaN: true });

/** Sums of up to five thousand terms of up to 1e5. */
const ROUNDING = { absolute: 1e-9, relative: 1e-12 };

describe('loads add up', () => {
  test('connected current is additive over the quantity', () => {
    fc.assert(fc.property(quantity, quantity, milliamps, (one, other, draw) => {
      const apart = connectedCurrent(one, draw) + connectedCurrent(other, draw);
      expect(connectedCurrent(one + other, draw)).toEqual(closeTo(apart, ROUNDING));
      expect(deviceNodes(one + other, 3)).toBe(deviceNodes(one, 3) + deviceNodes(other, 3));
    }));
  });

  test('demand never exceeds what is connected and grows with diversity', () => {
    fc.assert(fc.property(amps, share, share, (connected, one, other) => {
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      expect(demandCurrent(connected, low)).toBeLessThanOrEqual(demandCurrent(connected, high));
      expect(demandCurrent(connected, high)).toBeLessThanOrEqual(connected);
    }));
  });

  test('power given in watts or as the draw it means is the same load', () => {
    fc.assert(fc.property(quantity, fc.double({ min: 0, max: 500, noNaN: true }), (count, watts) => {
      const draw = drawFromPower(watts, 24) ?? NaN;
      expect(connectedCurrent(count, draw) * 24).toEqual(closeTo(count * watts, ROUNDING));
      expect(alternatingCurrent(count, watts, 24, 1)).toEqual(closeTo(connectedCurrent(count, draw), ROUNDING));
    }));
  });
});

describe('limits', () => {
  test('at the limit diversity nothing is spare', () => {
    fc.assert(fc.property(positiveAmps, positiveShare, positiveAmps, (usable, target, connected) => {
      const demand = demandCurrent(connected, limitDiversity(usable, target, connected) ?? NaN);
      expect(spareCurrent(usable, target, demand)).toEqual(closeTo(0, ROUNDING));
    }));
  });

  test('a redundant supply of n units gives what n − 1 give', () => {
    fc.assert(fc.property(positiveAmps, fc.integer({ min: 2, max: 9 }), positiveShare, (rated, units, derating) => {
      expect(usableCurrent(rated, units, true, derating)).toBe(usableCurrent(rated, units - 1, false, derating));
    }));
    expect(usableCurrent(10, 1, true, 1)).toBe(0);
  });

  test.each([
    // Common practice, no source: 50 devices on a branch; the second figure is by hand.
    { limit: 50, reserve: 0, nodes: 50, free: 0 },
    { limit: 50, reserve: 0.2, nodes: 38, free: 2 },
    { limit: 50, reserve: 0.2, nodes: 41, free: -1 },
    { limit: 50, reserve: 0.25, nodes: 0, free: 37 },
    // 10 × (1 − 0.9) is 0.9999999999999998 in binary, and one place all the same.
    { limit: 10, reserve: 0.9, nodes: 0, free: 1 },
    // EIA RS-485: 32 unit loads.
    { limit: 32, reserve: 0, nodes: 33, free: -1 },
  ])('$nodes nodes of $limit with $reserve in reserve leave $free', ({ limit, reserve, nodes, free }) => {
    expect(freeNodes(limit, reserve, nodes)).toBe(free);
  });

  test('a sum that only rounding lifts above its limit does not exceed it', () => {
    const sum = Array.from({ length: 30 }, () => 0.1).reduce((total, each) => total + each, 0);
    expect(sum).not.toBe(3);
    expect(exceeds(sum, 3)).toBe(false);
    expect(exceeds(3.000001, 3)).toBe(true);
    expect(exceeds(3, 3)).toBe(false);
    expect(exceeds(2, 3)).toBe(false);
    expect(exceeds(0.000001, 0)).toBe(true);
    expect(exceeds(0, 0)).toBe(false);
    expect(exceeds(-1, -2)).toBe(true);
  });
});

describe('contacts', () => {
  // Common practice, no source: contacts of 5 A and of 16 A, which lamps may only load with a part of it.
  test.each([
    {
      kind: 'resistive', rating: 16,
    }, { kind: 'lamp', rating: 5 }, { kind: 'motor', rating: 3 }, { kind: 'coil', rating: 2 },
    { kind: 'dc', rating: 8 }, { kind: 'dcCoil', rating: 1 },
  ] as const)('$kind: $rating A', ({ kind, rating }) => {
    expect(contactRating(kind, 16, 5, 3, 2, 8, 1)).toBe(rating);
  });

  test('what is unknown stays unknown', () => {
    expect(contactRating(null, 16, 5, 3, 2, 8, 1)).toBeNull();
    expect(contactRating('motor', 16, 5, null, 2, 8, 1)).toBeNull();
  });

  test('headroom is negative beyond the rating', () => {
    expect(headroom(5, 5.5)).toBe(-0.5);
    expect(inrushHeadroom(80, inrushTotal(5, 20))).toBe(-20);
  });
});

describe('no finite result is null, never infinite and never not-a-number', () => {
  test.each([
    ['drawFromPower', drawFromPower(8.4, 0)],
    ['loadingRatio', loadingRatio(1, 0)],
    ['loadingRatio of nothing', loadingRatio(0, 0)],
    ['limitDiversity', limitDiversity(10, 0.8, 0)],
    ['supplyLoss', supplyLoss(24, 10, 0)],
    ['alternatingCurrent without voltage', alternatingCurrent(1, 100, 0, 1)],
    ['alternatingCurrent without power factor', alternatingCurrent(1, 100, 230, 0)],
  ])('%s', (_name, result) => {
    expect(result).toBeNull();
  });
});
