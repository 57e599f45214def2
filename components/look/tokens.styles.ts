import { css } from 'lit';

/**
 * The colours, type and measures of every part, as custom properties that a page may set on the element. Each colour
 * is given for light and dark and follows the `color-scheme` that the element inherits.
 */
export const tokens = css`
  :host {
    --elv-font: system-ui, 'Segoe UI', 'Noto Sans', 'Liberation Sans', sans-serif;
    --elv-size: 13.5px;
    --elv-size-large: calc(var(--elv-size) * 31 / 27);
    --elv-size-small: calc(var(--elv-size) * 8 / 9);
    --elv-size-label: calc(var(--elv-size) * 7 / 9);
    --elv-radius: 5px;
    --elv-accent: light-dark(#0d5c73, #74c7dc);
    --elv-surface: light-dark(#f3f4f2, #14181b);
    --elv-surface-raised: light-dark(#fdfdfc, #1b2024);
    --elv-line: light-dark(#d6dad7, #343c42);
    --elv-line-strong: light-dark(#85908c, #76828a);
    --elv-ink: light-dark(#182026, #e8ecee);
    --elv-ink-default: light-dark(#545f68, #a9b4bb);
    --elv-ink-computed: light-dark(#46525b, #b4bec5);
    --elv-over: light-dark(#a5211b, #ff9a90);
    --elv-near: light-dark(#855000, #efb45c);
    --elv-incomplete: light-dark(#574b96, #bdb2f5);
    --elv-ok: light-dark(#3d6552, #97c3aa);
  }
`;
