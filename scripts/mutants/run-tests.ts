// Runs tests in a copy of the project again and again, as it is told; a process of its own, which can be ended where a
// changed loop has no end.
import { createVitest, type TestModule, type Vitest } from 'vitest/node';

/** What is asked: to run these test files, now that some source files are others than before. */
export interface Ask {
  readonly changed: readonly string[];
  readonly tests: readonly string[];
}

export interface Answer {
  readonly passed: boolean;
  /** What went wrong first, with its test. */
  readonly problem: string | undefined;
  /** Time of each test file [ms]. */
  readonly times: Readonly<Record<string, number>>;
}

const root = process.argv[2]!;
// Random tests that many times; the mutants make up for it.
process.env.RUNS = '12';

const vitest: Vitest = await createVitest('test', {
  root, config: false, watch: false, bail: 1, include: ['tests/**/*.test.ts'], testTimeout: 120_000,
  setupFiles: ['tests/support/seed.ts', 'src/engine/engine-at-once.define.ts'],
  pool: 'threads', maxWorkers: 1, fileParallelism: false, reporters: [{}],
  sequence: { sequencer: class { sort = <T>(files: T[]) => files; shard = <T>(files: T[]) => files; } },
}, { server: { watch: null }, logLevel: 'silent' });
await vitest.standalone();

function problemOf(modules: readonly TestModule[]): string | undefined {
  for (const module of modules) {
    for (const { message } of module.errors()) return `${module.relativeModuleId}: ${message}`;
    for (const test of module.children.allTests('failed')) {
      return `${module.relativeModuleId}: ${test.fullName}: ${test.result().errors?.[0]?.message}`;
    }
  }
  return undefined;
}

process.on('message', ({ changed, tests }: Ask) => {
  void (async () => {
    for (const file of changed) vitest.invalidateFile(file);
    const project = vitest.projects[0]!;
    const { testModules: everAsked, unhandledErrors } = await vitest.runTestSpecifications(
      tests.map((file) => project.createSpecification(file)),
    );
    // Those of earlier runs too, as they were then.
    const testModules = everAsked.filter(({ moduleId }) => tests.includes(moduleId));
    const answer: Answer = {
      passed: unhandledErrors.length === 0 && testModules.every((module) => module.ok()),
      problem: problemOf(testModules) ?? unhandledErrors.map(String)[0],
      times: Object.fromEntries(testModules.map((module) => {
        const { collectDuration, duration, setupDuration, prepareDuration } = module.diagnostic();
        return [module.moduleId, collectDuration + duration + setupDuration + prepareDuration];
      })),
    };
    process.send!(answer);
  })();
});
process.on('disconnect', () => { void vitest.close().finally(() => { process.exit(); }); });
process.send!('ready');
