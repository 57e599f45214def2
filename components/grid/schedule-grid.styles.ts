import { css, unsafeCSS } from 'lit';
import gridLibrary from 'handsontable/styles/handsontable.css?inline';
import { loadingBarStyles, statusMarkStyles } from '../look/index.ts';
import { theme } from './theme.styles.ts';

const cells = css`
  .handsontable td, .handsontable th { font-variant-numeric: tabular-nums lining-nums; }
  /* The host draws the frame. */
  .handsontable .ht_master .wtHolder { box-shadow: none !important; }
  .grid .handsontable tr > th:first-child { border-inline-start-color: transparent; }
  .handsontable td { white-space: nowrap; text-overflow: ellipsis; }
  .handsontable td.number { text-align: end; unicode-bidi: plaintext; }
  .handsontable td.number:dir(rtl) { text-align: left; }
  .handsontable td.own { color: var(--elv-ink); }
  .handsontable td.default { color: var(--elv-ink-default); }
  .handsontable td.default.number, .handsontable td.default.listed { font-style: italic; }
  .handsontable td.computed { color: var(--elv-ink-computed); --tint: color-mix(in srgb, var(--elv-surface) 75%, var(--elv-surface-raised)); }
  .handsontable td.heading { color: transparent; --tint: var(--elv-surface); overflow: hidden; border-inline-color: transparent; }
  .handsontable td.computed, .handsontable td.heading {
    --ht-row-cell-odd-background-color: var(--tint);
    --ht-row-cell-even-background-color: var(--tint);
  }
  .handsontable td.judged .mark { margin-inline-end: 0.4em; vertical-align: -0.06em; }
  .handsontable td.judged.over, .handsontable td.judged.near { font-weight: 600; }
  .handsontable td.over { color: var(--elv-over); }
  .handsontable td.near { color: var(--elv-near); }
  .handsontable td.incomplete { color: var(--elv-incomplete); }
  .handsontable td.judged.ok { color: var(--elv-ok); }
  /* A cell with a finding bears a bar at its start, an own value in place of another a corner, a formula its sign. */
  .handsontable td.found { box-shadow: inset 3px 0 0 currentColor; }
  .handsontable td.found:dir(rtl) { box-shadow: inset -3px 0 0 currentColor; }
  .handsontable td.overrides, .handsontable td.formula { position: relative; }
  .handsontable td.overrides::after {
    content: '';
    position: absolute;
    inset-block-start: 0;
    inset-inline-end: 0;
    border-block-start: 6px solid var(--elv-accent);
    border-inline-start: 6px solid transparent;
  }
  .handsontable td.formula::before { content: '='; float: inline-start; color: var(--elv-accent); }
`;

const headings = css`
  .handsontable thead th { vertical-align: bottom; }
  .handsontable thead th .relative { padding: 4px 7px 3px; }
  .handsontable thead th .colHeader { display: block; line-height: 1.25; white-space: nowrap; overflow: hidden; }
  .handsontable thead th .title {
    display: -webkit-box;
    -webkit-box-orient: vertical;
    -webkit-line-clamp: 2;
    overflow: hidden;
    font-size: var(--elv-size-small);
    text-align: start;
    white-space: normal;
  }
  .handsontable thead th.numeric .title { text-align: end; }
  .handsontable thead th.computed .title { color: var(--elv-ink-computed); font-weight: 400; }
  .handsontable thead th .below {
    display: flex;
    justify-content: space-between;
    gap: 0.5em;
    min-block-size: 1.25em;
    color: var(--elv-ink-default);
    font-size: var(--elv-size-label);
    font-weight: 400;
  }
  .handsontable thead th .used { color: var(--elv-accent); font-weight: 700; }
  /* What opens the ways to sort and pick is in sight where it is pointed at, above a title of one line. */
  .handsontable thead th { position: relative; }
  .handsontable thead th .relative { position: static; }
  .handsontable thead th .menu {
    position: absolute;
    inset: 0 2px auto auto;
    min-inline-size: 24px;
    min-block-size: 24px;
    padding: 0 4px;
    border-radius: var(--elv-radius);
    background: var(--elv-surface);
    color: var(--elv-accent);
    line-height: 24px;
    text-align: center;
    cursor: pointer;
    opacity: 0;
  }
  .handsontable thead th .menu:dir(rtl) { inset: 0 auto auto 2px; }
  .handsontable thead th:hover .menu { opacity: 1; }
  @media (hover: none) { .handsontable thead th .menu { opacity: 1; } }
  .handsontable tbody th { text-align: end; color: var(--elv-ink-default); font-weight: 400; }
  .handsontable tbody th .relative { padding: var(--ht-cell-vertical-padding) 7px; }
  .handsontable tbody th .rowHeader { display: flex; align-items: center; justify-content: space-between; font-size: var(--elv-size-small); }
  .handsontable tbody th .rowHeader .mark { order: -1; }
  .handsontable tbody th .rowHeader::before { content: ''; order: -2; }
  .handsontable tbody th.heading { border-inline-end-color: transparent; }
  .groups {
    position: absolute;
    z-index: 190;
    inset-inline-start: 0;
    overflow: hidden;
    pointer-events: none;
  }
  .group {
    position: absolute;
    inset-inline: 0;
    inset-block-start: 0;
    display: flex;
    align-items: center;
    gap: 1.1em;
    padding-inline: 10px;
    background: var(--elv-surface);
    border-block-end: 1px solid var(--elv-line-strong, var(--elv-line));
    color: var(--elv-ink);
    white-space: nowrap;
    overflow: hidden;
  }
  .group b::before { content: '▾'; margin-inline-end: 0.4em; color: var(--elv-ink-default); font-weight: 400; }
  .group b.folded::before { content: '▸'; }
  .handsontable tbody :is(td, th).heading { cursor: pointer; }
  .group b { font-weight: 650; min-inline-size: 3.4em; }
  .group .purpose { min-inline-size: 5.6em; }
  .group .purpose:empty { display: none; }
  .group .quiet { color: var(--elv-ink-default); }
  .group .gauge { flex: none; inline-size: 8.5em; }
  .group .rows { margin-inline-start: auto; }
`;

const editors = css`
  .handsontableInput { font-variant-numeric: tabular-nums lining-nums; }
  .suggestions {
    position: fixed;
    inset: auto;
    margin: 0;
    padding: 3px 0;
    max-block-size: 15em;
    max-inline-size: 24em;
    overflow: auto;
    list-style: none;
    border: 1px solid var(--elv-line-strong, var(--elv-line));
    border-radius: 0 0 var(--elv-radius) var(--elv-radius);
    background: var(--elv-surface-raised);
    color: var(--elv-ink);
    font: 400 var(--elv-size) / 1.4 var(--elv-font);
    box-shadow: 0 4px 14px rgb(0 0 0 / 16%);
  }
  .suggestions[data-empty] { visibility: hidden; }
  .suggestions li { min-block-size: 24px; padding: 2px 9px; cursor: pointer; white-space: nowrap; overflow: hidden; text-overflow: ellipsis; }
  .suggestions small { color: var(--elv-ink-default); font-size: var(--elv-size-small); }
  .suggestions li:hover { background: color-mix(in srgb, var(--elv-accent) 10%, transparent); }
  .suggestions li[aria-selected='true'] { background: color-mix(in srgb, var(--elv-accent) 20%, transparent); }
`;

const menus = css`
  .cell-menu {
    position: fixed;
    inset: auto;
    margin: 0;
    padding: 4px;
    min-inline-size: 15em;
    max-block-size: 100vb;
    overflow: auto;
    border: 1px solid var(--elv-line-strong, var(--elv-line));
    border-radius: calc(var(--elv-radius) + 2px);
    background: var(--elv-surface-raised);
    color: var(--elv-ink);
    font: 400 var(--elv-size) / 1.4 var(--elv-font);
    box-shadow: 0 4px 14px rgb(0 0 0 / 16%);
  }
  .cell-menu button {
    display: flex;
    justify-content: space-between;
    gap: 2em;
    inline-size: 100%;
    min-block-size: 26px;
    padding: 2px 9px;
    border: 0;
    border-radius: var(--elv-radius);
    background: none;
    color: inherit;
    font: inherit;
    text-align: start;
    cursor: pointer;
  }
  .cell-menu button:hover, .cell-menu button:focus { background: color-mix(in srgb, var(--elv-accent) 14%, transparent); outline: none; }
  .cell-menu [aria-disabled='true'] { color: color-mix(in srgb, var(--elv-ink-default) 62%, transparent); cursor: default; }
  .cell-menu kbd { color: var(--elv-ink-default); font: inherit; }
  .cell-menu [role='separator'] { margin: 4px 0; border-block-start: 1px solid var(--elv-line); }
  .note {
    position: fixed;
    inset: auto;
    margin: 0;
    padding: 4px 9px;
    max-inline-size: 34em;
    border: 1px solid var(--elv-over);
    border-radius: var(--elv-radius);
    background: var(--elv-surface-raised);
    color: var(--elv-ink);
    font: 400 var(--elv-size) / 1.4 var(--elv-font);
    box-shadow: 0 4px 14px rgb(0 0 0 / 16%);
    overflow-wrap: anywhere;
    pointer-events: none;
  }
  .ask { max-inline-size: 36em; padding: 14px 18px; border: 1px solid var(--elv-line-strong, var(--elv-line)); border-radius: calc(var(--elv-radius) + 3px); background: var(--elv-surface-raised); color: var(--elv-ink); font: inherit; }
  .ask h3 { margin: 0; font-size: 1em; font-weight: 600; }
  .ask p { display: flex; flex-wrap: wrap; align-items: center; gap: 8px; margin: 10px 0 0; }
  .ask :is(button, select) { min-block-size: 28px; padding: 0 0.7em; border: 1px solid var(--elv-line-strong, var(--elv-line)); border-radius: var(--elv-radius); background: var(--elv-surface); color: inherit; font: inherit; }
  .handsontable td.refused { box-shadow: inset 0 0 0 2px var(--elv-over); }
  .handsontable td.pointed { outline: 2px dashed var(--elv-accent); outline-offset: -2px; }
  .drop-line { position: absolute; z-index: 200; inset-inline: 0; block-size: 2px; background: var(--elv-accent); pointer-events: none; }
  .handsontable tbody th.ht__active_highlight { cursor: grab; }
`;

const forced = css`
  @media (forced-colors: active) {
    .handsontable .wtBorder { forced-color-adjust: none; background-color: Highlight !important; }
    .handsontable td.found { outline: 2px solid CanvasText; outline-offset: -3px; }
    .handsontable td.overrides::after { forced-color-adjust: none; border-block-start-color: CanvasText; }
    .cell-menu button:focus { outline: 2px solid Highlight; }
    .suggestions li[aria-selected='true'] { forced-color-adjust: none; background: Highlight; color: HighlightText; }
  }
`;

export const scheduleGridStyles = [
  unsafeCSS(gridLibrary),
  theme, statusMarkStyles, loadingBarStyles, cells, headings, editors, menus, forced,
  css`
    :host {
      display: block;
      position: relative;
      block-size: 100%;
      min-block-size: 0;
      overflow: hidden;
      color: var(--elv-ink);
      background: var(--elv-surface-raised);
      font: 400 var(--elv-size) / 1.4 var(--elv-font);
    }
    :host([hidden]), [hidden] { display: none !important; }
    .grid { position: absolute; inset: 0; }
  `,
];
