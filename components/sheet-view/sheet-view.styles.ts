import { css } from 'lit';

export const styles = css`
  :host {
    display: flex;
    flex-direction: column;
    min-inline-size: 0;
    min-block-size: 0;
    background: var(--elv-surface-raised);
  }
  elv-schedule-toolbar { flex: none; min-block-size: 39px; }
  .rows { position: relative; flex: 1; min-block-size: 0; border-block: 1px solid var(--elv-line); background: var(--elv-surface); }
  elv-schedule-grid { position: absolute; inset: 0; }
  elv-cell-explanation { flex: none; max-block-size: 45%; }
  elv-cell-explanation[pictured] { block-size: min(33em, 58%); max-block-size: none; }
  .sight { flex: none; display: flex; flex-wrap: wrap; align-items: center; gap: 2px 10px; padding: 0 8px 3px 12px; }
  .sight b { font-weight: 600; }
  #heading { inline-size: min(20rem, 100vi - 16px); }
  .line { flex: none; display: flex; align-items: center; gap: 8px; min-block-size: 30px; padding: 0 8px 2px 12px; }
  .said, .refused { min-inline-size: 0; overflow-wrap: anywhere; }
  .refused { color: var(--elv-over); }
  .sum { margin-inline-start: auto; white-space: nowrap; color: var(--elv-ink-default); }
  .views { display: flex; margin-inline-end: -4px; }
  .views button { min-block-size: 26px; color: var(--elv-ink-default); }
  .views button[aria-expanded='true'] { color: var(--elv-accent); }
  h3 { margin: 0; font-size: 1em; font-weight: 600; }
  .card {
    position: absolute;
    inset: 50% auto auto 50%;
    translate: -50% -50%;
    inline-size: min(34rem, 100% - 24px);
    margin: 0;
    padding: 16px 20px;
    border: 1px solid var(--elv-line);
    border-radius: calc(var(--elv-radius) + 3px);
    background: var(--elv-surface-raised);
  }
  .card p { margin: 0.5em 0 0; }
  .card code { padding: 0.1em 0.3em; border-radius: 3px; background: var(--elv-surface); overflow-wrap: anywhere; }
  .begin { z-index: 2; inset-block-start: 48%; }
  .ways { display: flex; flex-wrap: wrap; gap: 8px; }
  .problems { flex: none; border-block-start: 1px solid var(--elv-line); background: var(--elv-surface); }
  .problems header { display: flex; align-items: start; gap: 8px; padding: 6px 8px 0 12px; }
  .problems h3:last-of-type { padding-block-end: 6px; }
  .problems h3 { flex: 1; padding-block-start: 4px; color: var(--elv-over); }
  .problems ul { max-block-size: 9.5em; margin: 0; padding: 2px 12px 8px; overflow-y: auto; list-style: none; }
  .problems li { padding: 2px 0; overflow-wrap: anywhere; }
  @container (inline-size < 900px) {
    elv-cell-explanation[pictured] { block-size: 36em; }
  }
  @container (inline-size < 560px) {
    .line { flex-wrap: wrap; row-gap: 0; }
    .line .views { margin-inline-start: auto; }
  }
  @media (forced-colors: active) {
    .card { border: 1px solid CanvasText; }
  }
`;
