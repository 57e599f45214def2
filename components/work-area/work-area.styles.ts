import { css } from 'lit';

/** What every work area looks like. */
export const workAreaStyles = css`
  :host { position: relative; z-index: 3; min-inline-size: 0; container-type: size; background: var(--elv-surface-raised); }
  .area { display: flex; flex-direction: column; block-size: 100%; }
  .area > header { display: flex; align-items: center; gap: 14px; min-block-size: 44px; padding: 4px 6px 4px 16px; border-block-end: 1px solid var(--elv-line); }
  h2 { flex: none; margin: 0; font-size: var(--elv-size-large); font-weight: 600; outline: none; }
  .about { flex: 1; min-inline-size: 0; margin: 0; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
  .body { flex: 1; min-block-size: 0; overflow: auto; scrollbar-width: thin; padding: 0 16px 16px; }
  .area > footer {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 6px 14px;
    min-block-size: 46px;
    padding: 6px 16px;
    border-block-start: 1px solid var(--elv-line);
    background: var(--elv-surface);
  }
  .area > footer .primary { margin-inline-start: auto; white-space: normal; }
  .primary { min-block-size: 32px; padding-inline: 1em; background: var(--elv-accent); color: var(--elv-surface-raised); font-weight: 600; }
  .primary:hover:not(:disabled, [aria-disabled='true']) { background: color-mix(in srgb, var(--elv-accent) 86%, var(--elv-ink)); }
  .primary:is(:disabled, [aria-disabled='true']) { background: none; border-color: var(--elv-line); color: color-mix(in srgb, var(--elv-ink-default) 62%, transparent); font-weight: 400; cursor: default; }
  h3 { margin: 14px 0 4px; font-size: 1em; font-weight: 600; }
  .body p { margin: 6px 0; max-inline-size: 90ch; }
  .sum { font-weight: 600; }
  .options { display: flex; flex-wrap: wrap; align-items: center; gap: 8px 22px; margin-block: 12px 8px; }
  .options label { display: inline-flex; align-items: center; gap: 0.4em; min-block-size: 28px; }
  .choice { display: inline-flex; flex-wrap: wrap; padding: 2px; border: 1px solid var(--elv-line); border-radius: calc(var(--elv-radius) + 2px); background: var(--elv-surface); }
  .choice button { min-block-size: 24px; color: var(--elv-ink-default); }
  .choice [aria-pressed='true'] { background: var(--elv-surface-raised); color: var(--elv-ink); box-shadow: 0 0 0 1px var(--elv-line-strong); }
  select, textarea, input:not([type='checkbox'], [type='file']) {
    min-block-size: 28px;
    padding: 2px 6px;
    border: 1px solid var(--elv-line-strong);
    border-radius: var(--elv-radius);
    background: var(--elv-surface-raised);
    color: var(--elv-ink);
  }
  .percent { inline-size: 5.5em; }
  input[type='checkbox'] { inline-size: 1.1em; block-size: 1.1em; accent-color: var(--elv-accent); }
  table { inline-size: 100%; border-collapse: collapse; }
  th { padding: 6px 10px 4px; border-block-end: 1px solid var(--elv-line-strong); color: var(--elv-ink-default); font-weight: 600; text-align: start; vertical-align: bottom; }
  td { padding: 4px 10px; border-block-end: 1px solid var(--elv-line); text-align: start; vertical-align: top; overflow-wrap: anywhere; }
  th:first-child, td:first-child { padding-inline-start: 0; }
  .number { text-align: end; white-space: nowrap; }
  .nowrap { white-space: nowrap; }
  ul { margin: 4px 0; padding-inline-start: 1.3em; }
  @container (inline-size < 900px) {
    .body { padding-inline: 12px; }
    th, td { padding-inline: 7px; }
  }
  @container (inline-size < 560px) {
    .area > header { flex-wrap: wrap; row-gap: 0; }
    .about { order: 1; flex-basis: 100%; white-space: normal; padding-block-end: 4px; }
    .area > header > button { margin-inline-start: auto; }
  }
  @media (forced-colors: active) {
    .primary { border-color: ButtonText; }
  }
`;
