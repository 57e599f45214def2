import { css } from 'lit';

export const styles = css`
  .tools { display: flex; flex-wrap: wrap; align-items: center; gap: 4px 10px; min-block-size: 39px; padding: 4px 6px; }
  .group { display: flex; align-items: center; gap: 1px; }
  .gap { inline-size: 8px; }
  .end { margin-inline-start: auto; }
  .small { padding: 0; justify-content: center; }
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
  @container (inline-size < 104em) {
    .tools button:not(.small) { padding-inline: 0.45em; }
  }
  @container (inline-size < 94em) {
    .tools:not(:lang(en)) .group:first-child .word { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  }
  @container (inline-size < 74em) {
    .group .word { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
    .group:is(.end, .wordy) .word { position: static; inline-size: auto; block-size: auto; clip-path: none; }
  }
  @container (inline-size < 900px) {
    .group.end .word { position: absolute; inline-size: 1px; block-size: 1px; clip-path: inset(50%); }
  }
  @container (inline-size < 560px) {
    .choice { max-inline-size: 8.5em; }
  }
`;
