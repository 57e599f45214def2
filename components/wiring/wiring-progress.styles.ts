import { css } from 'lit';

/** What the ticks of the terminals look like: large enough for a thumb, one below the other. */
export const progressStyles = css`
  .who { display: flex; flex-wrap: wrap; align-items: center; gap: 4px 10px; }
  .who input { inline-size: 12em; max-inline-size: 100%; }
  .options .who input, .options .choice button, .more .link, .more input, .said button { min-block-size: 44px; }
  .group > h3 {
    position: sticky;
    inset-block-start: 0;
    z-index: 1;
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 14px;
    margin: 0;
    padding-block: 2px;
    border-block-end: 1px solid var(--elv-line-strong);
    background: var(--elv-surface-raised);
  }
  .group > h3 button { min-block-size: 44px; padding-inline: 0; color: var(--elv-ink); font-weight: 600; overflow-wrap: anywhere; white-space: normal; text-align: start; }
  .group > h3 .quiet { font-weight: 400; }
  .group > ul { margin: 0 0 14px; padding: 0; list-style: none; }
  .terminal { display: grid; grid-template-columns: minmax(0, 1fr) auto auto; gap: 0 6px; align-items: center; padding-block: 6px; border-block-end: 1px solid var(--elv-line); }
  .wires { display: grid; grid-template-columns: minmax(0, 1fr); gap: 1px 18px; overflow-wrap: anywhere; }
  .wires > :first-child { font-weight: 600; }
  .tick { display: flex; flex-direction: column; align-items: center; justify-content: center; gap: 3px; min-inline-size: 66px; min-block-size: 56px; border: 1px solid var(--elv-line-strong); border-radius: var(--elv-radius); background: var(--elv-surface); font-size: var(--elv-size-small); cursor: pointer; }
  .tick input[type='checkbox'] { inline-size: 24px; block-size: 24px; margin: 0; }
  .tick:has(:disabled) { cursor: default; color: var(--elv-ink-default); }
  .tick[data-state='done'] { border-color: var(--elv-ok); background: color-mix(in srgb, var(--elv-ok) 16%, var(--elv-surface-raised)); }
  .tick[data-state='otherwise'] { border: 2px dashed var(--elv-incomplete); }
  .wires, .more { grid-column: 1; }
  .tick { grid-area: 1 / 2 / span 2; }
  .tick ~ .tick { grid-column: 3; }
  .more { display: flex; flex-wrap: wrap; align-items: center; gap: 0 14px; font-size: var(--elv-size-small); color: var(--elv-ink-default); overflow-wrap: anywhere; }
  .more .changed { color: var(--elv-incomplete); font-weight: 600; }
  .more .fault { color: var(--elv-ink); font-weight: 600; }
  .more .link { padding-inline: 0; }
  .more input { flex: 1; min-inline-size: min(12em, 100%); }
  .said { position: sticky; inset-block-end: -16px; z-index: 2; display: flex; flex-wrap: wrap; align-items: center; gap: 0 10px; margin-inline: -16px; padding: 4px 16px; border-block-start: 1px solid var(--elv-line-strong); background: var(--elv-surface); }
  .said:not(:has(p)) { display: none; }
  .said span:has(p) { flex: 1; }
  .said p { margin: 6px 0; }
  .said .refused { color: var(--elv-over); font-weight: 600; }
  @container (inline-size >= 700px) {
    .wires { grid-template-columns: 8em minmax(0, 1fr) minmax(0, 1fr) minmax(0, 2fr); align-items: center; }
  }
  @container (inline-size >= 1100px) {
    .options .who input, .options .choice button, .more .link, .more input { min-block-size: 28px; }
  }
  @container (inline-size < 900px) {
    .said { margin-inline: -12px; padding-inline: 12px; }
  }
  @media (forced-colors: active) {
    .tick[data-state='done'] { border-color: Highlight; }
  }
`;
