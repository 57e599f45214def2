import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import { createVitest } from 'vitest/node';
import { readFlakyLine } from '../../scripts/closing-line.mjs';
import ClosingLineReporter from '../../scripts/closing-line-reporter.ts';

const TESTS = `let tries = 0;
test('at the first try', () => {});
describe('a group', () => { test('at the second try', () => { tries += 1; expect(tries).toBe(2); }); });
test('at none', () => { expect(1).toBe(2); });
test('with an error that nobody waits for', () => {
  void Promise.reject(new TypeError('left alone'));
  return new Promise((resolve) => { setTimeout(resolve, 50); });
});
`;

it('what failed, and what passed on another try than the first, is named before the closing line', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'flaky-'));
  const lines: string[] = [];
  const log = vi.spyOn(console, 'log').mockImplementation((line: string) => { lines.push(line); });
  const { exitCode } = process;
  try {
    await writeFile(join(folder, 'tries.test.js'), TESTS);
    const inner = await createVitest('test', {
      root: folder, config: false, watch: false, globals: true, retry: 2, include: ['*.test.js'],
      reporters: [new ClosingLineReporter()],
    }, { logLevel: 'silent' });
    await inner.start();
    await inner.close();
  } finally {
    log.mockRestore();
    process.exitCode = exitCode;
    await rm(folder, { recursive: true });
  }
  expect(lines.slice(-4)).toEqual([
    'passed on another try: tries.test.js > a group > at the second try',
    'failed: tries.test.js > at none: expected 1 to be 2 // Object.is equality',
    'failed: outside of a test: left alone',
    '3 passed, 2 failed, 0 skipped',
  ]);
  expect(lines.flatMap((line) => readFlakyLine(line) ?? [])).toEqual(['tries.test.js > a group > at the second try']);
});
