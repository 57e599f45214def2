import { html, nothing, type TemplateResult } from 'lit';
import { SCHEMA, type SheetName } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import { commandButton } from '../schedule-toolbar/command-button.ts';

interface EmptySheetOptions {
  readonly readonly: boolean;
  /** Whether first steps say how to begin. */
  readonly led: boolean;
  readonly words: Words;
}

/** How to begin on a sheet that has no rows. */
export function emptySheet(sheet: SheetName, { readonly, led, words }: EmptySheetOptions): TemplateResult {
  const { title, help } = SCHEMA[sheet];
  return html`<div class="card begin"><slot name="empty">
    <h3>${words.say('{sheet}: no rows yet', { sheet: words.text(title) })}</h3>
    <p>${words.text(help)}</p>
    ${readonly ? nothing : html`<p>${words.say('Type in the first line, paste rows from a spreadsheet with Ctrl+V, or drop a file here.')}</p>
      ${led ? nothing : html`<p class="ways">${commandButton('open', words)}${sheet === 'devices' ? commandButton('takeoff', words) : nothing}${commandButton('firstSteps', words)}</p>`}`}
  </slot></div>`;
}
