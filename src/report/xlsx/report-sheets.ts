import type { Report, ReportScope, ReportSection } from '../model/index.ts';
import { message, type Words } from '../../words/index.ts';
import type { CellStyles } from './cell-styles.ts';
import type { ChangedRows } from './changed-rows.ts';
import { worksheetName, type CellToWrite, type Worksheet } from './package-parts.ts';
import { quoted } from './quoted.ts';

const STANDS = message('Inputs were changed in this workbook: this worksheet stands as it was issued. Recalculate.');
/** Name of the worksheet, not shown, that holds the schedule. */
export const EMBEDDED_SHEET = 'Schedule data';
/** Longest text of a cell, as the format allows 32,767 characters. */
const LONGEST = 32_000;

/** The first worksheet: title block, what was issued, cautions, and how to read the workbook. */
export function frontSheet(
  { words, scope: { panel }, title, subject, details, issue, cautions }: Report, changed: ChangedRows,
  styles: CellStyles,
): Worksheet {
  const usual = styles.number({ wraps: true });
  const line = (...texts: readonly string[]) => texts.map((value): CellToWrite => ({ value, style: usual }));
  return {
    name: worksheetName(title), widths: [26, 100],
    rows: [
      [
        { value: title, style: styles.number({ font: 'title' }) },
        { value: subject, style: styles.number({ font: 'title' }) },
      ],
      // In the lines that the formulas of other worksheets read.
      ...[
        words.say('Rows that were changed here since'), words.say('Of these in what no status here follows'),
        words.say('Rows that came in and are not counted'), words.say('Runs whose current is to be recalculated'),
      ].map((text, place): CellToWrite[] => [
        { value: text, style: usual },
        { value: 0, formula: changed.counts()[place]!, style: styles.number({ isComputed: true, isLeft: true }) },
      ]),
      ...details.map((detail) => line(detail.title, detail.text)),
      line(words.say('Generated'), issue.generated), line(words.say('Software'), issue.software),
      line(words.say('SHA-256 of the schedule'), issue.digest),
      line(''),
      ...cautions.map((text) => line(words.say('Caution'), text)),
      line(''),
      line(
        words.say('How to read it'),
        words.say('Tinted figures are formulas: change a count, a draw or a diversity, and the totals follow.')
      ),
      line(
        '',
        words.say(
          'A figure under a heading with * stands as it was calculated. As soon as an input is changed here, it says “recalculate”: open this file with the software that wrote it.'
        )
      ),
      line(
        '',
        words.say(
          'Of a figure with ≥ or ≤ a part is not known: it is at least or at most so much.'
        )
      ),
      line(
        '',
        words.say(
          'The empty rows at the end of the devices and outputs take more of them, which are counted.'
        )
      ),
      line(
        '',
        words.say(
          'An italic figure is a default or comes from its type. A formula that a person typed stands as its value.'
        )
      ),
      line(
        '',
        words.say(
          'Other sheets, such as the findings, stand as they were issued. The schedule is kept unseen in this file as it was issued; what is changed here is offered as changes of it when the file is opened with that software.'
        )
      ),
      ...panel === undefined ? [] : [line(
        '', words.say('Rows of other panels are hidden, as totals count them; show them as any hidden rows.')
      )],
    ],
  };
}

/** A section of the load table as a worksheet, its tables one under another. */
export function sectionSheet(
  { title, sentences, tables }: ReportSection, changed: ChangedRows, words: Words, styles: CellStyles,
): Worksheet {
  const heading = styles.number({ font: 'heading', wraps: true });
  const usual = styles.number({ wraps: true });
  const line = (texts: readonly string[], style: number) => texts.map((value): CellToWrite => ({ value, style }));
  const rows = [
    line([title], styles.number({ font: 'title' })),
    [{ value: null, formula: `IF(${changed.isAny},${quoted(words.say(STANDS))},"")`, style: styles.number({}) }],
    ...sentences.map((text) => line([text], styles.number({}))),
    ...tables.flatMap((table) => [
      line([], usual),
      ...(table.title === undefined ? [] : [line([table.title], styles.number({ font: 'heading' }))]),
      line(table.columns.map((column) => column.title), heading),
      ...table.rows.map(({ cells }) => line(cells.map(({ text }) => text), usual)),
    ]),
  ];
  const count = Math.max(1, ...tables.map(({ columns }) => columns.length));
  const widths = Array.from({ length: count }, (_column, index) =>
    Math.min(
      70, Math.max(8, ...tables.flatMap((table) => table.rows.map(({ cells }) => (cells[index]?.text.length ?? 0) + 1)))
    ));
  return { name: worksheetName(title), rows, widths };
}

/**
 * The schedule as JSON, in a worksheet that is not shown, so that the workbook can be read back without loss. Other
 * signs than those of ASCII are written as JSON escapes: no program that saves the workbook then changes them, and none
 * is cut in two.
 */
export function embeddedSheet(json: string, scope: ReportScope, styles: CellStyles): Worksheet {
  const plain = asPlain(json);
  const pieces = Array.from({ length: Math.ceil(plain.length / LONGEST) }, (_piece, index) =>
    plain.slice(index * LONGEST, (index + 1) * LONGEST));
  // How the workbook was made stands beside the first piece.
  const made = asPlain(JSON.stringify(scope));
  const style = styles.number({});
  return {
    name: EMBEDDED_SHEET, widths: [], isHidden: true,
    rows: pieces.map((piece, place) => (place === 0 ? [piece, made] : [piece]).map((value) => ({ value, style }))),
  };
}

const asPlain = (json: string): string => json.replace(
  /[^\x20-\x7e]|_(?=x)/g, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`
);
