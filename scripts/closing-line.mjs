/** @typedef {{ passed: number, failed: number, skipped: number }} Counts */

/**
 * The one line that sums up a run of tests.
 *
 * @param {Counts} counts
 * @returns {string} such as `12 passed, 0 failed, 1 skipped`
 */
export function closingLine({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed, ${skipped} skipped`;
}

/**
 * Reads such a line back.
 *
 * @param {string} line
 * @returns {Counts | undefined} undefined where the line is another one
 */
export function readClosingLine(line) {
  const match = /^(\d+) passed, (\d+) failed, (\d+) skipped$/.exec(line);
  return match ? { passed: Number(match[1]), failed: Number(match[2]), skipped: Number(match[3]) } : undefined;
}

const FLAKY = 'passed on another try: ';

/**
 * The line that names a test that passed, but not at the first try.
 *
 * @param {string} test its file and name
 */
export function flakyLine(test) {
  return `${FLAKY}${test}`;
}

/**
 * Reads such a line back.
 *
 * @param {string} line
 * @returns {string | undefined} the test; undefined where the line is another one
 */
export function readFlakyLine(line) {
  return line.startsWith(FLAKY) ? line.slice(FLAKY.length) : undefined;
}
