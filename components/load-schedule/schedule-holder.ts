import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { fetchEngine } from '../../src/engine/engine-registry.ts';
import { LoadSchedule, type ScheduleEvent } from '../../src/load-schedule.ts';
import { ENGLISH, type Words } from '../../src/words/index.ts';
import { whenIdle } from '../look/when-idle.ts';

/** The formula engine is fetched, and built, this much later [ms] on a page that is never idle. */
const LATEST_MILLISECONDS = 1000;

/** Who is told what happens to the schedule. */
export interface HolderListener {
  /** After each action, and when formulas are worked out. @param byPerson false for what the page itself did. */
  told(event: ScheduleEvent, byPerson: boolean): void;
  /** Before another schedule is put in. */
  replacing(): void;
  /** After another schedule was put in. */
  replaced(schedule: LoadSchedule): void;
  /** What works out formulas, of which the schedule has some, could not be fetched. */
  unfetched(): void;
}

/** Holds the schedule of an element and tells it of every change while it is on a page. */
export class ScheduleHolder implements ReactiveController {
  /** Changes whenever the schedule did, so that parts know to render again. */
  revision = 0;
  readonly #host: ReactiveControllerHost & Node;
  readonly #listener: HolderListener;
  #words = ENGLISH;
  #schedule: LoadSchedule | undefined;
  #own = false;
  #quiet = false;
  #end: (() => void) | undefined;
  #callOff: (() => void) | undefined;
  /** Whether the formula engine is to be started once what is new is on the screen. */
  #isToStart = false;
  /** Whether it was told that formulas cannot be worked out; their findings go on saying so. */
  #isUnfetchedTold = false;

  constructor(host: ReactiveControllerHost & Node, listener: HolderListener) {
    this.#host = host;
    this.#listener = listener;
    host.addController(this);
  }

  /** The schedule; an empty one until another is put in. */
  get schedule(): LoadSchedule {
    if (this.#schedule === undefined) this.#hold(new LoadSchedule(), true);
    return this.#schedule!;
  }

  /** Puts another schedule in. @param own whether the element made it, and so must free it. */
  replace(schedule: LoadSchedule, own: boolean): void {
    if (schedule === this.#schedule) return;
    this.#listener.replacing();
    const before = this.#own ? this.#schedule : undefined;
    this.#hold(schedule, own);
    this.#listener.replaced(schedule);
    before?.dispose();
  }

  /** Has the schedule, and every other that is put in later, speak a language. */
  speak(words: Words): void {
    this.#words = words;
    this.#schedule?.speak(words);
    this.revision += 1;
    this.#host.requestUpdate();
  }

  /** Does something that a page asked for, which is no change by a person. */
  quietly<Result>(action: () => Result): Result {
    this.#quiet = true;
    try {
      return action();
    } finally {
      this.#quiet = false;
    }
  }

  /** Has it told, once, where the formulas of a schedule cannot be worked out. */
  async heedFormulas(schedule = this.schedule): Promise<void> {
    if (await schedule.formulasReady() || this.#isUnfetchedTold) return;
    this.#isUnfetchedTold = true;
    this.#listener.unfetched();
  }

  hostConnected(): void {
    this.#listen();
  }

  hostDisconnected(): void {
    // What is taken over because the element goes is heard of yet.
    queueMicrotask(() => { if (!this.#host.isConnected) this.#deafen(); });
  }

  hostUpdated(): void {
    if (!this.#isToStart) return;
    this.#isToStart = false;
    this.#callOff?.();
    // The browser may be idle before it paints what was rendered.
    const frame = requestAnimationFrame(() => { this.#startWhenIdle(); });
    this.#callOff = () => { cancelAnimationFrame(frame); };
  }

  #deafen(): void {
    this.#callOff?.();
    this.#end?.();
    this.#end = undefined;
    this.#isToStart = false;
  }

  #hold(schedule: LoadSchedule, own: boolean): void {
    const listening = this.#end !== undefined;
    this.#deafen();
    schedule.speak(this.#words);
    this.#schedule = schedule;
    this.#own = own;
    this.revision += 1;
    if (listening) this.#listen();
    this.#host.requestUpdate();
  }

  #listen(): void {
    this.#end?.();
    this.#end = this.schedule.subscribe((event) => {
      this.revision += 1;
      this.#host.requestUpdate();
      this.#listener.told(event, !this.#quiet);
      if (event.touched.all) this.#begin();
      else void this.heedFormulas();
    });
    this.#begin();
    // What happened to it while nobody listened shows at once.
    this.revision += 1;
    this.#host.requestUpdate();
  }

  /** What the schedule holds is new. */
  #begin(): void {
    this.#isToStart = true;
    this.#isUnfetchedTold = false;
    void this.heedFormulas();
  }

  /**
   * The formula engine is fetched while the page is idle, and built while it is idle again, so that the first formula
   * need not wait for it.
   */
  #startWhenIdle(): void {
    this.#callOff?.();
    this.#callOff = whenIdle(() => {
      fetchEngine().then(() => {
        if (this.#end === undefined) return;
        this.#callOff = whenIdle(() => { this.schedule.startFormulas(); }, LATEST_MILLISECONDS);
      }, reportError);
    }, LATEST_MILLISECONDS);
  }
}
