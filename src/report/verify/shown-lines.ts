import { unescaped } from '../../exchange/index.ts';

/** A line of a page: a row of a table, or what stands by itself. */
export interface PageLine {
  /** Section and kind, with the number of the table: only lines of one part are compared. */
  readonly part: string;
  /** Texts by column; the first one names the line. */
  readonly texts: ReadonlyMap<number, string>;
  /** Where it stands, outermost first, as a reader finds it. */
  readonly place: readonly string[];
  /** Titles of the columns of its table. */
  readonly columns: readonly string[];
}

const TOKEN = /<!--[\s\S]*?-->|<(\/?)([a-z][a-z0-9]*)((?:[^>"']|"[^"]*"|'[^']*')*)>|[^<]+|</gi;

/** A text of HTML as it is read. */
export function readAs(text: string): string {
  return unescaped(text).replace(/\s+/g, ' ').trim();
}

/** Elements whose text is a part of its own. */
const LEAVES: ReadonlySet<string> = new Set(['h1', 'h2', 'p', 'dt', 'dd', 'th', 'td', 'figure']);

/** Gathers lines in the order in which a page shows them. */
class Gatherer {
  readonly lines: PageLine[] = [];
  #section = '';
  #title = '';
  #term = '';
  #table = 0;
  #caption = '';
  #columns: string[] = [];
  #row: string[] = [];
  #figures = 0;

  open(name: string, attributes: string): void {
    if (name === 'section') {
      this.#section = /\b(?:id|class)="([^"]*)"/.exec(attributes)?.[1] ?? '';
      [this.#title, this.#table, this.#figures] = ['', 0, 0];
    } else if (name === 'table') {
      this.#table += 1;
      [this.#caption, this.#columns] = ['', []];
    } else if (name === 'tr') this.#row = [];
  }

  close(name: string): void {
    if (name === 'section') [this.#section, this.#title] = ['', ''];
    if (name === 'tr' && this.#row.length > 0) {
      this.#add(`row ${this.#table}`, [this.#title, this.#caption, this.#row[0]!], this.#row, this.#columns);
    }
    if (name === 'thead') this.#add(`head ${this.#table}`, [this.#title], [this.#caption, ...this.#columns]);
  }

  leaf(name: string, attributes: string, text: string): void {
    if (name === 'h2') this.#title = text;
    if (name === 'dt') this.#term = text;
    else if (name === 'dd') this.#add('details', [this.#term], [this.#term, text]);
    else if (name === 'th') {
      if (attributes.includes('colgroup')) this.#caption = text;
      else this.#columns.push(text);
    } else if (name === 'td') this.#row.push(text);
    else if (name === 'figure') {
      this.#figures += 1;
      this.#add('figure', [this.#title, `(${this.#figures})`], [String(this.#figures), text]);
    } else this.#add(name, [this.#title], [text]);
  }

  #add(kind: string, place: readonly string[], texts: readonly string[], columns: readonly string[] = []): void {
    this.lines.push({
      part: `${this.#section} ${kind}`, texts: new Map(texts.entries()), place: place.filter((each) => each !== ''), columns,
    });
  }
}

/** All that a load table in HTML shows: title block, sentences, headings, rows and pictures. */
export function shownLines(page: string): readonly PageLine[] {
  const gatherer = new Gatherer();
  let leaf: { name: string; attributes: string; raw: string } | undefined;
  let isIn = false;
  for (const [token, slash, tag, attributes = ''] of page.matchAll(TOKEN)) {
    const name = tag?.toLowerCase();
    if (name === 'main' || name === 'footer') isIn = slash === '';
    if (!isIn) continue;
    if (leaf !== undefined) {
      if (name === leaf.name && slash === '/') {
        gatherer.leaf(leaf.name, leaf.attributes, readAs(leaf.name === 'figure' ? leaf.raw : leaf.raw.replace(/<[^>]*>/g, '')));
        leaf = undefined;
      } else leaf.raw += token;
    } else if (name !== undefined && slash === '' && LEAVES.has(name)) leaf = { name, attributes, raw: '' };
    else if (name !== undefined) gatherer[slash === '' ? 'open' : 'close'](name, attributes);
  }
  return gatherer.lines;
}
