import { expect, it } from 'vitest';
import { closingLine, failedLine, flakyLine, readClosingLine, readFailedLine, readFlakyLine } from '../../scripts/closing-line.mjs';

it('the closing line is read as it was written', () => {
  const counts = { passed: 12, failed: 0, skipped: 1 };
  expect(closingLine(counts)).toBe('12 passed, 0 failed, 1 skipped');
  expect(readClosingLine(closingLine(counts))).toEqual(counts);
});

it.each(['', 'Tests  12 passed (12)', '> 12 passed, 0 failed, 1 skipped'])('no closing line: "%s"', (line) => {
  expect(readClosingLine(line)).toBeUndefined();
});

it('a test that failed is named with the first line of why, and one on another try by its name', () => {
  expect(readFailedLine(failedLine('a.test.ts > adds', 'expected 1 to be 2\n  at a.test.ts:3'))).toBe(
    'a.test.ts > adds: expected 1 to be 2',
  );
  expect(readFlakyLine(flakyLine('a.test.ts > adds'))).toBe('a.test.ts > adds');
  expect([readFailedLine(flakyLine('a')), readFlakyLine(failedLine('a'))]).toEqual([undefined, undefined]);
});
