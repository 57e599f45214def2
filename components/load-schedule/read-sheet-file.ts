import { railVoltages, unreadable, type Problem } from '../../src/exchange/index.ts';
import { readList } from '../../src/exchange/update/read-list.ts';
import { replaceWithList } from '../../src/exchange/update/replace-list.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { SCHEMA, type SheetName } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import type { FileReading, ReadText } from './read-file.ts';

/**
 * Reads a CSV file, or that sheet of a schedule, whose rows replace those of its sheet.
 * @param sheet the sheet that it holds; by default the one whose headings it has.
 */
export function readSheetFile(
  file: ReadText, schedule: LoadSchedule, sheet?: SheetName,
): FileReading {
  const { words } = schedule;
  const content = schedule.content();
  const read = readList(file, sheet, railVoltages(content.sheets.supplies ?? []), words);
  if (!read.ok) return { ...read, problems: read.problems.map((problem) => withTakeoff(problem, words)) };
  const [list] = read.lists;
  if (list === undefined) {
    return unreadable('csv-empty', '', words.say('It has no rows on the sheet {sheet}. Choose another file.',
      { sheet: words.text(SCHEMA[sheet!].title) }));
  }
  const notes = [...file.notes ?? [], ...read.notes];
  const replaced = replaceWithList(content, list, file.name, words);
  return {
    ok: true, offer: { lists: [list], notes }, sheet: list.sheet, ...replaced, notes: [...notes, ...replaced.notes],
  };
}

/** Whoever has a takeoff may not know yet that it is read in a place of its own. */
function withTakeoff(problem: Problem, words: Words): Problem {
  return problem.code !== 'sheet-unrecognised' ? problem : {
    ...problem,
    message: words.say(
      '{problem} If it is a list of counts off drawings, read it with Takeoff.', { problem: problem.message }
    ),
  };
}
