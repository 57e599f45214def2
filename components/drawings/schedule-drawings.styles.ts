import { css, unsafeCSS } from 'lit';
import { PICTURE_STYLES } from '../../src/report/pictures/index.ts';

export const styles = css`
  ${unsafeCSS(PICTURE_STYLES)}
  :host { display: block; min-inline-size: 0; }
  .tools { display: flex; flex-wrap: wrap; align-items: center; gap: 6px 14px; margin-block: 2px 8px; max-inline-size: 1240px; }
  .tools label, .pager { display: inline-flex; align-items: center; gap: 6px; }
  .tools select {
    padding: 2px 6px; border: 1px solid var(--elv-line-strong); border-radius: var(--elv-radius);
    background: var(--elv-surface-raised); color: var(--elv-ink);
    max-inline-size: min(16em, 60vw); min-block-size: 28px; }
  .tools button { min-block-size: 28px; }
  .save { margin-inline-start: auto; }
  .sheet { inline-size: fit-content; max-inline-size: 100%; overflow-x: auto; border: 1px solid var(--elv-line); border-radius: var(--elv-radius); background: var(--elv-surface-raised); }
  .sheet:focus-visible { outline-offset: -2px; }
  .picture { display: block; direction: ltr; }
  @media (pointer: coarse) { .tools :is(button, select) { min-block-size: 44px; min-inline-size: 44px; } }
`;
