import { parseCell, type Cells, type DecimalSign, type InputColumn } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import { withoutStruck } from '../marked-text.ts';
import type { TakeoffColumn } from './columns.ts';
import { TYPE_FACTS, type TakeoffField } from './field.ts';
import type { TypeFacts } from './legend.ts';
import { plainKey } from './plain-words.ts';
import { Titles } from './titles.ts';

/** Marks that stand for what is in the cell above. */
const DITTO = new Set([
  '"', '""', "''", '”', '„', '“', '〃', '-"-', "-''-", '-//-', 'ditto', 'do', 'do.', 'dito', 'dto', 'dto.', 'idem',
  'id.', 'ibid.',
  'desgl', 'desgl.', 'desgleichen', 'wie vor', 'wie vor.', 'wie oben', 'w. v.', 'w.v.', 'd°', 'dº', 'comme ci-dessus',
]);
const FACT: InputColumn = { role: 'input', key: 'fact', title: '', kind: 'number', help: '' };

/** An area that a line has, and how it is known where it does not stand in the line. */
export interface FoundArea {
  readonly area: string | undefined;
  readonly remark: string | undefined;
  /** The titles of places that it stands below, as they are compared. */
  readonly below?: string;
}

/** Reads the cells of lines one after another, with what they take from lines above: ditto marks, rooms, titles. */
export class LineCells {
  readonly #columns: readonly TakeoffColumn[];
  readonly #places: Readonly<Partial<Record<TakeoffField, readonly number[]>>>;
  readonly #sheet: string | undefined;
  readonly #words: Words;
  readonly #above = new Map<number, string>();
  /** What stands in columns of areas, and on which line, for blank cells below. */
  readonly #areas = new Map<number, { readonly line: number; readonly text: string }>();
  readonly #titles: Titles;

  /** @param sheet the area of lines that have no other; `undefined` for none. */
  constructor(columns: readonly TakeoffColumn[], sheet: string | undefined, words: Words) {
    const places: Partial<Record<TakeoffField, number[]>> = {};
    for (const { field, index } of columns) if (field !== undefined) (places[field] ??= []).push(index);
    [this.#columns, this.#places, this.#sheet, this.#words] = [columns, places, sheet, words];
    this.#titles = new Titles(sheet);
  }

  /** Places of the columns that hold a field. */
  places(field: TakeoffField): readonly number[] {
    return this.#places[field] ?? [];
  }

  /** Areas of lines above do not reach below a total. */
  endPart(): void {
    this.#areas.clear();
  }

  /** Titles that hold for the lines below, from the one that takes in the most on. */
  get titles(): readonly string[] {
    return this.#titles.all.map(({ text }) => text);
  }

  /** A title stands for the area of the lines below, where these have no other. */
  entitle(line: number, fields: readonly string[], text: string): void {
    this.#areas.clear();
    const place = this.places('area').find((index) => fields[index] === text);
    this.#titles.add(line, text, place !== undefined);
    if (place !== undefined) this.#areas.set(place, { line, text });
  }

  names(fields: readonly string[]): string[] {
    const described = this.places('description').map((index) => this.#spoken(fields[index] ?? '', index));
    return [...new Set([this.cell(fields, 'type'), ...described])].filter((text) => text !== '');
  }

  /** Ref, rail, branch and note, those that are given. */
  cells(fields: readonly string[]): Cells {
    const keys = ['ref', 'rail', 'branch', 'note'] as const;
    const found = keys.map((key) => [key, this.cell(fields, key)] as const);
    return Object.fromEntries(found.filter(([, text]) => text !== ''));
  }

  /** What the line says of the type of its devices; numbers that are not legible are left out. */
  facts(fields: readonly string[], decimal: DecimalSign | undefined): TypeFacts {
    const found = TYPE_FACTS.map((fact) => {
      const text = this.cell(fields, fact);
      if (text === '' || fact === 'partNumber') return [fact, text === '' ? null : text] as const;
      const parsed = parseCell(FACT, text.replace(/[€£$]|\b(?:EUR|CHF|GBP|USD|mA|W)\b/gi, '').trim(), { decimal });
      const factor = fact === 'draw' && this.#isInAmps() ? 1000 : 1;
      return [fact, parsed.ok && typeof parsed.value === 'number' && parsed.value >= 0 ? parsed.value * factor : null] as const;
    });
    return Object.fromEntries(found.filter(([, value]) => value !== null)) as TypeFacts;
  }

  /**
   * The area of a line: what stands there, else what a merged or blank cell takes from above, else the titles above,
   * else the sheet. To be asked for every line in order.
   */
  area({ line, fields }: { readonly line: number; readonly fields: readonly string[] }, heading = ''): FoundArea {
    this.#titles.read();
    const found = this.#areasIn(fields);
    for (const { index, text, from } of found) {
      if (text === '') this.#areas.delete(index);
      else if (from === undefined) this.#areas.set(index, { line, text });
    }
    const texts = found.map(({ text }) => text);
    const from = found.find((each) => each.from !== undefined)?.from;
    const words = this.#words;
    const own = [...new Set([...texts, heading])].filter((text) => text !== '').join(', ');
    if (own !== '') {
      const above = this.#titles.within(own).map(({ text }) => text);
      // Where a column says the storey, the titles only tell rooms apart.
      const area = this.places('area').length > 1 ? own : [...above, own].join(', ');
      return { area, below: plainKey(above.join(', ')), remark: from === undefined ? undefined
        : words.say('Its area is carried down from line {line}.', { line: from }) };
    }
    const titles = this.#titles.all;
    const [first, ...others] = titles;
    if (first === undefined || first.line === 0 && others.length === 0) {
      return { area: this.#sheet, remark: this.#sheet && words.say('Its area is the name of its sheet.') };
    }
    const area = titles.map(({ text }) => text).join(', ');
    return { area, remark: others.length > 0 ? words.say('Its area is what stands above it: {area}.', { area })
      : words.say('Its area is the title on line {line}.', { line: first.line }) };
  }

  /** What stands in the columns of areas, as `area` finds it. */
  placeOf(fields: readonly string[]): string {
    return this.#areasIn(fields).map(({ text }) => text).filter((text) => text !== '').join(', ');
  }

  /** What stands in each column of areas; where it is blank, what holds from above: no room of another storey. */
  #areasIn(fields: readonly string[]): { readonly index: number; readonly text: string; readonly from?: number }[] {
    let isNew = false;
    return this.places('area').map((index) => {
      const text = this.#spoken(fields[index] ?? '', index);
      const above = this.#areas.get(index);
      if (text !== '') {
        isNew = above?.text !== text;
        return { index, text };
      }
      return isNew || above === undefined ? { index, text } : { index, text: above.text, from: above.line };
    });
  }

  cell(fields: readonly string[], field: TakeoffField): string {
    const texts = this.places(field).map((index) => this.#spoken(fields[index] ?? '', index));
    return [...new Set(texts)].filter((text) => text !== '').join(field === 'note' ? '; ' : ', ');
  }

  #spoken(written: string, index: number): string {
    const text = withoutStruck(written);
    const above = this.#above.get(index);
    // A count is never guessed.
    const isCount = this.places('qty').includes(index);
    if (above !== undefined && !isCount && DITTO.has(text.toLowerCase())) return above;
    if (text !== '') this.#above.set(index, text);
    return text;
  }

  #isInAmps(): boolean {
    return this.#columns.some(({ field, heading }) => field === 'draw' && /[([/]\s*A\s*(?:[)\]]|$)/.test(heading));
  }
}
