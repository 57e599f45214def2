import { exceeds } from '../../electrical/index.ts';
import { isBlank, ScheduleDocument, setFactors, tagOf, type Change } from '../../schedule/index.ts';
import { Touched } from '../touched.ts';
import { Workbook } from '../workbook.ts';
import type { GroupFactor } from './case-table.ts';
import { loadingOf, LOADING_OF, type LoadedSheet } from './case-loadings.ts';
import { contributionsTo } from './contributions.ts';

/** The factor of a group up to which a limit is kept, the other groups being as they are. */
export type FactorLimit =
  /** Even without the group it is not kept. */
  | { readonly kind: 'never' }
  /** It is kept with all of the group. */
  | { readonly kind: 'always' }
  /** It is just met at this factor, 0 to 1. */
  | { readonly kind: 'factor'; readonly factor: number }
  /** What may be used is not known. */
  | { readonly kind: 'unknown' };

/** How much a group of loads matters for a row in a case. */
export interface GroupMatter {
  readonly group: string;
  /** What the case gives it; without it each of its rows counts by its own diversity. */
  readonly factor: GroupFactor | undefined;
  /** The factor, or where there is none the one that comes to the same; `null` where that is not known. */
  readonly now: number | null;
  /** What it contributes [A]. */
  readonly amps: number;
  /** By how much the loading grows when the factor grows by 0.1, or where it cannot, falls when it falls by that. */
  readonly step: number | null;
  /** Loading with none of the group, and with all of it. */
  readonly none: number | null;
  readonly all: number | null;
  /** Up to what may be used, and the fuse of a supply. */
  readonly limit: FactorLimit;
  /** Up to the target; absent where there is none. */
  readonly target: FactorLimit | undefined;
}

/** What is asked of the row at one factor [A], and what may be: NaN where that is not known, or there is no target. */
interface Point {
  readonly demand: number;
  readonly limit: number;
  readonly target: number;
  readonly loading: number | null;
}

const STEP = 0.1;
/** How near the factor of a limit is found. */
const NEAR = 1e-9;
const MOST_TRIALS = 60;

/**
 * How much each group matters for a supply, way, feed or run in a case: what it contributes, how far the loading moves
 * with its factor, and the factor at which limit and target are just met with the others as they are.
 *
 * Nothing is estimated: each factor is put into a copy, which is worked out anew, with what runs take beyond their
 * devices and with what the warmth of an enclosure leaves of a supply. The factor of a limit is looked for between 0
 * and 1 by the secant, which meets it at once where the demand follows the factor in a straight line, and to 1e-9 where
 * it does not; it is taken for granted that more of a group never asks for less.
 *
 * In the place of the case “by own diversity” stands one in which the group alone has a factor; as in every case that
 * has a factor for all that is on it, the own diversity of a feed counts no more then.
 * @param place place of the case among the cases, -1 for the diversity of rows alone.
 * @returns the groups one by one, so that whoever shows them need not wait for all; those that contribute most first.
 */
export function* whatMatters(
  document: ScheduleDocument, book: Workbook, sheet: LoadedSheet, id: number, place: number,
  engineLicenseKey = 'gpl-v3',
): Generator<GroupMatter, void, void> {
  const { groups } = contributionsTo(document, book, sheet, id, place);
  const { target } = loadingOf(book, sheet, id);
  const trial = new CaseTrial(document, sheet, id, place, engineLicenseKey);
  try {
    for (const { group, factor, connected, own, amps } of groups) {
      const now = factor === undefined ? connected > 0 ? Math.min(1, own / connected) : null
        : Number.isNaN(factor.share) ? null : factor.share;
      const of = { group, factor, now, amps };
      yield group === '' ? { ...of, step: null, none: null, all: null, limit: { kind: 'unknown' }, target: undefined }
        : trial.with(group, (at): GroupMatter => ({
          ...of, step: now === null ? null : stepAt(at, now), none: at(0).loading, all: at(1).loading,
          limit: limitOf(at, 'limit'), target: target === null ? undefined : limitOf(at, 'target'),
        }));
    }
  } finally {
    trial.end();
  }
}

/** By how much the loading moves with the factor. */
function stepAt(at: (share: number) => Point, now: number): number | null {
  const [from, to] = now + STEP <= 1 ? [now, now + STEP] : [now - STEP, now];
  const [less, more] = [at(from).loading, at(to).loading];
  return less === null || more === null ? null : more - less;
}

/** The factor at which as much is asked for as may be. */
function limitOf(at: (share: number) => Point, most: 'limit' | 'target'): FactorLimit {
  const beyond = (share: number) => at(share).demand - at(share)[most];
  const isBeyond = (share: number) => exceeds(at(share).demand, at(share)[most]);
  let [low, high] = [0, 1];
  let [below, above] = [beyond(low), beyond(high)];
  if (Number.isNaN(below) || Number.isNaN(above)) return { kind: 'unknown' };
  if (isBeyond(low)) return { kind: 'never' };
  if (!isBeyond(high)) return { kind: 'always' };
  let side = 0;
  for (let trials = 0; trials < MOST_TRIALS && high - low > NEAR; trials += 1) {
    const straight = low - below * (high - low) / (above - below);
    const share = Number.isFinite(above) && straight > low && straight < high ? straight : (low + high) / 2;
    const found = beyond(share);
    if (Math.abs(found) <= 1e-12 * Math.abs(at(share).limit)) return { kind: 'factor', factor: share };
    // Where one end stays twice, half of it counts, or the secant would creep (Illinois method).
    if (found < 0) {
      [low, below] = [share, found];
      if (side < 0) above /= 2;
      side = -1;
    } else {
      [high, above] = [share, found];
      if (side > 0) below /= 2;
      side = 1;
    }
  }
  return { kind: 'factor', factor: low };
}

/** A copy of a schedule in which factors of a case are tried. */
class CaseTrial {
  readonly #document: ScheduleDocument;
  readonly #book: Workbook;
  readonly #sheet: LoadedSheet;
  readonly #id: number;
  readonly #place: number;
  readonly #case: string;
  /** Rows that the demand lacks as it is. */
  readonly #missing: number;

  constructor(document: ScheduleDocument, sheet: LoadedSheet, id: number, place: number, engineLicenseKey: string) {
    this.#document = new ScheduleDocument(document.snapshot());
    this.#sheet = sheet;
    this.#id = id;
    this.#case = this.#named(place);
    this.#place = Math.max(0, place);
    this.#book = new Workbook(this.#document, engineLicenseKey);
    this.#missing = this.#book.missing(sheet, id, LOADING_OF[sheet].demand);
  }

  /** Looks at a group with any factor, worked out once for each. */
  with<Found>(group: string, look: (at: (share: number) => Point) => Found): Found {
    const known = new Map<number, Point>();
    let back: readonly Change[] = [];
    const at = (share: number): Point => {
      let point = known.get(share);
      if (point === undefined) {
        const inverse = this.#do(setFactors(this.#document, [{ case: this.#case, group, value: share }]));
        // What takes the first of them back takes all back: they are of one cell.
        if (back.length === 0) back = inverse;
        known.set(share, point = this.#point());
      }
      return point;
    };
    const found = look(at);
    this.#do(back);
    return found;
  }

  end(): void {
    this.#book.destroy();
  }

  #point(): Point {
    const { demand: key } = LOADING_OF[this.#sheet];
    const { limit: most, fuse, target } = loadingOf(this.#book, this.#sheet, this.#id);
    // Where a run has no working voltage, or lacks what it had, no factor as large as this is kept.
    const isLost = this.#book.missing(this.#sheet, this.#id, key) > this.#missing;
    const demand = isLost ? Infinity : this.#book.inCase(this.#sheet, this.#id, key, this.#place) ?? Infinity;
    return {
      demand, limit: fuse ?? most ?? NaN,
      target: most === null || target === null ? NaN : Math.min(most * target, fuse ?? Infinity),
      loading: most === null || most <= 0 || !Number.isFinite(demand) ? null : demand / most,
    };
  }

  #do(changes: readonly Change[]): Change[] {
    const inverse = this.#document.perform(changes);
    this.#book.update(Touched.by(changes, inverse));
    return inverse;
  }

  /** The name of the case, by which its factors are found: one of its own, so that no other case is meant. */
  #named(place: number): string {
    const rows = this.#document.rows('cases').filter((row) => !isBlank(row));
    const names = rows.map((row) => tagOf('cases', row));
    const name = names[place] ?? '';
    if (name !== '' && names.indexOf(name) === place) return name;
    let other = 'trial';
    while (names.includes(other)) other += ' ';
    const row = rows[place];
    this.#document.perform(row === undefined
      ? [{ op: 'insert', sheet: 'cases', at: 0, rows: [{ id: this.#document.freeIds('cases', 1)[0]!, cells: { case: other } }] }]
      : [{ op: 'set', sheet: 'cases', id: row.id, key: 'case', value: other }]);
    return other;
  }
}
