/** Input that the command cannot use; `lines` say why, each with what to do. */
export class Refusal extends Error {
  readonly lines: readonly string[];

  constructor(lines: readonly string[]) {
    super(lines.join('\n'));
    this.lines = lines;
  }
}

/**
 * Runs what a command does.
 * @returns its exit code; 2 when it refuses its input, the reasons going to `warn`.
 */
export async function refusing(warn: (line: string) => void, run: () => Promise<0 | 1 | 2>): Promise<0 | 1 | 2> {
  try {
    return await run();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    for (const line of error.lines) warn(line);
    return 2;
  }
}
