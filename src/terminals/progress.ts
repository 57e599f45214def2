import {
  isTickedOtherwise, setCells, setTick, ticksOf, type Cells, type Change, type KeyedTick, type ScheduleDocument,
  type TickedBy,
} from '../schedule/index.ts';

/** What is ticked of a terminal, one after the other. */
export const TICK_NAMES = ['wired', 'checked'] as const;
export type TickName = (typeof TICK_NAMES)[number];

/** A tick is not made, made, or made for another connection than the terminal has now: then it counts for nothing. */
export type TickState = 'open' | 'done' | 'otherwise';

/** How far the wiring of some terminals is. */
export interface Progress {
  /** Terminals to be wired: those that hold something. */
  readonly terminals: number;
  readonly wired: number;
  readonly checked: number;
  /** Terminals, spare ones too, with a tick that was made for another connection. */
  readonly otherwise: number;
}

const TICKS = Object.fromEntries(ticksOf('terminals').map((tick) => [tick.key, tick])) as Readonly<Record<TickName, KeyedTick>>;

export function tickState(cells: Cells, name: TickName): TickState {
  return cells[name] !== true ? 'open' : isTickedOtherwise(TICKS[name], cells) ? 'otherwise' : 'done';
}

/** Whether a tick that counts before counts no longer behind a change. */
export const isDisturbed = (before: Cells, after: Cells): boolean =>
  TICK_NAMES.some((name) => tickState(before, name) === 'done' && tickState(after, name) === 'otherwise');

/** What a tick was made for; empty where that was not kept, as of one that a list brought. */
export const tickedFor = (cells: Cells, name: TickName): string => String(cells[TICKS[name].as] ?? '');

/** Who made a tick, and when. */
export const tickedBy = (cells: Cells, name: TickName): TickedBy =>
  ({ by: String(cells[TICKS[name].by] ?? ''), on: String(cells[TICKS[name].on] ?? '') });

/** Whether a terminal holds nothing: there is nothing to wire. */
export const holdsNothing = (cells: Cells): boolean => TICKS.wired.of.every((key) => (cells[key] ?? null) === null);

export function progressOf(terminals: readonly Cells[]): Progress {
  const held = terminals.filter((cells) => !holdsNothing(cells));
  const done = (name: TickName) => held.filter((cells) => tickState(cells, name) === 'done').length;
  return {
    terminals: held.length, wired: done('wired'), checked: done('checked'),
    otherwise: terminals.filter((cells) => TICK_NAMES.some((name) => tickState(cells, name) === 'otherwise')).length,
  };
}

/** Whether something is left to do at a terminal; one that is checked first has to be wired. */
export function isLeft(cells: Cells, name: TickName): boolean {
  const [wired, checked] = [tickState(cells, 'wired'), tickState(cells, 'checked')];
  if (holdsNothing(cells)) return tickState(cells, name) === 'otherwise';
  return name === 'wired' ? wired !== 'done' : wired === 'done' && checked !== 'done';
}

/**
 * Changes that tick a terminal, or take its tick back where nobody is named. What is no longer wired is no longer
 * checked either.
 */
export function tickTerminal(document: ScheduleDocument, id: number, name: TickName, mark: TickedBy | null): Change[] {
  const changes = setTick(document, 'terminals', id, TICKS[name], mark);
  return mark !== null || name === 'checked' ? changes
    : [...changes, ...setTick(document, 'terminals', id, TICKS.checked, null)];
}

/** Changes that note a fault at a terminal; an empty text takes the note away. */
export function noteAt(document: ScheduleDocument, id: number, note: string): Change[] {
  return setCells(document, [{ sheet: 'terminals', id, key: 'note', value: note.trim() === '' ? null : note.trim() }]);
}
