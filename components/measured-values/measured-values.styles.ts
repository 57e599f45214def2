import { css } from 'lit';

/** What is hit with a finger is 44 px high, and its type so large that no phone enlarges the page for it. */
export const styles = css`
  .options input { flex: 1 1 12em; max-inline-size: 24em; }
  .options :is(input, button) { min-block-size: 36px; }
  .rows { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(26em, 100%), 1fr)); gap: 10px; margin: 0; padding: 0; list-style: none; }
  li { display: grid; align-content: start; gap: 4px; padding: 8px 12px 10px; border: 1px solid var(--elv-line); border-radius: var(--elv-radius); background: var(--elv-surface); }
  .body p { margin: 0; }
  .name { display: flex; align-items: baseline; gap: 0.6em; min-inline-size: 0; }
  .name .link { flex: none; padding: 0; font-weight: 600; }
  .fields { display: grid; grid-template-columns: 1fr 1fr; gap: 3px 14px; }
  .field { display: grid; grid-row: span 3; grid-template-rows: subgrid; min-inline-size: 0; }
  /* Fields stand beside each other also where one of the titles takes two lines. */
  label { display: grid; align-content: end; gap: 2px; }
  .measured { display: flex; gap: 4px; }
  .body .measured input { flex: 1; min-inline-size: 0; inline-size: 100%; min-block-size: 44px; padding: 2px 10px; font-size: max(16px, var(--elv-size-large)); text-align: end; }
  .sign { flex: none; min-block-size: 44px; min-inline-size: 44px; padding: 0; justify-content: center; font-size: var(--elv-size-large); }
  [aria-invalid] { border-color: var(--elv-over); }
  .wrong { color: var(--elv-over); }
  .verdicts { display: grid; gap: 3px; }
  .verdict { display: flex; align-items: baseline; gap: 0.45em; }
  @media (pointer: coarse) {
    .options :is(input, button) { min-block-size: 44px; }
    .name .link { min-block-size: 44px; }
  }
`;
