// Installs what is missing, a browser included, and checks everything.
// The last line is `N passed, N failed, N skipped`.
import { closingLine, readClosingLine } from './closing-line.mjs';
import { ensurePackages } from './ensure-packages.mjs';
import { provideBrowser } from './provide-browser.mjs';
import { provideOtherBrowsers } from './provide-other-browsers.mjs';
import { runNpm, runProgram } from './run-program.mjs';

const counts = { passed: 0, failed: 0, skipped: 0 };
/** @type {string[]} */
const summary = [];

/**
 * Runs one step and notes its time. A step that fails without a failed test of its own counts as one failure.
 *
 * @param {string} name
 * @param {() => Promise<boolean>} run
 */
async function step(name, run) {
  console.log(`\n--- ${name}`);
  const failedBefore = counts.failed;
  const startMs = performance.now();
  const succeeded = await run().catch((/** @type {unknown} */ error) => {
    console.error(error instanceof Error ? error.message : error);
    return false;
  });
  if (!succeeded && counts.failed === failedBefore) counts.failed += 1;
  const seconds = ((performance.now() - startMs) / 1000).toFixed(1);
  summary.push(`${succeeded ? 'ok    ' : 'FAILED'}  ${seconds.padStart(6)} s  ${name}`);
  return succeeded;
}

/**
 * Runs one project of tests, and adds up what its closing line says.
 *
 * @param {string} project
 * @param {Record<string, string>} [environment]
 */
function runTests(project, environment = {}) {
  const onLine = (/** @type {string} */ line) => {
    const read = readClosingLine(line);
    if (!read) return true;
    counts.passed += read.passed;
    counts.failed += read.failed;
    counts.skipped += read.skipped;
    return false;
  };
  const vitest = 'node_modules/vitest/vitest.mjs';
  return runProgram(process.execPath, [vitest, 'run', '--project', project], { environment, onLine });
}

if (await step('packages', async () => (await ensurePackages(), true))) {
  for (const name of ['lint', 'types', 'imports', 'build', 'size', 'package']) {
    await step(name, () => runNpm(['run', '--silent', name]));
  }
  /** @type {Record<string, string>} */
  let environment = {};
  await step('a browser', async () => {
    environment = await provideBrowser();
    return true;
  });
  // Some of the first drive a browser from outside, on pages that are built and served as they are delivered.
  await step('tests in Node', () => runTests('node', environment));
  await step('tests in a browser', () => runTests('browser', environment));
  for (const [project, name] of await provideOtherBrowsers()) {
    await step(`walk through the main job in ${name}`, () => runTests(project));
  }
}

console.log(`\n${summary.join('\n')}\n\n${closingLine(counts)}`);
process.exitCode = counts.failed === 0 ? 0 : 1;
