import { css } from 'lit';

export const styles = css`
  .body { display: flex; flex-direction: column; }
  .body > * { flex: none; }
  .body > iframe { flex: 1; inline-size: 100%; min-block-size: 12rem; border: 1px solid var(--elv-line); border-radius: var(--elv-radius); background: #fff; color-scheme: light; }
  .sections summary { cursor: pointer; min-block-size: 28px; align-content: center; }
  .sections > div { display: flex; flex-wrap: wrap; gap: 2px 14px; padding-block: 4px; max-block-size: 30vh; overflow-y: auto; }
  .sections label { display: inline-flex; align-items: center; gap: 5px; min-block-size: 24px; }
  .scroll { max-inline-size: 100%; overflow-x: auto; }
  .document { display: flex; flex-wrap: wrap; gap: 8px 16px; margin-block: 8px 4px; }
  .document label { display: grid; gap: 2px; font-size: var(--elv-size-label); color: var(--elv-ink-default); }
  .document input { inline-size: min(20rem, 100%); font-size: var(--elv-size); }
  .revisions { max-inline-size: 76rem; }
  .revisions td { padding: 3px 6px 3px 0; vertical-align: middle; }
  .revisions .issued { padding: 6px 6px 6px 9px; }
  .revisions .revision.issued { padding-inline-start: 0; }
  .revisions input { inline-size: 100%; min-inline-size: 4.5rem; }
  .revisions .revision { inline-size: 8%; }
  .revisions .date { inline-size: 16%; }
  .revisions .date input { min-inline-size: 7.5rem; }
  .revisions .name { inline-size: 20%; }
  .files { display: flex; flex-wrap: wrap; align-items: center; gap: 6px 12px; margin-block: 6px; }
  .problems { color: var(--elv-over); }
  .save { display: inline-flex; flex-wrap: wrap; gap: 4px; margin-inline-start: auto; }
  .area > footer .save + .primary { margin-inline-start: 0; }
`;
