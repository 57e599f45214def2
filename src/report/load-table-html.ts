import { EMBEDDED_ID } from '../exchange/index.ts';
import type { Severity, Standing } from '../findings/index.ts';
import { breakable, leastWidth } from './heading-breaks.ts';
import { html, Markup } from './html.ts';
import { LOAD_TABLE_STYLES } from './load-table-styles.ts';
import {
  STATE_SHAPES, type Report, type ReportCell, type ReportColumn, type ReportRow, type ReportSection, type ReportTable,
} from './model/index.ts';
import { PICTURE_STYLES } from './pictures/index.ts';
import { pageStyles } from './page-styles.ts';
import type { Paper } from './paper.ts';
import { message, type Words } from '../words/index.ts';

/** What a load table as a page of HTML holds besides its tables. */
export interface HtmlOptions {
  /** The paper that it asks for when printed; by default the reader chooses. */
  readonly paper?: Paper | undefined;
  /** The schedule as JSON, put in unseen, so that the page can be read back without loss. */
  readonly schedule?: string | undefined;
  /** The page on which each section begins, as far as it is known, for contents in print, which else has none. */
  readonly pages?: readonly (number | undefined)[] | undefined;
}

/** Columns of no longer texts than this stay on one line where there is room for it. */
const SHORT = 32;
/** Headings that take more signs than these beside one another need smaller type on narrow paper. */
const LONG = 88;

/** How the tables are to be read. */
const LEGEND = message(
  'An italic figure is a default or comes from its type, an upright one was entered; ≥ and ≤ stand before figures that follow from a total in which rows are not known yet. Columns without any value, and those that hold nothing but their default, are left out; the assumptions name the defaults.'
);

/** What the digest covers, and how whoever receives the table makes sure of it. */
const DIGEST = message(
  'The SHA-256 covers every value, formula, acceptance and revision of the schedule; figures follow from these. Its first 16 digits tell whether a file is the one that this table was made of.'
);
const DIGEST_CARRIED = message(
  'The SHA-256 covers every value, formula, acceptance and revision of the schedule, which this page carries; figures follow from these. Whoever opens it as a schedule has all that it shows made anew and compared, its digits too; of a print, the first 16 digits tell whether a file is the one that it was made of.'
);

/** The load table as one HTML page for reading and printing, without scripts and without requests. */
export function loadTableHtml(report: Report, { paper, schedule, pages }: HtmlOptions = {}): string {
  const { words, title, subject, details, issue, cautions, sections } = report;
  const issued = [
    [words.say('Generated'), issue.generated], [words.say('Software'), issue.software], [
      words.say('SHA-256 of the schedule'), issue.digest,
    ],
  ] as const;
  return html`<!doctype html>
<html lang="${words.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${[title, subject].filter((part) => part !== '').join(' – ')}</title>
<style>${new Markup(LOAD_TABLE_STYLES + PICTURE_STYLES + pageStyles(report, paper))}</style>
</head>
<body>
<main class="${report.scope.form ?? 'full'}">
<h1>${title}</h1>
<dl>
${details.map(({ title: term, text }) => html`<div class="${text.length > 60 ? 'long' : 'short'}"><dt>${term}</dt><dd>${text === '' ? '–' : text}</dd></div>\n`)}
${issued.map(([term, text]) => html`<div class="${text.length > 60 ? 'issue long' : 'issue'}"><dt>${term}</dt><dd>${text}</dd></div>\n`)}
</dl>
<section class="cautions" aria-label="${words.say('Cautions')}">${cautions.map((text) => html`<p>${text}</p>`)}</section>
${sections.length < 4 ? '' : contents(report, pages)}
${sections.map((section) => sectionMarkup(section, words))}
</main>
<footer>
<p>${words.say(LEGEND)}</p>
<p>${words.say(schedule === undefined ? DIGEST : DIGEST_CARRIED)}</p>
</footer>
${schedule === undefined ? '' : html`<template id="${EMBEDDED_ID}" data-scope="${JSON.stringify({ ...report.scope, page: paper })}">${schedule}</template>\n`}</body>
</html>
`.text;
}

function contents({ words, sections }: Report, pages: HtmlOptions['pages']): Markup {
  const page = (index: number) => pages === undefined ? '' : html`<span>${pages[index] ?? '–'}</span>`;
  return html`<nav aria-label="${words.say('Contents')}" class="${pages === undefined ? 'unpaged' : 'paged'}"><ul>${sections.map(({ name, title }, index) => html`<li><a href="#${name}">${title}</a>${page(index)}</li>`)}</ul></nav>`;
}

function sectionMarkup(section: ReportSection, words: Words): Markup {
  const { name, title, sentences, tables, pictures = [], drawings = [] } = section;
  const isBeside = pictures.length > 0 && tables.length === 1;
  return html`<section id="${name}" class="${isBeside ? 'beside' : 'stacked'}">
<h2>${title}</h2>
${sentences.map((text) => html`<p>${text}</p>\n`)}
${tables.flatMap((table) => across(table, words).map((part, index) => tableMarkup(part, index === 0 ? title : words.say('{title}, continued', { title }), words)))}
${pictures.length === 0 ? '' : html`<div class="pictures">${pictures.map((svg) => html`<figure>${new Markup(svg)}</figure>\n`)}</div>`}
${drawings.map((svg) => html`<figure class="drawing" tabindex="0">${new Markup(svg)}</figure>\n`)}</section>
`;
}

/** More columns, or headings of more signs at least, do not fit across a page of A4. */
const MOST_ACROSS = 15;
const MOST_SIGNS = 125;

/** A table as it fits across a page: a wide one in several of about one width, each with what names the rows. */
function across(table: ReportTable, words: Words): ReportTable[] {
  const { title, columns, rows, heads = 2 } = table;
  const signs = leastWidth(columns.map((column) => column.title), words.language);
  if (columns.length <= MOST_ACROSS && signs <= MOST_SIGNS) return [table];
  const count = Math.ceil(Math.max(columns.length / MOST_ACROSS, signs / MOST_SIGNS));
  const width = Math.ceil((columns.length - heads) / count);
  return Array.from({ length: count }, (_each, index) => {
    const from = heads + index * width;
    const part = <Item>(of: readonly Item[]) => [...of.slice(0, heads), ...of.slice(from, from + width)];
    return {
      ...table, columns: part(columns), rows: rows.map((row) => ({ ...row, cells: part(row.cells) })),
      ...(index > 0 && title !== undefined && { title: words.say('{title}, continued', { title }) }),
    };
  });
}

function tableMarkup({ title, sentence, columns, rows }: ReportTable, section: string, words: Words): Markup {
  const name = title === undefined ? section : words.say('{title}: {text}', { title: section, text: title });
  const isForm = rows.some(({ cells }) => cells.some(({ toFill }) => toFill));
  const isLong = leastWidth(columns.map((column) => column.title), words.language) > LONG;
  const size = columns.length > 15 ? 'widest' : columns.length > 9 ? 'wide' : isForm ? 'form' : 'usual';
  const areShort = columns.map((_column, index) => rows.every(({ cells }) => cells[index]!.text.length <= SHORT));
  const heading = title === undefined ? ''
    : html`<tr class="title"><th colspan="${columns.length}" scope="colgroup">${title}${sentence === undefined ? '' : html` <span>${sentence}</span>`}</th></tr>`;
  return html`<div class="scroll" tabindex="0" role="region" aria-label="${name}">
<table class="${isLong ? `${size} long` : size}">
<thead>${heading}<tr>${columns.map((column) => columnMarkup(column, words))}</tr></thead>
<tbody>
${rows.map((row) => rowMarkup(row, areShort))}</tbody>
</table>
</div>
`;
}

function columnMarkup({ title, kind }: ReportColumn, { language }: Words): Markup {
  return html`<th scope="col" class="${kind}">${breakable(title, language)}</th>`;
}

function rowMarkup({ cells, isTotal }: ReportRow, areShort: readonly boolean[]): Markup {
  const marked = cells.map((cell, index) => cellMarkup(cell, areShort[index]!));
  return html`<tr class="${isTotal === true ? 'total' : 'row'}">${marked}</tr>\n`;
}

function cellMarkup({ text, kind, state, inherited, toFill }: ReportCell, isShort: boolean): Markup {
  const classes = [
    kind, ...(
      kind === 'text' && isShort ? ['short'] : []
    ), ...(inherited === true ? ['default'] : []), ...(toFill === true ? ['fill'] : []),
  ].join(' ');
  return html`<td class="${classes}">${state === undefined ? text : stateMarkup(state, text)}</td>`;
}

function stateMarkup(state: Standing | Severity, words: string): Markup {
  return html`<span class="${state}">${STATE_SHAPES[state]} ${words}</span>`;
}
