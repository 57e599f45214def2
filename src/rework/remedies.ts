import supplyRatings from '../../data/supply-ratings.json' with { type: 'json' };
import { numberOf } from '../engine/index.ts';
import { findingName, hasGrownWorse, RATINGS, type Finding } from '../findings/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import { onTrial } from '../report/changes/index.ts';
import { insertRows, nextWayTag, setCells, tagOf, type CellEdit, type Cells, type Change } from '../schedule/index.ts';
import { amps, metres } from '../words/index.ts';
import { taggedWays } from './belonging.ts';
import { mayHaveRemedies } from './may-have-remedies.ts';
import { moveDevices } from './move-devices.ts';
import { cellsLike, NOTE } from './rows-like.ts';

/** What would put a finding right, tried against all checks of the schedule. */
export interface TriedRemedy {
  /** What is done, as a button and an action are called. */
  readonly label: string;
  readonly changes: readonly Change[];
}

/** Ratings, ways and rails that are tried of each kind before it is given up. */
const TRIED = 3;
/** Findings that another cable, or another feed, may put right. */
const OF_VOLTAGE: ReadonlySet<string> = new Set(['run-under-voltage', 'run-no-working-voltage', 'run-over-drop']);

/** Candidates of one kind, of which the first that holds is offered. */
type Kind = () => readonly TriedRemedy[];

/**
 * What would put right what a finding is about: another conductor, rating or way, a second feed, a move to another way
 * or rail. Each is tried on a copy, with all checks: the finding goes, and none comes or grows worse that is more than
 * a note.
 *
 * @returns in the order in which a designer would think of them; none where a person has to find another
 */
export function triedRemedies(schedule: LoadSchedule, finding: Finding): readonly TriedRemedy[] {
  const kinds = kindsFor(schedule, finding).map((kind) => kind()).filter((candidates) => candidates.length > 0);
  if (kinds.length === 0) return [];
  const own = findingName(finding);
  return onTrial(schedule, [], (trial) => {
    // Of all panels, whichever is looked at.
    const before = openIn(trial);
    return kinds.flatMap((candidates) => candidates.find(({ changes }) => {
      trial.act('', changes);
      const after = openIn(trial);
      trial.undo();
      return !after.has(own) && [...after].every(([name, found]) => {
        const was = before.get(name);
        return was !== undefined && !hasGrownWorse(found, was);
      });
    }) ?? []);
  });
}

/** All that was found and is more than a note, by name. */
const openIn = ({ findings }: LoadSchedule): ReadonlyMap<string, Finding> =>
  new Map(findings.filter(({ severity }) => severity !== 'note').map((finding) => [findingName(finding), finding]));

function kindsFor(schedule: LoadSchedule, finding: Finding): readonly Kind[] {
  if (!mayHaveRemedies(finding)) return [];
  const { sheet, id, rule } = finding;
  const to = new Remedies(schedule);
  if (sheet === 'supplies') return [() => to.rateSupply(id), () => to.moveWay(id)];
  if (sheet === 'ways') return [() => to.rateWay(id), () => to.moveRun(id)];
  const way = schedule.target('runs', id, 'way');
  const second = schedule.target('runs', id, 'secondWay');
  return [
    () => to.useConductor(id),
    ...[way, second].filter((each) => each >= 0).map((each) => () => to.rateWay(each)),
    () => to.useWay(id), () => to.giveWay(id),
    ...OF_VOLTAGE.has(rule) ? [() => to.feedAgain(id)] : [],
  ];
}

/** Builds what is tried. */
class Remedies {
  readonly #schedule: LoadSchedule;

  constructor(schedule: LoadSchedule) {
    this.#schedule = schedule;
  }

  useConductor(run: number): TriedRemedy[] {
    const conductor = this.#schedule.value('runs', run, 'smallestConductor');
    return typeof conductor !== 'string' ? [] : [this.#set(
      this.#schedule.words.say('{run} with {conductor}', { run: this.#name('runs', run), conductor }),
      [{ sheet: 'runs', id: run, key: 'conductor', value: conductor }]
    )];
  }

  /** The next larger ratings, then the next smaller ones. */
  rateWay(way: number): TriedRemedy[] {
    const rated = this.#number('ways', way, 'rated');
    if (rated === null) return [];
    const larger = RATINGS.filter((each) => each > rated).slice(0, TRIED);
    const smaller = RATINGS.filter((each) => each < rated).reverse().slice(0, TRIED);
    return [...larger, ...smaller].map((each) => this.#set(
      this.#schedule.words.say('{tag} rated {rating}', { tag: this.#name('ways', way), rating: amps(each) }),
      [{ sheet: 'ways', id: way, key: 'rated', value: each }]
    ));
  }

  rateSupply(supply: number): TriedRemedy[] {
    const rated = this.#number('supplies', supply, 'rated');
    // The ratings on the market are those for 24 V.
    if (rated === null || this.#number('supplies', supply, 'voltage') !== 24) return [];
    return supplyRatings.ratings.filter((each) => each > rated).slice(0, TRIED).map((each) => this.#set(
      this.#schedule.words.say('{tag} rated {rating}', { tag: this.#name('supplies', supply), rating: amps(each) }),
      [{ sheet: 'supplies', id: supply, key: 'rated', value: each }]
    ));
  }

  /** The run on another way of its rail, those with the least on them first. */
  useWay(run: number): TriedRemedy[] {
    const way = this.#schedule.target('runs', run, 'way');
    return way < 0 ? [] : this.#waysBeside(way).map((other) => this.#runOnWay(run, this.#name('ways', other)));
  }

  /** The run on a way of its own: like its own or the last of its rail, of a rating that its cable bears. */
  giveWay(run: number): TriedRemedy[] {
    const { ways, rail } = this.#of(run);
    const like = ways.at(-1);
    const kind = like === undefined ? 'electronic' : this.#schedule.value('ways', like, 'kind');
    if (rail === null || typeof kind !== 'string') return [];
    const current = this.#number('runs', run, 'current') ?? 0;
    return RATINGS.filter((each) => each >= current).slice(0, TRIED).map((each) => {
      const cells = { ...this.#cellsLike(like), kind, rated: each };
      const { tag, changes } = this.#newWay(rail, cells);
      return {
        label: this.#schedule.words.say('{run} on a new way {way}, {kind} {rating}', {
          run: this.#name('runs', run), way: tag, kind: this.#schedule.words.text(kind), rating: amps(each),
        }),
        changes: [...changes, ...this.#sets([{ sheet: 'runs', id: run, key: 'way', value: tag }])],
      };
    });
  }

  /** The run fed from a second way of its rail, which nothing hangs on yet, over as much cable again. */
  feedAgain(run: number): TriedRemedy[] {
    const { words } = this.#schedule;
    const [length, way] = [this.#number('runs', run, 'length'), this.#schedule.target('runs', run, 'way')];
    const { rail } = this.#of(run);
    if (length === null || way < 0 || rail === null || this.#schedule.value('runs', run, 'secondWay') !== null) return [];
    const free = this.#waysBeside(way).filter((each) => ['way', 'secondWay']
      .every((by) => this.#schedule.members('runs', by, each).length === 0));
    const made = this.#newWay(rail, this.#cellsLike(way));
    return [...free.map((each) => ({ tag: this.#name('ways', each), changes: [] })), made].map(({ tag, changes }) => ({
      label: words.say('{run} fed from {way} too, over {length} more of its cable', {
        run: this.#name('runs', run), way: tag, length: metres(length),
      }),
      changes: [...changes, ...this.#sets([
        { sheet: 'runs', id: run, key: 'secondWay', value: tag }, { sheet: 'runs', id: run, key: 'secondLength', value: length },
      ])],
    }));
  }

  /** One of the runs of a way on another: the one that takes least first, on the way with the least on it. */
  moveRun(way: number): TriedRemedy[] {
    const runs = this.#schedule.members('runs', 'way', way);
    if (runs.length < 2) return [];
    const rail = this.#schedule.value('ways', way, 'rail');
    return this.#byNumber('runs', runs, 'connected').slice(0, TRIED).flatMap((run) => {
      const there = this.#waysBeside(way).map((other) => this.#runOnWay(run, this.#name('ways', other)));
      if (typeof rail !== 'string') return there;
      const { tag, changes } = this.#newWay(rail, this.#cellsLike(way));
      const label = this.#schedule.words.say('{run} on a new way {way}', { run: this.#name('runs', run), way: tag });
      return [...there, { label, changes: [...changes, ...this.#sets([{ sheet: 'runs', id: run, key: 'way', value: tag }])] }];
    });
  }

  /** A way of a rail with its runs on another rail of its voltage and purpose, that with most to spare first. */
  moveWay(supply: number): TriedRemedy[] {
    const schedule = this.#schedule;
    const isAlike = (id: number) => ['voltage', 'purpose'].every((key) =>
      schedule.value('supplies', id, key) === schedule.value('supplies', supply, key));
    const others = this.#byNumber('supplies', schedule.rows('supplies').map(({ id }) => id)
      .filter((id) => id !== supply && isAlike(id)), 'spare').reverse().slice(0, TRIED);
    const ways = this.#byNumber('ways', schedule.members('ways', 'rail', supply), 'connected');
    return others.flatMap((other) => ways.flatMap((way) => {
      const [tag, runs] = [this.#name('supplies', other), schedule.members('runs', 'way', way)];
      if (tag === '' || runs.length === 0) return [];
      const { isDecided, changes } = moveDevices(schedule, { devices: [], runs, to: { sheet: 'supplies', tag } });
      return !isDecided ? [] : [{
        label: schedule.words.say('{way} with its runs on {rail}', { way: this.#name('ways', way), rail: tag }), changes,
      }];
    })).slice(0, TRIED * TRIED);
  }

  #runOnWay(run: number, way: string): TriedRemedy {
    return this.#set(this.#schedule.words.say('{run} on {way}', { run: this.#name('runs', run), way }),
      [{ sheet: 'runs', id: run, key: 'way', value: way }]);
  }

  /** Other ways of the rail of a way, those with the least on them first. */
  #waysBeside(way: number): number[] {
    const rail = this.#schedule.target('ways', way, 'rail');
    const others = rail < 0 ? [] : taggedWays(this.#schedule, rail).filter((id) => id !== way);
    return this.#byNumber('ways', others, 'demand').slice(0, TRIED);
  }

  /** The ways of the rail of a run, its own last, and the tag of that rail. */
  #of(run: number): { ways: readonly number[]; rail: string | null } {
    const [supply, way] = [this.#schedule.target('runs', run, 'rail'), this.#schedule.target('runs', run, 'way')];
    if (supply < 0) return { ways: [], rail: null };
    const ways = this.#schedule.members('ways', 'rail', supply).filter((id) => id !== way);
    return { ways: way < 0 ? ways : [...ways, way], rail: this.#name('supplies', supply) };
  }

  #newWay(rail: string, cells: Cells): { tag: string; changes: readonly Change[] } {
    const { document } = this.#schedule;
    const ways = document.rows('ways');
    const tag = nextWayTag(ways.map((row) => row.cells), rail);
    return { tag, changes: insertRows(document, 'ways', ways.length, [{ ...cells, way: tag, rail }]) };
  }

  /** What a way like another has: a formula would go on reading the row that it was typed in. */
  #cellsLike(way: number | undefined): Cells {
    return way === undefined ? {} : cellsLike(this.#schedule, 'ways', way, NOTE);
  }

  #byNumber(sheet: 'runs' | 'ways' | 'supplies', ids: readonly number[], key: string): number[] {
    const of = (id: number) => this.#number(sheet, id, key) ?? 0;
    return [...ids].sort((one, other) => of(one) - of(other));
  }

  #set(label: string, edits: readonly CellEdit[]): TriedRemedy {
    return { label, changes: this.#sets(edits) };
  }

  #sets(edits: readonly CellEdit[]): Change[] {
    return setCells(this.#schedule.document, edits);
  }

  #number(sheet: 'runs' | 'ways' | 'supplies', id: number, key: string): number | null {
    return numberOf(this.#schedule, sheet, id, key);
  }

  #name(sheet: 'runs' | 'ways' | 'supplies', id: number): string {
    return tagOf(sheet, this.#schedule.document.row(sheet, id)!);
  }
}
