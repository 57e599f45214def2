import { css } from 'lit';

export const styles = css`
  :host { display: block; }
  ul { margin: 0; padding: 0; list-style: none; border-block-start: 1px solid var(--elv-line); background: var(--elv-surface); }
  li { display: flex; align-items: center; gap: 8px; min-block-size: 30px; padding: 0 6px 0 12px; }
  .text { min-inline-size: 0; overflow-wrap: anywhere; }
  .trouble { color: var(--elv-over); }
  .away { margin-inline-start: auto; }
`;
