import { FORMS, PAPERS, SECTION_NAMES, type Form, type Paper, type SectionName } from '../report/index.ts';
import { SHEET_NAMES, type SheetName } from '../schedule/index.ts';
import { calledAs } from './called-as.ts';
import { oneOf, oneOrNone, refuseNoFile, refuseNone, type Given } from './command.ts';
import { CAUTION, INPUT, type Help } from './help-text.ts';
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
  /** What a document shows is held against the schedule that it carries, instead of writing a table. */
  readonly verify: boolean;
  /** The panel that is written; all of them by default. */
  readonly panel: string | undefined;
  /** What the load table is for; as the schedule says where it is not said. */
  readonly form: Form | undefined;
  /** Sections that are left out; as the schedule says where it is not said. */
  readonly without: readonly SectionName[] | undefined;
  /** Pictures of all runs. */
  readonly allPictures: boolean;
  /** An older schedule; what has changed since becomes a part of the load table. */
  readonly since: string | undefined;
  /** Places of figures to be explained, as SHEET:ROW:KEY. */
  readonly explain: readonly string[];
}

export const HELP: Help = {
  name: 'table', does: 'Works out a load schedule and writes it as a table.',
  forms: ['INPUT… [--sheet NAME] [--format json|csv|html|pdf|xlsx] [--panel NAME] [--output FILE] [--check]'],
  words: {
    INPUT,
    '--sheet NAME': `only this sheet: ${SHEET_NAMES.join(', ')}`,
    '--format': 'json (default): every key, defaults filled in, results unrounded, findings. csv: one sheet, as the page '
      + 'writes and reads it; with --whole the load table. html: the load table, for reading and printing; it carries '
      + 'the schedule. pdf: the same as a document, where a browser is installed; needs --output. xlsx: the load table '
      + 'as a workbook with live formulas; needs --output, carries the schedule',
    '--panel NAME': 'only what belongs to this enclosure, and the lists; figures are those of the whole schedule. In '
      + 'xlsx the rows of other panels are hidden, as totals count them; a sheet as csv goes back by the command update',
    '--paper SIZE': `lay it out for ${PAPERS.join(', ')}`,
    '--form': 'what the load table is for, with html, pdf and csv --whole: full has everything; short is what is read and '
      + 'signed; site is what the panel is wired, set and tested by. Without it, and without --without, as was chosen on the page, else full',
    '--without NAME': `leave this section out, which the load table says: ${SECTION_NAMES.join(', ')}. May be given several times`,
    '--all-pictures': 'pictures of runs that are within their limits too',
    '--since OLD': 'add what has changed since an older schedule, to html, pdf, xlsx and csv --whole',
    '--explain SHEET:ROW:KEY': 'add how a figure comes about, to json; ROW is a number from 1, or a tag. May be given '
      + 'several times',
    '--check': 'exit with 1 when something is over its limit, even if that was accepted',
    '--pass-accepted': 'let --check pass what was accepted',
    '--check-digest HEX': 'say whether these digits, printed on each page (16 or more of them), are those of the '
      + 'schedule; exit with 1 when they are not',
    '--verify': 'make a load table in html or xlsx anew of the schedule that it carries, and name every place where what '
      + 'it shows, its digest and that schedule do not agree; exit with 1 when there is one, or when a part could not be '
      + 'compared',
  },
  said: 'the load table, findings and explanations',
  about: ['Keys, and a sheet as csv, are the same in every language.'],
  one: 'as said at --check, --check-digest and --verify',
  caution: CAUTION,
};

export const OPTIONS = {
  sheet: { type: 'string' },
  panel: { type: 'string' },
  format: { type: 'string', default: 'json' },
  paper: { type: 'string' },
  whole: { type: 'boolean', default: false },
  check: { type: 'boolean', default: false },
  'pass-accepted': { type: 'boolean', default: false },
  'check-digest': { type: 'string' },
  verify: { type: 'boolean', default: false },
  form: { type: 'string' },
  without: { type: 'string', multiple: true, default: [] as string[] },
  'all-pictures': { type: 'boolean', default: false },
  since: { type: 'string' },
  explain: { type: 'string', multiple: true, default: [] as string[] },
} as const;

/**
 * Reads the words behind the command.
 * @throws Refusal for a word that it does not know.
 */
export function readOptions({ values, positionals }: Given<typeof OPTIONS>): TableOptions {
  refuseNone(positionals, HELP.name);
  const format = oneOf('format', values.format, FORMATS);
  if (TO_FILE.includes(format) && values['check-digest'] === undefined && !values.verify) refuseNoFile(format, values.output, 'load-table');
  if (values.explain.length > 0 && format !== 'json') {
    throw new Refusal(
      [`--explain goes with --format json, not with ${format}. The load table explains an example of every figure.`]
    );
  }
  const unfit = [
    values.whole && format !== 'csv'
      ? '--whole goes with --format csv: the other formats are whole, or take --sheet.' : '',
    values.paper !== undefined && format !== 'html' && format !== 'pdf'
      ? '--paper goes with --format html and pdf.' : '',
    values.since !== undefined && (format === 'json' || (format === 'csv' && !values.whole))
      ? `--since goes with --format html, pdf, xlsx and csv --whole; ${calledAs('changes')} OLD NEW gives the changes alone.`
      : '',
    (values.form !== undefined || values.without.length > 0 || values['all-pictures'])
      && (format === 'json' || format === 'xlsx' || (format === 'csv' && !values.whole) || values.sheet !== undefined)
      ? '--form, --without and --all-pictures go with the whole load table: --format html, pdf and csv --whole.' : '',
    values.sheet !== undefined && (format === 'xlsx' || values.whole)
      ? '--sheet does not go with the whole load table. Leave one of them out.' : '',
  ].filter((line) => line !== '');
  if (unfit.length > 0 && values['check-digest'] === undefined) throw new Refusal(unfit);
  return {
    inputs: positionals,
    sheet: oneOrNone('sheet', values.sheet, SHEET_NAMES),
    format,
    output: values.output,
    panel: values.panel,
    paper: oneOrNone('paper', values.paper, PAPERS),
    form: oneOrNone('form', values.form, FORMS),
    without: values.without.length === 0 ? undefined : values.without.map((name) => oneOf('without', name, SECTION_NAMES)),
    allPictures: values['all-pictures'],
    whole: values.whole,
    check: values.check,
    passAccepted: values['pass-accepted'],
    checkDigest: values['check-digest'],
    verify: values.verify,
    since: values.since,
    explain: values.explain,
  };
}

