import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { fork, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { projectFolder } from '../project-folder.mjs';
import type { Mutation } from './find-mutations.ts';
import type { Answer, Ask } from './run-tests.ts';

const COPIED = [
  'src', 'components', 'tests', 'data', 'scripts', 'examples', 'package.json', 'tsconfig.json', 'README.md',
];

/** A copy of the project whose files are changed one at a time, and a process that runs its tests. */
export class ProjectCopy {
  readonly #folder = mkdtempSync(join(tmpdir(), 'mutants-'));
  #runner: ChildProcess | undefined;
  /** Files that are others than the runner knows them. */
  readonly #changed = new Set<string>();

  constructor() {
    for (const name of COPIED) cpSync(join(projectFolder, name), join(this.#folder, name), { recursive: true });
    symlinkSync(join(projectFolder, 'node_modules'), join(this.#folder, 'node_modules'), 'dir');
  }

  /** Time of each of some test files as they are [ms], the shortest first. @throws when one of them fails. */
  async times(tests: readonly string[]): Promise<Map<string, number>> {
    const answer = await this.#run(tests, 900_000);
    if (answer?.passed !== true) {
      throw new Error(`The tests do not pass as the project is: ${answer?.problem ?? 'they take too long'}`);
    }
    const times = tests.map((file) => [file, answer.times[this.#place(file)]!] as const);
    return new Map(times.sort(([, one], [, other]) => one - other));
  }

  /** Whether some of the test files notice a change, by failing or by not coming to an end in time. */
  async notices(
    { file, start, end, text }: Mutation, tests: readonly string[], milliseconds: number
  ): Promise<boolean> {
    const place = this.#place(file);
    const code = readFileSync(place, 'utf8');
    writeFileSync(place, code.slice(0, start) + text + code.slice(end));
    this.#changed.add(place);
    try {
      const answer = await this.#run(tests, milliseconds);
      return answer?.passed !== true;
    } finally {
      writeFileSync(place, code);
      this.#changed.add(place);
    }
  }

  remove(): void {
    this.#runner?.kill('SIGKILL');
    rmSync(this.#folder, { recursive: true, force: true, maxRetries: 5 });
  }

  #place(file: string): string {
    return join(this.#folder, file);
  }

  /** What came of the tests; `undefined` when they did not come to an end, after which the process is another one. */
  async #run(tests: readonly string[], milliseconds: number): Promise<Answer | undefined> {
    const runner = this.#runner ??= await startRunner(this.#folder);
    const ask: Ask = { changed: [...this.#changed], tests: tests.map((file) => this.#place(file)) };
    this.#changed.clear();
    const ended = new AbortController();
    const answered = once(runner, 'message', ended) as Promise<[Answer]>;
    const exited = once(runner, 'exit', ended);
    runner.send(ask);
    const answer = await Promise.race([
      answered.then(([it]) => it), exited.then(() => undefined), setTimeout(milliseconds, undefined, ended),
    ]);
    for (const left of [answered, exited]) left.catch(() => undefined);
    ended.abort();
    if (answer === undefined) {
      runner.kill('SIGKILL');
      this.#runner = undefined;
    }
    return answer;
  }
}

async function startRunner(folder: string): Promise<ChildProcess> {
  const runner = fork(join(import.meta.dirname, 'run-tests.ts'), [folder], {
    execArgv: ['--import', 'tsx'], cwd: folder, stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
  });
  await once(runner, 'message');
  return runner;
}
