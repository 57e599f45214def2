import { exceeds } from '../../electrical/index.ts';
import { isFormula, type SheetName } from '../../schedule/index.ts';
import { amps, count, percent, type Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';

interface Limit {
  readonly rule: string;
  readonly sheet: SheetName;
  /** The figure that must not exceed the limit; the finding points to it. */
  readonly key: string;
  readonly limit: (row: RowReader) => number | null;
  readonly message: (row: RowReader, value: number, limit: number) => string;
}

/** A check that a figure does not exceed what it may be. What is unknown is not found here. */
export function overLimit({ rule, sheet, key, limit, message }: Limit): Check {
  return {
    rule, sheet, key, severity: 'over', inStatus: true,
    find: (row) => {
      const value = row.number(key);
      const most = limit(row);
      if (value === null || most === null || !exceeds(value, most)) return undefined;
      return { value, limit: most, message: message(row, value, most) };
    },
  };
}

interface Target {
  readonly rule: string;
  readonly sheet: SheetName;
  /** Current and rating, as keys of the row. */
  readonly current: string;
  readonly rating: string;
  readonly remedy: string;
}

/** A check that a loading stays below its target; silent where the rating itself is exceeded. */
export function overTarget({ rule, sheet, current, rating, remedy }: Target): Check {
  return {
    rule, sheet, key: 'loading', severity: 'near', inStatus: true,
    find: (row) => {
      const [loading, target, used, most] = [row.number('loading'), row.number('target'), row.number(current), row.number(rating)];
      if (loading === null || target === null || used === null || most === null) return undefined;
      if (!exceeds(loading, target) || exceeds(used, most)) return undefined;
      const excess = amps(used - target * most, 0);
      return {
        value: loading, limit: target,
        message: `${row.name} is loaded to ${percent(loading, target)} of ${amps(most)}, above its target of ${percent(target, loading)} by ${excess}: ${remedy}`,
      };
    },
  };
}

/**
 * A check that names an input without which the limits of the row cannot be judged. A formula without a result has a
 * check of its own.
 */
export function missingInput(rule: string, sheet: SheetName, key: string, message: (row: RowReader) => string): Check {
  return {
    rule, sheet, key, severity: 'incomplete', inStatus: true,
    find: (row) => row.value(key) !== null || isFormula(row.own(key)) ? undefined
      : { value: null, limit: null, message: message(row) },
  };
}

/** A check that names a total which lacks rows. */
export function partialTotal(rule: string, sheet: SheetName, key: string, from: string, unit: string): Check {
  return {
    rule, sheet, key, severity: 'incomplete', inStatus: true,
    find: (row) => {
      const missing = row.missing(key);
      const value = row.number(key);
      if (missing === 0 || value === null) return undefined;
      const shown = unit === 'A' ? amps(value) : count(value, 'point');
      return {
        value, limit: null,
        message: `${row.name} carries at least ${shown}: ${count(missing, from)} on it ${missing === 1 ? 'has' : 'have'} no known ${unit === 'A' ? 'current' : 'number of points'}. Complete ${missing === 1 ? 'it' : 'them'} to know the rest.`,
      };
    },
  };
}

/** A note that an optional input is empty, so that its check is not made. */
export function notChecked(
  rule: string, sheet: SheetName, key: string, message: (row: RowReader) => string, when?: (row: RowReader) => boolean,
): Check {
  return {
    rule, sheet, key, severity: 'note',
    find: (row) => row.own(key) !== null || when?.(row) === false ? undefined
      : { value: null, limit: null, message: message(row) },
  };
}
