/** Where a command writes: results to `out`, everything else, a line at a time, to `warn`. */
export interface Streams {
  readonly out: (text: string) => void;
  readonly warn: (line: string) => void;
}

/** Runs a command on the words that follow its name, and exits with its code. */
export async function runFromTerminal(
  command: (words: readonly string[], streams: Streams) => Promise<0 | 1 | 2>,
): Promise<void> {
  // A reader that has seen enough, such as `head`, closes the pipe; that is no fault.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => { if (error.code !== 'EPIPE') throw error; });

  process.exitCode = await command(process.argv.slice(2), {
    out: (text) => { process.stdout.write(text); },
    warn: (line) => { process.stderr.write(`${line}\n`); },
  });
}
