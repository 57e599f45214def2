import type { TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Change, SheetName } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import type { Place } from '../look/index.ts';

/** Rows that a person selected. */
export interface ChosenRows {
  readonly sheet: SheetName;
  readonly ids: readonly number[];
}

/** What a job is given. */
export interface JobHost {
  readonly schedule: LoadSchedule;
  readonly words: Words;
  /** The rows that it was asked for on; none of them is gone. */
  readonly rows: ChosenRows;
  /** Something else was chosen: what comes of it is worked out again. */
  requestUpdate(): void;
}

/** What a field calls that a person chooses or types in. */
export const onChoice = (host: JobHost, choose: (value: string) => void) => ({ currentTarget }: Event): void => {
  choose((currentTarget as HTMLInputElement | HTMLSelectElement).value);
  host.requestUpdate();
};

/** What comes of what was chosen. */
export interface JobPlan {
  /** What the action is called: «Swap of a type in 12 rows». */
  readonly label: string;
  /** What would be done, in one sentence. */
  readonly sum: string;
  /** Sentences on what is to be known besides. */
  readonly note?: readonly string[];
  /** Sentences that say what has to be chosen or put right first; nothing is carried out before. */
  readonly problems: readonly string[];
  readonly changes: readonly Change[];
  /** Where one goes afterwards. */
  readonly place: Place | undefined;
  /** What belongs to the choices and stands below them, such as the tags that come. */
  readonly list?: TemplateResult | undefined;
  /** What is to be seen besides, of the schedule as it would be. */
  readonly more?: (trial: LoadSchedule) => TemplateResult;
}

/** One job on chosen rows: what there is to choose, and what comes of it. */
export interface Job {
  /** One sentence about it. */
  readonly about: string;
  choices(): TemplateResult;
  plan(): JobPlan;
}
