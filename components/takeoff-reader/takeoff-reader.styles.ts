import { css } from 'lit';

export const styles = css`
  .source { max-inline-size: 62rem; margin-block-start: 16px; }
  .source label { display: block; margin-block-end: 6px; }
  textarea { display: block; inline-size: 100%; block-size: 13em; padding: 10px 12px; resize: vertical; white-space: pre; tab-size: 16; }
  .ways { display: flex; flex-wrap: wrap; align-items: center; gap: 8px; }
  .source .file { display: inline-flex; align-items: center; min-block-size: 28px; margin: 0; padding: 0 0.6em; border: 1px solid var(--elv-line); border-radius: var(--elv-radius); cursor: pointer; }
  .file:focus-within { outline: 2px solid var(--elv-accent); outline-offset: 1px; }
  .refused { margin-block-start: 16px; margin-block-end: 14px; color: var(--elv-over); }
  .sheets { display: flex; flex-wrap: wrap; align-items: center; gap: 2px 14px; min-inline-size: 0; margin: 0; padding: 0; border: 0; }
  .sheets legend { float: inline-start; padding: 0; margin-inline-end: 10px; color: var(--elv-ink-default); }
  .body:has(> .reading) { padding: 0; overflow: hidden; }
  .reading { display: grid; grid-template: minmax(0, 1fr) auto / minmax(0, 1fr) 21rem; block-size: 100%; }
  .read { grid-area: 1 / 1 / span 2; display: flex; flex-direction: column; min-block-size: 0; min-inline-size: 0; }
  .read .options { gap: 2px 22px; margin: 4px 16px; }
  .scroll { flex: 1; min-block-size: 0; overflow: auto; padding-inline: 16px 0; scrollbar-width: thin; }
  .decide-on { grid-area: 1 / 2; min-block-size: 0; padding: 0 14px 14px; overflow-y: auto; scrollbar-width: thin; border-inline-start: 1px solid var(--elv-line); background: var(--elv-surface); }
  .decide-on ul { margin: 0; padding: 0; list-style: none; }
  .decide-on li { display: flex; flex-direction: column; gap: 3px; padding-block: 7px; border-block-start: 1px solid var(--elv-line); }
  .name { overflow-wrap: anywhere; }
  .choices { display: flex; flex-wrap: wrap; gap: 4px 8px; }
  .choices select { flex: 1 1 9rem; min-inline-size: 0; max-inline-size: 100%; }
  .decide-on button { white-space: normal; text-align: start; }
  .choices button { min-inline-size: 0; }
  [data-state='undecided'] b { color: var(--elv-incomplete); }
  .lines { table-layout: auto; }
  caption { padding-block: 4px 2px; font-weight: 600; text-align: start; }
  .lines th { position: sticky; z-index: 1; inset-block-start: 0; background: var(--elv-surface-raised); }
  .lines .own { display: block; overflow: hidden; max-inline-size: 11rem; color: var(--elv-ink); text-overflow: ellipsis; white-space: nowrap; }
  .lines th select { inline-size: 100%; min-inline-size: 5rem; max-inline-size: 7.5rem; min-block-size: 26px; padding-inline: 2px; border-color: var(--elv-line); font-weight: 400; }
  .lines .number .own { margin-inline-start: auto; }
  .lines td { padding: 0 8px; }
  .lines th { padding: 2px 8px; }
  .lines td:first-child { inline-size: 1%; }
  /* One line for each, so that many are in view. */
  .lines td:not(:nth-child(2)) { max-inline-size: 9rem; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
  .lines.few td:not(.why) { max-inline-size: 15rem; }
  .lines tr[data-open] td:first-child { box-shadow: inset 3px 0 var(--elv-accent); color: var(--elv-ink); font-weight: 600; }
  /* Decisions stay in view beside lists of many columns. */
  .lines tr .why { position: sticky; inset-inline-end: 0; inline-size: 100%; min-inline-size: 14rem; max-inline-size: 0; border-inline-start: 1px solid var(--elv-line); background: var(--elv-surface-raised); color: var(--elv-ink-default); }
  .lines th.why { z-index: 2; }
  .why div { position: relative; display: flex; align-items: baseline; gap: 0.4em; min-block-size: 24px; }
  .lines .status { font-weight: 600; }
  .why button { flex: none; }
  .why div button { margin-inline-start: auto; }
  .reason { min-inline-size: 0; overflow: hidden; text-overflow: ellipsis; }
  @media (hover: hover) {
    .change { position: absolute; inset: 0 0 0 auto; background: var(--elv-surface-raised); }
    tr:not(:hover) .change:not(:focus-visible) { opacity: 0; }
  }
  [data-outcome='left-out'] td { color: var(--elv-ink-default); }
  [data-outcome='undecided'] td, .lines [data-outcome='undecided'] .why { background: color-mix(in srgb, var(--elv-incomplete) 8%, var(--elv-surface-raised)); }
  .counted { font-weight: 600; }
  /* The line that is decided on stands in full beside the others, so that none of them moves. */
  .decide { grid-area: 2 / 2; max-block-size: 60cqb; padding: 8px 14px 12px; overflow-y: auto; scrollbar-width: thin; border: solid var(--elv-line); border-width: 1px 0 0 1px; background: var(--elv-surface-raised); box-shadow: inset 3px 0 var(--elv-accent); }
  .decide h3 { display: -webkit-box; margin: 0; overflow: hidden; overflow-wrap: anywhere; -webkit-box-orient: vertical; -webkit-line-clamp: 2; }
  .decide .choices { align-items: center; }
  .decide input { inline-size: 6em; text-align: end; }
  @container (inline-size > 1500px) {
    .lines td:not(.why) { max-inline-size: 20rem; }
  }
  @container (inline-size < 900px) {
    .body:has(> .reading) { overflow: auto; }
    .reading { display: block; block-size: auto; }
    .decide-on { max-block-size: 17rem; border-inline-start: 0; border-block-end: 1px solid var(--elv-line); }
    .scroll { overflow: visible; }
    .decide { position: sticky; z-index: 3; inset-block-end: 0; max-block-size: 12rem; }
  }
  @container (inline-size < 560px) {
    .scroll { overflow-x: auto; }
  }
`;
