import { css, html, nothing, type TemplateResult } from 'lit';
import { GoToEvent } from '../events/index.ts';
import { loadingBar, statusMark } from '../look/index.ts';
import type { Words } from '../../src/words/index.ts';
import type { Gauge } from './gauge.ts';

/** One gauge as a line that leads to its cell: name and status, bar, sentence. */
export function gaugeLine(
  { sheet, id, key, tag, about, loading, target, status, sentence }: Gauge, words: Words,
  change: TemplateResult | typeof nothing = nothing,
): TemplateResult {
  const go = (event: Event) => event.currentTarget!.dispatchEvent(new GoToEvent({ sheet, id, key }));
  return html`<li><button type="button" class="gauge" @click=${go}>
    <span class="head"><b>${tag}</b>${about === '' ? nothing : html` <span class="quiet about">${about}</span>`}${statusMark(status, words)}</span>
    ${loadingBar(loading, target, status)}
    <span class="sentence spoken">${sentence}${change}</span>
  </button></li>`;
}

export const gaugeLineStyles = css`
  .gauge {
    display: grid;
    gap: 3px;
    inline-size: 100%;
    padding: 3px 14px 5px;
    line-height: 1.3;
    border-radius: 0;
    text-align: start;
    white-space: normal;
  }
  .gauge .head { display: flex; gap: 0.5em; align-items: baseline; min-inline-size: 0; }
  .gauge b { flex: none; max-inline-size: 45%; font-weight: 600; overflow-wrap: anywhere; }
  .gauge .about { flex: 0 1 auto; min-inline-size: 0; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
  .gauge .status { flex: none; margin-inline-start: auto; font-size: var(--elv-size-small); }
  .gauge .sentence { justify-self: start; font-size: var(--elv-size-small); color: var(--elv-ink-default); }
  .gauge .change {
    margin-inline-start: 0.6em;
    padding: 0 0.4em;
    border: 1px solid var(--elv-accent);
    border-radius: 0.8em;
    color: var(--elv-ink);
    white-space: nowrap;
    animation: elv-come 0.4s ease-out;
  }
  @keyframes elv-come { from { opacity: 0; translate: 0 3px; } }
  @media (prefers-reduced-motion: reduce) { .gauge .change { animation: none; } }
  .gauge:focus-visible { outline-offset: -3px; }
`;
