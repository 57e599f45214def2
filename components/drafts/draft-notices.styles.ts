import { css } from 'lit';

export const styles = css`
  :host { display: block; }
  ul { margin: 0; padding: 0; list-style: none; border-block-start: 1px solid var(--elv-line); background: var(--elv-surface); }
  li { display: flex; flex-wrap: wrap; align-items: center; gap: 0 8px; min-block-size: 30px; padding: 0 6px 0 12px; }
  li button { flex: none; max-inline-size: 100%; }
  .text { min-inline-size: 0; overflow-wrap: anywhere; }
  .trouble { color: var(--elv-over); }
  .away { margin-inline-start: auto; }
  .changes { max-block-size: 40vh; padding: 4px 12px; overflow: auto; border-block-start: 1px solid var(--elv-line); }
  h2, h3 { margin: 6px 0 2px; font-size: 1em; font-weight: 600; }
  p { margin: 2px 0; }
  table { inline-size: 100%; border-collapse: collapse; }
  th, td { padding: 2px 8px 2px 0; border-block-end: 1px solid var(--elv-line); text-align: start; }
  td { vertical-align: top; overflow-wrap: anywhere; }
  .number { text-align: end; white-space: nowrap; }
`;
