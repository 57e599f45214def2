import type { Change } from '../../../src/schedule/index.ts';

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
  | {
    readonly kind: 'refused';
    readonly text: string;
    readonly details: readonly string[];
    /** A list of devices that was not pasted, which a takeoff can read. */
    readonly list?: string | undefined;
  }
  /** There was nothing to do. */
  | { readonly kind: 'nothing'; readonly message?: string };

export const refused = (text: string, details: readonly string[] = [], list?: string): Plan =>
  ({ kind: 'refused', text, details, list });

export const nothing = (message?: string): Plan =>
  (message === undefined ? { kind: 'nothing' } : { kind: 'nothing', message });
