import { css } from 'lit';

export const styles = css`
  section {
    position: relative;
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 2px 12px;
    padding: 4px 40px 4px 8px;
    border-block-end: 1px solid var(--elv-line);
    background: var(--elv-surface-raised);
  }
  .empty { padding-block: 12px; row-gap: 6px; }
  .empty .hint { order: 1; flex-basis: 100%; padding-inline-start: 8px; }
  .ways { display: grid; grid-template-columns: repeat(auto-fit, minmax(13em, 1fr)); gap: 8px; inline-size: 100%; max-inline-size: 72rem; }
  .ways button { justify-content: start; gap: 0.9em; min-block-size: 52px; padding: 6px 14px; border-color: var(--elv-line-strong); text-align: start; white-space: normal; }
  .ways .icon { inline-size: 1.6em; block-size: 1.6em; color: var(--elv-accent); }
  .ways b, .ways .quiet { display: block; }
  b { font-weight: 600; }
  ol { display: flex; flex-wrap: wrap; gap: 1px; margin: 0; padding: 0; list-style: none; }
  .icon text { fill: currentColor; stroke: none; font-size: 10px; }
  li .icon { inline-size: 1.4em; block-size: 1.4em; stroke-width: 1.1; }
  li button { padding-inline: 0.5em; color: var(--elv-ink-default); }
  .done .icon { color: var(--elv-ok); stroke-width: 1.6; }
  [aria-current='step'] { color: var(--elv-accent); font-weight: 600; }
  .hint { flex: 1 1 18em; margin: 0; color: var(--elv-ink-default); }
  .close { position: absolute; inset: 3px 6px auto auto; padding: 0; justify-content: center; }
  .close:dir(rtl) { inset: 3px auto auto 6px; }
  @container (inline-size < 560px) {
    .hint { flex-basis: 100%; }
    .ways { grid-template-columns: 1fr 1fr; }
    .ways button { padding-inline: 10px; }
  }
`;
