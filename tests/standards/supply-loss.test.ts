import { describe, expect, test } from 'vitest';
import { supplyLoss } from '../../src/electrical/index.ts';
import { closeTo, EXACT, printed } from '../support/close-to.ts';

describe('heat of a supply at a load', () => {
  test.each([
    { watts: 500, efficiency: 0.8, answer: '125', source: 'article on supply efficiency and loss, 2012' },
    // The article cuts 55.556 off after one decimal.
    { watts: 500, efficiency: 0.9, answer: '55.556', source: 'the same, which prints 55.5; exact value by hand' },
    { watts: 150, efficiency: 0.86, answer: '24.4', source: 'published worked example, 24.4 W' },
    { watts: 150, efficiency: 0.86, answer: '24.419', source: 'the same, exact value by hand' },
  ])('$watts W at $efficiency: $answer W ($source)', ({ watts, efficiency, answer }) => {
    expect(supplyLoss(24, watts / 24, efficiency)).toEqual(closeTo(Number(answer), printed(answer)));
  });

  test('is input less output, by the definition of efficiency', () => {
    const outputWatts = 24 * 7.3;
    expect(supplyLoss(24, 7.3, 0.91)).toEqual(closeTo(outputWatts / 0.91 - outputWatts, EXACT));
  });
});
