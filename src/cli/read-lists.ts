import { railVoltages } from '../exchange/index.ts';
import { readList, type ListRows } from '../exchange/update/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import type { SheetName } from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { problemLines, readText } from './files.ts';
import { Refusal } from './refusal.ts';
import type { Streams } from './streams.ts';

/**
 * Reads the lists of an office out of a file.
 * @param sheet the sheet that is wanted; by default every list of the file.
 * @throws Refusal where it cannot be read, or has none.
 */
export async function readLists(
  name: string, sheet: SheetName | undefined, schedule: LoadSchedule, warn: Streams['warn'],
): Promise<readonly ListRows[]> {
  const { words } = schedule;
  const file = await readText(name, words);
  const read = readList(file, sheet, railVoltages(schedule.content().sheets.supplies ?? []), words);
  if (!read.ok) throw new Refusal(problemLines(name, read));
  for (const note of [...file.notes, ...read.notes]) warn(`${name}: ${note}`);
  if (read.lists.length === 0) throw new Refusal([`${name}: ${noList(words)}`]);
  return read.lists;
}

function noList(words: Words): string {
  return words.say('It has no rows on the sheets that are taken. Name another file, or the sheet that is meant.');
}
