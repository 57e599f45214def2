import { css } from 'lit';

export const styles = css`
  /* Its own width decides, as the overview beside the rows takes some of that of the element, or folds. */
  :host { container-type: inline-size; }
  .tools { display: flex; flex-wrap: wrap; align-items: center; gap: 4px 10px; min-block-size: 39px; padding: 4px 6px; }
  .group { display: flex; align-items: center; gap: 1px; }
  .gap { inline-size: 8px; }
  .end { margin-inline-start: auto; }
  .tools button { padding-inline: 0.45em; }
  .tools .small { padding: 0; justify-content: center; }
  .choice {
    field-sizing: content;
    max-inline-size: 12em;
    min-block-size: 26px;
    border: 1px solid var(--elv-line);
    border-radius: var(--elv-radius);
    background: var(--elv-surface-raised);
    color: var(--elv-ink);
  }
  .floating { inline-size: min(24rem, 100vi - 16px); }
  @container (inline-size < 86em) {
    .tools:not(:lang(en)) .group:first-child .word { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  }
  @container (inline-size < 72em) {
    .group:first-child .word { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  }
  @container (inline-size < 68em) {
    .tools:not(:lang(en)) .end .word { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  }
  @container (inline-size < 54em) {
    .end .word { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  }
`;
