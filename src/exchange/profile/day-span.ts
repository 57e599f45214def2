/** Minutes of a day. */
export const DAY = 24 * 60;

/** A part of a day; one that goes on beyond midnight ends after 24:00. */
export interface DaySpan {
  /** When it begins, from midnight [min], 0 to below 1440. */
  readonly from: number;
  /** When it ends [min], after `from`, and at most a day after it. */
  readonly to: number;
}

/** What a heading says of hours: from when to when, or one moment, at which they begin or end [min]. */
export type SaidHours = DaySpan | { readonly at: number };

const CLOCK = /^(\d{1,2})(?:\s*[:h]\s*([0-5]\d)(?::00)?)?\s*(?:h|uhr)?$/i;
const DASH = /\s*[-‐‑–—−]\s*|\s+(?:to|bis|à)\s+/i;

function minutesOf(text: string): number | undefined {
  const found = CLOCK.exec(text);
  if (found === null) return undefined;
  const minutes = Number(found[1]) * 60 + Number(found[2] ?? 0);
  return minutes <= DAY ? minutes : undefined;
}

/**
 * Reads hours as a heading says them: `0–8`, `8-14`, `22–6`, `08:00 – 14:30`, `7`, `7 h`, `07:00`, `7 Uhr`, `7h30`.
 * @returns `undefined` for any other text, and for what lasts no time, such as `8–8`.
 */
export function readHours(text: string): SaidHours | undefined {
  const parts = text.trim().split(DASH).map(minutesOf);
  const [from, to] = parts;
  if (from === undefined || parts.length > 2) return undefined;
  if (parts.length === 1) return { at: from };
  if (to === undefined || from === DAY || from === to) return undefined;
  return { from, to: to > from ? to : to + DAY };
}

/**
 * A span as the name of a case, in two digits so that names sort by time: `08–14`, `22–24`, `22–06`, `07:30–08:00`.
 * @param span may begin beyond midnight, as 25:00 does, which is `01`.
 */
export function spanName({ from, to }: DaySpan, withMinutes: boolean): string {
  const clock = (minutes: number) => {
    const hours = String(Math.floor(minutes / 60)).padStart(2, '0');
    return withMinutes ? `${hours}:${String(minutes % 60).padStart(2, '0')}` : hours;
  };
  // What ends at midnight ends at 24.
  return `${clock(from % DAY)}–${clock((to - 1) % DAY + 1)}`;
}
