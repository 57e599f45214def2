import { html, nothing, type TemplateResult } from 'lit';
import type { Problem } from '../../src/exchange/index.ts';
import { htmlTables, type TakeoffTable } from '../../src/exchange/takeoff/index.ts';
import type { Words } from '../../src/words/index.ts';

/** What kept a list from being read. */
export interface RefusedList {
  readonly name: string;
  readonly problems: readonly Pick<Problem, 'message'>[];
}

export interface SourceOptions {
  readonly take: (name: string, lists: readonly TakeoffTable[]) => void;
  readonly open: (files: readonly File[]) => void;
  readonly words: Words;
}

/** Says what was not read and why; nothing where nothing was refused. */
export function refused(refusal: RefusedList | undefined, words: Words): TemplateResult | typeof nothing {
  if (refusal === undefined) return nothing;
  return html`<div class="refused" role="alert"><b>${words.say('{name} was not read. Nothing changed.', { name: refusal.name })}</b>
    <ul>${refusal.problems.map(({ message }) => html`<li>${message}</li>`)}</ul></div>`;
}

/** What the clipboard holds as lists: as cells, which tell which of them are merged, else as text. */
export function pastedLists({ clipboardData }: ClipboardEvent): readonly TakeoffTable[] {
  const tables = htmlTables(clipboardData?.getData('text/html') ?? '');
  const text = clipboardData?.getData('text/plain') ?? '';
  return tables.length > 0 ? tables : text.trim() === '' ? [] : [{ cells: text }];
}

/** How a list gets in: pasted, typed, opened; dropping a file is heard by the whole element. */
export function takeSource({ take, open, words }: SourceOptions): TemplateResult {
  const onPaste = (event: ClipboardEvent) => {
    const lists = pastedLists(event);
    const field = event.currentTarget as HTMLTextAreaElement;
    // What is pasted beside typed text is part of that text.
    if (lists.length === 0 || field.value.trim() !== '') return;
    event.preventDefault();
    take(words.say('The pasted list'), lists);
  };
  const onFile = (event: Event) => {
    const field = event.currentTarget as HTMLInputElement;
    const files = [...field.files ?? []];
    if (files.length > 0) open(files);
    field.value = '';
  };
  const read = (event: Event) => {
    const field = (event.currentTarget as Element).closest('.source')!.querySelector('textarea')!;
    take(words.say('The typed list'), [{ cells: field.value }]);
  };
  return html`<div class="source">
    <label for="list"><b>${words.say('Paste the list here')}</b></label>
    <textarea id="list" spellcheck="false" placeholder=${words.say('Item\tDescription\tRoom\tQty')} @paste=${onPaste}></textarea>
    <p class="ways"><button type="button" class="bordered" data-do="read" @click=${read}>${words.say('Read the list')}</button>
      <label class="file bordered">${words.say('Open files')}<input type="file" multiple class="unseen" accept=".csv,.tsv,.txt,.xlsx,.xlsm,.html,.htm" @change=${onFile}></label>
      <span class="quiet">${words.say('or drop files; several are read together.')}</span></p>
    <p class="quiet spoken">${words.say('A workbook (.xlsx), cells copied from a spreadsheet, or CSV with comma, semicolon or tab. Columns may stand in any order, under headings in English, German or French, or none; titles, subtotals and quantities such as “12 no.” or “1 200” are understood.')}</p>
  </div>`;
}
