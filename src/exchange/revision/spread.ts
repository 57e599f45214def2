import { isFormula } from '../../schedule/index.ts';
import type { Part } from './units.ts';

/** A new quantity of several device rows that were one. */
export interface Spread {
  /** New quantities by id, of those that change. */
  readonly edits: ReadonlyMap<number, number>;
  /** What comes and goes to none of them: it is to be a row of its own. */
  readonly rest: number;
}

/** Cells that are lost with a device row: what a person or the sharing out knows of that one alone. */
const OWN_KEYS = ['run', 'distance', 'unitDraw', 'diversity', 'note', 'branch', 'rail'] as const;

/** Of rows that are touched last of all. */
const LAST = 1_000_000;

/**
 * Spreads the quantity that a list gives over the rows that share it. A single row takes it. Of several, what is less
 * goes where the least is lost: from rows that are on no branch, then from those of which the least is known, the last
 * first; a formula, or a row that one names, comes last. What is more goes to a row that is on none, else to one that
 * an earlier list left empty, else to a new one, so that nothing is put beside others on a branch or a supply unasked.
 * @param total at least 0.
 * @param named ids of the rows that formulas name.
 */
export function spread(parts: readonly Part[], total: number, named: ReadonlySet<number>): Spread {
  const [single] = parts;
  if (parts.length === 1) return { edits: new Map(single!.qty === total ? [] : [[single!.row.id, total]]), rest: 0 };
  const edits = new Map(parts.filter(({ qty }) => qty === null).map(({ row }): [number, number] => [row.id, 0]));
  let difference = total - parts.reduce((sum, { qty }) => sum + (qty ?? 0), 0);
  if (difference > 0) {
    const unshared = parts.find((part) => isUnshared(part, parts))
      ?? parts.find(({ row, qty }) => qty === 0 && !isFormula(row.cells.qty));
    if (unshared === undefined) return { edits, rest: difference };
    edits.set(unshared.row.id, (unshared.qty ?? 0) + difference);
    return { edits, rest: 0 };
  }
  const byLoss = [...parts].reverse().map((part) => ({ part, loss: lossOf(part, parts, named) }))
    .sort((one, other) => one.loss - other.loss);
  for (const { part: { row, qty } } of byLoss) {
    const taken = Math.min(qty ?? 0, -difference);
    if (taken > 0) edits.set(row.id, (qty ?? 0) - taken);
    difference += taken;
  }
  return { edits, rest: 0 };
}

/** A part that lacks the branch or rail that others have, and whose quantity is a plain number. */
function isUnshared({ row }: Part, parts: readonly Part[]): boolean {
  return !isFormula(row.cells.qty) && (['branch', 'rail'] as const).some((key) =>
    (row.cells[key] ?? null) === null && parts.some((other) => (other.row.cells[key] ?? null) !== null));
}

function lossOf(part: Part, parts: readonly Part[], named: ReadonlySet<number>): number {
  const { id, cells, accepted = [] } = part.row;
  if (named.has(id) || isFormula(cells.qty)) return LAST;
  const own = OWN_KEYS.filter((key) => (cells[key] ?? null) !== null).length;
  return (isUnshared(part, parts) ? -100 : 0) + own + accepted.length;
}

