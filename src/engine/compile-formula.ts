import { mapReferences, type Reference } from '../schedule/index.ts';
import { addressOf, cellOfRange, type EngineCell } from './engine-cells.ts';

/**
 * Function that every formula typed by a person is wrapped in: column, formula, then the single cells that it reads.
 */
export const TYPED_FUNCTION = 'ELV.TYPED';
/** Function that gives the cells of a range: its number, then cells that make the engine work it out again. */
export const RANGE_FUNCTION = 'ELV.RANGE';
/** INT as OpenFormula has it, down; that of the formula engine goes towards zero (hyperformula 3.5.0). */
export const INT_FUNCTION = 'ELV.INT';

/** How the references of a formula are written for the formula engine. */
export interface ReferenceWriter {
  /** Cell that a reference to a single one means; `undefined` where it is gone. */
  readonly cell: (reference: Reference) => EngineCell | undefined;
  /** Number of the range that a reference means. */
  readonly range: (reference: Reference) => number;
  /** Addresses of formulas within a range, so that the engine works them out before. */
  readonly formulasWithin: (range: number) => readonly string[];
}

/** A text in quotes, or the name of a function that is replaced by one of our own. */
const INT_CALLS = /"(?:[^"]|"")*"|(?<![\w.])INT(?=\s*\()/gi;

/**
 * A formula that a person typed, as the formula engine calculates it: references become addresses, and the whole is
 * checked against the range of its column. A single cell that it reads makes it unknown while that cell is empty.
 */
export function compileFormula(formula: string, column: string, write: ReferenceWriter): string {
  const single = new Set<string>();
  const calls = formula.slice(1).replace(INT_CALLS, (part) => part.startsWith('"') ? part : INT_FUNCTION);
  const body = mapReferences(calls, (reference) => {
    if (reference === undefined) return '#REF!';
    if (reference.to !== undefined) return rangeCall(write.range(reference), write);
    const cell = write.cell(reference);
    if (cell === undefined) return '#REF!';
    const address = addressOf(cell);
    single.add(address);
    return address;
  });
  // The parentheses keep a formula that is no single expression, such as =1;2, from becoming several arguments.
  return `=${TYPED_FUNCTION}("${column}";${[`(${body})`, ...single].join(';')})`;
}

/** A formula with what it reads as values, so that it can be tried without naming anything. */
export function trialFormula(formula: string, column: string, rangeOf: (reference: Reference) => number): string {
  return compileFormula(mapReferences(
    formula, (reference) => reference === undefined ? '#REF!' : `${RANGE_FUNCTION}(${rangeOf(reference)})`
  ),
    column, { cell: () => undefined, range: rangeOf, formulasWithin: () => [] });
}

function rangeCall(number: number, write: ReferenceWriter): string {
  return `${RANGE_FUNCTION}(${[number, addressOf(cellOfRange(number)), ...write.formulasWithin(number)].join(';')})`;
}

/** Ids that follow one another upwards, as first and last. */
export function blocks(ids: readonly number[]): [number, number][] {
  const found: [number, number][] = [];
  for (const id of ids) {
    const last = found.at(-1);
    if (last !== undefined && last[1] + 1 === id) last[1] = id;
    else found.push([id, id]);
  }
  return found;
}
