import { readFile, writeFile } from 'node:fs/promises';
import type { Unreadable } from '../exchange/index.ts';
import { fileText, type FileText } from '../report/index.ts';
import type { Words } from '../words/index.ts';
import { Refusal } from './refusal.ts';
import type { Streams } from './streams.ts';

/**
 * Reads the bytes of a file.
 * @throws Refusal when it is not there.
 */
export async function readBytes(name: string): Promise<Uint8Array> {
  return readFile(name).catch((error: unknown) => {
    const { code, message } = error as NodeJS.ErrnoException;
    const reason = code === 'ENOENT' ? 'there is no such file' : message;
    throw new Refusal([`${name}: ${reason}. Check the name and the folder.`]);
  });
}

/**
 * Reads a file of text, or the schedule that a load table in a workbook carries.
 * @throws Refusal when it is not there or holds neither.
 */
export async function readText(name: string, words: Words): Promise<FileText> {
  const read = await fileText(name, await readBytes(name), words);
  if (!read.ok) throw new Refusal(problemLines(name, read));
  return read;
}

/** What is wrong with a file, a line for each problem: its name, line, column and what to do. */
export function problemLines(name: string, { problems, total }: Unreadable): string[] {
  const lines = problems.map(({ line, column, message }) =>
    `${[name, line, column].filter((part) => part !== undefined).join(':')}: ${message}`);
  return total > problems.length ? [...lines, `${name}: and ${total - problems.length} more problems.`] : lines;
}

/**
 * Writes to a file, or to `out` where none is named.
 * @throws Refusal when the file cannot be written.
 */
export async function writeText(text: string, output: string | undefined, out: Streams['out']): Promise<void> {
  if (output === undefined) out(text);
  else await writeBytes(new TextEncoder().encode(text), output);
}

/**
 * Writes to a file.
 * @throws Refusal when it cannot be written.
 */
export async function writeBytes(bytes: Uint8Array, output: string): Promise<void> {
  try {
    await writeFile(output, bytes);
  } catch (error) {
    throw new Refusal([`${output}: cannot be written (${(error as Error).message}). Name another file with --output.`]);
  }
}
