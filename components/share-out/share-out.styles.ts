import { css } from 'lit';

export const styles = css`
  .verdict .sum { font-size: var(--elv-size-large); }
  .fills { max-inline-size: 76rem; }
  .fills td { vertical-align: middle; }
  .fills td:has(.bar) { inline-size: 22%; min-inline-size: 4rem; padding-inline-end: 0; }
  .fills .figure { white-space: nowrap; }
  .moves { max-inline-size: 60rem; }
  summary { min-block-size: 28px; padding-block: 4px; font-weight: 600; cursor: pointer; }
  progress { inline-size: 14rem; accent-color: var(--elv-accent); }
  .waiting { display: flex; align-items: center; gap: 12px; }
  .left-out { color: var(--elv-incomplete); }
  .new { font-size: var(--elv-size-small); color: var(--elv-accent); }
`;
