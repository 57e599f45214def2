import { html, nothing, type TemplateResult } from 'lit';
import { SCHEMA, type SheetName } from '../../src/schedule/index.ts';

interface EmptySheetOptions {
  readonly readonly: boolean;
  /** Whether the page names a demo. */
  readonly demo: boolean;
  readonly ask: (command: 'open' | 'loadDemo' | 'takeoff') => void;
}

/** How to begin on a sheet that has no rows. */
export function emptySheet(sheet: SheetName, { readonly, demo, ask }: EmptySheetOptions): TemplateResult {
  const { title, help } = SCHEMA[sheet];
  const button = (words: string, command: 'open' | 'loadDemo' | 'takeoff') =>
    html`<button type="button" class="bordered" data-command=${command} @click=${() => { ask(command); }}>${words}</button>`;
  return html`<div class="card begin"><slot name="empty">
    <h3>${title}: no rows yet</h3>
    <p>${help}</p>
    ${readonly ? nothing : html`<p>Type in the first line, paste rows from a spreadsheet with Ctrl+V, or drop a file here.</p>
      <p class="ways">${button('Open a file', 'open')}${sheet === 'devices' ? button('Read a takeoff', 'takeoff') : nothing}${demo ? button('Load the demo', 'loadDemo') : nothing}</p>`}
  </slot></div>`;
}
