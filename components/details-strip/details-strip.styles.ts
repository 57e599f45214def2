import { css } from 'lit';

export const styles = css`
  .block {
    display: grid;
    grid-template-columns: minmax(9em, 2.4fr) minmax(5em, 1fr) minmax(4em, 0.6fr) minmax(7.6em, 0.8fr) minmax(5.5em, 0.8fr) minmax(5.5em, 0.8fr) minmax(6em, 2fr);
  }
  label { position: relative; display: grid; min-inline-size: 0; }
  label + label { border-inline-start: 1px solid var(--elv-line); }
  label span { padding: 3px 0.7em 0; font-size: 0.78em; line-height: 1.3; color: var(--elv-ink-default); white-space: nowrap; }
  input {
    inline-size: 100%;
    min-block-size: 25px;
    padding: 0 0.55em 2px;
    border: 0;
    background: none;
    text-overflow: ellipsis;
  }
  input::placeholder { color: var(--elv-ink-default); }
  .project input { font-weight: 600; }
  label:hover:not(:has([readonly])) { background: color-mix(in srgb, var(--elv-accent) 6%, transparent); }
  input:focus-visible { outline: none; }
  label:focus-within { outline: 2px solid var(--elv-accent); outline-offset: -2px; border-radius: var(--elv-radius); }
  @container (inline-size < 1080px) {
    .block { grid-template-columns: 2fr 1fr 0.6fr 1fr; }
    .preparedBy, .checkedBy, .remarks { border-block-start: 1px solid var(--elv-line); }
    .preparedBy { border-inline-start: 0; }
    .remarks { grid-column: span 2; }
  }
  @container (inline-size < 560px) {
    .block { grid-template-columns: 1fr 1fr; }
    .block .project { grid-column: 1 / -1; }
    .block .remarks { grid-column: auto; }
    .block label { border: 0; border-block-end: 1px solid var(--elv-line); }
  }
`;
