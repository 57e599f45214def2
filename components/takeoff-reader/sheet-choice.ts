import { html, nothing, type TemplateResult } from 'lit';
import type { Takeoff, TakeoffTable } from '../../src/exchange/takeoff/index.ts';
import type { Words } from '../../src/words/index.ts';

export interface SheetChoiceOptions {
  readonly tables: readonly TakeoffTable[];
  /** Keys of the lists that are read. */
  readonly chosen: ReadonlySet<string>;
  readonly takeoff: Takeoff | undefined;
  readonly choose: (keys: ReadonlySet<string>) => void;
  readonly words: Words;
}

/** Key of a list among those that are read together. */
export function keyOfTable({ file = '', sheet = '' }: TakeoffTable): string {
  return JSON.stringify([file, sheet]);
}

/**
 * Which lists of several files, or sheets of a workbook, are read, with what each gives; nothing where there is
 * one.
 */
export function sheetChoice(
  { tables, chosen, takeoff, choose, words }: SheetChoiceOptions,
): TemplateResult | typeof nothing {
  if (tables.length < 2) return nothing;
  const hasFiles = new Set(tables.map(({ file }) => file)).size > 1;
  const nameOf = ({ file, sheet = '' }: TakeoffTable) =>
    hasFiles ? [file ?? words.say('The pasted list'), sheet].filter((text) => text !== '').join(' › ') : sheet;
  const quantityOf = ({ file, sheet }: TakeoffTable) => takeoff?.lines.filter(({ source, outcome }) =>
    source.file === file && source.sheet === sheet && outcome !== 'left-out').reduce((sum, { qty }) => sum + (qty ?? 0), 0);
  const toggle = (key: string) => {
    const others = new Set(chosen);
    if (!others.delete(key)) others.add(key);
    choose(others);
  };
  return html`<fieldset class="sheets"><legend>${hasFiles ? words.say('Lists that are read together') : words.say('Sheets of the workbook')}</legend>
    ${tables.map((table) => {
      const key = keyOfTable(table);
      return html`<label><input type="checkbox" data-sheet-of-list=${nameOf(table)} .checked=${chosen.has(key)} @change=${() => { toggle(key); }}>
      ${nameOf(table)} ${chosen.has(key) ? html`<span class="quiet">${quantityOf(table)}</span>` : nothing}</label>`;
    })}</fieldset>`;
}
