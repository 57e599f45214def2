import { html, nothing, type TemplateResult } from 'lit';
import { SCHEMA, type SheetName } from '../../src/schedule/index.ts';
import { message, type Words } from '../../src/words/index.ts';

interface EmptySheetOptions {
  readonly readonly: boolean;
  /** Whether the page names a demo. */
  readonly demo: boolean;
  readonly words: Words;
  readonly ask: (command: 'open' | 'loadDemo' | 'takeoff') => void;
}

const BUTTONS = {
  open: message('Open a file'), takeoff: message('Read a takeoff'), loadDemo: message('Load the demo'),
} as const;

/** How to begin on a sheet that has no rows. */
export function emptySheet(sheet: SheetName, { readonly, demo, words, ask }: EmptySheetOptions): TemplateResult {
  const { title, help } = SCHEMA[sheet];
  const button = (command: keyof typeof BUTTONS) =>
    html`<button type="button" class="bordered" data-command=${command} @click=${() => { ask(command); }}>${words.say(BUTTONS[command])}</button>`;
  return html`<div class="card begin"><slot name="empty">
    <h3>${words.say('{sheet}: no rows yet', { sheet: words.text(title) })}</h3>
    <p>${words.text(help)}</p>
    ${readonly ? nothing : html`<p>${words.say('Type in the first line, paste rows from a spreadsheet with Ctrl+V, or drop a file here.')}</p>
      <p class="ways">${button('open')}${sheet === 'devices' ? button('takeoff') : nothing}${demo ? button('loadDemo') : nothing}</p>`}
  </slot></div>`;
}
