import { isStruckThroughout, unstruck, withLook, type Look } from '../marked-text.ts';
import { unescaped } from './unescaped.ts';

/** A table of a page: its cells as texts, and which rows and columns are hidden or struck through, by place from 0. */
export interface HtmlTable {
  readonly cells: readonly (readonly string[])[];
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenColumns: ReadonlySet<number>;
  readonly struckRows: ReadonlySet<number>;
}

/** How many cells the tables of a page may have together, how far one may reach sideways, and how deep its text. */
const [MOST_CELLS, MOST_SPAN, MOST_OPEN] = [2_000_000, 1000, 50];
const TAG = /<(\/?)(table|tr|td|th|col|br|p|div|s|strike|del|sup|sub|span|font|[biua]|em|strong)\b([^<>]*)>/gi;
const LOOKS: Readonly<Record<string, Look>> = { s: 'struck', strike: 'struck', del: 'struck', sup: 'raised', sub: 'lowered' };

/**
 * The tables of a page or of a clipboard (`text/html`). A text that spans rows stands in each of them, a number in the
 * first one alone, as a quantity would count again; what spans columns stands in the first. What is struck through
 * within a cell, raised or lowered is so in its signs.
 * @returns the tables in their order; what lies beyond two million cells is left out, and so is a table in a table.
 */
export function readHtmlTables(page: string): HtmlTable[] {
  const styles = classStyles(page);
  const html = page.replace(/<!--[\s\S]*?-->|<(style|script)\b[\s\S]*?<\/\1>/gi, '');
  const tables: TableDraft[] = [];
  let [depth, from, cells] = [0, 0, 0];
  let table: TableDraft | undefined;
  for (const { index, 0: whole, 1: closing, 2: tag = '', 3: attributes = '' } of html.matchAll(TAG)) {
    const [name, opens] = [tag.toLowerCase(), closing === ''];
    table?.write(html.slice(from, index));
    from = index + whole.length;
    if (name === 'table') {
      depth = Math.max(0, depth + (opens ? 1 : -1));
      if (opens && depth === 1) tables.push(table = new TableDraft());
      if (depth === 0) {
        // Its last cell may have no end of its own.
        table?.close();
        table = undefined;
      }
    }
    if (table === undefined || depth !== 1) continue;
    const look = opens ? `${attributes};${classesOf(attributes).map((each) => styles.get(each) ?? '').join(';')}` : '';
    if (name === 'tr' && opens) table.row(isHidden(look, 'height'), isStruck(look));
    else if (name === 'col' && opens) table.column(isHidden(look, 'width'), numberIn(attributes, 'span'));
    else if (name === 'td' || name === 'th') {
      if (!opens) table.close();
      else if ((cells += 1) > MOST_CELLS) break;
      else cells += table.open(isStruck(look), numberIn(attributes, 'rowspan'), numberIn(attributes, 'colspan')) - 1;
    } else if (/^(?:br|p|div|table|col|tr)$/.test(name)) table.write(' ');
    else if (opens) table.begin(name, isStruck(look) ? 'struck' : LOOKS[name]);
    else table.end(name);
  }
  table?.write(html.slice(from));
  table?.close();
  return tables;
}

/** A table on the way. */
class TableDraft implements HtmlTable {
  readonly cells: string[][] = [];
  readonly hiddenRows = new Set<number>();
  readonly hiddenColumns = new Set<number>();
  readonly struckRows = new Set<number>();
  /** Cells that reach down into rows below, by column. */
  readonly #spans = new Map<number, { left: number; readonly text: string }>();
  #column = 0;
  #columns = 0;
  #cell: { text: string; readonly isStruck: boolean; readonly rows: number; readonly columns: number } | undefined;
  /** Elements within a cell that are open, with their looks. */
  #open: { readonly name: string; readonly look: Look | undefined }[] = [];

  row(isHidden: boolean, isStruck: boolean): void {
    this.close();
    this.cells.push([]);
    this.#column = 0;
    if (isStruck) this.struckRows.add(this.cells.length - 1);
    if (isHidden) this.hiddenRows.add(this.cells.length - 1);
    this.#fill();
  }

  column(isHidden: boolean, span: number): void {
    for (let count = 0; count < span; count += 1, this.#columns += 1) {
      if (isHidden) this.hiddenColumns.add(this.#columns);
    }
  }

  /** @returns how many cells it takes. */
  open(isStruck: boolean, rows: number, columns: number): number {
    this.close();
    if (this.cells.length === 0) this.cells.push([]);
    this.#cell = { text: '', isStruck, rows, columns };
    this.#open = [];
    return columns;
  }

  begin(name: string, look: Look | undefined): void {
    if (this.#cell !== undefined && this.#open.length < MOST_OPEN) this.#open.push({ name, look });
  }

  end(name: string): void {
    const place = this.#open.findLastIndex((each) => each.name === name);
    if (place >= 0) this.#open.splice(place, 1);
  }

  write(html: string): void {
    if (this.#cell === undefined) return;
    const looks = new Set(this.#open.flatMap(({ look }) => look ?? []));
    this.#cell.text += [...looks].sort().reduce((text, look) => withLook(text, look), plainText(html));
  }

  close(): void {
    const cell = this.#cell;
    const row = this.cells.at(-1);
    if (cell === undefined || row === undefined) return;
    this.#cell = undefined;
    const written = cell.text.replace(/\s+/g, ' ').trim();
    const isStruck = cell.isStruck || isStruckThroughout(written);
    const text = isStruck ? unstruck(written) : written;
    const below = /\p{L}/u.test(text) ? text : '';
    for (let count = 0; count < cell.columns; count += 1, this.#column += 1) {
      row[this.#column] = count === 0 ? text : '';
      if (cell.rows > 1) this.#spans.set(this.#column, { left: cell.rows - 1, text: count === 0 ? below : '' });
    }
    if (isStruck && text !== '') this.struckRows.add(this.cells.length - 1);
    this.#fill();
  }

  /** Cells of rows above that reach into this place. */
  #fill(): void {
    for (let span = this.#spans.get(this.#column); span !== undefined; span = this.#spans.get(this.#column)) {
      this.cells.at(-1)![this.#column] = span.text;
      span.left -= 1;
      if (span.left === 0) this.#spans.delete(this.#column);
      this.#column += 1;
    }
  }
}

/** Styles of classes: spreadsheets put what is struck through there. */
function classStyles(page: string): Map<string, string> {
  const sheets = [...page.matchAll(/<style\b[^>]*>([\s\S]*?)<\/style>/gi)].map(([, sheet = '']) => sheet).join('\n');
  return new Map([...sheets.matchAll(/\.([\w-]+)\s*\{([^{}]*)\}/g)].map(([, name = '', style = '']) => [name, style]));
}

function classesOf(attributes: string): string[] {
  return (/\bclass\s*=\s*["']?([\w\s-]+)/i.exec(attributes)?.[1] ?? '').split(/\s+/);
}

function isHidden(look: string, size: string): boolean {
  return /display\s*:\s*none/i.test(look) || new RegExp(`\\b${size}\\s*=\\s*["']?0\\b(?!\\.)|\\b${size}\\s*:\\s*0(?![.\\d])`, 'i').test(look);
}

function isStruck(look: string): boolean {
  return /line-through/i.test(look);
}

function numberIn(attributes: string, name: string): number {
  const found = Number(new RegExp(`\\b${name}\\s*=\\s*["']?(\\d+)`, 'i').exec(attributes)?.[1] ?? 1);
  return Math.min(Math.max(found, 1), MOST_SPAN);
}

function plainText(html: string): string {
  return unescaped(html.replace(/<[^<>]*>/g, ''));
}
