import {
  dropVariant, freeName, joinVariant, keepVariant, makeVariant, variantOf, withoutVariant,
} from '../../src/exchange/variants/index.ts';
import { LoadSchedule, type ScheduleEvent } from '../../src/load-schedule.ts';
import { isSameData } from '../../src/schedule/compare/index.ts';
import type { Content, Variant } from '../../src/schedule/index.ts';
import { message } from '../../src/words/index.ts';
import type { AskedCommand } from '../events/command-event.ts';
import { today } from '../look/today.ts';
import { whenIdle } from '../look/when-idle.ts';

/** What was done is kept at the latest so much later [ms] on a page that is never idle. */
const LATEST_MILLISECONDS = 1000;

/** What hands the schedule out, or reads a file into it, waits until nothing is tried out. */
const BARRED: ReadonlySet<AskedCommand> = new Set<AskedCommand>([
  'open', 'csvIn', 'csvOut', 'join', 'takeoff', 'bill', 'measure', 'loadTable', 'loadDemo', 'firstSteps',
]);
const BARRED_WORDS = message(
  'Files, bill, measured values and load table are those of the schedule. Take over what you try out, or leave it, and ask again.',
);

/** Who shows what is tried out. */
export interface TrialHost {
  /** Told of each action in what is tried out. */
  followed(event: ScheduleEvent): void;
  /** Does something that is no change by a person. */
  quietly(action: () => void): void;
}

/**
 * What a person tries out beside a schedule: a copy to work on. What is done in it is kept in the schedule as a
 * variant whenever the page is idle, as one action however much it is, so that nothing is lost with the page.
 */
export class Trial {
  /** The copy that is worked on; rows have the ids that they have in the schedule, where it begins with that. */
  readonly schedule: LoadSchedule;
  readonly #of: LoadSchedule;
  /** The schedule when it began. */
  readonly #base: Content;
  #about: Pick<Variant, 'name' | 'note'>;
  /** The variant with which it began. */
  readonly #from: Variant | undefined;
  /** The name under which it is kept by now. */
  #keptAs: string | undefined;
  /** The action of the schedule that keeps it. */
  #keptBy: object | undefined;
  /** The last action of the copy when it was kept, and what was said of it then. */
  #keptAfter: object | undefined;
  #keptAbout: object;
  #host: TrialHost | undefined;
  #callOff: (() => void) | undefined;

  private constructor(of: LoadSchedule, copy: LoadSchedule, about: Pick<Variant, 'name' | 'note'>, from?: Variant) {
    this.#of = of;
    this.schedule = copy;
    this.#base = of.content();
    this.#about = this.#keptAbout = about;
    this.#from = from;
    this.#keptAs = from?.name;
  }

  /** Begins something new. */
  static begin(of: LoadSchedule): Trial {
    const { words } = of;
    const session = { base: of.document.snapshot(), actions: [] };
    const name = freeName(of.document, (number) => words.say('Variant {number}', { number }));
    return new Trial(of, new LoadSchedule(undefined, { session, words }), { name });
  }

  /** Goes on with a variant. @param content the schedule with it in, where all is decided that both changed. */
  static goOn(of: LoadSchedule, variant: Variant, content: Content): Trial {
    const { name, note } = variant;
    const copy = new LoadSchedule(content, { words: of.words });
    const trial = new Trial(of, copy, note === undefined ? { name } : { name, note }, variant);
    // Decided anew against the schedule as it is now.
    trial.#keptAbout = {};
    return trial;
  }

  get name(): string {
    return this.#about.name;
  }

  get note(): string {
    return this.#about.note ?? '';
  }

  /** Whether it is the same as the schedule yet: there is nothing to compare or take over. */
  get isEmpty(): boolean {
    return this.schedule.lastAction === undefined && this.#from === undefined;
  }

  /** Why something cannot be done while it is shown; `undefined` where it can. */
  refuses(command: AskedCommand): string | undefined {
    return BARRED.has(command) ? this.#of.words.say(BARRED_WORDS) : undefined;
  }

  /** Is shown from now on. */
  start(host: TrialHost): void {
    this.#host = host;
    this.schedule.subscribe((event) => {
      host.followed(event);
      this.#wait();
    });
  }

  /** Is shown no longer; what was not kept is gone. */
  end(): void {
    this.#host = undefined;
    this.#callOff?.();
    this.schedule.dispose();
  }

  /** Keeps it when the page is idle, or goes before that. */
  #wait(): void {
    this.#callOff?.();
    const callOff = whenIdle(this.keep, LATEST_MILLISECONDS);
    window.addEventListener('pagehide', this.keep);
    this.#callOff = () => {
      callOff();
      window.removeEventListener('pagehide', this.keep);
    };
  }

  /** Calls it otherwise. @returns whether it can be called so: not without a name, nor as another variant. */
  call(name: string, note = this.note): boolean {
    const called = name.trim();
    const others = this.#of.document.variants.filter((each) => each.name !== this.#keptAs);
    if (called === '' || others.some((each) => each.name === called)) return false;
    this.#about = note.trim() === '' ? { name: called } : { name: called, note: note.trim() };
    this.keep();
    return true;
  }

  /** Keeps what it came to by now, in the place of what was kept of it before. */
  readonly keep = (): void => {
    this.#callOff?.();
    const { lastAction } = this.schedule;
    if (this.#host === undefined || (lastAction === this.#keptAfter && this.#about === this.#keptAbout)) return;
    this.#keptAfter = lastAction;
    this.#keptAbout = this.#about;
    const variant = this.#made();
    if (variant !== undefined && isSameVariant(variant, variantOf(this.#of.document, this.#keptAs ?? ''))) return;
    // One action, however often it is kept.
    if (this.#keptBy !== undefined && this.#of.lastAction === this.#keptBy) {
      this.#host.quietly(() => { this.#of.undo(); });
      this.#keptAs = this.#from?.name;
    }
    if (variant === undefined) {
      this.#drop();
      return;
    }
    const { words } = this.#of;
    this.#of.act(words.say('Variant “{name}” kept', { name: this.name }), keepVariant(this.#of.document, variant, this.#keptAs));
    this.#keptAs = this.name;
    this.#keptBy = this.#of.lastAction;
  };

  /** What is to be kept; nothing of what is empty yet. */
  #made(): Variant | undefined {
    if (this.isEmpty) return undefined;
    const { note: _note, ...others } = this.#from ?? { note: '' };
    return { ...others, ...makeVariant(this.#base, this.schedule.content(), { ...this.#about, date: today() }) };
  }

  /** Lets go of it. */
  drop(): void {
    this.#drop();
    this.#keptAfter = this.schedule.lastAction;
    this.#keptAbout = this.#about;
  }

  #drop(): void {
    const name = this.#keptAs;
    if (name !== undefined) drop(this.#of, name);
    this.#keptAs = this.#keptBy = undefined;
  }

  /**
   * Takes it over as it is kept.
   * @returns whether that is done; else something has to be decided first.
   */
  takeOver(): boolean {
    this.keep();
    const variant = variantOf(this.#of.document, this.name);
    return variant !== undefined && takeOver(this.#of, variant, joinVariant(this.#of.content(), variant));
  }
}

/**
 * Takes a variant over into a schedule, as one action.
 * @returns whether that is done; else something has to be decided first.
 */
export function takeOver(
  schedule: LoadSchedule, { name }: Variant, { content, conflicts }: ReturnType<typeof joinVariant>,
): boolean {
  if (conflicts.some(({ choice }) => choice === null)) return false;
  // Both were read, so that no formula is one that cannot be.
  schedule.load(withoutVariant(content, name), schedule.words.say('Variant “{name}” taken over', { name }));
  return true;
}

/** Whether two variants are the same, on whatever day they were kept. */
function isSameVariant({ date: _date, ...one }: Variant, other: Variant | undefined): boolean {
  const { date: _other, ...others } = other ?? { date: '' };
  return isSameData(one, others);
}

/** Lets go of a variant, as one action. */
export function drop(schedule: LoadSchedule, name: string): void {
  schedule.act(schedule.words.say('Variant “{name}” dropped', { name }), dropVariant(schedule.document, name));
}
