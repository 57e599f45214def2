import { describe, expect, test } from 'vitest';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { closeTo, EXACT, printed } from '../support/close-to.ts';
import { scheduleOf, valueAt } from '../support/schedules.ts';

/*
 * Worked examples of textbooks in which a demand factor of each load is followed by the diversity of groups, and that
 * by one of all groups, entered as schedules: the demand factor as the diversity of its row, what follows as the factor
 * of its group of what that leaves. `demand.test.ts` holds the arithmetic itself.
 *
 * MEH3 V.K. Mehta, R. Mehta, Principles of Power System, ch. 3
 * THE50 B.L. Theraja, A.K. Theraja, A Textbook of Electrical Technology, vol. III, ch. 50
 * GON2 T. Gonen, Electric Power Distribution System Engineering, ch. 2
 * CHA Chakrabarti, Soni, Gupta, Bhatnagar, A Textbook on Power System Engineering, 1.7
 * STA J. Stallcup, Applying demand factor and diversity factor per the NEC
 */

/** Loads with their demand factors, and the diversity factors of the group as the textbook gives them (1 or more). */
interface Group {
  readonly loads: readonly (readonly [qty: number, power: number, demandFactor: number])[];
  readonly diversityFactors: readonly number[];
}

const VOLTS = 24;

/** A supply with these groups on it, in a case in which each of them has its factor, and all of them theirs. */
function schedule(groups: readonly Group[], overall: number): LoadSchedule {
  const name = (at: number) => `group ${at + 1}`;
  return scheduleOf({
    supplies: [{ rail: 'P1', voltage: VOLTS, rated: 1e6 }],
    devices: groups.flatMap(({ loads }, at) => loads.map(([qty, power, diversity], place): Cells => ({
      ref: `${at + 1}.${place + 1}`, qty, unitDraw: power / VOLTS * 1000, diversity, rail: 'P1', group: name(at),
    }))),
    cases: [{ case: 'system maximum' }],
    factors: groups.map(({ diversityFactors }, at): Cells => ({
      case: 'system maximum', group: name(at), of: 'demand',
      // As a person types it, who has diversity factors of 1 or more.
      factor: `=1${[...diversityFactors, overall].map((each) => `/${each}`).join('')}`,
    })),
  });
}

const demandOf = (of: LoadSchedule) => valueAt(of, 'supplies', 0, 'demand') as number * VOLTS;

/** Input of a motor: 1 hp = 0.746 kW at an efficiency of 0.72, as MEH3 3.17 has it. */
const motor = (horsepower: number) => horsepower * 0.746 / 0.72;
const one = (power: number, demandFactor = 1, ...diversityFactors: number[]): Group =>
  ({ loads: [[1, power, demandFactor]], diversityFactors });

const EXAMPLES: readonly { source: string; groups: readonly Group[]; overall: number; answer: string }[] = [
  { source: 'MEH3 3.7 p. 51', groups: [one(1500), one(2000), one(10_000)], overall: 1.35, answer: '10000' },
  {
    source: 'MEH3 3.8 p. 52', groups: [one(10, 0.65, 1.5), one(12, 0.6, 3.5), one(15, 0.7, 1.5)], overall: 1.3,
    answer: '10.3',
  },
  {
    source: 'MEH3 3.9 p. 52', overall: 1.2, answer: '316',
    groups: [
      { loads: [[1000, 1.5, 0.4]], diversityFactors: [2.5] }, one(90), { loads: [[7, 7, 1]], diversityFactors: [] },
    ],
  },
  {
    // Motors and lighting of four workshops, with 1.5 among them; then street lighting and the others, with 1.3.
    source: 'MEH3 3.17 p. 57', overall: 1.3, answer: '37.64',
    groups: [{
      loads: [
        [1, motor(10), 0.65], [1, 5, 0.6], [1, motor(7.5), 0.75], [1, 4, 0.6], [1, motor(15), 0.65],
        [1, motor(5), 0.75], [1, 2, 0.6],
      ], diversityFactors: [1.5],
    }, one(7.43), one(19.4)],
  },
  {
    source: 'THE50 50.10 p. 1957', overall: 1, answer: '113.1',
    groups: [{ loads: [[200, 2, 0.5]], diversityFactors: [3.2, 1.5] }, one(200, 0.6, 1.4, 1.2)],
  },
  {
    source: 'THE50 50.11 p. 1957', groups: [{ loads: [[4, 1000, 1]], diversityFactors: [] }], overall: 1.1,
    answer: '3636.36',
  },
  {
    source: 'GON2 2.3 p. 47', groups: [{ loads: [[6, 9, 0.65]], diversityFactors: [] }], overall: 1.1,
    answer: '31.9091',
  },
  { source: 'CHA 1.7.8 p. 74', groups: [one(15), one(25), one(50)], overall: 1.5, answer: '60' },
  {
    source: 'STA, after diversity', groups: [one(250, 0.9), one(200, 0.8), one(150, 0.75), one(400, 0.85)], overall: 1.5,
    answer: '558',
  },
];

describe('two levels of diversity, as the demand of a supply in a case', () => {
  test.each(EXAMPLES)('$source: $answer', ({ groups, overall, answer }) => {
    const found = schedule(groups, overall);
    expect(demandOf(found)).toEqual(closeTo(Number(answer), printed(answer)));
    expect(valueAt(found, 'supplies', 0, 'worstCase')).toBe('system maximum');
    const { id } = found.rows('supplies')[0]!;
    expect(found.inCase('supplies', id, 'demand', 0)).toBe(found.value('supplies', id, 'demand'));
  });

  test('each level counts once: without the factors of groups the demand factors alone remain', () => {
    for (const { groups, overall } of EXAMPLES) {
      const found = schedule(groups, overall);
      const own = groups.flatMap(({ loads }) => loads)
        .reduce((sum, [qty, power, factor]) => sum + qty * power * factor, 0);
      const { id } = found.rows('supplies')[0]!;
      expect(found.inCase('supplies', id, 'demand', -1)! * VOLTS).toEqual(closeTo(own, EXACT));
    }
  });
});

describe('connected loads that a textbook finds from maxima, entered with both factors, come to these maxima', () => {
  test.each([
    {
      source: 'MEH3 3.7 p. 51', overall: 1.35, answer: 10_000, maxima: [1500, 2000, 10_000],
      connected: [['2250', 0.8, 1.2], ['2444', 0.9, 1.1], ['12500', 1, 1.25]] as const,
    },
    {
      source: 'CHA 1.7.8 p. 74', overall: 1.5, answer: 60_000, maxima: [15_000, 25_000, 50_000],
      connected: [['26785.7', 0.7, 1.25], ['33333.3', 0.9, 1.2], ['66326.5', 0.98, 1.3]] as const,
    },
  ])('$source', ({ connected, overall, answer, maxima }) => {
    const groups = connected.map(([power, demand, diversity]) => one(Number(power), demand, diversity));
    // The printed connected loads are rounded, and the demand follows in proportion.
    const shares = connected.map(([power]) => printed(power).absolute / Number(power) + 1e-12);
    groups.forEach((group, at) => {
      expect(demandOf(schedule([group], 1))).toEqual(closeTo(maxima[at]!, { absolute: 0, relative: shares[at]! }));
    });
    expect(demandOf(schedule(groups, overall)))
      .toEqual(closeTo(answer, { absolute: 0, relative: Math.max(...shares) }));
  });
});
