import { css, unsafeCSS } from 'lit';

/** Name under which the grid library finds this theme. */
export const THEME_NAME = 'ht-theme-elv';

/**
 * The properties of the element given to the variables of the grid library, here and nowhere else. Only those are set
 * that the parts in use read. `--ht-line-height` is set when the grid is made, as the library needs it in pixels.
 */
export const theme = css`
  .${unsafeCSS(THEME_NAME)} {
    --ht-font-family: var(--elv-font);
    --ht-font-size: var(--elv-size);
    --ht-font-size-small: var(--elv-size);
    --ht-font-weight: 400;
    --ht-letter-spacing: 0;
    --ht-line-height-small: var(--ht-line-height);
    --ht-border-color: var(--elv-line);
    --ht-accent-color: var(--elv-accent);
    --ht-foreground-color: var(--elv-ink);
    --ht-foreground-secondary-color: var(--elv-ink-default);
    --ht-background-color: var(--elv-surface-raised);
    --ht-placeholder-color: var(--elv-ink-default);
    --ht-read-only-color: var(--elv-ink-computed);
    --ht-disabled-color: var(--elv-ink-default);
    --ht-gap-size: 4px;
    --ht-icon-size: 12px;
    --ht-table-transition: 0s;
    --ht-border-radius: 0;
    --ht-cell-horizontal-padding: 7px;
    --ht-cell-vertical-padding: 3px;
    --ht-cell-horizontal-border-color: color-mix(in srgb, var(--elv-line) 55%, transparent);
    --ht-cell-vertical-border-color: color-mix(in srgb, var(--elv-line) 75%, transparent);
    --ht-cell-selection-border-color: var(--elv-accent);
    --ht-cell-selection-background-color: var(--elv-accent);
    --ht-cell-read-only-background-color: transparent;
    --ht-cell-autofill-size: 7px;
    --ht-cell-autofill-hit-area-size: 15px;
    --ht-cell-autofill-border-width: 1px;
    --ht-cell-autofill-border-radius: 2px;
    --ht-cell-autofill-border-color: var(--elv-surface-raised);
    --ht-cell-autofill-background-color: var(--elv-accent);
    --ht-cell-autofill-fill-border-color: var(--elv-accent);
    --ht-cell-editor-border-width: 2px;
    --ht-cell-editor-border-color: var(--elv-accent);
    --ht-cell-editor-foreground-color: var(--elv-ink);
    --ht-cell-editor-background-color: var(--elv-surface-raised);
    --ht-cell-editor-shadow-blur-radius: 0;
    --ht-cell-editor-shadow-color: transparent;
    --ht-header-font-weight: 500;
    --ht-header-foreground-color: var(--elv-ink);
    --ht-header-background-color: var(--elv-surface);
    --ht-header-highlighted-shadow-size: 0px;
    --ht-header-highlighted-foreground-color: var(--elv-ink);
    --ht-header-highlighted-background-color: color-mix(in srgb, var(--elv-accent) 12%, var(--elv-surface));
    --ht-header-active-border-color: var(--elv-accent);
    --ht-header-active-foreground-color: var(--elv-ink);
    --ht-header-active-background-color: color-mix(in srgb, var(--elv-accent) 22%, var(--elv-surface));
    --ht-header-row-foreground-color: var(--elv-ink-default);
    --ht-header-row-background-color: var(--elv-surface);
    --ht-header-row-highlighted-foreground-color: var(--elv-ink);
    --ht-header-row-highlighted-background-color: color-mix(in srgb, var(--elv-accent) 12%, var(--elv-surface));
    --ht-header-row-active-foreground-color: var(--elv-ink);
    --ht-header-row-active-background-color: color-mix(in srgb, var(--elv-accent) 22%, var(--elv-surface));
    --ht-row-header-odd-background-color: var(--elv-surface);
    --ht-row-header-even-background-color: var(--elv-surface);
    --ht-row-cell-odd-background-color: var(--elv-surface-raised);
    --ht-row-cell-even-background-color: var(--elv-surface-raised);
    --ht-resize-indicator-color: var(--elv-accent);
    --ht-scrollbar-border-radius: 6px;
    --ht-scrollbar-track-color: var(--elv-surface);
    --ht-scrollbar-thumb-color: var(--elv-line-strong, var(--elv-ink-default));
  }
`;
