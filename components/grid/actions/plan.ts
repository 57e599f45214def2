import type { Change, SheetName } from '../../../src/schedule/index.ts';

/** What an action of a person comes to, before anything is done. */
export type Plan =
  | {
    readonly kind: 'act';
    /** Names the action for a person, for undo: «Paste of 40 rows». */
    readonly label: string;
    readonly changes: readonly Change[];
    /** What to tell; without it the action speaks for itself. */
    readonly message?: string;
    /** The block to select afterwards. */
    readonly select?: { readonly ids: readonly number[]; readonly keys?: readonly string[] };
  }
  /** Nothing is changed: one sentence, and a line for each thing refused when there are several. */
  | { readonly kind: 'refused'; readonly text: string; readonly details: readonly string[] }
  /** There was nothing to do. */
  | { readonly kind: 'nothing'; readonly message?: string };

export const refused = (text: string, details: readonly string[] = []): Plan => ({ kind: 'refused', text, details });

export const nothing = (message?: string): Plan => (message === undefined ? { kind: 'nothing' } : { kind: 'nothing', message });

/** A count with its noun: «1 row», «3 rows». */
export function counted(number: number, noun: string): string {
  return `${number} ${noun}${number === 1 ? '' : 's'}`;
}

/** Noun for the rows of a sheet in messages. */
export const ROW_NOUNS: Readonly<Record<SheetName, string>> = {
  devices: 'device row', types: 'type', supplies: 'supply row', branches: 'branch row', runs: 'run',
  conductors: 'conductor', outputs: 'output', contacts: 'contact', feeds: 'feed', enclosures: 'enclosure',
};
