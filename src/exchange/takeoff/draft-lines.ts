import {
  checkCell, columnOf, detectDecimal, type Cells, type DecimalSign, type InputColumn,
} from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import type { TakeoffColumn } from './columns.ts';
import { decisionOf, type LineDecision, type TakeoffDecisions } from './decisions.ts';
import type { TakeoffField } from './field.ts';
import type { LineDraft } from './line.ts';
import { plainWords } from './plain-words.ts';
import { readQuantity, type Quantity } from './quantity.ts';
import type { TakeoffRecord } from './records.ts';
import { lineKey, type LineSource, type TakeoffTable } from './source.ts';
import { RunningSums } from './running-sums.ts';
import { namesTotal } from './total-words.ts';

/** What is known of a takeoff before its lines are read. */
export interface DraftContext {
  readonly table: TakeoffTable;
  readonly columns: readonly TakeoffColumn[];
  readonly headingLine: number | undefined;
  readonly decimal?: DecimalSign;
  readonly decisions: TakeoffDecisions;
  /** Whether a text is the name of a device type or like one. */
  readonly words: Words;
  readonly isKnown: (names: readonly string[], exactly: boolean) => boolean;
}

/** Marks that stand for what is in the cell above. */
const DITTO = new Set([
  '"', '""', "''", '”', '„', '“', '〃', '-"-', "-''-", '-//-', 'ditto', 'do', 'do.', 'dito', 'dto', 'dto.', 'idem',
  'id.', 'ibid.',
  'desgl', 'desgl.', 'desgleichen', 'wie vor', 'wie vor.', 'wie oben', 'w. v.', 'w.v.', 'd°', 'dº', 'comme ci-dessus',
]);
const QTY = columnOf('devices', 'qty') as InputColumn;

/** Reads the lines of a takeoff one after another: is each a device, a title, a total or something else? */
export class LineReader {
  readonly #context: DraftContext;
  readonly #decimal: DecimalSign | undefined;
  readonly #places: Readonly<Partial<Record<TakeoffField, readonly number[]>>>;
  readonly #sums = new RunningSums();
  readonly #above = new Map<number, string>();
  #heading = '';
  #title: { readonly line: number; readonly text: string } | undefined;

  constructor(context: DraftContext, records: readonly TakeoffRecord[]) {
    this.#context = context;
    const places: Partial<Record<TakeoffField, number[]>> = {};
    for (const { field, index } of context.columns) if (field !== undefined) (places[field] ??= []).push(index);
    this.#places = places;
    this.#decimal = context.decimal ?? detectDecimal(records.map(({ fields }) => fields[places.qty?.[0] ?? -1] ?? ''));
  }

  read(records: readonly TakeoffRecord[]): LineDraft[] {
    const { headingLine, words } = this.#context;
    const headingPlace = records.findIndex(({ line }) => line === headingLine);
    this.#heading = headingPlace < 0 ? '' : headingKey(records[headingPlace]!.fields);
    this.#sums.beginPart(records[headingPlace + 1]?.line ?? 1);
    return records.map((record, place) => {
      if (record.fields.every((field) => field === '')) {
        return this.#draft(record, 'left-out', [words.say('The line is blank.')]);
      }
      if (place < headingPlace) return this.#draft(record, 'left-out', [words.say('It stands above the headings.')]);
      if (place === headingPlace) return this.#draft(record, 'left-out', [words.say('These are the headings.')]);
      return this.#line(record);
    });
  }

  #line(record: TakeoffRecord): LineDraft {
    const { fields } = record;
    const { words } = this.#context;
    const decision = decisionOf(this.#context.decisions.lines, lineKey(this.#source(record)));
    const quantity = this.#quantity(fields, decision);
    if (this.#heading !== '' && headingKey(fields) === this.#heading) {
      return this.#draft(record, 'left-out', [words.say('The headings are repeated.')], quantity);
    }
    const names = this.#names(fields);
    if (decision === 'leave-out') return this.#draft(record, 'left-out', [words.say('Left out by decision.')], quantity);
    // A line that somebody gave a quantity is a device, whatever it looks like.
    return (decision === undefined ? this.#total(record, quantity, names) : undefined)
      ?? this.#withoutDevice(record, quantity, names) ?? this.#device(record, quantity, names);
  }

  #source({ line }: TakeoffRecord): LineSource {
    const { file, sheet } = this.#context.table;
    return { ...(file === undefined ? {} : { file }), ...(sheet === undefined ? {} : { sheet }), line };
  }

  #draft(
    record: TakeoffRecord, kind: LineDraft['kind'], remarks: readonly string[], quantity?: Quantity, isTotal = false,
  ): LineDraft {
    const { qty = null, isLength = false } = quantity ?? {};
    return {
      source: this.#source(record), fields: record.fields, kind, isTotal, qty, isLength, names: [], cells: {}, facts: {},
      remarks,
    };
  }

  #quantity(fields: readonly string[], decision: LineDecision | undefined): Quantity {
    if (typeof decision === 'object') {
      const problem = checkCell(QTY, decision.qty, undefined, this.#context.words);
      return problem === undefined ? { qty: decision.qty } : { qty: null, doubt: problem };
    }
    const read = readQuantity(this.#cell(fields, 'qty'), this.#cell(fields, 'unit'), this.#decimal, this.#context.words);
    return decision === 'take' && read.qty !== null ? { ...read, doubt: undefined } : read;
  }

  /** A total is known by its words or, where a quantity has no name at all, by being the sum of lines above. */
  #total(record: TakeoffRecord, { qty, ...quantity }: Quantity, names: readonly string[]): LineDraft | undefined {
    const first = record.fields.find((field, index) => field !== '' && this.#places.qty?.includes(index) !== true);
    const isCalledTotal = [first ?? '', ...names].some(namesTotal) && !this.#context.isKnown(names, true);
    const from = qty === null ? undefined : this.#sums.sumsFrom(qty);
    if (!isCalledTotal && (names.length > 0 || from === undefined)) return undefined;
    const { words } = this.#context;
    const { expected } = this.#sums;
    this.#sums.beginPart(record.line + 1);
    const total = (kind: LineDraft['kind'], remark: string) =>
      this.#draft(record, kind, [remark], { qty, ...quantity }, true);
    if (qty === null) return total('left-out', words.say('It is a total without a legible quantity.'));
    if (from !== undefined) {
      return total(
        'left-out', words.say('It is a total: {qty} is the sum of the lines from {line} on.', { qty, line: from })
      );
    }
    return total('undecided',
      words.say(
        'It is called a total and says {qty}, but the lines above come to {expected}. Check both, then leave it out.',
        { qty, expected }
      ));
  }

  /** Titles, remarks and quantities of nothing. */
  #withoutDevice(record: TakeoffRecord, quantity: Quantity, names: readonly string[]): LineDraft | undefined {
    const { words } = this.#context;
    // «1.2; Ground floor» is a title with its number.
    const filled = record.fields.filter((field) => /[^\d.]/.test(field));
    const isEmpty = quantity.qty === null && quantity.doubt === undefined;
    if (isEmpty && filled.length === 1 && !(names.length > 0 && this.#context.isKnown(names, false))) {
      this.#sums.beginPart(record.line + 1);
      this.#title = { line: record.line, text: filled[0]! };
      return this.#draft(record, 'left-out', [words.say('It is a title or a remark: a single text without a quantity.')]);
    }
    if (names.length > 0) return undefined;
    if (isEmpty) return this.#draft(record, 'left-out', [words.say('It names no device and has no quantity.')]);
    this.#sums.add(quantity.qty ?? 0);
    const remarks = [
      words.say('It has a quantity but names no device. Say what it counts in the takeoff, or leave it out.'),
    ];
    return this.#draft(
      record, 'undecided', [...remarks, ...(quantity.doubt === undefined ? [] : [quantity.doubt])], quantity
    );
  }

  #device(record: TakeoffRecord, quantity: Quantity, names: readonly string[]): LineDraft {
    const { words } = this.#context;
    const { qty, doubt } = quantity;
    const { cells, remarks } = this.#cells(record.fields);
    this.#sums.add(qty ?? 0);
    const kind = doubt !== undefined || qty === null ? 'undecided' : qty === 0 ? 'left-out' : 'device';
    const why = doubt ?? (qty === null ? words.say('It has no quantity. Say how many there are.') : undefined);
    const zero = qty === 0 ? [words.say('There are none: the quantity is 0.')] : [];
    return { ...this.#draft(record, kind, [...(why === undefined ? zero : [why]), ...remarks], quantity), names, cells };
  }

  #names(fields: readonly string[]): string[] {
    return [...new Set([this.#cell(fields, 'type'), this.#cell(fields, 'description')])].filter((text) => text !== '');
  }

  /** The cells of the device row. Where no column gives the area, the title above the line does. */
  #cells(fields: readonly string[]): { cells: Cells; remarks: string[] } {
    const cells: Cells = {};
    for (const key of ['ref', 'area', 'rail', 'branch', 'note'] as const) {
      const text = this.#cell(fields, key);
      if (text !== '') cells[key] = text;
    }
    if (this.#places.area !== undefined || this.#title === undefined) return { cells, remarks: [] };
    cells.area = this.#title.text;
    return {
      cells, remarks: [this.#context.words.say('Its area is the title on line {line}.', { line: this.#title.line })],
    };
  }

  #cell(fields: readonly string[], field: TakeoffField): string {
    const texts = (this.#places[field] ?? []).map((index) => this.#spoken(fields[index] ?? '', index));
    return [...new Set(texts)].filter((text) => text !== '').join(field === 'note' ? '; ' : ', ');
  }

  #spoken(text: string, index: number): string {
    const above = this.#above.get(index);
    // A count is never guessed.
    const isCount = this.#places.qty?.includes(index) === true;
    if (above !== undefined && !isCount && DITTO.has(text.toLowerCase())) return above;
    if (text !== '') this.#above.set(index, text);
    return text;
  }
}

function headingKey(fields: readonly string[]): string {
  return fields.map((field) => plainWords(field).join(' ')).join('|').replace(/\|+$/, '');
}
