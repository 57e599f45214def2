import { css, unsafeCSS } from 'lit';
import { PICTURE_STYLES } from '../../src/report/pictures/index.ts';

export const styles = css`
  ${unsafeCSS(PICTURE_STYLES)}
  :host { position: relative; }
  .sheet { overflow-x: auto; background: var(--elv-surface-raised); }
  .sheet:focus-visible { outline-offset: -2px; }
  .picture { display: block; inline-size: 100%; min-inline-size: 520px; max-inline-size: 180mm; block-size: auto; direction: ltr; }
  .tools { display: flex; justify-content: flex-end; padding: 2px 4px; }
  @media print {
    :host { color-scheme: light; break-inside: avoid; }
    .tools { display: none; }
    .sheet { overflow: visible; }
    .picture { inline-size: 180mm; min-inline-size: 0; print-color-adjust: exact; }
  }
`;
