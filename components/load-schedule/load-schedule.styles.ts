import { css } from 'lit';

export const styles = css`
  /* The width of what it holds counts for nothing, so that of a flexible row or a box that fits is said here. */
  :host { block-size: 46rem; min-block-size: 24rem; min-inline-size: 0; }
  .element {
    /* What the page lets be inherited ends here, but for what decides whether and in which colours it is shown. */
    all: initial;
    color-scheme: inherit;
    visibility: inherit;
    pointer-events: inherit;
    display: block;
    box-sizing: border-box;
    color: var(--elv-ink);
    font: 400 var(--elv-size) / 1.4 var(--elv-font);
    font-variant-numeric: tabular-nums lining-nums;
    container-type: inline-size;
    contain-intrinsic-inline-size: 80rem;
    position: relative;
    block-size: 100%;
    /* Nothing scrolls it, a script that brings a cell into view included: its header would be out of reach. */
    overflow: clip;
    border: 1px solid var(--elv-line);
    border-radius: var(--elv-radius);
    background: var(--elv-surface);
  }
  .layout {
    display: grid;
    grid-template:
      'header header' auto
      'tabs tabs' auto
      'notices notices' auto
      'sheet panel' minmax(0, 1fr)
      'footer footer' auto / minmax(0, 1fr) clamp(17.5rem, 22.5cqi, 22rem);
    block-size: 100%;
  }
  .layout.alone { grid-template-columns: minmax(0, 1fr) 0; }
  .layout.folded { grid-template-columns: minmax(0, 1fr) 3.6em; }
  .header {
    grid-area: header;
    display: flex;
    align-items: stretch;
    border-block-end: 1px solid var(--elv-line);
    background: var(--elv-surface-raised);
  }
  .header elv-details-strip { flex: 1; min-inline-size: 0; }
  .commands { display: flex; align-items: center; gap: 1px; padding: 0 6px; border-inline-start: 1px solid var(--elv-line); }
  #unfold { display: none; }
  .tabs { grid-area: tabs; display: flex; align-items: center; gap: 1px; padding-inline-end: 6px; border-block-end: 1px solid transparent; }
  .tabs elv-sheet-tabs { flex: 1; min-inline-size: 0; align-self: end; }
  .tabs .panels { field-sizing: content; max-inline-size: 11em; text-overflow: ellipsis; min-block-size: 28px; margin-inline: 4px; border: 1px solid var(--elv-line); border-radius: var(--elv-radius); background: var(--elv-surface-raised); color: var(--elv-ink); }
  .tabs .narrowed { border-color: var(--elv-accent); color: var(--elv-accent); font-weight: 600; }
  .notices { grid-area: notices; min-inline-size: 0; }
  elv-sheet-view { grid-area: sheet; isolation: isolate; }
  .work { grid-area: sheet; }
  elv-schedule-panel { grid-area: panel; border-inline-start: 1px solid var(--elv-line); background: var(--elv-surface); }
  .footer { grid-area: footer; border-block-start: 1px solid var(--elv-line); color: var(--elv-ink-default); font-size: var(--elv-size-small); }
  .cautions summary { padding: 3px 12px; cursor: pointer; list-style: none; }
  .cautions summary::-webkit-details-marker { display: none; }
  .cautions .link { padding: 0 0.2em; }
  .cautions p { margin: 0; padding: 0 12px 8px; max-inline-size: 90ch; }
  .drop {
    position: absolute;
    z-index: 9;
    inset: 8px;
    display: grid;
    place-items: center;
    border: 2px dashed var(--elv-accent);
    border-radius: calc(var(--elv-radius) + 3px);
    background: color-mix(in srgb, var(--elv-surface-raised) 95%, transparent);
    color: var(--elv-accent);
    font-size: var(--elv-size-large);
    font-weight: 600;
    pointer-events: none;
  }
  /* There before it says something, so that it is heard, and without a gap of its own. */
  #saving:empty { position: absolute; }
  #saving:not(:empty) { padding-inline: 0.4em; font-size: var(--elv-size-small); white-space: nowrap; color: var(--elv-ink-default); }
  #saving.failed { color: var(--elv-over); }
  h3 { margin: 0; font-size: 1em; font-weight: 600; }
  dl { display: grid; grid-template-columns: minmax(min-content, 11em) 1fr; gap: 5px 16px; margin: 8px 0 0; }
  dt { color: var(--elv-ink-default); }
  dd { margin: 0; }
  @container (inline-size >= 1700px) {
    .layout:not(.alone, .folded) { grid-template-columns: minmax(0, 1fr) clamp(38rem, 34cqi, 46rem); }
  }
  @container (inline-size >= 104em) {
    .tabs:not(:lang(en)) elv-sheet-tabs { --elv-tab-padding: 0.4em; }
  }
  /* The names of all sheets stand in one line before the numbers of their rows and the words of these buttons do. */
  @container (inline-size < 130em) {
    .tabs .word { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  }
  @container (inline-size < 150em) {
    .tabs:not(:lang(en)) .word { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  }
  @container (inline-size < 104em) {
    .commands button { padding-inline: 0.4em; }
    /* The title block and the tabs come first. */
    .commands :is([data-command='open'], [data-command='save'], [data-command='join'], [data-command='cases'], [data-command='variants'], [data-command='wiring'], [data-command='measure']) .word,
    .commands:not(:lang(en)) [data-command='bill'] .word,
    .tabs .word { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
    .tabs elv-sheet-tabs { --elv-tab-padding: 0.4em; font-size: var(--elv-size-small); }
  }
  @container (inline-size < 80em) {
    /* Words before a single line: icons alone say too little. */
    .header { flex-wrap: wrap; }
    .header elv-details-strip { flex-basis: 100%; }
    .commands { flex: 1; flex-wrap: wrap; padding-block: 2px; border-inline-start: 0; border-block-start: 1px solid var(--elv-line); }
  }
  @container (560px <= inline-size < 70em) {
    /* Longer words in one line. */
    .commands:not(:lang(en)) :is(button, elv-language-choice) { padding-inline: 0.2em; gap: 0.25em; font-size: var(--elv-size-small); }
    .commands:not(:lang(en)) button { min-inline-size: 26px; }
  }
  @container (inline-size < 900px) {
    .layout, .layout.alone, .layout.folded {
      grid-template:
        'header' auto
        'tabs' auto
        'notices' auto
        'sheet' minmax(min-content, 1fr)
        'panel' auto
        'footer' auto / minmax(0, 1fr);
      overflow-y: auto;
    }
    elv-sheet-view, .work { min-block-size: 34rem; }
    elv-sheet-view[pictured] { min-block-size: 58rem; }
    elv-schedule-panel { border-inline-start: 0; border-block-start: 1px solid var(--elv-line); overflow: visible; }
  }
  @container (inline-size < 560px) {
    .tabs { flex-wrap: wrap; justify-content: end; }
    .tabs elv-sheet-tabs { flex: 1 1 0; }
    .tabs elv-sheet-tabs[all] { flex-basis: 100%; }
    /* No room for all at once: the title of the schedule, what is done on site, and a button for the rest. */
    .header { flex-wrap: nowrap; align-items: start; }
    .header elv-details-strip { flex-basis: auto; }
    .header.unfolded { flex-wrap: wrap; }
    .header.unfolded elv-details-strip { flex-basis: 100%; }
    .header:not(.unfolded) .commands { flex: none; padding-block: 8px; border: 0; }
    .header:not(.unfolded) .commands > :not(#unfold, [data-command='undo'], [data-command='redo'], [data-command='measure']) { display: none; }
    #unfold { display: inline-flex; }
    .tabs :is([popovertarget='keys'], [aria-controls='panel']) { display: none; }
    .tabs .panels { min-block-size: 36px; }
    .commands button, .tabs > button { min-block-size: 36px; min-inline-size: 36px; justify-content: center; }
  }
  @media (prefers-reduced-motion: no-preference) {
    button { transition: background-color 0.1s; }
  }
`;
