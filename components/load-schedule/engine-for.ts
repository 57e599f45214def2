import { fetchEngine } from '../../src/engine/engine-registry.ts';

/** Where a text within a file begins as formulas do: one of JSON, or a cell of CSV. */
const FORMULA = /(?:^|[",;\t\r\n])=/;

/**
 * Waits for the formula engine where a file may hold formulas, so that it is shown with their figures. Where the engine
 * cannot be fetched the file is shown all the same, and whoever holds the schedule says what it lacks.
 */
export async function engineFor(text: string): Promise<void> {
  if (FORMULA.test(text)) await fetchEngine().catch(() => undefined);
}
