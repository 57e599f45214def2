import type { ListRows } from '../../src/exchange/update/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Change, Content } from '../../src/schedule/index.ts';

/** Rows of a file that wait for a person to say what becomes of them. */
export interface OfferedRows {
  readonly name: string;
  /** One of a CSV file; of an office list each that differs. */
  readonly lists: readonly ListRows[];
  /** Sentences on how the file was read. */
  readonly notes: readonly string[];
  /** They are what was changed in a file that carries the schedule: they update it, and what is new comes too. */
  readonly areEdits?: true;
}

/** What a person takes of it, as one action: changes, or a content in the place of what there is. */
export type TakenRows = { readonly label: string; readonly notes: readonly string[] }
  & ({ readonly changes: readonly Change[] } | { readonly content: Content });

/** Takes it over; what is asked of the schedule is worked out once nothing is being typed any more. */
export type TakeRows = (take: (schedule: LoadSchedule) => TakenRows) => void;
