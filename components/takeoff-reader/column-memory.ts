import type { RememberedColumns, TakeoffColumn, TakeoffField } from '../../src/exchange/takeoff/index.ts';
import { TAKEOFF_FIELDS } from '../../src/exchange/takeoff/index.ts';

const STORE = 'elv-load-schedule takeoff columns';
/** How many lists with headings of their own are remembered. */
const MOST_LISTS = 30;

/**
 * What the browser remembers of a list with these headings; nothing where it may not remember, or does not know them.
 */
export function recallColumns(columns: readonly TakeoffColumn[]): RememberedColumns {
  return readStore()[keyOf(columns)] ?? {};
}

/** Has the browser remember what the columns of a list hold, by its headings. */
export function rememberColumns(columns: readonly TakeoffColumn[], mapping: RememberedColumns): void {
  const key = keyOf(columns);
  const others = Object.entries(readStore()).filter(([each]) => each !== key).slice(1 - MOST_LISTS);
  try {
    localStorage.setItem(STORE, JSON.stringify(Object.fromEntries([...others, [key, mapping]])));
  } catch { /* A page without storage remembers nothing; its own memory is served by the event. */ }
}

function keyOf(columns: readonly TakeoffColumn[]): string {
  return columns.map(({ heading }) => heading.trim().toLowerCase()).join('|');
}

function readStore(): Record<string, RememberedColumns> {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(STORE) ?? '{}');
    const mappings = Object.entries(isRecord(stored) ? stored : {})
      .filter((entry): entry is [string, RememberedColumns] => isMapping(entry[1]));
    return Object.fromEntries(mappings);
  } catch {
    // Storage may be forbidden, or hold what something else wrote there.
    return {};
  }
}

function isMapping(value: unknown): value is RememberedColumns {
  return isRecord(value)
    && Object.values(value).every((field) => field === 'ignore' || TAKEOFF_FIELDS.includes(field as TakeoffField));
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
