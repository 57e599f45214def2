import { html, svg, type TemplateResult } from 'lit';

/** The drawings of the buttons, on a field of 16 by 16. */
const DRAWINGS = {
  undo: svg`<path d="M6 3 2.5 6.5 6 10M3 6.5h6.2a3.8 3.8 0 0 1 0 7.5H6"/>`,
  redo: svg`<path d="M10 3l3.5 3.5L10 10M13 6.5H6.8a3.8 3.8 0 0 0 0 7.5H10"/>`,
  open: svg`<path d="M2 13V3.5h4l1.5 2H14V13zM8 11.5V8M6.3 9.5 8 7.8l1.7 1.7"/>`,
  save: svg`<path d="M8 2v7.5M4.8 6.5 8 9.7l3.2-3.2M2.5 10.5v3h11v-3"/>`,
  csvIn: svg`<path d="M2.5 2.5h7v11h-7zM2.5 6h7M2.5 9.7h7M14.5 8h-4.2M12 6.2 10.2 8 12 9.8"/>`,
  csvOut: svg`<path d="M2.5 2.5h7v11h-7zM2.5 6h7M2.5 9.7h7M10.2 8h4.3M12.8 6.2 14.6 8l-1.8 1.8"/>`,
  insertAbove: svg`<path d="M2 9.5h12v4H2zM8 7V2M5.5 4.5h5"/>`,
  insertBelow: svg`<path d="M2 2.5h12v4H2zM8 9v5M5.5 11.5h5"/>`,
  removeRows: svg`<path d="M2 6h12v4H2zM5 2l6 12"/>`,
  moveUp: svg`<path d="M8 13.5V3M4 7l4-4 4 4"/>`,
  moveDown: svg`<path d="M8 2.5V13M4 9l4 4 4-4"/>`,
  fillDown: svg`<path d="M3 2.5h10v3H3zM8 5.5v8M5.3 10.8 8 13.5l2.7-2.7"/>`,
  moreColumns: svg`<path d="M2 2.5h7v11H2zM5.5 2.5v11M12.5 5.5v5M10 8h5"/>`,
  foldGroups: svg`<path d="M2 3.5h12M4.5 7l3.5 3 3.5-3M2 13.5h12"/>`,
  keys: svg`<path d="M1.8 4h12.4v8.2H1.8zM4.5 6.7h.1M7 6.7h.1M9.4 6.7h.1M11.7 6.7h.1M5 9.6h6"/>`,
  panel: svg`<path d="M2 3h12v10H2zM9.5 3v10M11 6h1.5M11 8.5h1.5"/>`,
  takeoff: svg`<path d="M3 2h7l3 3v9H3zM5.5 7l1 1 1.6-2M5.5 11l1 1 1.6-2M10 7.2h1M10 11.2h1"/>`,
  shareOut: svg`<path d="M2 8h4M6 8l3.5-4.5H14M6 8h8M6 8l3.5 4.5H14"/>`,
  sizing: svg`<path d="M2 13.5h12M3 13.5v-4h2.5v4M6.8 13.5V6h2.5v7.5M10.6 13.5V2.5h2.5v11"/>`,
  cases: svg`<path d="M2 3.5h9M2 8h12M2 12.5h6M5 2v3M10 6.5v3M5 11v3"/>`,
  bill: svg`<path d="M2 3.5h1.6l1.6 7h7l1.5-5H4.1M6 13.4h.1M11.3 13.4h.1"/>`,
  loadTable: svg`<path d="M3 1.8h7l3 3v9.4H3zM5.3 7.5h5.4M5.3 9.6h5.4M5.3 11.7h5.4M8 7.5v4.2"/>`,
  join: svg`<path d="M2 3h3.5L8 8h6M2 13h3.5L8 8M11.8 5.8 14 8l-2.2 2.2"/>`,
  measure: svg`<path d="M2.5 12a5.6 5.6 0 1 1 11 0zM8 11.5 11 6.6"/>`,
  variants: svg`<path d="M2 8h3.5M5.5 8C8 8 7.5 3.5 10 3.5h4M5.5 8C8 8 7.5 12.5 10 12.5h1M12.5 12.5h1.5"/>`,
  wiring: svg`<path d="M2.5 6.5h11v3h-11zM6.2 6.5v3M9.8 6.5v3M4.3 6.5V2.5M8 9.5v4M11.7 6.5V2.5"/>`,
  help: svg`<path d="M5.6 6a2.4 2.4 0 1 1 3.7 2c-.9.6-1.3 1-1.3 2.1M8 12.8h.1"/>`,
  firstSteps: svg`<path d="M2 13.5h3.6V10h3.6V6.5h3.6V3H14"/>`,
  find: svg`<path d="M6.8 2.5a4.3 4.3 0 1 0 0 8.6 4.3 4.3 0 0 0 0-8.6M10 10l4 4"/>`,
  menu: svg`<path d="M2.5 4.5h11M2.5 8h11M2.5 11.5h11"/>`,
  close: svg`<path d="M4 4l8 8M12 4l-8 8"/>`,
} as const;

export type IconName = keyof typeof DRAWINGS;

/** The drawing of a button; the button carries the words. */
export function icon(name: IconName): TemplateResult {
  return html`<svg class="icon" viewBox="0 0 16 16" aria-hidden="true">${DRAWINGS[name]}</svg>`;
}
