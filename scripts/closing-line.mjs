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
const FAILED = 'failed: ';

/** @param {string} start @param {string} line */
const after = (start, line) => line.startsWith(start) ? line.slice(start.length) : undefined;

/**
 * The line that names a test that passed, but not at the first try.
 *
 * @param {string} test its file and name
 */
export const flakyLine = (test) => `${FLAKY}${test}`;

/**
 * Reads such a line back.
 *
 * @param {string} line
 * @returns {string | undefined} the test; undefined where the line is another one
 */
export const readFlakyLine = (line) => after(FLAKY, line);

/**
 * The line that names what failed and the first line of why.
 *
 * @param {string} test its file and name
 * @param {string} [why]
 */
export const failedLine = (test, why = '') => `${FAILED}${test}: ${why.split('\n', 1)[0]}`;

/**
 * Reads such a line back.
 *
 * @param {string} line
 * @returns {string | undefined} the test and why; undefined where the line is another one
 */
export const readFailedLine = (line) => after(FAILED, line);
