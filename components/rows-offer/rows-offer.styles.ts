import { css } from 'lit';

export const styles = css`
  .offer {
    max-block-size: 22rem;
    padding: 8px 12px 10px;
    overflow: auto;
    border-block-start: 1px solid var(--elv-line);
    background: var(--elv-surface);
  }
  h3, h4 { margin: 0; font-size: 1em; font-weight: 600; outline: none; }
  h4 { padding-block-start: 8px; }
  p { margin: 2px 0; max-inline-size: 90ch; }
  .ways { display: flex; flex-wrap: wrap; gap: 2px 22px; margin-block: 4px; }
  label { display: inline-flex; align-items: center; gap: 0.4em; min-block-size: 28px; }
  input { inline-size: 1.1em; block-size: 1.1em; margin: 0; accent-color: var(--elv-accent); }
  table { border-collapse: collapse; }
  th, td { padding: 2px 14px 2px 0; border-block-end: 1px solid var(--elv-line); text-align: start; overflow-wrap: anywhere; }
  th { color: var(--elv-ink-default); font-weight: 600; }
  ul { margin: 2px 0; padding-inline-start: 1.3em; }
  .do { position: sticky; inset-block-end: -10px; display: flex; gap: 8px; margin-block-end: -10px; padding-block: 8px; background: var(--elv-surface); }
  .primary { padding-inline: 1em; background: var(--elv-accent); color: var(--elv-surface-raised); font-weight: 600; }
  .primary:hover:not(:disabled) { background: color-mix(in srgb, var(--elv-accent) 86%, var(--elv-ink)); }
  .primary:disabled { background: none; border-color: var(--elv-line); font-weight: 400; }
  @media (forced-colors: active) {
    .primary { border-color: ButtonText; }
  }
`;
