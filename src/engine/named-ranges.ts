import { SCHEMA, type Reference, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import type { Touched } from './touched.ts';

/** A range that a formula reads: its ends by row id, its columns. */
export interface NamedRange {
  readonly sheet: SheetName;
  readonly keys: readonly string[];
  readonly from: number;
  readonly to: number;
}

/** The ranges that formulas read, each once, by number. */
export class NamedRanges {
  readonly #document: ScheduleDocument;
  readonly #ranges: NamedRange[] = [];
  readonly #numbers = new Map<string, number>();

  constructor(document: ScheduleDocument) {
    this.#document = document;
  }

  /** Number of the range that a reference means. */
  number(reference: Reference): number {
    const { sheet, from, to = from } = reference;
    const keys = keysBetween(reference);
    const name = `${sheet} ${keys[0]} ${keys.at(-1)} ${from.id} ${to.id}`;
    let number = this.#numbers.get(name);
    if (number === undefined) {
      this.#numbers.set(name, number = this.#ranges.length);
      this.#ranges.push({ sheet, keys, from: from.id, to: to.id });
    }
    return number;
  }

  get(number: number): NamedRange {
    return this.#ranges[number]!;
  }

  /** Numbers of the ranges that may hold something that was touched; all of them when it is absent. */
  touched(touched: Touched | undefined): number[] {
    if (touched === undefined) return [...this.#ranges.keys()];
    const spans = new Map<string, Span>();
    const read = new Map<SheetName, Set<string>>();
    for (const { sheet, keys } of this.#ranges) for (const key of keys) keysOf(read, sheet).add(key);
    for (const [sheet, rows] of touched.rows) {
      for (const key of read.get(sheet) ?? []) {
        for (const [id, keys] of rows) {
          if (keys === null || keys.has(key)) widen(spans, `${sheet}.${key}`, this.#document.position(sheet, id));
        }
      }
    }
    return [...this.#ranges.keys()].filter((number) => {
      const { sheet, keys, from, to } = this.#ranges[number]!;
      if (touched.rearranged.has(sheet)) return true;
      const [first, last] = span(this.#document, sheet, from, to);
      return keys.some((key) => {
        const found = spans.get(`${sheet}.${key}`);
        return found !== undefined && found.first <= last && found.last >= first;
      });
    });
  }
}

interface Span {
  first: number;
  last: number;
}

function widen(spans: Map<string, Span>, name: string, position: number): void {
  const found = spans.get(name);
  if (found === undefined) spans.set(name, { first: position, last: position });
  else {
    found.first = Math.min(found.first, position);
    found.last = Math.max(found.last, position);
  }
}

function keysOf(read: Map<SheetName, Set<string>>, sheet: SheetName): Set<string> {
  let keys = read.get(sheet);
  if (keys === undefined) read.set(sheet, keys = new Set());
  return keys;
}

/** Positions from one row to another, the lesser first; -1 stands for a row that is gone. */
export function span(document: ScheduleDocument, sheet: SheetName, from: number, to: number): [number, number] {
  const [first, last] = [document.position(sheet, from), document.position(sheet, to)];
  return first <= last ? [first, last] : [last, first];
}

/** Ids of the rows of a range, in order of the document; none when an end of it is gone. */
export function idsOf({ sheet, from, to }: NamedRange, document: ScheduleDocument): number[] {
  const [first, last] = span(document, sheet, from, to);
  return first < 0 ? [] : document.rows(sheet).slice(first, last + 1).map(({ id }) => id);
}

/** The columns from one corner of a reference to the other. */
export function keysBetween({ sheet, from, to }: Reference): string[] {
  const keys = SCHEMA[sheet].columns.map(({ key }) => key);
  const [first, last] = [keys.indexOf(from.key), keys.indexOf(to?.key ?? from.key)];
  return keys.slice(Math.min(first, last), Math.max(first, last) + 1);
}
