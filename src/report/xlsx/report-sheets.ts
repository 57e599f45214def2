import type { Report, ReportScope, ReportSection } from '../model/index.ts';
import type { CellStyles } from './cell-styles.ts';
import { worksheetName, type CellToWrite, type Worksheet } from './package-parts.ts';

/** Name of the worksheet, not shown, that holds the schedule. */
export const EMBEDDED_SHEET = 'Schedule data';
/** Longest text of a cell, as the format allows 32,767 characters. */
const LONGEST = 32_000;

/** The first worksheet: title block, what was issued, cautions, and how to read the workbook. */
export function frontSheet(
  { words, scope: { panel }, title, subject, details, issue, cautions }: Report, styles: CellStyles,
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
          'A figure under a heading with * stands as it was calculated and follows no change here, as every figure of the runs does.'
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
          'Other sheets, such as the findings, stand as they were issued. The schedule is kept unseen in this file as it was issued; what is changed here is not in it.'
        )
      ),
      ...panel === undefined ? [] : [line(
        '', words.say('Rows of other panels are hidden, as totals count them; show them as any hidden rows.')
      )],
    ],
  };
}

/** A section of the load table as a worksheet, its tables one under another. */
export function sectionSheet({ title, sentences, tables }: ReportSection, styles: CellStyles): Worksheet {
  const heading = styles.number({ font: 'heading', wraps: true });
  const usual = styles.number({ wraps: true });
  const line = (texts: readonly string[], style: number) => texts.map((value): CellToWrite => ({ value, style }));
  const rows = [
    line([title], styles.number({ font: 'title' })),
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
