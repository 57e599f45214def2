import { html, nothing, type TemplateResult } from 'lit';
import { leftOutSentence, rowNames, servedText, type SharedSheet, type Sharing } from '../../src/allocation/index.ts';
import { columnOf } from '../../src/schedule/index.ts';
import { fixed, type SafeSide, type Words } from '../../src/words/index.ts';
import { loadingBar, markShape, valueText } from '../look/index.ts';
import type { FillLine, Move } from './fill-lines.ts';

/** How many lines of a list are shown. */
const MOST = 100;
/** What fills up to rounding is not over. */
const ROUNDING = 1e-9;

/** What came out, in one sentence: how many, and whether that is the least. */
export function verdict({ over, used, lowerBound, proven, added, leftOut }: Sharing, words: Words): string {
  if (used === 0) {
    return leftOut.some(({ code }) => code !== 'takes-none') ? words.say('No device can be given a place.')
      : words.say('There are no devices to share out.');
  }
  const values = { used, added: added.length, lowerBound };
  if (!proven && used === lowerBound) {
    return words.say(
      '{over, select, branches {{used, plural, one {# branch} other {# branches}}} other {{used, plural, one {# supply} other {# supplies}}}}{added, plural, =0 {} other {, # of them new}}. Whether that is the least is not known, as not all devices are counted; what is missing stands below.',
      { ...values, over }
    );
  }
  if (over === 'branches') {
    return proven
      ? words.say(
        '{used, plural, one {# branch} other {# branches}}{added, plural, =0 {} other {, # of them new}}: proven to be the least.',
        values
      )
      : words.say(
        '{used, plural, one {# branch} other {# branches}}{added, plural, =0 {} other {, # of them new}}. No sharing does with fewer than {lowerBound}; whether it can be done with fewer than {used} is not known.',
        values
      );
  }
  return proven
    ? words.say(
      '{used, plural, one {# supply} other {# supplies}}{added, plural, =0 {} other {, # of them new}}: proven to be the least.',
      values
    )
    : words.say(
      '{used, plural, one {# supply} other {# supplies}}{added, plural, =0 {} other {, # of them new}}. No sharing does with fewer than {lowerBound}; whether it can be done with fewer than {used} is not known.',
      values
    );
}

/** How full each branch or supply is, before and after. */
export function fillTable(over: SharedSheet, lines: readonly FillLine[], words: Words): TemplateResult {
  const title = over === 'branches' ? words.say('Branch') : words.say('Supply');
  return html`<table class="fills"><caption class="unseen">${words.say('Before and after')}</caption>
    <thead><tr><th scope="col">${title}</th>${over === 'supplies' ? html`<th scope="col">${words.say('For')}</th>` : nothing}
      <th scope="col" colspan="2">${words.say('Before')}</th><th scope="col" colspan="2">${words.say('After')}</th>
      <th scope="col" class="nowrap">${words.say('Rows')}</th></tr></thead>
    <tbody>${lines.map(({ tag, serves, isNew, capacity, limit, before, after, sign, coming, going }) => html`<tr data-tag=${tag}>
      <td><b>${tag}</b>${isNew ? html` <span class="new">${words.say('new')}</span>` : nothing}</td>
      ${over === 'supplies' ? html`<td class="quiet nowrap">${servedText(serves, words)}</td>` : nothing}
      ${fillCells(over, before, { capacity, limit }, words, sign)}${fillCells(over, after, { capacity, limit }, words)}
      <td class="nowrap">${movesText(coming, going, words)}</td></tr>`)}</tbody></table>`;
}

function movesText(coming: number, going: number, words: Words): string {
  const parts = [
    ...coming > 0 ? [words.say('{coming, plural, one {# come} other {# come}}', { coming })] : [],
    ...going > 0 ? [words.say('{going, plural, one {# go} other {# go}}', { going })] : [],
  ];
  return parts.join(', ') || words.say('as they were');
}

function fillCells(
  over: SharedSheet, carried: number | null, { capacity, limit }: Pick<FillLine, 'capacity' | 'limit'>, words: Words,
  sign = '',
): TemplateResult {
  const share = carried === null || limit === null || limit <= 0 ? null : carried / limit;
  const target = share === null || capacity === null ? null : capacity / limit!;
  const amount = (value: number | null, side?: SafeSide) => value === null ? words.say('unknown')
    : over === 'branches'
      ? words.number(Number(fixed(value, 3, side)))
      : valueText('supplies', 'demand', value, words, side);
  const text = words.say('{carried} of {capacity}', { carried: amount(carried), capacity: amount(limit, 'down') });
  return html`<td>${loadingBar(share, target, share !== null && share > 1 + ROUNDING ? 'over' : 'ok')}</td>
    <td class="figure">${sign === '' ? nothing : `${sign}\u00a0`}${text}</td>`;
}

/**
 * What carries too much of what stays, and what to do about it.
 * @param isExtended what is to stay free is for extension, else it is the reserve.
 */
export function overNote(lines: readonly FillLine[], isExtended: boolean, words: Words): TemplateResult {
  const beyond = (most: 'capacity' | 'limit') => lines.filter((line) =>
    line[most] !== null && line.after !== null && line.after > line[most] * (1 + ROUNDING));
  const over = beyond('limit');
  const reserved = beyond('capacity').filter((line) => !over.includes(line));
  const tags = (some: readonly FillLine[]) => some.map(({ tag }) => tag).join(', ');
  return html`${over.length === 0 ? nothing : html`<p class="over spoken">${markShape('over')} ${words.say(
    '{tags}: what stays there is more than it may carry. Share out what is placed too, to put that right.', { tags: tags(over) },
  )}</p>`}${reserved.length === 0 ? nothing : html`<p class="near spoken">${markShape('near')} ${isExtended
    ? words.say('{tags}: what stays there leaves less than the extension asks for. Share out what is placed too, to keep it free.', { tags: tags(reserved) })
    : words.say('{tags}: what stays there reaches into the reserve. Share out what is placed too, to keep it free.', { tags: tags(reserved) })}</p>`}`;
}

/** Devices without a place, and why. */
export function leftOutList({ over, leftOut }: Sharing, words: Words): TemplateResult | typeof nothing {
  const without = leftOut.filter(({ code }) => code !== 'takes-none');
  if (without.length === 0) return nothing;
  const reasonOf = new Map(without.map((each) => [each, leftOutSentence(over, each, words)]));
  const reasons = [...new Set(reasonOf.values())];
  return html`<h3 class="left-out">${words.say('{rows, plural, one {# row} other {# rows}} without a place', { rows: without.length })}</h3>
    <ul class="spoken">${reasons.map((reason) => html`<li>${reason}
      <span class="quiet">${rowNames(without.filter((each) => reasonOf.get(each) === reason), words, MOST)}</span></li>`)}</ul>`;
}

/** Which rows move from where to where. */
export function moveList(moves: readonly Move[], words: Words): TemplateResult | typeof nothing {
  if (moves.length === 0) return nothing;
  const title = (key: string) => words.text(columnOf('devices', key).title);
  return html`<details><summary>${words.say('{moves, plural, one {# row or part of one moves} other {# rows and parts of rows move}}', { moves: moves.length })}</summary>
    <table class="moves"><thead><tr><th scope="col">${title('ref')}</th><th scope="col">${title('type')}</th><th scope="col" class="number">${title('qty')}</th>
      <th scope="col">${words.say('Before')}</th><th scope="col">${words.say('After')}</th></tr></thead>
    <tbody>${moves.slice(0, MOST).map(({ ref, type, qty, from, to }) => html`<tr><td>${ref || '–'}</td><td>${type}</td>
      <td class="number">${qty === null ? '' : words.number(qty)}</td><td>${from || '–'}</td><td>${to || words.say('without a place')}</td></tr>`)}</tbody></table>
    ${moves.length > MOST ? html`<p class="quiet">${words.say('and {more} more', { more: moves.length - MOST })}</p>` : nothing}</details>`;
}
