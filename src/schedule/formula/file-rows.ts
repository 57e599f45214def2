import { SCHEMA, type SheetName } from '../schema/index.ts';
import type { Row } from '../snapshot.ts';

/** Rows by sheet, in order; `undefined` for a sheet that is not there yet, of which every row is taken to be there. */
type RowsOf = (sheet: SheetName) => readonly Pick<Row, 'cells'>[] | undefined;

/** The rows that formulas of a file may name, by place and by tag. */
export class FileRows {
  readonly #rowsOf: RowsOf;
  readonly #tagged = new Map<SheetName, ReadonlyMap<string, readonly number[]>>();
  /** Place of the row with an id, from 0; -1 when it is gone. */
  readonly placeOf: (sheet: SheetName, id: number) => number;

  /** @param placeOf of rows that are read from a file, the ids are the places. */
  constructor(rowsOf: RowsOf, placeOf: (sheet: SheetName, id: number) => number = (_sheet, id) => id) {
    this.#rowsOf = rowsOf;
    this.placeOf = placeOf;
  }

  has(sheet: SheetName, place: number): boolean {
    const rows = this.#rowsOf(sheet);
    return place >= 0 && (rows === undefined || place < rows.length);
  }

  tag(sheet: SheetName, place: number): string {
    return tagIn(sheet, this.#rowsOf(sheet)?.[place]);
  }

  /** Places of the rows with a tag, in order; several share it. */
  tagged(sheet: SheetName, tag: string): readonly number[] {
    const rows = this.#rowsOf(sheet);
    if (rows === undefined) return [0];
    let places = this.#tagged.get(sheet);
    if (places === undefined) this.#tagged.set(sheet, places = placesByTag(sheet, rows));
    return places.get(tag) ?? [];
  }
}

function placesByTag(sheet: SheetName, rows: readonly Pick<Row, 'cells'>[]): Map<string, number[]> {
  const places = new Map<string, number[]>();
  rows.forEach((row, place) => {
    const tag = tagIn(sheet, row);
    const known = places.get(tag);
    if (known === undefined) places.set(tag, [place]);
    else known.push(place);
  });
  return places;
}

function tagIn(sheet: SheetName, row: Pick<Row, 'cells'> | undefined): string {
  const tag = row?.cells[SCHEMA[sheet].tag];
  return typeof tag === 'string' ? tag : '';
}
