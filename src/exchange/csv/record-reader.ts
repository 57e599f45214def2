import {
  detectDecimal, FileRows, isFormula, isNumeric, parseCell, readKeyForm, titleWithUnit,
  type Cells, type DecimalSign, type InputColumn, type SheetName,
} from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import type { ProblemList } from '../problem.ts';
import { unguardText } from './guard-text.ts';
import type { Heading } from './headings.ts';
import type { Delimiter, TableRow } from './parse-table.ts';

/** A column of the file that holds a column of the sheet. */
interface Source {
  readonly column: InputColumn;
  readonly index: number;
  readonly unit: string | undefined;
}

/** Reads the records of a CSV file into rows of a sheet. */
export class RecordReader {
  /** Sentences about values that follow from an assumption. */
  readonly hints: string[] = [];
  readonly #sheet: SheetName;
  readonly #width: number;
  readonly #delimiter: Delimiter;
  readonly #list: ProblemList;
  readonly #words: Words;
  readonly #voltageOf: (rail: unknown) => number | undefined;
  readonly #sources: readonly Source[];
  #decimal: DecimalSign | undefined;

  constructor(
    sheet: SheetName, headings: readonly Heading[], delimiter: Delimiter, list: ProblemList,
    words: Words, voltageOf: (rail: unknown) => number | undefined = () => undefined,
  ) {
    this.#sheet = sheet;
    this.#width = headings.length;
    this.#delimiter = delimiter;
    this.#list = list;
    this.#words = words;
    this.#voltageOf = voltageOf;
    this.#sources = headings.flatMap(({ column, unit }, index): Source[] =>
      column?.role === 'input' ? [{ column, index, unit }] : []);
  }

  /** The rows, without those at the end in which nothing is entered; what cannot be read goes to the list. */
  read(records: readonly TableRow[]): Cells[] {
    this.#decimal = detectDecimal(this.#numbersOf(records));
    const rows = records.map((record) => this.#row(record));
    rows.length = rows.findLastIndex((cells) => Object.keys(cells).length > 0) + 1;
    this.#checkFormulas(rows, records);
    return rows;
  }

  #row({ line, fields }: TableRow): Cells {
    if (fields.slice(this.#width).some((field) => field !== '')) {
      this.#list.add('too-many-fields', `/${line}`,
        this.#words.say('Line {line} has {fields} fields for {headings} headings. Put a text or number that holds the separator, such as a decimal comma, in quotes.',
          { line, fields: fields.length, headings: this.#width }), { line, column: this.#width + 1 });
    }
    const rail = this.#sources.find(({ column }) => column.key === 'rail');
    const voltage = rail && this.#voltageOf(unguardText(fields[rail.index] ?? '').trim());
    const cells: Cells = {};
    for (const { column, index, unit } of this.#sources) {
      const field = unguardText(fields[index] ?? '');
      const parsed = parseCell(column, field, { decimal: this.#decimalOf(field), unit, voltage, words: this.#words });
      if (!parsed.ok) {
        this.#list.add('value-refused', `/${line}/${column.key}`, this.#placed(line, column, parsed.problem),
          { line, column: index + 1, received: field });
      } else if (parsed.value !== null) {
        cells[column.key] = parsed.value;
        if (parsed.hint !== undefined) this.hints.push(this.#placed(line, column, `${parsed.hint}.`));
      }
    }
    return cells;
  }

  #placed(line: number, column: InputColumn, sentence: string): string {
    return this.#words.say(
      'Line {line}, {column}: {sentence}', { line, column: titleWithUnit(column, this.#words), sentence }
    );
  }

  *#numbersOf(records: readonly TableRow[]): Generator<string> {
    const numeric = this.#sources.filter(({ column }) => isNumeric(column));
    for (const { fields } of records) for (const { index } of numeric) yield fields[index] ?? '';
  }

  /** Where commas part the fields, a point parts the decimals: so this software writes, and most others. */
  #decimalOf(field: string): DecimalSign | undefined {
    return this.#decimal ?? (this.#delimiter === ',' && !field.includes(',') ? '.' : undefined);
  }

  /** Formulas are read once all rows are there; whether a row of another sheet is there shows only in the schedule. */
  #checkFormulas(rows: readonly Cells[], records: readonly TableRow[]): void {
    const known = rows.map((cells) => ({ cells }));
    const all = new FileRows((sheet) => (sheet === this.#sheet ? known : undefined));
    const numeric = this.#sources.filter(({ column }) => isNumeric(column));
    rows.forEach((cells, row) => {
      for (const { column, index } of numeric) {
        const value = cells[column.key];
        if (!isFormula(value)) continue;
        const read = readKeyForm(value, { sheet: this.#sheet, row, rows: all }, this.#words);
        if (read.ok) continue;
        const { line } = records[row]!;
        this.#list.add('formula-unreadable', `/${line}/${column.key}`,
          this.#placed(line, column, read.problem), { line, column: index + 1, received: value });
      }
    });
  }
}
