/** How many hints of one kind a person is shown. */
const MOST = 20;

/** The first hints, and how many there are besides. */
export function firstHints(hints: readonly string[]): string[] {
  return hints.length <= MOST ? [...hints] : [...hints.slice(0, MOST), `And ${hints.length - MOST} more of this kind.`];
}
