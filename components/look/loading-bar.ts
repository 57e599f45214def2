import { css, html, nothing, type TemplateResult } from 'lit';
import type { Mark } from './status-mark.ts';

/** Share at which the part beyond 100 % ends; what goes further is drawn to this edge. */
const EDGE = 1.25;

const percentOfBar = (share: number): string => `${(Math.min(Math.max(share, 0), EDGE) / EDGE) * 100}%`;

/**
 * A bar that is filled from 0 to 100 % of what may be used, with a tick at the target; the part beyond 100 % stands
 * outside the frame and is hatched. It says nothing that the sentence beside it does not say.
 * @param loading share of what may be used, 0 and above; `null` when unknown, drawn as an empty dashed frame.
 * @param target share that the design aims to stay below, `null` for none.
 */
export function loadingBar(loading: number | null, target: number | null, mark: Mark): TemplateResult {
  // Through the property, as a strict security policy refuses the attribute, which styleMap sets at first.
  const fill = loading === null ? nothing
    : html`<i class="fill" .style=${`inline-size: ${percentOfBar(Math.min(loading, 1))}`}></i>`;
  const beyond = loading === null || loading <= 1 ? nothing
    : html`<i class="beyond" .style=${`inline-size: ${percentOfBar(Math.min(loading, EDGE) - 1)}`}></i>`;
  const tick = target === null || target >= 1 ? nothing
    : html`<i class="tick" .style=${`inset-inline-start: ${percentOfBar(target)}`}></i>`;
  return html`<span class="bar ${mark} ${loading === null ? 'unknown' : ''}" aria-hidden="true"><i class="frame"></i>${fill}${beyond}${tick}</span>`;
}

export const loadingBarStyles = css`
  .bar { position: relative; display: block; block-size: 9px; forced-color-adjust: none; }
  .bar i { position: absolute; inset-block: 0; }
  .frame { inset-inline-start: 0; inline-size: 80%; background: color-mix(in srgb, var(--elv-ink) 9%, transparent); border-radius: 2px; }
  .unknown .frame { background: none; border: 1px dashed var(--elv-line-strong); }
  .fill { inset-inline-start: 0; border-radius: 2px 0 0 2px; background: color-mix(in srgb, var(--elv-ink) 52%, var(--elv-surface)); }
  .over .fill, .near .fill, .over .beyond { background-color: currentColor; }
  .beyond {
    inset-inline-start: 80%;
    margin-inline-start: 2px;
    background: repeating-linear-gradient(115deg, currentColor 0 2px, transparent 2px 4.5px) !important;
  }
  .bar .tick { inset-block: -3px; inline-size: 2px; margin-inline-start: -1px; background: var(--elv-ink); box-shadow: 0 0 0 1px var(--elv-surface); }
  @media (forced-colors: active) {
    .frame { background: none; outline: 1px solid CanvasText; }
    .fill { background: Highlight !important; }
    .beyond { color: CanvasText; }
    .bar .tick { background: CanvasText; }
  }
`;
