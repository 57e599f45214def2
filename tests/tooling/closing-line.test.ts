import { expect, it } from 'vitest';
import { closingLine, readClosingLine } from '../../scripts/closing-line.mjs';

it('the closing line is read as it was written', () => {
  const counts = { passed: 12, failed: 0, skipped: 1 };
  expect(closingLine(counts)).toBe('12 passed, 0 failed, 1 skipped');
  expect(readClosingLine(closingLine(counts))).toEqual(counts);
});

it.each(['', 'Tests  12 passed (12)', '> 12 passed, 0 failed, 1 skipped'])('no closing line: "%s"', (line) => {
  expect(readClosingLine(line)).toBeUndefined();
});
