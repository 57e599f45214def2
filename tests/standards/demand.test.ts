import { describe, expect, test } from 'vitest';
import { connectedCurrent, demandCurrent, loadingRatio } from '../../src/electrical/index.ts';
import { closeTo, EXACT, printed } from '../support/close-to.ts';

/*
 * The textbooks work in watts, kilowatts or megawatts; connected, demand and their ratios are proportional, so the same
 * functions serve. A textbook's diversity factor is the reciprocal of the share that the functions take.
 *
 * MEH3 V.K. Mehta, R. Mehta, Principles of Power System, ch. 3
 * THE50 B.L. Theraja, A.K. Theraja, A Textbook of Electrical Technology, vol. III, ch. 50
 * GON2 T. Gonen, Electric Power Distribution System Engineering, ch. 2
 * WAD2 C.L. Wadhwa, Generation, Distribution and Utilization of Electrical Energy, ch. 2
 * CHA Chakrabarti, Soni, Gupta, Bhatnagar, A Textbook on Power System Engineering, 1.7
 * STA J. Stallcup, Applying demand factor and diversity factor per the NEC
 * WHI J. Whitfield, The Electricians Guide, 5th ed., Table 6.2
 */

/** A group: what is connected, the demand factor, and the diversity factors as the textbook gives them (1 or more). */
type Group = readonly [connected: number, demandFactor: number, ...diversityFactors: number[]];

function demandOf([connected, demandFactor, ...diversityFactors]: Group): number {
  const own = demandCurrent(connected, demandFactor);
  return diversityFactors.reduce((demand, factor) => demandCurrent(demand, 1 / factor), own);
}

function coincidentDemand(groups: readonly Group[], diversityFactor: number): number {
  return demandCurrent(groups.reduce((sum, group) => sum + demandOf(group), 0), 1 / diversityFactor);
}

/** n things of so many thousandths of a unit each. */
const many = connectedCurrent;

/** Input of a motor: 1 hp = 0.746 kW at an efficiency of 0.72, as MEH3 3.17 has it. */
const motor = (horsepower: number) => (horsepower * 0.746) / 0.72;

describe('demand of groups of consumers', () => {
  test.each<{ source: string; groups: Group[]; diversityFactor: number; answer: string; note?: string }>([
    { source: 'MEH3 3.7 p. 51', groups: [[1500, 1], [2000, 1], [10_000, 1]], diversityFactor: 1.35, answer: '10000' },
    {
      source: 'MEH3 3.8 p. 52', groups: [[10, 0.65, 1.5], [12, 0.6, 3.5], [15, 0.7, 1.5]], diversityFactor: 1.3,
      answer: '10.3',
    },
    {
      source: 'MEH3 3.9 p. 52', groups: [[many(1000, 1500), 0.4, 2.5], [90, 1], [many(7, 7000), 1]],
      diversityFactor: 1.2, answer: '316',
    },
    {
      source: 'THE50 50.10 p. 1957', groups: [[many(200, 2000), 0.5, 3.2, 1.5], [200, 0.6, 1.4, 1.2]],
      diversityFactor: 1, answer: '113.1',
    },
    { source: 'THE50 50.11 p. 1957', groups: [[many(4, 1_000_000), 1]], diversityFactor: 1.1, answer: '3636.36' },
    { source: 'GON2 2.3 p. 47', groups: [[many(6, 9000), 0.65]], diversityFactor: 1.1, answer: '31.9091' },
    { source: 'CHA 1.7.8 p. 74', groups: [[15, 1], [25, 1], [50, 1]], diversityFactor: 1.5, answer: '60' },
    {
      source: 'STA, before diversity', groups: [[250, 0.9], [200, 0.8], [150, 0.75], [400, 0.85]], diversityFactor: 1,
      answer: '837.5',
    },
    {
      source: 'STA, after diversity', groups: [[250, 0.9], [200, 0.8], [150, 0.75], [400, 0.85]], diversityFactor: 1.5,
      answer: '558',
    },
  ])('$source: $answer', ({ groups, diversityFactor, answer }) => {
    expect(coincidentDemand(groups, diversityFactor)).toEqual(closeTo(Number(answer), printed(answer)));
  });

  test('MEH3 3.17 p. 57, motors and lighting of four groups: 37.64 kW', () => {
    const workshops: Group[] = [
      [motor(10), 0.65], [5, 0.6], [motor(7.5), 0.75], [4, 0.6], [motor(15), 0.65], [motor(5), 0.75], [2, 0.6],
    ];
    const answer = coincidentDemand([[coincidentDemand(workshops, 1.5), 1], [7.43, 1], [19.4, 1]], 1.3);
    expect(answer).toEqual(closeTo(37.64, printed('37.64')));
  });

  test('WHI Table 6.2, cookers of 66 A: the first 10 A in full and 30 % of the rest', () => {
    // 26.8 A follows from the rule by arithmetic; the table prints the rule only.
    expect(demandCurrent(10, 1) + demandCurrent(56, 0.3)).toEqual(closeTo(26.8, EXACT));
  });
});

describe('connected load from demand, turned round', () => {
  test.each([
    { source: 'MEH3 3.7 p. 51', connected: '2250', demandFactor: 0.8, diversityFactor: 1.2, maximum: 1500 },
    { source: 'MEH3 3.7 p. 51', connected: '2444', demandFactor: 0.9, diversityFactor: 1.1, maximum: 2000 },
    { source: 'MEH3 3.7 p. 51', connected: '12500', demandFactor: 1, diversityFactor: 1.25, maximum: 10_000 },
    { source: 'CHA 1.7.8 p. 74', connected: '26785.7', demandFactor: 0.7, diversityFactor: 1.25, maximum: 15_000 },
    { source: 'CHA 1.7.8 p. 74', connected: '33333.3', demandFactor: 0.9, diversityFactor: 1.2, maximum: 25_000 },
    { source: 'CHA 1.7.8 p. 74', connected: '66326.5', demandFactor: 0.98, diversityFactor: 1.3, maximum: 50_000 },
  ])('$source: $connected connected', ({ connected, demandFactor, diversityFactor, maximum }) => {
    const demand = demandOf([Number(connected), demandFactor, diversityFactor]);
    // The printed connected load is rounded, and the demand follows in proportion.
    const share = printed(connected).absolute / Number(connected);
    expect(demand).toEqual(closeTo(maximum, { absolute: 0, relative: share + 1e-12 }));
  });
});

describe('demand factors', () => {
  test.each([
    { source: 'MEH3 3.2 and THE50 50.7', of: 20, over: 43, answer: '0.465' },
    { source: 'WAD2 ex 1 p. 73, 10 lamps of 15', of: many(10, 60_000), over: many(15, 60_000), answer: '0.6667' },
  ])('$source: $answer', ({ of, over, answer }) => {
    expect(loadingRatio(of, over)).toEqual(closeTo(Number(answer), printed(answer)));
  });

  test('GON2 2.6 p. 50: class factors 0, 0.6 and 1 bring the three peaks to 1800 kW at 17:00', () => {
    const demand = demandOf([100, 0]) + demandOf([1000, 0.6]) + demandOf([1200, 1]);
    expect(demand).toEqual(closeTo(1800, EXACT));
  });
});
