import { nothing, type TemplateResult } from 'lit';
import {
  askedRows, countOutcomes, reviseSchedule, revisionChanges, revisionLabel, withAsked, type ListRevision,
} from '../../src/exchange/revision/index.ts';
import { countedList, takeoffChanges, takeoffLabel, type Takeoff } from '../../src/exchange/takeoff/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells, Change } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import { revisionChoices, type RevisedChoices } from './revision-choices.ts';
import { revisedRows, type RowFilter } from './revised-rows.ts';

/** A list that was read, and the schedule onto which it may be taken. */
export interface HeldList {
  readonly schedule: LoadSchedule;
  readonly takeoff: Takeoff;
  readonly name: string;
  readonly words: Words;
}

const NOTHING_CHOSEN: RevisedChoices = { same: new Map() };

/** A list held against device rows that were counted in an earlier one, and what a person says of it. */
export class RevisedList {
  #held: HeldList | undefined;
  #revision: ListRevision | undefined;
  #choices = NOTHING_CHOSEN;
  #showsRows: boolean | undefined;
  #filter: RowFilter = 'differing';
  readonly #redraw: () => void;

  /** @param redraw is called when a person chose something. */
  constructor(redraw: () => void) {
    this.#redraw = redraw;
  }

  /** Holds a list against a schedule; without one it forgets what was chosen. */
  hold(held: HeldList | undefined): void {
    this.#held = held;
    if (held === undefined) {
      this.#choices = NOTHING_CHOSEN;
      this.#filter = 'differing';
      this.#showsRows = undefined;
      this.#revision = undefined;
      return;
    }
    const { schedule, takeoff, name, words } = held;
    const list = countedList(takeoff, name);
    const { lists, by, gone, same } = this.#choices;
    const places = new Map(list.rows.flatMap((row, place) => {
      const id = same.get(rowKey(row));
      return id === undefined ? [] : [[place, id] as const];
    }));
    const revision = reviseSchedule(schedule, list, { lists, by, gone, same: places, words });
    this.#revision = revision.lists.length === 0 ? undefined : revision;
  }

  /** Whether the list takes the place of an earlier one. */
  get isOnto(): boolean {
    const { mode } = this.#choices;
    return this.#revision !== undefined
      && (mode === undefined ? this.#revision.lists.some(({ isRevised }) => isRevised) : mode === 'onto');
  }

  /** Whether the device rows are shown in the place of the lines: once nothing is to decide on these, unless asked. */
  get showsRows(): boolean {
    const isDecided = this.#held?.takeoff.lines.every(({ outcome }) => outcome !== 'undecided') === true;
    return this.isOnto && (this.#showsRows ?? isDecided);
  }

  set showsRows(shown: boolean) {
    this.#showsRows = shown;
    this.#redraw();
  }

  /** A person is to say first of which lists it is a revision. */
  get isAsked(): boolean {
    return this.isOnto && this.#revision!.isAsked;
  }

  /** How many rows of the list may be there already, which a person is to say. */
  get asked(): number {
    return this.isOnto ? askedRows(this.#revision!).length : 0;
  }

  /** What is taken as things stand: lines of rows that are asked about are undecided. */
  get takeoff(): Takeoff {
    return this.isOnto ? withAsked(this.#held!.takeoff, this.#revision!) : this.#held!.takeoff;
  }

  /** What is to be chosen beside the lines; nothing where the schedule has no rows of lists. */
  get choices(): TemplateResult | typeof nothing {
    if (this.#revision === undefined || this.#held === undefined) return nothing;
    return revisionChoices({
      revision: this.#revision, chosen: this.#choices, isOnto: this.isOnto, words: this.#held.words,
      choose: (chosen) => { this.#choose(chosen); }, allNew: () => { this.#allNew(); },
    });
  }

  /** The device rows with what becomes of them. */
  get rows(): TemplateResult | typeof nothing {
    if (this.#revision === undefined || this.#held === undefined) return nothing;
    const { schedule, words } = this.#held;
    const list = countedList(this.#held.takeoff, this.#held.name);
    return revisedRows({
      revision: this.#revision, schedule, filter: this.#filter, same: this.#choices.same, words,
      keyOf: (place) => rowKey(list.rows[place]!),
      show: (filter) => {
        this.#filter = filter;
        this.#redraw();
      },
      choose: (key, id) => {
        const same = new Map(this.#choices.same);
        if (id === undefined) same.delete(key);
        else same.set(key, id);
        this.#choose({ same });
      },
    });
  }

  /** What the action that takes the list is called for a person before it is done. */
  get offer(): string | undefined {
    if (!this.isOnto || this.#revision === undefined || this.#held === undefined) return undefined;
    return this.#held.words.say('Take it onto the schedule: {came} came, {changed} changed, {went} went', countOutcomes(this.#revision));
  }

  /** The action that takes the list. */
  action(): { readonly label: string; readonly changes: readonly Change[] } {
    const { schedule: { document }, takeoff, name, words } = this.#held!;
    if (!this.isOnto) {
      return { label: takeoffLabel(takeoff, words), changes: takeoffChanges(document, takeoff, words, name) };
    }
    const revision = this.#revision!;
    return { label: revisionLabel(revision, words), changes: revisionChanges(document, takeoff, revision, words) };
  }

  #allNew(): void {
    const { rows } = countedList(this.#held!.takeoff, this.#held!.name);
    this.#choose({ same: new Map([
      ...this.#choices.same, ...askedRows(this.#revision!).map(({ place }) => [rowKey(rows[place!]!), null] as const),
    ]) });
  }

  #choose(chosen: Partial<RevisedChoices>): void {
    this.#choices = { ...this.#choices, ...chosen };
    this.hold(this.#held);
    this.#redraw();
  }
}

/** A row of a list as long as the list is the same. */
function rowKey({ source, type, area, ref }: Cells): string {
  return JSON.stringify([source, type, area, ref]);
}
