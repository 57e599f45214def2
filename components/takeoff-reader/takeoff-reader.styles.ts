import { css } from 'lit';

export const styles = css`
  .source { max-inline-size: 62rem; margin-block-start: 16px; }
  .source label { display: block; margin-block-end: 6px; }
  textarea { display: block; inline-size: 100%; block-size: 13em; padding: 10px 12px; resize: vertical; white-space: pre; tab-size: 16; }
  .ways { display: flex; flex-wrap: wrap; align-items: center; gap: 8px; }
  .source .file { display: inline-flex; align-items: center; min-block-size: 28px; margin: 0; padding: 0 0.6em; border: 1px solid var(--elv-line); border-radius: var(--elv-radius); cursor: pointer; }
  .file:focus-within { outline: 2px solid var(--elv-accent); outline-offset: 1px; }
  .sheet { display: block; margin-block-start: 10px; }
  .refused { margin-block-start: 16px; margin-block-end: 14px; color: var(--elv-over); }
  .names { margin-block-start: 12px; max-block-size: 17rem; padding: 2px 14px 8px; overflow-y: auto; scrollbar-width: thin; border: 1px solid var(--elv-line); border-radius: calc(var(--elv-radius) + 2px); background: var(--elv-surface); }
  .names table { inline-size: auto; }
  .names tr:last-child td { border: 0; }
  .names td { vertical-align: middle; }
  .names select { max-inline-size: min(24rem, 100%); }
  .names h3 { margin-block-start: 10px; }
  [data-state='undecided'] b { color: var(--elv-incomplete); }
  .lines th { position: sticky; z-index: 1; inset-block-start: 0; background: var(--elv-surface-raised); }
  .lines .own { display: block; overflow: hidden; max-inline-size: 16rem; color: var(--elv-ink); text-overflow: ellipsis; white-space: nowrap; }
  .lines th select { max-inline-size: 9.5rem; min-block-size: 26px; padding-inline: 2px; border-color: var(--elv-line); font-weight: 400; }
  .lines .number .own { margin-inline-start: auto; }
  .lines td { min-inline-size: 3rem; }
  .lines td:first-child { inline-size: 1%; }
  .lines .becomes { inline-size: 23rem; min-inline-size: 17rem; color: var(--elv-ink-default); }
  .becomes .status { margin-inline-end: 0.3em; font-weight: 600; }
  [data-outcome='left-out'] td { color: var(--elv-ink-default); }
  [data-outcome='undecided'] td { background: color-mix(in srgb, var(--elv-incomplete) 8%, transparent); }
  .decide { display: flex; flex-wrap: wrap; align-items: center; gap: 2px 10px; color: var(--elv-ink); }
  @container (inline-size < 900px) {
    .lines .becomes { inline-size: 15rem; min-inline-size: 12rem; }
    .lines th select { max-inline-size: 7.5rem; }
  }
  .decide input { inline-size: 6em; text-align: end; }
`;
