import { classesOf, type SizeClasses } from '../packing/index.ts';
import type { ShareRow } from './sharing-problem.ts';

/** Devices of one row that are placed together. */
export interface Part {
  readonly row: ShareRow;
  readonly qty: number;
}

/** What is placed as one; there may be several alike, which are placed each by itself. */
export interface Piece {
  /** What one of them takes, 0 or more. */
  readonly size: number;
  readonly count: number;
  /** Area of all its devices; `null` where they have none, or several. */
  readonly area: string | null;
  /** What one of them consists of. */
  readonly parts: readonly Part[];
}

/** Pieces of rows: one for each run, one for each row that stays whole, and the single devices of the others. */
export function piecesOf(rows: readonly ShareRow[]): Piece[] {
  const byRun = new Map<number, ShareRow[]>();
  const pieces: Piece[] = [];
  for (const row of rows) {
    if (row.run === null) {
      pieces.push(row.whole ? bundle([{ row, qty: row.qty }])
        : { size: row.each, count: row.qty, area: row.area, parts: [{ row, qty: 1 }] });
    } else if (byRun.has(row.run)) {
      byRun.get(row.run)!.push(row);
    } else {
      byRun.set(row.run, [row]);
    }
  }
  return [...pieces, ...[...byRun.values()].map((members) => bundle(members.map((row) => ({ row, qty: row.qty }))))];
}

/** One piece of parts that stay together. */
export function bundle(parts: readonly Part[]): Piece {
  const [first, ...others] = parts.map(({ row }) => row.area);
  return {
    size: parts.reduce((sum, { row, qty }) => sum + row.each * qty, 0),
    count: 1,
    area: first !== undefined && others.every((area) => area === first) ? first : null,
    parts,
  };
}

/** Pieces by size; those that take nothing are not among them. */
export function classesOfPieces(pieces: readonly Piece[]): SizeClasses {
  return classesOf(pieces.filter(({ size }) => size > 0).map(({ size, count }) => [size, count]));
}
