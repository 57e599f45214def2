import type { Piece } from './pieces.ts';
import type { LeftOutCode, ShareGroup, SharedSheet } from './sharing-problem.ts';

const ONE = { branches: 'branch', supplies: 'supply' } as const;

/** A quantity of what is shared: `12 points`, `1.25 A`. */
export function amount(over: SharedSheet, value: number): string {
  const shown = String(Math.round(value * 1000) / 1000);
  return over === 'supplies' ? `${shown} A` : `${shown} ${value === 1 ? 'point' : 'points'}`;
}

/** Why pieces found no room, and what to do. */
export function roomSentence(
  over: SharedSheet, { bins, further }: ShareGroup, { size, parts }: Piece, tooLarge: boolean,
): string {
  const isRun = parts[0]!.row.run !== null;
  const isRow = !isRun && parts[0]!.qty > 1;
  const what = isRun ? 'The devices of its run together take' : isRow ? 'The row takes' : 'One device takes';
  if (!tooLarge) {
    return `${what} ${amount(over, size)}, and no ${ONE[over]} that is large enough has room left. Enter another one.`;
  }
  const most = Math.max(further?.capacity ?? 0, ...bins.map(({ capacity, kept }) => Math.max(0, capacity - kept)));
  const remedy = isRun ? 'Spread them over more runs, or enter' : isRow ? 'Split the row, or enter' : 'Enter';
  const room = `a ${ONE[over]} has room for ${amount(over, most)} at most`;
  return `${what} ${amount(over, size)}; ${room}. ${remedy} a larger ${ONE[over]}.`;
}

/** Why a row is left out before any sharing, and what to do. */
export function leftOutSentence(over: SharedSheet, code: Exclude<LeftOutCode, 'too-large' | 'no-room'>): string {
  switch (code) {
    case 'quantity-unknown': return 'Its quantity is not known. Enter how many devices there are.';
    case 'size-unknown': return over === 'branches'
      ? 'The points of its type are not known. Choose a type that says how many points one device takes.'
      : 'Its demand is not known. Enter its unit draw, or a type that has a draw or a power.';
    case 'takes-none': return over === 'branches' ? 'It takes no point of a branch.' : 'It draws no current.';
    case 'nothing-to-share-over': return 'There is no supply of known rating to put it on. Enter a supply with its rated current.';
    case 'mixed-run': return 'Its run feeds devices of several purposes, which are kept on supplies of their own. Give them runs of their own.';
    case 'run-elsewhere': return 'The rail that feeds its run has no room for it, or is kept for another purpose. Give it another run.';
  }
}
