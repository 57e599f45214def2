import { css } from 'lit';

export const styles = css`
  .jobs { margin-block-start: 12px; }
  .options { align-items: end; }
  .options label { display: grid; justify-items: start; gap: 3px; max-inline-size: 100%; }
  select { max-inline-size: min(22rem, 100%); }
  .problems { padding: 0; list-style: none; color: var(--elv-incomplete); font-weight: 600; }
  .pair { display: inline-flex; align-items: end; gap: 8px; max-inline-size: 100%; }
  .pair input { inline-size: 9rem; max-inline-size: 100%; }
  .tags > div { max-block-size: 15rem; overflow: auto; scrollbar-width: thin; }
  .tags table { inline-size: auto; }
  .tags td { padding-block: 2px; vertical-align: middle; }
  .over { color: var(--elv-over); }
  .outcome .sum { font-size: 1.15em; }
  .findings { padding: 0; max-inline-size: 100ch; list-style: none; }
  .findings li { display: flex; align-items: baseline; gap: 0.6em; padding-block: 2px; }
  .findings.went { color: var(--elv-ink-default); }
  .counts { display: flex; flex-wrap: wrap; gap: 4px 22px; padding: 0; margin-block: 8px; list-style: none; }
  .difference { inline-size: auto; margin-block: 8px; }
  .difference tbody th { font-weight: 400; border-block-end: 1px solid var(--elv-line); }
  .standings { max-inline-size: 76rem; }
  .scroll { overflow: auto; scrollbar-width: thin; }
  summary { min-block-size: 28px; padding-block: 4px; margin-block-start: 14px; font-weight: 600; cursor: pointer; }
`;
