import { css } from 'lit';

export const styles = css`
  /* Its own width decides, as the buttons beside it are longer in other languages and larger type. */
  :host { container-type: inline-size; }
  .block {
    display: grid;
    /* No narrower than the titles, which other languages have longer. */
    grid-template-columns:
      minmax(min-content, 2.4fr) minmax(min-content, 1fr) minmax(min-content, 0.6fr) minmax(min-content, 0.8fr)
      minmax(min-content, 0.8fr) minmax(min-content, 0.8fr) minmax(min-content, 2fr);
    overflow: clip;
  }
  label { position: relative; display: grid; min-inline-size: 0; }
  label + label { border-inline-start: 1px solid var(--elv-line); }
  label span { padding: 3px 0.7em 0; font-size: var(--elv-size-label); line-height: 1.3; color: var(--elv-ink-default); white-space: nowrap; }
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
  .project { min-inline-size: 5.8em; }
  .date { min-inline-size: 8em; }
  .panel, .preparedBy, .checkedBy, .remarks { min-inline-size: 4.6em; }
  label:hover:not(:has([readonly])) { background: color-mix(in srgb, var(--elv-accent) 6%, transparent); }
  input:focus-visible { outline: none; }
  label:focus-within { outline: 2px solid var(--elv-accent); outline-offset: -2px; border-radius: var(--elv-radius); }
  @container (inline-size < 42em) {
    .block { grid-template-columns: minmax(min-content, 2fr) minmax(min-content, 1fr) minmax(min-content, 0.6fr) minmax(min-content, 1fr); }
    .preparedBy, .checkedBy, .remarks { border-block-start: 1px solid var(--elv-line); }
    .preparedBy { border-inline-start: 0; }
    .remarks { grid-column: span 2; }
  }
  @container (inline-size < 30em) {
    .block { grid-template-columns: repeat(auto-fill, minmax(max(7.4em, 31%), 1fr)); }
    .block .project { grid-column: 1 / -1; }
    .block .remarks { grid-column: auto; }
    .block label { border: 0; border-block-end: 1px solid var(--elv-line); }
    :host(:not([unfolded])) .block label { border: 0; }
    :host(:not([unfolded])) .block label:not(.project) { display: none; }
  }
`;
