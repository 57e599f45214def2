import { exceeds } from '../../electrical/index.ts';
import { findColumn, type SheetName } from '../../schedule/index.ts';
import { amps, percent, roundedDown, roundedUp, type MessageValues } from '../../words/index.ts';
import type { Check, Found } from '../check.ts';
import type { Gathering } from '../facts.ts';
import type { RowReader } from '../row-reader.ts';
import type { WaitingRows } from '../waiting.ts';
import { inItsCase, type CaseNames } from '../worst-in.ts';

/** A figure beyond its limit as a sentence gives it: `value`, `limit`, `excess`. */
type WriteExcess = (value: number, limit: number) => MessageValues;

/** Writes it with a unit: the limit and the excess on their safe side. */
export const excessIn = (unit: typeof amps): WriteExcess => (value, limit) => ({
  value: unit(value, limit), limit: roundedDown(unit(limit, value)), excess: roundedUp(unit(value - limit, 0)),
});

interface Limit {
  readonly rule: string;
  readonly sheet: SheetName;
  /** The figure that must not exceed the limit; the finding points to it. */
  readonly key: string;
  /** What is held against the limit where it is not that figure itself. */
  readonly value?: (row: RowReader) => number | null;
  readonly limit: (row: RowReader) => number | null;
  /** What is said, of any row or of one; it is given `value`, `limit` and `excess`. */
  readonly message: string | ((row: RowReader) => string);
  /** How figures are written; as currents unless said otherwise. */
  readonly write?: WriteExcess;
  /** What the message is given besides. */
  readonly values?: (row: RowReader) => MessageValues;
  /** In which case the figure is as high as that. */
  readonly worst?: CaseNames;
  readonly remedy?: Remedy;
}

/** What was tried and puts the row right, as a sentence to say besides; empty where nothing was found. */
type Remedy = (row: RowReader) => string;

const withRemedy = (said: string, row: RowReader, remedy: Remedy | undefined): string =>
  [said, remedy?.(row) ?? ''].filter((each) => each !== '').join(' ');

const saidOf = (message: Limit['message'], row: RowReader) => typeof message === 'string' ? message : message(row);

/** A check that a figure does not exceed what it may be. What is unknown is not found here. */
export function overLimit({
  rule, sheet, key, value: valueOf = (row) => row.number(key), limit, message, write = excessIn(amps), values, worst,
  remedy,
}: Limit): Check {
  return {
    rule, sheet, key, severity: 'over', inStatus: true,
    find: (row) => {
      const value = valueOf(row);
      const most = limit(row);
      if (value === null || most === null || !exceeds(value, most)) return undefined;
      return {
        value, limit: most, message: row.sentence(() => withRemedy(inItsCase(
          row.say(saidOf(message, row), { ...write(value, most), ...values?.(row) }), row, worst
        ), row, remedy)),
      };
    },
  };
}

interface Target {
  readonly rule: string;
  readonly sheet: SheetName;
  /** Current and rating, as keys of the row. */
  readonly current: string;
  readonly rating: string;
  /** What is said; it is given `loading`, `rating`, `target` and the current above it as `excess`. */
  readonly message: string;
  /** In which case the current is as high as that. */
  readonly worst?: CaseNames;
  readonly remedy?: Remedy;
}

/** A check that a loading stays below its target; silent where the rating itself is exceeded. */
export function overTarget({ rule, sheet, current, rating, message, worst, remedy }: Target): Check {
  return {
    rule, sheet, key: 'loading', severity: 'near', inStatus: true,
    find: (row) => {
      const [loading, target, used, most] = [
        row.number('loading'), row.number('target'), row.number(current), row.number(rating),
      ];
      if (loading === null || target === null || used === null || most === null) return undefined;
      if (!exceeds(loading, target) || exceeds(used, most)) return undefined;
      return {
        value: loading, limit: target, message: row.sentence(() => withRemedy(inItsCase(row.say(message, {
          loading: percent(loading, target), rating: roundedDown(amps(most)),
          target: roundedDown(percent(target, loading)), excess: roundedUp(amps(used - target * most, 0)),
        }), row, worst), row, remedy)),
      };
    },
  };
}

/** Whether a case marked “together” has a factor for every group on the row. */
export const isTogetherKnown = (row: RowReader) =>
  findColumn(row.sheet, 'togetherDemand') !== undefined && row.value('togetherDemand') !== null;

interface Diversity {
  readonly rule: string;
  readonly sheet: SheetName;
  /** What everything at once is held against. */
  readonly limit: Limit['limit'];
  /** What is said, of any row or of one; it is given everything at once as `value`, and `limit`. */
  readonly message: Limit['message'];
  readonly values?: Limit['values'];
  readonly remedy?: Remedy;
}

/**
 * A check that everything at once stays below a limit, whatever the diversity; silent where the demand exceeds it, and
 * where a case says how much comes together.
 */
export function livesOnDiversity({ rule, sheet, limit, message, values, remedy }: Diversity): Check {
  return {
    rule, sheet, key: 'connected', severity: 'near', inStatus: true,
    find: (row) => {
      const [value, most, demand] = [row.number('connected'), limit(row), row.number('demand')];
      if (value === null || most === null || demand === null || !exceeds(value, most)) return undefined;
      if (exceeds(demand, most) || isTogetherKnown(row)) return undefined;
      return {
        value, limit: most, message: row.sentence(() => withRemedy(row.say(saidOf(message, row), {
          value: amps(value, most), limit: roundedDown(amps(most, value)), ...values?.(row),
        }), row, remedy)),
      };
    },
  };
}

/**
 * Whether an input is to be entered. A formula without a result, or a number beyond its range, has a check of its own.
 */
export function lacks(row: RowReader, key: string): boolean {
  return row.value(key) === null && row.own(key) === null;
}

/**
 * A check that names an input without which the limits of the row cannot be judged.
 * @param message what is said; with `waits` it is given the number of other rows that wait for it as `waiting`
 */
export function missingInput(
  rule: string, sheet: SheetName, key: string, message: string, when?: (row: RowReader) => boolean,
  waits?: (row: RowReader) => number,
): Check {
  return {
    rule, sheet, key, severity: 'incomplete', inStatus: true,
    find: (row) => !lacks(row, key) || when?.(row) === false ? undefined : unknownTo(waits?.(row) ?? 0, row, message),
  };
}

/**
 * A check that names an input for which other rows wait, once for all of them.
 * @param message what is said; it is given the number of rows as `waiting`
 */
export function awaitedInput(
  rule: string, key: string, rows: WaitingRows, message: string, values?: MessageValues,
  when?: (row: RowReader) => boolean,
): Check {
  return {
    rule, sheet: rows.sheet, key, severity: 'incomplete',
    find: (row) => {
      if (!lacks(row, key) || when?.(row) === false) return undefined;
      const waiting = row.waiting(rows);
      return waiting === 0 ? undefined : { ...unknown(row, message, { ...values, waiting }), waiting };
    },
  };
}

/** A check that waits for what another row tells, so that it only counts in the status. */
export function waitsFor(
  rule: string, sheet: SheetName, key: string, message: string, when: (row: RowReader) => boolean,
): Check {
  return {
    rule, sheet, key, severity: 'incomplete', inStatus: true, elsewhere: true,
    find: (row) => when(row) ? unknown(row, message) : undefined,
  };
}

/**
 * A check that a total lacks rows, each of which tells what it lacks.
 * @param message what is said; it is given the total as `value`, and the number of rows that it lacks as `missing`
 * @param write how the total is written
 * @param collapsed rows that it lacks as they have no working voltage, which are over and not to be completed
 */
export function partialTotal(
  rule: string, sheet: SheetName, key: string, message: string, write: (value: number) => MessageValues[string],
  collapsed?: Gathering<number>,
): Check {
  return {
    rule, sheet, key, severity: 'incomplete', inStatus: true, elsewhere: true,
    find: (row) => {
      const missing = row.missing(key);
      const value = row.number(key);
      if (missing === 0 || value === null) return undefined;
      const runs = collapsed === undefined ? 0 : row.fact(collapsed) ?? 0;
      return {
        value, limit: null, message: runs === 0 ? row.say(message, { value: write(value), missing }) : row.say(
          '{name} carries at least {value}: {runs, plural, one {# run on it has} other {# runs on it have}} no stable operating point, and what {runs, plural, one {it draws} other {they draw}} is not known{others, plural, =0 {} one {, as of # other row} other {, as of # other rows}}. Put that right first, at the runs.',
          { value: write(value), runs, others: missing - runs }
        ),
      };
    },
  };
}

/** A note that an optional input is empty, so that its check is not made. */
export function notChecked(
  rule: string, sheet: SheetName, key: string, message: string, when?: (row: RowReader) => boolean,
): Check {
  return {
    rule, sheet, key, severity: 'note',
    find: (row) => row.own(key) !== null || when?.(row) === false ? undefined : unknown(row, message),
  };
}

/** What is found where something is not known, so that there is neither value nor limit. */
export function unknown(row: RowReader, message: string, values?: MessageValues): Found {
  return { value: null, limit: null, message: row.say(message, values) };
}

/** The same where so many other rows wait for it, which is said as `waiting`. */
export function unknownTo(waiting: number, row: RowReader, message: string, values?: MessageValues): Found {
  return { ...unknown(row, message, { ...values, waiting }), ...waiting === 0 ? {} : { waiting } };
}

/** How many rows some references of a row name. */
export const countNamed = (row: RowReader, ...references: readonly string[]): number =>
  references.filter((reference) => row.names(reference)).length;
