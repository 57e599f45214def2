import { css } from 'lit';

export const styles = css`
  :host { overflow-y: auto; scrollbar-width: thin; background: var(--elv-surface); }
  .summary {
    position: sticky;
    z-index: 1;
    inset-block-start: 0;
    display: flex;
    flex-wrap: wrap;
    padding: 4px 6px;
    border-block-end: 1px solid var(--elv-line);
    background: var(--elv-surface);
  }
  .summary { align-items: center; gap: 4px; }
  .summary .filter { color: var(--elv-ink-default); }
  .summary button { padding-inline: 0.5em; border-color: var(--elv-line); border-radius: 1em; }
  .summary button[aria-pressed='true'] {
    border-color: var(--elv-accent);
    background: color-mix(in srgb, var(--elv-accent) 16%, transparent);
    font-weight: 600;
  }
  :host([folded]) .summary .filter { display: none; }
  :host([folded]) .summary { padding: 4px; border-block-end: 0; }
  :host([folded]) .summary button { inline-size: 100%; padding-inline: 0.3em; }
  .summary .none, .summary .none .mark { color: var(--elv-ink-default); }
  #changes { border-block-end: 1px solid var(--elv-line); background: color-mix(in srgb, var(--elv-accent) 6%, transparent); }
  #changes ul { max-block-size: 18em; overflow-y: auto; }
  #changes .marks { flex: none; white-space: nowrap; }
  #changes .count { overflow-wrap: anywhere; }
  .columns { display: grid; grid-template-columns: minmax(0, 1fr); }
  h3 { margin: 8px 14px 4px; font-size: var(--elv-size-small); font-weight: 600; color: var(--elv-ink-default); }
  p { margin: 0 14px; font-size: var(--elv-size-small); }
  ul { margin: 0; padding: 0; list-style: none; }
  summary {
    display: flex;
    align-items: center;
    gap: 0.45em;
    min-block-size: 28px;
    padding: 0 14px;
    font-weight: 600;
    cursor: pointer;
    list-style: none;
  }
  summary::-webkit-details-marker { display: none; }
  summary::after {
    content: '';
    flex: none;
    margin-inline-start: auto;
    inline-size: 6px;
    block-size: 6px;
    border: solid var(--elv-ink-default);
    border-width: 0 1.5px 1.5px 0;
    transform: rotate(45deg);
  }
  details[open] > summary::after { transform: rotate(-135deg); }
  summary:hover { background: color-mix(in srgb, var(--elv-accent) 8%, transparent); }
  summary:focus-visible { outline-offset: -3px; }
  summary .count { font-weight: 400; color: var(--elv-ink-default); }
  summary .counts { display: flex; gap: 0.8em; margin-inline-start: auto; font-weight: 400; font-size: var(--elv-size-small); }
  .counts > span { display: inline-flex; align-items: center; gap: 0.3em; }
  .section summary::after { margin-inline-start: 0.4em; }
  .section + .section { border-block-start: 1px solid var(--elv-line); }
  details { padding-block-end: 4px; }
  @container (inline-size >= 1700px) {
    .columns { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
    .column + .column { border-inline-start: 1px solid var(--elv-line); }
  }
  @container (900px <= inline-size < 1700px) {
    /* Findings first, and the gauges in sight below them: each scrolls by itself. */
    :host(:not([folded])) { display: flex; flex-direction: column; overflow: hidden; }
    .columns { flex: 1; min-block-size: 0; grid-template-rows: fit-content(55%) minmax(0, 1fr); }
    .column { overflow-y: auto; scrollbar-width: thin; }
    .column + .column { border-block-start: 1px solid var(--elv-line); }
  }
  @container (inline-size < 900px) {
    .columns { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
  }
  @container (inline-size < 560px) {
    .columns { grid-template-columns: minmax(0, 1fr); }
  }
`;
