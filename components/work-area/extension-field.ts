import { html, type TemplateResult } from 'lit';
import type { Words } from '../../src/words/index.ts';

/** The field for what may come later, in percent of what there is. */
export function extensionField(share: number, words: Words, change: (share: number) => void): TemplateResult {
  const onChange = ({ currentTarget }: Event) => {
    const field = currentTarget as HTMLInputElement;
    const percent = Number(field.value);
    if (field.value !== '' && field.checkValidity()) change(percent / 100);
    else field.value = String(share * 100);
  };
  return html`<label>${words.say('For extension [%]')} <input class="percent" data-option="extension" type="number" min="0" max="1000" step="1"
    .value=${String(Math.round(share * 1e4) / 100)} @change=${onChange}></label>`;
}
