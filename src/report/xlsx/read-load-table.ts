import { readSchedule, unreadable, type Unreadable } from '../../exchange/index.ts';
import { openWorkbook, type Workbook } from '../../exchange/workbook/index.ts';
import { LoadSchedule } from '../../load-schedule.ts';
import { SCHEMA, SHEET_NAMES } from '../../schedule/index.ts';
import { ENGLISH, LANGUAGES, loadWords, message, type Words } from '../../words/index.ts';
import { notCompared, readScope, type Verification } from '../verify/verification.ts';
import { compareWorksheets } from './compare-worksheets.ts';
import { editsOf, type WorksheetEdits } from './edits.ts';
import { worksheetName } from './package-parts.ts';
import { EMBEDDED_SHEET } from './report-sheets.ts';

const NONE = message(
  'The workbook holds no schedule. Open a load table as it was written here, save a sheet as CSV, or read a list of counts with Takeoff.'
);

/** The schedule that a load table in a workbook carries. */
export interface CarriedSchedule {
  readonly ok: true;
  /** The schedule as JSON, as it was issued. */
  readonly text: string;
  /** How the worksheets compare with it: inputs that were changed since, else figures. */
  readonly verification: Verification;
  /** Edits of the worksheets that rows bring into the schedule by tag, and sentences on those that none brings. */
  readonly edited?: Pick<WorksheetEdits, 'offered' | 'left'>;
}

/**
 * Reads a load table in a workbook, as it was written here or saved by another program since.
 * @param words the language of what is said.
 */
export async function readLoadTable(bytes: Uint8Array, words: Words = ENGLISH): Promise<CarriedSchedule | Unreadable> {
  const workbook = openWorkbook(bytes, words);
  if (!workbook.ok) return workbook;
  const cells = workbook.cells(EMBEDDED_SHEET) ?? [];
  if ('ok' in cells) return cells;
  const text = cells.filter(({ column }) => column === 0).map(({ value }) => value ?? '').join('');
  if (text === '') return unreadable('not-a-schedule', '', words.say(NONE));
  const read = readSchedule(text, words);
  // What is wrong with the schedule is said by whoever reads it.
  if (!read.ok) return { ok: true, text, verification: notCompared('carriesNone', words) };
  const written = await wordsOf(workbook, words);
  if (written === undefined) return { ok: true, text, verification: notCompared('unfetched', words) };
  const schedule = new LoadSchedule(read.content, { words: written });
  try {
    if (!await schedule.formulasReady()) return { ok: true, text, verification: notCompared('unfetched', words) };
    const edits = editsOf(workbook, schedule, read.version, words);
    if (edits.sentences.length > 0) {
      return { ok: true, text, edited: edits, verification: { differs: edits.sentences, unverified: [] } };
    }
    const made = cells.find(({ row, column }) => row === 0 && column === 1)?.value;
    const scope = typeof made === 'string' ? readScope(made) : undefined;
    const verification = scope === undefined ? notCompared('unsaid', words)
      : compareWorksheets(workbook, schedule, scope, words);
    return { ok: true, text, verification };
  } finally {
    schedule.dispose();
  }
}

/** The words in which worksheets were written, by the names of the sheets; `undefined` where they cannot be loaded. */
async function wordsOf({ sheets }: Workbook, words: Words): Promise<Words | undefined> {
  const isNamed = (title: string) => sheets.includes(worksheetName(title));
  const fit = (each: Words) => SHEET_NAMES.filter((sheet) => isNamed(each.text(SCHEMA[sheet].title))).length;
  if (isNamed(words.say('Load table'))) return words;
  try {
    const all = await Promise.all(LANGUAGES.map(loadWords));
    return [words, ...all].reduce((best, each) => fit(each) > fit(best) ? each : best);
  } catch {
    // A language that was not spoken before comes over the network, which may be gone.
    return undefined;
  }
}
