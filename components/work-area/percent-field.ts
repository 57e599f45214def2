import { html, type TemplateResult } from 'lit';
import { parseCell, type InputColumn } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';

/**
 * A field for a share, which a person enters in percent as in any cell, with a decimal comma or point. What is none is
 * not taken: the field stays as typed and says why.
 */
export function percentField(
  name: string, share: number, title: string, words: Words, change: (share: number) => void,
): TemplateResult {
  const column: InputColumn = { role: 'input', key: name, title, help: '', kind: 'number', unit: '%', min: 0, max: 1000 };
  const onChange = ({ currentTarget }: Event) => {
    const field = currentTarget as HTMLInputElement;
    const read = parseCell(column, field.value, { words });
    const problem = read.ok ? '' : read.problem;
    field.setCustomValidity(problem);
    field.toggleAttribute('aria-invalid', problem !== '');
    if (problem !== '') field.reportValidity();
    else change(Number(read.ok ? read.value ?? 0 : 0) / 100);
  };
  return html`<label>${title} <input class="percent" data-option=${name} inputmode="decimal"
    .value=${words.number(Math.round(share * 1e4) / 100)} @change=${onChange}></label>`;
}
