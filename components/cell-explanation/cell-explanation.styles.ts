import { css } from 'lit';

export const styles = css`
  :host { min-inline-size: 0; display: grid; grid-template-rows: minmax(0, 1fr); }
  :host([pictured]) { grid-template-columns: minmax(0, 1fr) minmax(0, min(60%, 38rem)); }
  .words, .pane { min-inline-size: 0; overflow: auto; scrollbar-width: thin; }
  .words { padding: 8px 12px 4px; }
  .pane { border-inline-start: 1px solid var(--elv-line); }
  .pane > p { padding: 8px 12px; }
  elv-acceptance-form { max-inline-size: 60rem; }
  @container (inline-size < 900px) {
    :host([pictured]) { grid-template: auto minmax(0, 1fr) / minmax(0, 1fr); }
    .words { max-block-size: 9em; }
    .pane { border-inline-start: 0; border-block-start: 1px solid var(--elv-line); }
  }
  .text { display: grid; gap: 3px; align-content: start; }
  p { margin: 0; }
  .rule { overflow-wrap: anywhere; }
  .rule b { font-weight: 600; }
  .sign { padding-inline: 0.15em; color: var(--elv-ink-default); }
  .result { white-space: nowrap; }
  .found { display: flex; align-items: baseline; gap: 0.45em; }
  .origin { display: flex; flex-wrap: wrap; align-items: center; gap: 3px 5px; font-size: var(--elv-size-small); }
  .part {
    gap: 0.4em;
    min-block-size: 24px;
    padding: 0 0.55em;
    border-color: var(--elv-line);
    background: var(--elv-surface-raised);
    color: var(--elv-ink-default);
    white-space: normal;
    text-align: start;
  }
  .part b { color: var(--elv-ink); font-weight: 500; white-space: nowrap; }
  .source { margin-inline-start: 0.4em; }
  .link { min-block-size: 24px; margin-block: -3px; }
`;
