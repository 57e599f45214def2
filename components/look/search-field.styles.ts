import { css } from 'lit';

/** A field to search in, as wide as what it searches. */
export const searchField = css`
  input[type=search] {
    inline-size: 100%;
    min-block-size: 32px;
    padding: 0 0.6em;
    border: 1px solid var(--elv-line-strong);
    border-radius: var(--elv-radius);
    background: var(--elv-surface);
  }
`;
