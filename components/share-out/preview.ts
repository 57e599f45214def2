import { html, nothing, type TemplateResult } from 'lit';
import type { SharedSheet, Sharing } from '../../src/allocation/index.ts';
import { loadingBar, valueText } from '../look/index.ts';
import type { FillLine, Move } from './fill-lines.ts';
import type { Words } from '../../src/words/index.ts';

/** How many lines of a list are shown. */
const MOST = 100;
/** What fills up to rounding is not over. */
const ROUNDING = 1e-9;

export const NOUN = { branches: ['branch', 'branches'], supplies: ['supply', 'supplies'] } as const;

/** What came out, in one sentence: how many, and whether that is the least. */
export function verdict({ over, used, lowerBound, proven, added, leftOut }: Sharing): string {
  if (used === 0) return leftOut.some(({ code }) => code !== 'takes-none') ? 'No device can be given a place.' : 'There are no devices to share out.';
  const counted = `${used} ${NOUN[over][used === 1 ? 0 : 1]}`;
  const fresh = added.length === 0 ? '' : `, ${added.length} of them new`;
  if (proven) return `${counted}${fresh}: proven to be the least.`;
  return `${counted}${fresh}. No sharing does with fewer than ${lowerBound}; whether it can be done with fewer than ${used} is not known.`;
}

/** How full each branch or supply is, before and after. */
export function fillTable(over: SharedSheet, lines: readonly FillLine[], words: Words): TemplateResult {
  const title = over === 'branches' ? 'Branch' : 'Supply';
  return html`<table class="fills"><caption class="unseen">Before and after</caption>
    <thead><tr><th scope="col">${title}</th>${over === 'supplies' ? html`<th scope="col">For</th>` : nothing}
      <th scope="col" colspan="2">Before</th><th scope="col" colspan="2">After</th>
      <th scope="col" class="nowrap">Rows</th></tr></thead>
    <tbody>${lines.map(({ tag, group, isNew, capacity, before, after, sign, coming, going }) => html`<tr data-tag=${tag}>
      <td><b>${tag}</b>${isNew ? html` <span class="new">new</span>` : nothing}</td>
      ${over === 'supplies' ? html`<td class="quiet nowrap">${group}</td>` : nothing}
      ${fillCells(over, before, capacity, words, sign)}${fillCells(over, after, capacity, words)}
      <td class="nowrap">${movesText(coming, going)}</td></tr>`)}</tbody></table>`;
}

function movesText(coming: number, going: number): string {
  return [coming > 0 ? `${coming} come` : '', going > 0 ? `${going} go` : ''].filter((part) => part !== '').join(', ') || 'as they were';
}

function fillCells(over: SharedSheet, carried: number | null, capacity: number | null, words: Words, sign = ''): TemplateResult {
  const share = carried === null || capacity === null || capacity <= 0 ? null : carried / capacity;
  const amount = (value: number | null) => value === null ? 'unknown'
    : over === 'branches' ? String(Math.round(value * 1000) / 1000) : valueText('supplies', 'demand', value, words);
  return html`<td>${loadingBar(share, null, share !== null && share > 1 + ROUNDING ? 'over' : 'ok')}</td>
    <td class="figure">${sign === '' ? nothing : `${sign}\u00a0`}${amount(carried)} of ${amount(capacity)}</td>`;
}

/** What carries too much of what stays, and what to do about it. */
export function overNote(lines: readonly FillLine[]): TemplateResult | typeof nothing {
  const over = lines.filter(({ capacity, after }) => capacity !== null && after !== null && after > capacity * (1 + ROUNDING));
  if (over.length === 0) return nothing;
  return html`<p class="over english">${over.map(({ tag }) => tag).join(', ')}: what stays there is more than it may carry.
    Share out what is placed too, to put that right.</p>`;
}

/** Devices without a place, and why. */
export function leftOutList({ leftOut }: Sharing): TemplateResult | typeof nothing {
  const without = leftOut.filter(({ code }) => code !== 'takes-none');
  if (without.length === 0) return nothing;
  const reasons = [...new Set(without.map(({ reason }) => reason))];
  return html`<h3 class="left-out">${without.length} ${without.length === 1 ? 'row' : 'rows'} without a place</h3>
    <ul class="english">${reasons.map((reason) => html`<li>${reason}
      <span class="quiet">${namesOf(without.filter((each) => each.reason === reason))}</span></li>`)}</ul>`;
}

function namesOf(rows: Sharing['leftOut']): string {
  const names = rows.slice(0, MOST).map(({ ref, row }) => ref ?? `row ${row + 1}`);
  return `${names.join(', ')}${rows.length > MOST ? ` and ${rows.length - MOST} more` : ''}`;
}

/** Which rows move from where to where. */
export function moveList(moves: readonly Move[]): TemplateResult | typeof nothing {
  if (moves.length === 0) return nothing;
  return html`<details><summary>${moves.length} ${moves.length === 1 ? 'row or part of one moves' : 'rows and parts of rows move'}</summary>
    <table class="moves"><thead><tr><th scope="col">Ref</th><th scope="col">Type</th><th scope="col" class="number">Qty</th>
      <th scope="col">From</th><th scope="col">To</th></tr></thead>
    <tbody>${moves.slice(0, MOST).map(({ ref, type, qty, from, to }) => html`<tr><td>${ref || '–'}</td><td>${type}</td>
      <td class="number">${qty ?? ''}</td><td>${from || '–'}</td><td>${to || 'without a place'}</td></tr>`)}</tbody></table>
    ${moves.length > MOST ? html`<p class="quiet">and ${moves.length - MOST} more</p>` : nothing}</details>`;
}
