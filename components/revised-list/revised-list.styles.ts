import { css } from 'lit';

export const revisedListStyles = css`
  .revision { padding-block-end: 8px; }
  .revision .choice { margin-block: 2px 6px; }
  .revision p { margin: 4px 0; }
  .lists { margin: 0 0 6px; padding: 0; border: 0; }
  .lists legend { padding: 0; }
  .lists label { display: flex; flex-wrap: wrap; align-items: center; gap: 0 0.4em; min-block-size: 26px; overflow-wrap: anywhere; }
  .lists b { color: var(--elv-incomplete); }
  .revised { table-layout: auto; }
  .revised th { position: sticky; z-index: 1; inset-block-start: 0; background: var(--elv-surface-raised); }
  .revised td { padding: 2px 10px; }
  .revised .ref { min-inline-size: 5em; }
  .revised .because { inline-size: 40%; }
  .revised select { min-block-size: 24px; max-inline-size: 100%; }
  .sign { display: inline-block; inline-size: 1em; font-weight: 600; text-align: center; }
  [data-revised='went'] td { color: var(--elv-incomplete); }
`;
