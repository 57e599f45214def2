import { html, nothing, render } from 'lit';
import { SCHEMA, SHEET_NAMES, type NamingCell, type SheetName } from '../../../src/schedule/index.ts';
import type { Words } from '../../../src/words/index.ts';

/** Rows that are to be deleted although others name them. */
export interface AskedDeletion {
  readonly sheet: SheetName;
  /** Their tags. */
  readonly tags: readonly string[];
  readonly naming: readonly NamingCell[];
  /** Tags of the sheet that stay. */
  readonly others: readonly string[];
}

/** Tags that are listed by name; of more there are, only their number is told. */
const MOST_NAMED = 3;

/**
 * Asks what becomes of the rows that name others which are to be deleted.
 * @param layer where the question is put: inside the shadow root, outside the grid.
 * @returns the tag that they are to name, empty where they keep the old one; `undefined` when nothing is to be deleted.
 */
export function askDeletion(layer: HTMLElement, asked: AskedDeletion, words: Words): Promise<string | undefined> {
  const { sheet, tags, naming, others } = asked;
  const dialog = document.createElement('dialog');
  dialog.className = 'ask';
  layer.append(dialog);
  const rowsOf = (name?: SheetName) =>
    new Set(naming.filter((cell) => name === undefined || cell.sheet === name).map((cell) => `${cell.sheet} ${cell.id}`)).size;
  const listed = SHEET_NAMES.filter((name) => rowsOf(name) > 0)
    .map((name) => words.say('{sheet} {n}', { sheet: words.text(SCHEMA[name].title), n: String(rowsOf(name)) })).join(', ');
  const named = tags.length <= MOST_NAMED ? tags.join(', ') : words.say('{n} rows of {sheet}', { n: String(tags.length), sheet: words.text(SCHEMA[sheet].title) });
  return new Promise((resolve) => {
    const end = (to: string | undefined): void => {
      dialog.close();
      dialog.remove();
      resolve(to);
    };
    const chosen = () => dialog.querySelector('select')!.value;
    render(html`<h3>${words.say('{n, plural, one {# row names} other {# rows name}} {tags}: {sheets}.', { n: rowsOf(), tags: named, sheets: listed })}</h3>
      <p>${words.say('What becomes of them?')}</p>
      ${others.length === 0 ? nothing : html`<p><label>${words.say('Name instead')} <select autofocus>${others.map((tag) => html`<option>${tag}</option>`)}</select></label>
        <button type="button" data-do="move" @click=${() => { end(chosen()); }}>${words.say('Move and delete')}</button></p>`}
      <p><button type="button" data-do="delete" @click=${() => { end(''); }}>${words.say('Delete, and leave them as they are')}</button>
        <button type="button" data-do="cancel" @click=${() => { end(undefined); }}>${words.say('Cancel')}</button></p>`, dialog);
    dialog.setAttribute('aria-label', words.say('Deletion'));
    // The grid hears nothing of keys that are meant for the question.
    dialog.addEventListener('keydown', (event) => { event.stopPropagation(); });
    dialog.addEventListener('mousedown', (event) => { event.stopPropagation(); });
    dialog.addEventListener('cancel', (event) => {
      event.preventDefault();
      end(undefined);
    });
    dialog.showModal();
  });
}
