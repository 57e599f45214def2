/** Rows that are named one by one; of more, only how many. */
const MOST_NAMED = 5;

/** A current with two decimals: `16.50 A`. */
export function amps(value: number): string {
  return `${value.toFixed(2)} A`;
}

/** A share in percent: `80 %`. */
export function percent(share: number): string {
  return `${Math.round(share * 1000) / 10} %`;
}

/** Rows by their tag, or their number where they have none. */
export function listed(rows: readonly { readonly row: number; readonly ref: string | null }[]): string {
  const names = rows.map(({ row, ref }) => ref ?? `row ${row + 1}`);
  const shown = names.slice(0, MOST_NAMED).join(', ');
  return names.length > MOST_NAMED ? `${shown} and ${names.length - MOST_NAMED} more` : shown;
}
