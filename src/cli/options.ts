import { PAPERS, type Paper } from '../report/index.ts';
import { SHEET_NAMES, type SheetName } from '../schedule/index.ts';
import { calledAs } from './called-as.ts';
import { parseWords } from './parse-words.ts';
import { Refusal } from './refusal.ts';

const FORMATS = ['json', 'csv', 'html', 'pdf', 'xlsx'] as const;
/** Formats that are no text and go to a file. */
const TO_FILE: readonly string[] = ['pdf', 'xlsx'];

/** What the words behind the command ask for. */
export interface TableOptions {
  readonly inputs: readonly string[];
  readonly sheet: SheetName | undefined;
  readonly format: (typeof FORMATS)[number];
  readonly output: string | undefined;
  /** The paper that a page or a document is laid out for. */
  readonly paper: Paper | undefined;
  /** CSV of the whole load table rather than of one sheet. */
  readonly whole: boolean;
  readonly check: boolean;
  /** Findings that somebody accepted do not count at `check`. */
  readonly passAccepted: boolean;
  /** Digits that are held against those of the schedule, instead of writing a table. */
  readonly checkDigest: string | undefined;
  /** The panel that is written; all of them by default. */
  readonly panel: string | undefined;
  /** An older schedule; what has changed since becomes a part of the load table. */
  readonly since: string | undefined;
  /** Places of figures to be explained, as SHEET:ROW:KEY. */
  readonly explain: readonly string[];
  /** The language of what is written for persons. */
  readonly lang: string | undefined;
}

export const HELP = `Works out a load schedule and writes it as a table.

  ${calledAs('table')} INPUT… [--sheet NAME] [--format json|csv|html|pdf|xlsx] [--output FILE] [--check]

INPUT          a schedule (.schedule.json, or a load table in HTML or XLSX), or sheets in CSV, each known
               by its headings; a sheet in CSV takes the place of that sheet of the schedule
--sheet NAME   only this sheet: ${SHEET_NAMES.slice(0, 5).join(', ')},
               ${SHEET_NAMES.slice(5).join(', ')}
--format       json (default): every key, defaults filled in, results unrounded, findings
               csv: one sheet, as the page writes and reads it; with --whole the load table
               html: the load table, for reading and printing; it carries the schedule
               pdf: the same as a document, where a browser is installed; needs --output
               xlsx: the load table as a workbook with live formulas; needs --output, carries the schedule
--panel NAME   only what belongs to this enclosure, and the lists; not with xlsx
--paper SIZE   lay it out for ${PAPERS.join(', ')}
--since OLD    add what has changed since an older schedule, to html, pdf, xlsx and csv --whole
--explain SHEET:ROW:KEY   add how a figure comes about, to json; ROW is a number from 1, or a tag.
               May be given several times
--lang TAG     language of the load table, of findings and explanations, and of files that are read beside
               English: en (default), de, fr; keys, and a sheet as csv, stay as they are
--output FILE  write to a file instead of the terminal
--check        exit with 1 when something is over its limit, even if that was accepted
--pass-accepted   let --check pass what was accepted
--check-digest HEX   say whether these digits, printed on each page (16 or more of them), are
               those of the schedule; exit with 1 when they are not
--help         this text

Exit code: 0; 1 as said at --check and --check-digest; 2 for bad input, which is named by file, line and column.

The figures support design by a competent person and never replace it. Local wiring rules, the
makers' instructions and licensed practice decide.
`;

const OPTIONS = {
  sheet: { type: 'string' },
  panel: { type: 'string' },
  format: { type: 'string', default: 'json' },
  output: { type: 'string' },
  paper: { type: 'string' },
  whole: { type: 'boolean', default: false },
  check: { type: 'boolean', default: false },
  'pass-accepted': { type: 'boolean', default: false },
  'check-digest': { type: 'string' },
  since: { type: 'string' },
  explain: { type: 'string', multiple: true, default: [] as string[] },
  lang: { type: 'string' },
  help: { type: 'boolean' },
} as const;

const HINT = `${calledAs('table')} --help says what there is.`;

/**
 * Reads the words behind the command.
 * @throws Refusal for a word that it does not know.
 */
export function readOptions(words: readonly string[]): TableOptions | 'help' {
  const { values, positionals } = parseWords(words, OPTIONS, HINT);
  if (values.help === true) return 'help';
  if (positionals.length === 0) throw new Refusal([`No input is named. Name a schedule or sheets in CSV; ${HINT}`]);
  const format = oneOf(FORMATS, values.format, 'format');
  if (TO_FILE.includes(format) && values.output === undefined && values['check-digest'] === undefined) {
    throw new Refusal(
      [
        `--format ${format} is no text for the terminal. Name a file with --output, as in --output load-table.${format}.`,
      ]
    );
  }
  if (values.explain.length > 0 && format !== 'json') {
    throw new Refusal(
      [`--explain goes with --format json, not with ${format}. The load table explains an example of every figure.`]
    );
  }
  const unfit = [
    values.whole && format !== 'csv'
      ? '--whole goes with --format csv: the other formats are whole, or take --sheet.' : '',
    values.panel !== undefined && (format === 'xlsx' || (format === 'csv' && !values.whole))
      ? '--panel goes with --format json, html, pdf and csv --whole, as a workbook and a sheet as csv are read back whole.' : '',
    values.paper !== undefined && format !== 'html' && format !== 'pdf'
      ? '--paper goes with --format html and pdf.' : '',
    values.since !== undefined && (format === 'json' || (format === 'csv' && !values.whole))
     
        ? `--since goes with --format html, pdf, xlsx and csv --whole; ${calledAs('changes')} OLD NEW gives the changes alone.`
        : '',
    values.sheet !== undefined && (format === 'xlsx' || values.whole)
      ? '--sheet does not go with the whole load table. Leave one of them out.' : '',
  ].filter((line) => line !== '');
  if (unfit.length > 0 && values['check-digest'] === undefined) throw new Refusal(unfit);
  return {
    inputs: positionals,
    sheet: values.sheet === undefined ? undefined : oneOf(SHEET_NAMES, values.sheet, 'sheet'),
    format,
    output: values.output,
    panel: values.panel,
    paper: values.paper === undefined ? undefined : oneOf(PAPERS, values.paper, 'paper'),
    whole: values.whole,
    check: values.check,
    passAccepted: values['pass-accepted'],
    checkDigest: values['check-digest'],
    since: values.since,
    explain: values.explain,
    lang: values.lang,
  };
}


function oneOf<Word extends string>(words: readonly Word[], word: string, option: string): Word {
  const found = words.find((each) => each === word);
  if (found === undefined) throw new Refusal([`--${option} ${word} is not known. Give one of ${words.join(', ')}.`]);
  return found;
}
