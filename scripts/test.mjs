// Installs what is missing, a browser included, and checks everything; with `--deep` also what is slow by nature.
// The last line is `N passed, N failed, N skipped`.
import { join } from 'node:path';
import { closingLine, readClosingLine, readFailedLine, readFlakyLine } from './closing-line.mjs';
import { ensurePackages } from './ensure-packages.mjs';
import { projectFolder } from './project-folder.mjs';
import { provideBrowser } from './provide-browser.mjs';
import { provideOtherBrowsers } from './provide-other-browsers.mjs';
import { provideSpreadsheetProgram } from './provide-spreadsheet-program.mjs';
import { runNpm, runProgram } from './run-program.mjs';

const counts = { passed: 0, failed: 0, skipped: 0 };
/** @type {string[]} */
const summary = [];
/** Tests that passed on another try than the first. @type {string[]} */
const flaky = [];
/** Tests that failed, with why. @type {string[]} */
const failures = [];
const isDeep = process.argv.includes('--deep');
/** More of them are a failure. */
const MOST_FLAKY = 2;

/**
 * Runs one step and notes its time. A step that fails counts as one failure, unless it counted its own.
 *
 * @param {string} name
 * @param {() => Promise<boolean>} run
 * @param {() => number} [counted] failures that it has counted so far
 */
async function step(name, run, counted = () => 0) {
  console.log(`\n--- ${name}`);
  const before = counted();
  const startMs = performance.now();
  const succeeded = await run().catch((/** @type {unknown} */ error) => {
    console.error(error instanceof Error ? error.message : error);
    return false;
  });
  if (!succeeded && counted() === before) counts.failed += 1;
  const seconds = ((performance.now() - startMs) / 1000).toFixed(1);
  summary.push(`${succeeded ? 'ok    ' : 'FAILED'}  ${seconds.padStart(6)} s  ${name}`);
  return succeeded;
}

/** @param {string} name a command of npm */
const command = (name) => step(name, () => runNpm(['run', '--silent', name]));

/** @returns {Promise<boolean>} whether `dist/` holds what was built now */
async function checkBuild() {
  await command('imports');
  const built = await command('build');
  await command('size');
  if (isDeep) await command('package');
  // They need no page, and go on while style and types are checked.
  await testStep('tests in Node', 'node');
  return built;
}

/**
 * Runs one project of tests, and adds up what its closing line says.
 *
 * @param {string} name
 * @param {string} project
 * @param {Record<string, string>} [environment]
 */
function testStep(name, project, environment = {}) {
  let failed = 0;
  const onLine = (/** @type {string} */ line) => {
    const test = readFlakyLine(line);
    if (test !== undefined) flaky.push(test);
    const failure = readFailedLine(line);
    if (failure !== undefined) failures.push(failure);
    const read = readClosingLine(line);
    if (!read) return true;
    counts.passed += read.passed;
    counts.failed += read.failed;
    failed += read.failed;
    counts.skipped += read.skipped;
    return false;
  };
  const vitest = 'node_modules/vitest/vitest.mjs';
  const run = () => runProgram(process.execPath, [vitest, 'run', '--project', project], { environment, onLine });
  return step(name, run, () => failed);
}

if (await step('packages', async () => (await ensurePackages(), true))) {
  const [built] = await Promise.all([checkBuild(), command('lint')]);
  /** @type {Record<string, string>} */
  let environment = {};
  await step('a browser', async () => {
    environment = { ...await provideBrowser() };
    return true;
  });
  if (built) environment.BUILT_FOLDER = join(projectFolder, 'dist');
  await testStep('pages as they are delivered', 'pages', environment);
  await testStep('tests in a browser', 'browser*', environment);
  if (isDeep) {
    await testStep('deep tests', 'deep*', environment);
    if (await provideSpreadsheetProgram()) {
      await testStep('workbooks in a spreadsheet program', 'spreadsheet program');
    }
    for (const [project, name] of await provideOtherBrowsers()) {
      await testStep(`walk through the main job in ${name}`, project);
    }
  }
}

if (flaky.length > 0) {
  console.log(`\nFlaky, ${flaky.length} passed on another try than the first:\n${flaky.join('\n')}`);
  if (flaky.length > MOST_FLAKY) {
    counts.failed += 1;
    summary.push(`FAILED            more than ${MOST_FLAKY} flaky tests`);
  }
}
if (failures.length > 0) console.log(`\nFailed:\n${failures.join('\n')}`);
console.log(`\n${summary.join('\n')}\n\n${closingLine(counts)}`);
process.exitCode = counts.failed === 0 ? 0 : 1;
