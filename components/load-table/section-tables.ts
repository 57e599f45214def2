import { html, nothing, type TemplateResult } from 'lit';
import type { ReportCell, ReportSection, ReportTable } from '../../src/report/model/index.ts';
import type { Words } from '../../src/words/index.ts';
import { statusMark } from '../look/index.ts';

/** A part of the load table: its sentences and its tables. */
export function sectionTables({ sentences, tables }: ReportSection, words: Words): TemplateResult {
  return html`${sentences.map((text) => html`<p class="spoken">${text}</p>`)}${tables.map((table) => tableOf(table, words))}`;
}

function tableOf({ title, columns, rows }: ReportTable, words: Words): TemplateResult {
  const cell = ({ text, kind, state }: ReportCell) =>
    html`<td class=${kind === 'text' ? '' : kind === 'number' ? 'number' : 'nowrap'}>
    ${state === undefined ? text : statusMark(state, words)}</td>`;
  return html`${title === undefined ? nothing : html`<h3>${title}</h3>`}
    <div class="scroll" tabindex="0" role="region" aria-label=${title ?? words.say('Table')}><table>
      <thead><tr>${columns.map((column) => html`<th scope="col" class=${column.kind === 'number' ? 'number' : ''}>${column.title}</th>`)}</tr></thead>
      <tbody>${rows.map(({ cells }) => html`<tr>${cells.map(cell)}</tr>`)}</tbody>
    </table></div>`;
}
