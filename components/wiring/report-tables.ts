import { html, nothing, type TemplateResult } from 'lit';
import type { ReportSection, ReportTable } from '../../src/report/model/report.ts';

/** The tables of a section of the load table, as they stand on the screen. */
export function reportTables({ sentences, tables, title }: ReportSection): TemplateResult {
  return html`${sentences.map((text) => html`<p class="quiet spoken">${text}</p>`)}
    ${tables.map((table) => html`${table.title === undefined ? nothing : html`<h3>${table.title}</h3>`}${tableOf(table, title)}`)}`;
}

function tableOf({ title, columns, rows }: ReportTable, sectionTitle: string): TemplateResult {
  return html`<div class="scroll"><table><caption class="unseen">${title ?? sectionTitle}</caption>
    <thead><tr>${columns.map((column) => html`<th scope="col" class=${column.kind === 'number' ? 'number' : ''}>${column.title}</th>`)}</tr></thead>
    <tbody>${rows.map(({ cells }) => html`<tr>${cells.map(({ text, kind, state }) => html`<td class=${classOf(kind, state !== undefined)}>${text}</td>`)}</tr>`)}</tbody></table></div>`;
}

const classOf = (kind: string, isState: boolean): string =>
  [kind === 'number' ? 'number' : '', kind === 'tag' ? 'nowrap' : '', isState ? 'state' : ''].filter((each) => each !== '').join(' ');
