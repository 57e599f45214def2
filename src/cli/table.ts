import { runTable } from './run-table.ts';

// A reader that has seen enough, such as `head`, closes the pipe; that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => { if (error.code !== 'EPIPE') throw error; });

process.exitCode = await runTable(process.argv.slice(2), {
  out: (text) => { process.stdout.write(text); },
  warn: (line) => { process.stderr.write(`${line}\n`); },
});
