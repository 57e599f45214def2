import { css } from 'lit';

export const styles = css`
  .tabs { display: flex; align-items: center; min-inline-size: 0; }
  .more { flex: none; min-block-size: 30px; padding: 0 0.5em; color: var(--elv-ink-default); }
  .work + .list { margin-inline-start: var(--elv-tab-padding, 0.8em); }
  [role='tablist'] {
    display: flex;
    flex-wrap: wrap;
    gap: 1px;
    min-inline-size: 0;
    padding: 2px 2px 0;
  }
  [role='tab'] {
    position: relative;
    flex: none;
    gap: 0.35em;
    min-block-size: 34px;
    padding: 0 var(--elv-tab-padding, 0.6em);
    border-radius: var(--elv-radius) var(--elv-radius) 0 0;
    color: var(--elv-ink-default);
  }
  [role='tab'][aria-selected='true'] { color: var(--elv-ink); background: var(--elv-surface-raised); }
  [role='tab'][aria-selected='true']::after {
    content: '';
    position: absolute;
    inset: 0 0 auto;
    block-size: 3px;
    border-radius: var(--elv-radius) var(--elv-radius) 0 0;
    background: var(--elv-accent);
  }
  [aria-selected='true'] .title { font-weight: 600; }
  /* The bold form keeps its place, so that choosing a tab moves none of the others. */
  .title { display: inline-grid; }
  .title::after { content: attr(data-title); block-size: 0; overflow: hidden; visibility: hidden; font-weight: 600; }
  .count { font-size: var(--elv-size-small); color: var(--elv-ink-default); }
  :focus-visible { outline-offset: -3px; }
  .only { display: none; }
  @container (560px <= inline-size < 120em) {
    /* All names in one line; the pointer and screen readers tell the numbers. */
    .count { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
    [role='tab']:has(.mark) { padding-inline-end: calc(var(--elv-tab-padding, 0.6em) + 3px); }
    [role='tab'] .mark { position: absolute; inset: 8px 0 auto auto; inline-size: 8px; block-size: 8px; }
    [aria-selected='true'] .title { font-weight: inherit; }
    .title::after { content: none; }
  }
  @container (120em <= inline-size < 140em) {
    :host(:not(:lang(en))) .count { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  }
  @container (560px <= inline-size < 900px) {
    /* One line, as rows are what there is little room for; keys and fingers move it. */
    [role='tablist'] { flex-wrap: nowrap; overflow-x: auto; scrollbar-width: thin; }
  }
  @container (inline-size < 560px) {
    .tabs { flex-wrap: wrap; }
    :host(:not([all])) .count { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
    .only { display: inline-flex; }
    :host(:not([all])) [aria-selected='false'] { display: none; }
  }
`;
