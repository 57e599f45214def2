import { html, nothing, type TemplateResult } from 'lit';
import { SEVERITIES } from '../../src/findings/index.ts';
import { changesSection, type RowOutcome, type TriedChanges } from '../../src/report/changes/index.ts';
import { columnOf, SCHEMA } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import { sectionTables } from '../load-table/section-tables.ts';
import { markShape, statusMark } from '../look/index.ts';

/** As many lines of a list are shown; all of them stand in the list of everything that changes. */
const MOST = 40;

/** The list of everything that changes, which is made while it is open. */
export interface AllChanges {
  readonly open: boolean;
  readonly onToggle: (event: Event) => void;
}

/** What changes come to: findings before and after, rows that stand otherwise, and on demand everything else. */
export function triedChanges(tried: TriedChanges, words: Words, all: AllChanges): TemplateResult {
  const came = tried.findings.filter(({ kind }) => kind !== 'went');
  const went = tried.findings.filter(({ kind }) => kind === 'went');
  return html`${findingCounts(tried, words)}
    ${findingList('came', words.say('{n, plural, =0 {No finding comes or is of another kind} one {# finding comes or is of another kind} other {# findings come or are of another kind}}', { n: came.length }), came, words)}
    ${went.length === 0 ? nothing : findingList('went', words.say('{n, plural, one {# finding goes} other {# findings go}}', { n: went.length }), went, words)}
    ${standingTable(tried, words)}
    <details class="all" .open=${all.open} @toggle=${all.onToggle}><summary>${words.say('Everything that changes')}</summary>
      ${all.open ? sectionTables({ ...changesSection(tried, '', words), sentences: [] }, words) : nothing}</details>`;
}

function findingCounts({ counts }: TriedChanges, words: Words): TemplateResult {
  return html`<ul class="counts" aria-label=${words.say('Findings before and after')}>${SEVERITIES.map((severity) => {
    const [before, after] = [counts.before[severity], counts.after[severity]];
    return html`<li>${statusMark(severity, words)} ${before} → ${before === after ? after : html`<b>${after}</b>`}</li>`;
  })}</ul>`;
}

function findingList(
  kind: 'came' | 'went', title: string, findings: TriedChanges['findings'], words: Words,
): TemplateResult {
  return html`<h3>${title}</h3><ul class="findings ${kind}">${findings.slice(0, MOST).map(({ before, after, message }) =>
    html`<li>${markShape((after ?? before)!)}<span class="spoken">${message}</span></li>`)}</ul>${more(findings.length, words)}`;
}

function standingTable({ standings }: TriedChanges, words: Words): TemplateResult | typeof nothing {
  if (standings.length === 0) return nothing;
  const cells = (standing: RowOutcome | undefined) => html`<td class="number">${standing?.figure ?? ''}</td>
    <td>${standing?.status ? statusMark(standing.status, words) : ''}</td>`;
  return html`<h3>${words.say('How rows stand')}</h3><div class="scroll" tabindex="0" role="region" aria-label=${words.say('How rows stand')}><table class="standings">
    <thead><tr><th scope="col">${words.say('Sheet')}</th><th scope="col">${words.say('Tag')}</th><th scope="col">${words.say('Figure')}</th>
      <th scope="col" colspan="2">${words.say('Before')}</th><th scope="col" colspan="2">${words.say('After')}</th></tr></thead>
    <tbody>${standings.slice(0, MOST).map(({ sheet, tag, key, before, after }) => html`<tr data-tag=${tag}>
      <td>${words.text(SCHEMA[sheet].title)}</td><td class="nowrap"><b>${tag || '–'}</b></td><td>${key === undefined ? '' : words.text(columnOf(sheet, key).title)}</td>${cells(before)}${cells(after)}</tr>`)}</tbody>
  </table></div>${more(standings.length, words)}`;
}

function more(count: number, words: Words): TemplateResult | typeof nothing {
  return count <= MOST ? nothing : html`<p class="quiet">${words.say('and {more} more', { more: count - MOST })}</p>`;
}
