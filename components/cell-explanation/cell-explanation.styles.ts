import { css } from 'lit';

export const styles = css`
  :host { min-inline-size: 0; }
  .text { display: grid; gap: 3px; align-content: start; }
  p { margin: 0; }
  .rule { overflow-wrap: anywhere; }
  .rule b { font-weight: 600; }
  .sign { padding-inline: 0.15em; color: var(--elv-ink-default); }
  .result { white-space: nowrap; }
  .found { display: flex; align-items: baseline; gap: 0.45em; }
  .origin { display: flex; flex-wrap: wrap; align-items: center; gap: 3px 5px; font-size: 0.92em; }
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
