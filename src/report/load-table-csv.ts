import Papa from 'papaparse';
import { guardText } from '../exchange/index.ts';
import type { Report, ReportTable } from './model/index.ts';

/**
 * The whole load table as CSV (RFC 4180), for spreadsheets: one table under another, with a blank line between. Figures
 * are written as they are printed. A text that a spreadsheet would run as a formula has an apostrophe in front.
 */
export function loadTableCsv({ words, title, subject, details, issue, cautions, sections }: Report): string {
  const head = [
    [title, subject], ...details.map((detail) => [detail.title, detail.text]),
    [words.say('Generated'), issue.generated], [words.say('Software'), issue.software], [
      words.say('SHA-256 of the schedule'), issue.digest,
    ],
    ...cautions.map((text) => [words.say('Caution'), text]),
  ];
  const lines = sections.flatMap((section) => [
    [], [section.title], ...section.sentences.map((text) => [text]), ...section.tables.flatMap(tableLines),
  ]);
  return `${Papa.unparse([...head, ...lines].map((line) => line.map(guardText)), { newline: '\r\n' })}\r\n`;
}

function tableLines({ title, sentence, columns, rows }: ReportTable): string[][] {
  return [
    ...(title === undefined ? [] : [[], [title, ...(sentence === undefined ? [] : [sentence])]]),
    columns.map((column) => column.title),
    ...rows.map(({ cells }) => cells.map(({ text }) => text)),
  ];
}
