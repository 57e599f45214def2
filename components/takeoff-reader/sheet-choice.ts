import { html, nothing, type TemplateResult } from 'lit';
import type { Words } from '../../src/words/index.ts';

export interface SheetChoiceOptions {
  readonly sheets: readonly string[];
  readonly sheet: string;
  readonly choose: (sheet: string) => void;
  readonly words: Words;
}

/** Which sheet of a workbook holds the list; nothing where there is only one. */
export function sheetChoice({ sheets, sheet, choose, words }: SheetChoiceOptions): TemplateResult | typeof nothing {
  if (sheets.length < 2) return nothing;
  const onChange = (event: Event) => { choose((event.currentTarget as HTMLSelectElement).value); };
  return html`<label class="sheet">${words.say('Sheet of the workbook')} <select data-choose="sheet" @change=${onChange}>
    ${sheets.map((each) => html`<option .value=${each} ?selected=${each === sheet}>${each}</option>`)}</select></label>`;
}
