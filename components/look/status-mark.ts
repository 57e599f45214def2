import { css, html, svg, type TemplateResult } from 'lit';
import type { Severity, Standing } from '../../src/findings/finding.ts';
import { STATE_WORDS } from '../../src/findings/state-words.ts';
import { message, type Words } from '../../src/words/index.ts';

export type Mark = Standing | Severity;

/** How many there are of each: «3 over». */
const MARK_COUNTS: Readonly<Record<Mark, string>> = {
  over: message('{n, plural, one {# over limit} other {# over limit}}'),
  near: message('{n, plural, one {# near limit} other {# near limit}}'),
  incomplete: message('{n, plural, one {# incomplete} other {# incomplete}}'),
  accepted: message('{n, plural, one {# accepted} other {# accepted}}'),
  ok: message('{n, plural, one {# within limits} other {# within limits}}'),
  note: message('{n, plural, one {# note} other {# notes}}'),
};

/** Shapes that differ without their colour: a warning triangle, a diamond, a broken ring, a tick, a dot, a dash. */
const SHAPES: Readonly<Record<Mark, TemplateResult>> = {
  over: svg`<path d="M6 .3 11.9 11.4H.1ZM5.2 4 5.5 7.7H6.5L6.8 4ZM5.2 8.6V10.2H6.8V8.6Z"/>`,
  near: svg`<path d="M6 .8 11.2 6 6 11.2.8 6Z"/>`,
  incomplete: svg`<circle cx="6" cy="6" r="4.3" fill="none" stroke="currentColor" stroke-width="1.9" stroke-dasharray="4.4 2.35" stroke-dashoffset="1"/>`,
  accepted: svg`<path d="M1 6.6 2.6 5 4.9 7.3 9.6 2.1 11.2 3.6 5 10.4Z"/>`,
  ok: svg`<circle cx="6" cy="6" r="2.6"/>`,
  note: svg`<path d="M2 5h8v2H2z"/>`,
};

/** The shape of a status in its colour; the word must stand beside it or be its title. */
export function markShape(mark: Mark): TemplateResult {
  return html`<svg class="mark ${mark}" viewBox="0 0 12 12" aria-hidden="true">${SHAPES[mark]}</svg>`;
}

/** A status as shape and word. */
export function statusMark(mark: Mark, words: Words): TemplateResult {
  return html`<span class="status ${mark}">${markShape(mark)}${words.say(STATE_WORDS[mark])}</span>`;
}

/** How many rows or findings have a status or a severity: «3 over». */
export function markCount(mark: Mark, n: number, words: Words): string {
  return words.say(MARK_COUNTS[mark], { n });
}

export const statusMarkStyles = css`
  .status { display: inline-flex; align-items: center; gap: 0.35em; white-space: nowrap; }
  .mark { flex: none; inline-size: 0.82em; block-size: 0.82em; fill: currentColor; }
  .mark.over { inline-size: 0.95em; block-size: 0.95em; }
  .over { color: var(--elv-over); }
  .near { color: var(--elv-near); }
  .incomplete { color: var(--elv-incomplete); }
  .ok { color: var(--elv-ok); }
  .accepted, .note { color: var(--elv-ink-default); }
  .over.status, .near.status { font-weight: 600; }
`;
