const STORE = 'elv-load-schedule.view';

function all(): Record<string, unknown> {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(STORE) ?? '{}');
    return typeof stored === 'object' && stored !== null ? stored as Record<string, unknown> : {};
  } catch {
    // The page may not store anything, or another wrote there.
    return {};
  }
}

/** How a person left the view, for the next time on this page; `fallback` where nothing of its kind is known. */
export function remembered<Value extends string | boolean>(name: string, fallback: Value): Value {
  const value = all()[name];
  return typeof value === typeof fallback ? value as Value : fallback;
}

/** Keeps how a person left the view, where the page may store anything. */
export function remember(name: string, value: string | boolean): void {
  try {
    localStorage.setItem(STORE, JSON.stringify({ ...all(), [name]: value }));
  } catch {
    // Then it is as at first the next time.
  }
}
