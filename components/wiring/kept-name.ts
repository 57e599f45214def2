const STORE = 'elv-load-schedule.name';

/** The name that a person entered in this session; empty where none is. Phones are shared: it goes with the tab. */
export function keptName(): string {
  try {
    return sessionStorage.getItem(STORE) ?? '';
  } catch {
    // The page may not store anything.
    return '';
  }
}

/** Keeps the name for the session, where the page may store anything. */
export function keepName(name: string): void {
  try {
    sessionStorage.setItem(STORE, name);
  } catch {
    // Then it is entered again the next time.
  }
}
