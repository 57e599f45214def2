import { SEVERITIES, type Finding, type Severity, type Status } from '../findings/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import {
  columnOf, DETAIL_KEYS, formatCell, isNumeric, SCHEMA, SHEET_NAMES, titleWithUnit,
  type Column, type DetailKey, type SheetName,
} from '../schedule/index.ts';
import { CAUTIONS } from './cautions.ts';
import { html, Markup } from './html.ts';
import { LOAD_TABLE_STYLES } from './load-table-styles.ts';

export interface LoadTableOptions {
  /** When the table was made, as it is to be printed. */
  readonly generated: string;
  /** Language of the numbers, BCP 47; English by default. */
  readonly locale?: string;
  /** The sheet that is printed, with the findings on it; all of them by default. */
  readonly sheet?: SheetName | undefined;
}

const DETAIL_TITLES: Readonly<Record<DetailKey, string>> = {
  project: 'Project', panel: 'Panel', revision: 'Revision', date: 'Date', preparedBy: 'Prepared by', checkedBy: 'Checked by',
  remarks: 'Remarks',
};
const WORDS: Readonly<Record<Status | Severity, string>> = {
  over: 'over', near: 'near the limit', incomplete: 'incomplete', ok: 'within limits', note: 'note',
};
/** Shapes tell the states apart where colour does not print. */
const SHAPES: Readonly<Record<Status | Severity, string>> = { over: '■', near: '▲', incomplete: '○', ok: '•', note: '–' };

/** The load table: title block, findings, every sheet that has rows, cautions; one HTML page without scripts. */
export function loadTableHtml(schedule: LoadSchedule, { generated, locale = 'en', sheet }: LoadTableOptions): string {
  const { details } = schedule.document;
  const title = ['Load table', details.project, details.panel].filter((part) => part !== undefined).join(' – ');
  const isPrinted = (name: SheetName) => sheet === undefined || name === sheet;
  const sheets = SHEET_NAMES.filter((name) => isPrinted(name) && schedule.rows(name).length > 0);
  const findings = schedule.findings.filter((finding) => isPrinted(finding.sheet));
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${title}</title>
<style>${new Markup(LOAD_TABLE_STYLES)}</style>
</head>
<body>
<h1>Load table</h1>
<dl>
${DETAIL_KEYS.map((key) => html`<div><dt>${DETAIL_TITLES[key]}</dt><dd>${details[key] ?? '–'}</dd></div>\n`)}
<div><dt>Generated</dt><dd>${generated}</dd></div>
</dl>
<section aria-label="Cautions">${CAUTIONS.map((text) => html`<p class="caution">${text}</p>`)}</section>
${findingsSection(findings)}
${sheets.map((name) => sheetSection(schedule, name, locale))}
<footer>
<p>An italic figure is a default, an upright one was entered; ≥ and ≤ stand before figures that follow from a total in which
rows are not known yet. Columns without any value are left out.</p>
</footer>
</body>
</html>
`.text;
}

function state(name: Status | Severity): Markup {
  return html`<span class="${name}">${SHAPES[name]} ${WORDS[name]}</span>`;
}

function findingsSection(findings: readonly Finding[]): Markup {
  if (findings.length === 0) return html`<section><h2>Findings</h2><p>Nothing was found.</p></section>`;
  const summary = SEVERITIES.flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [html`<li>${state(severity)}: ${count}</li>`];
  });
  return html`<section>
<h2>Findings</h2>
<ul class="counts">${summary}</ul>
<table>
<thead><tr><th scope="col">State</th><th scope="col">Sheet</th><th scope="col">Row</th><th scope="col">Tag</th>
<th scope="col">Column</th><th scope="col">Finding</th></tr></thead>
<tbody>
${findings.map(findingRow)}</tbody>
</table>
</section>`;
}

function findingRow({ severity, sheet, row, tag, key, message, accepted }: Finding): Markup {
  const acceptance = accepted === undefined ? ''
    : html`<p>Accepted by ${accepted.name}, ${accepted.date}: ${accepted.reason}</p>`;
  return html`<tr><td>${state(severity)}</td><td>${SCHEMA[sheet].title}</td><td class="number">${row}</td>
<td class="${textClass(tag)}">${tag}</td>
<td>${columnOf(sheet, key).title}</td><td>${message}${acceptance}</td></tr>
`;
}

function sheetSection(schedule: LoadSchedule, sheet: SheetName, locale: string): Markup {
  const rows = schedule.rows(sheet);
  const isFilled = ({ key }: Column) => rows.some(({ id }) => schedule.value(sheet, id, key) !== null);
  const columns = SCHEMA[sheet].columns.filter(isFilled);
  return html`<section>
<h2>${SCHEMA[sheet].title}</h2>
<table>
<thead><tr><th scope="col" class="number">Row</th>${columns.map(headingCell)}</tr></thead>
<tbody>
${rows.map(({ id }, index) => html`<tr><td class="number">${index + 1}</td>${columns.map((column) =>
  cell(schedule, sheet, id, column, locale))}</tr>
`)}</tbody>
</table>
</section>
`;
}

function headingCell(column: Column): Markup {
  return html`<th scope="col" class="${isNumeric(column) ? 'number' : 'text'}">${titleWithUnit(column)}</th>`;
}

function cell(schedule: LoadSchedule, sheet: SheetName, id: number, column: Column, locale: string): Markup {
  const value = schedule.value(sheet, id, column.key);
  if (column.role === 'computed' && column.status === true && value !== null) {
    return html`<td>${state(value as Status)}</td>`;
  }
  const text = schedule.partialSign(sheet, id, column.key) + formatCell(column, value, locale, 'show');
  const inherited = column.role === 'input' && !schedule.isOwn(sheet, id, column.key);
  const kind = isNumeric(column) ? 'number' : textClass(text);
  return html`<td class="${kind}${inherited ? ' default' : ''}">${text}</td>`;
}

/** A tag such as L2-W4 must not break at its hyphen; a long text must be able to. */
function textClass(text: string): string {
  return text.length > 12 || text.includes(' ') ? 'text' : 'tag';
}
