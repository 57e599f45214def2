import { css } from 'lit';

/** What buttons, focus and hidden texts look like in every part. */
export const controls = css`
  :host {
    display: block;
    color: var(--elv-ink);
    font: 400 var(--elv-size) / 1.4 var(--elv-font);
    font-variant-numeric: tabular-nums lining-nums;
  }
  :host([hidden]), [hidden] { display: none !important; }
  *, *::before, *::after { box-sizing: border-box; }
  button, input, select { font: inherit; color: inherit; }
  button {
    display: inline-flex;
    align-items: center;
    gap: 0.4em;
    min-block-size: 28px;
    min-inline-size: 28px;
    padding: 0 0.6em;
    border: 1px solid transparent;
    border-radius: var(--elv-radius);
    background: none;
    white-space: nowrap;
    cursor: pointer;
  }
  button:hover:not(:disabled) { background: color-mix(in srgb, var(--elv-accent) 11%, transparent); }
  button:active:not(:disabled) { background: color-mix(in srgb, var(--elv-accent) 20%, transparent); }
  button:disabled { cursor: default; color: color-mix(in srgb, var(--elv-ink-default) 62%, transparent); }
  button[aria-pressed='true'], button[aria-expanded='true'] { color: var(--elv-accent); }
  .bordered { border-color: var(--elv-line); background: var(--elv-surface-raised); }
  .link {
    min-block-size: 24px;
    min-inline-size: 24px;
    padding: 0 0.25em;
    color: var(--elv-accent);
    text-decoration: underline;
    text-decoration-color: color-mix(in srgb, currentColor 40%, transparent);
    text-underline-offset: 0.2em;
  }
  :focus-visible { outline: 2px solid var(--elv-accent); outline-offset: 1px; border-radius: var(--elv-radius); }
  .icon { flex: none; inline-size: 1.18em; block-size: 1.18em; fill: none; stroke: currentColor; stroke-width: 1.4; stroke-linecap: round; stroke-linejoin: round; }
  .unseen {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  /* Every language that is spoken is written from left to right, also on a page that is not. */
  .spoken { direction: ltr; unicode-bidi: isolate; }
  .quiet { color: var(--elv-ink-default); unicode-bidi: plaintext; text-align: match-parent; text-align: -webkit-match-parent; }
  .floating {
    position: fixed;
    inset: auto;
    inline-size: min(30rem, 100vi - 16px);
    max-block-size: 70vb;
    margin: 0;
    padding: 12px 16px 14px;
    overflow-y: auto;
    border: 1px solid var(--elv-line-strong);
    border-radius: calc(var(--elv-radius) + 3px);
    background: var(--elv-surface-raised);
    color: var(--elv-ink);
    box-shadow: 0 6px 24px rgb(0 0 0 / 22%);
  }
  @media (forced-colors: active) {
    .floating { border-color: CanvasText; }
    button { border-color: ButtonBorder; }
    button:disabled { color: GrayText; border-color: GrayText; }
    button[aria-pressed='true'], [aria-selected='true'], [aria-checked='true'] { outline: 2px solid Highlight; outline-offset: -3px; }
  }
`;
