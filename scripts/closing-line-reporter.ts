import type { Reporter, SerializedError, TestModule } from 'vitest/node';
import { closingLine, failedLine, flakyLine } from './closing-line.mjs';

/**
 * Ends a run of tests with one plain line, `N passed, N failed, N skipped`; an error outside a test is a failure. A
 * line for each test that failed or passed on another try than the first comes before it.
 */
export default class ClosingLineReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly SerializedError[]): void {
    const counts = { passed: 0, failed: errors.length, skipped: 0 };
    for (const module of modules) {
      let failedTests = 0;
      for (const test of module.children.allTests()) {
        const { state, errors: reasons = [] } = test.result();
        const name = `${module.relativeModuleId} > ${test.fullName}`;
        counts[state === 'pending' ? 'skipped' : state] += 1;
        if (state === 'failed') {
          failedTests += 1;
          console.log(failedLine(name, reasons[0]?.message));
        }
        if (test.diagnostic()?.flaky === true) console.log(flakyLine(name));
      }
      // A file that could not be read, or a hook that threw, has failed although no test of it did.
      if (failedTests === 0 && module.state() === 'failed') {
        counts.failed += 1;
        console.log(failedLine(module.relativeModuleId, module.errors()[0]?.message));
      }
    }
    for (const error of errors) console.log(failedLine('outside of a test', error.message));
    console.log(closingLine(counts));
  }
}
