import { css } from 'lit';

/** What the bars of finding and of going somewhere look like. */
export const styles = css`
  .bar { padding: 4px 8px; border-block-end: 1px solid var(--elv-line); background: var(--elv-surface); }
  form { display: flex; flex-wrap: wrap; align-items: center; gap: 4px 10px; margin: 0; }
  label { display: inline-flex; flex-wrap: wrap; align-items: center; gap: 0.4em; min-block-size: 28px; min-inline-size: 0; }
  select { max-inline-size: 100%; }
  input[type='text'], select {
    min-block-size: 28px;
    padding: 2px 6px;
    border: 1px solid var(--elv-line-strong);
    border-radius: var(--elv-radius);
    background: var(--elv-surface-raised);
  }
  input[type='text'] { inline-size: 14em; max-inline-size: 100%; }
  input[type='checkbox'] { inline-size: 1.1em; block-size: 1.1em; margin: 0; accent-color: var(--elv-accent); }
  .steps { display: flex; }
  .count { min-inline-size: 5.5em; color: var(--elv-ink-default); }
  @container (inline-size < 560px) {
    .count:empty { display: none; }
  }
  .close { margin-inline-start: auto; }
  ul { max-block-size: 9.5em; margin: 4px 0 0; padding: 0; overflow-y: auto; list-style: none; }
  li button, li.target { display: flex; flex-wrap: wrap; gap: 0 1em; inline-size: 100%; min-block-size: 24px; text-align: start; white-space: normal; }
  li.target { align-items: center; padding: 0 0.6em; border-radius: var(--elv-radius); cursor: pointer; }
  li.target:hover { background: color-mix(in srgb, var(--elv-accent) 11%, transparent); }
  li .place { min-inline-size: min(15em, 100%); color: var(--elv-ink-default); }
  li .text { min-inline-size: 0; overflow: hidden; text-overflow: ellipsis; }
  li .problem { color: var(--elv-over); white-space: normal; }
  li[aria-selected='true'] { background: color-mix(in srgb, var(--elv-accent) 20%, transparent); }
  li[aria-selected='true'] .place { color: var(--elv-ink); }
  @media (forced-colors: active) {
    li[aria-selected='true'] { outline: 2px solid Highlight; outline-offset: -2px; }
  }
  p { margin: 4px 0 0; color: var(--elv-ink-default); }
`;
