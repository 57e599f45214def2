import { html, nothing, type TemplateResult } from 'lit';
import type { Takeoff, TakeoffTable } from '../../src/exchange/takeoff/index.ts';
import type { Words } from '../../src/words/index.ts';

export interface SheetChoiceOptions {
  readonly tables: readonly TakeoffTable[];
  /** Names of the sheets that are read. */
  readonly chosen: ReadonlySet<string>;
  readonly takeoff: Takeoff | undefined;
  readonly choose: (sheets: ReadonlySet<string>) => void;
  readonly words: Words;
}

/** Which sheets of a workbook are read, with what each of them gives; nothing where there is only one. */
export function sheetChoice(
  { tables, chosen, takeoff, choose, words }: SheetChoiceOptions,
): TemplateResult | typeof nothing {
  if (tables.length < 2) return nothing;
  const quantityOf = (sheet: string) => takeoff?.lines.filter(({ source, outcome }) =>
    source.sheet === sheet && outcome !== 'left-out').reduce((sum, { qty }) => sum + (qty ?? 0), 0);
  const toggle = (sheet: string) => {
    const others = new Set(chosen);
    if (!others.delete(sheet)) others.add(sheet);
    choose(others);
  };
  return html`<fieldset class="sheets"><legend>${words.say('Sheets of the workbook')}</legend>
    ${tables.map(({ sheet = '' }) => html`<label><input type="checkbox" data-sheet-of-list=${sheet} .checked=${chosen.has(sheet)} @change=${() => { toggle(sheet); }}>
      ${sheet} ${chosen.has(sheet) ? html`<span class="quiet">${quantityOf(sheet)}</span>` : nothing}</label>`)}</fieldset>`;
}
