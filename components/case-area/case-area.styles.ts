import { css } from 'lit';

/** What the views of the cases have in common. */
export const caseStyles = css`
  :host { position: static; container-type: normal; background: none; }
  .scroll { max-inline-size: 100%; overflow-x: auto; scrollbar-width: thin; }
  .scroll table { inline-size: auto; }
  h3 { margin: 16px 0 4px; font-size: 1em; font-weight: 600; }
  p { margin: 6px 0; max-inline-size: 90ch; }
  ul { margin: 4px 0; padding-inline-start: 1.3em; }
  table { border-collapse: collapse; }
  th { padding: 4px 8px; border-block-end: 1px solid var(--elv-line-strong); color: var(--elv-ink-default); font-weight: 600; text-align: start; vertical-align: bottom; }
  td, tbody th { padding: 2px 8px; border-block-end: 1px solid var(--elv-line); text-align: start; vertical-align: middle; }
  tbody th, tfoot th { color: var(--elv-ink); font-weight: 400; }
  .first { position: sticky; inset-inline-start: 0; z-index: 1; padding-inline-start: 0; background: var(--elv-surface-raised); }
  .name { display: block; inline-size: max-content; min-inline-size: 6em; max-inline-size: 16em; overflow-wrap: break-word; }
  .number { text-align: end; white-space: nowrap; }
  .nowrap { white-space: nowrap; }
  .problems { color: var(--elv-over); }
  .options { display: flex; flex-wrap: wrap; align-items: center; gap: 8px 16px; margin-block: 10px 8px; }
  .options label { display: inline-flex; flex-wrap: wrap; align-items: center; gap: 0.4em; min-block-size: 28px; min-inline-size: 0; max-inline-size: 100%; }
  .link { white-space: normal; text-align: start; overflow-wrap: anywhere; }
  .first .link { padding-inline-start: 0; }
  input:not([type='checkbox']), select, textarea {
    min-block-size: 28px;
    max-inline-size: 100%;
    padding: 2px 6px;
    border: 1px solid var(--elv-line-strong);
    border-radius: var(--elv-radius);
    background: var(--elv-surface-raised);
    color: var(--elv-ink);
    font: inherit;
  }
  input:read-only, input:disabled { border-color: var(--elv-line); background: none; }
  input[type='checkbox'] { inline-size: 1.1em; block-size: 1.1em; accent-color: var(--elv-accent); }
  [aria-invalid='true'] { border-color: var(--elv-over) !important; }
  @container (inline-size < 560px) {
    .name { max-inline-size: 9em; }
    td, th { padding-inline: 4px; }
  }
`;
