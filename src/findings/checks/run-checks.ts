import { exceeds } from '../../electrical/index.ts';
import { NO_WORKING_VOLTAGE } from '../../schedule/index.ts';
import { amps, count, percent, volts, type Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';
import { missingInput, notChecked, overLimit } from './limit-checks.ts';

/** What the conductors of a run carry together; `null` when no source says. */
function carries(row: RowReader): number | null {
  const most = row.numberOf('conductor', 'conductors', 'maxCurrent');
  const pairs = row.number('pairs');
  return most === null || pairs === null ? null : most * pairs;
}

const underVoltage: Check = {
  rule: 'run-under-voltage', sheet: 'runs', key: 'endVoltage', severity: 'over', inStatus: true,
  find: (row) => {
    const [end, least] = [row.number('endVoltage'), row.number('minVoltage')];
    if (end === null || least === null || !exceeds(least, end)) return undefined;
    return {
      value: end, limit: least,
      message: `${row.name} ends at ${volts(end, least)} and its devices need ${volts(least, end)}: ${volts(least - end, 0)} too little.${remedy(row)}`,
    };
  },
};

/** What would put a run right: a shorter one, or a thicker conductor. */
function remedy(row: RowReader): string {
  const longest = row.number('maxLength');
  const smallest = row.book.value('runs', row.row.id, 'smallestConductor');
  const shorter = longest === null || longest <= 0 ? '' : ` it may be ${Math.floor(longest * 10) / 10} m long`;
  const thicker = smallest === null ? '' : ` ${String(smallest)} would do at this length`;
  if (shorter === '' && thicker === '') return ' No conductor on the sheet Conductors would do: feed it from another place, or share the load over more runs.';
  const own = row.own('conductor') === null ? 'the conductor' : String(row.own('conductor'));
  return ` With ${own}${shorter === '' ? ' no length works' : shorter}${thicker === '' ? '.' : `;${thicker}.`}`;
}

const collapses: Check = {
  rule: 'run-no-working-voltage', sheet: 'runs', key: 'endVoltage', severity: 'over', inStatus: true,
  find: (row) => row.book.outcome('runs', row.row.id) !== NO_WORKING_VOLTAGE ? undefined : {
    value: null, limit: null,
    message: `${row.name} has no working voltage: its devices draw constant power, and the cable cannot deliver what they ask for at any voltage.${remedy(row)}`,
  },
};

const mayNotClear: Check = {
  rule: 'run-may-not-clear', sheet: 'runs', key: 'faultCurrent', severity: 'near', inStatus: true,
  find: (row) => {
    const [fault, trip, protection] = [row.number('faultCurrent'), row.number('trip'), row.number('protection')];
    if (fault === null || trip === null || protection === null || !exceeds(trip * protection, fault)) return undefined;
    return {
      value: fault, limit: trip * protection,
      message: `${row.name}: a short circuit at its far end draws ${amps(fault, trip * protection)}, and the protection of ${amps(protection)} needs ${amps(trip * protection, fault)} (${trip} × its rating) to act at once. The supply may fold back and feed the fault without ever clearing it. Use a smaller or faster protection, a thicker or shorter cable, or a supply with a higher peak.`,
    };
  },
};

const partial: Check = {
  rule: 'run-current-partial', sheet: 'runs', key: 'current', severity: 'incomplete', inStatus: true,
  find: (row) => {
    const missing = row.missing('current');
    return missing === 0 ? undefined : {
      value: row.number('current'), limit: null,
      message: `${row.name}: ${count(missing, 'device row')} on it ${missing === 1 ? 'has' : 'have'} no known current, so its drop is at least what is shown. Complete ${missing === 1 ? 'it' : 'them'} to know the rest.`,
    };
  },
};

/** Finds a reference that is entered but leads to no number, as a voltage or a resistance that is not known. */
function unknownBehind(rule: string, key: string, sheet: 'supplies' | 'conductors', of: string, sentence: string): Check {
  return {
    rule, sheet: 'runs', key, severity: 'incomplete', inStatus: true,
    find: (row) => row.own(key) === null || row.numberOf(key, sheet, of) !== null ? undefined
      : { value: row.own(key), limit: null, message: `${row.name}: ${sentence}` },
  };
}

/** What runs are held against. */
export const runChecks: readonly Check[] = [
  underVoltage,
  collapses,
  overLimit({
    rule: 'run-over-conductor', sheet: 'runs', key: 'current', limit: carries,
    message: (row, current, most) => `${row.name} carries ${amps(current, most)} and its conductor may carry ${amps(most, current)}: ${amps(current - most, 0)} too much. Use a thicker conductor or more pairs.`,
  }),
  {
    rule: 'run-protection-over-conductor', sheet: 'runs', key: 'protection', severity: 'over', inStatus: true,
    find: (row) => {
      const [protection, most] = [row.number('protection'), carries(row)];
      if (protection === null || most === null || !exceeds(protection, most)) return undefined;
      return {
        value: protection, limit: most,
        message: `${row.name} is protected by ${amps(protection, most)} and its conductor may carry ${amps(most, protection)}: the cable would overheat before the protection acts. Use a smaller protection or a thicker conductor.`,
      };
    },
  },
  overLimit({
    rule: 'run-over-protection', sheet: 'runs', key: 'current', limit: (row) => row.number('protection'),
    message: (row, current, protection) => `${row.name} carries ${amps(current, protection)} through a protection of ${amps(protection, current)}: ${amps(current - protection, 0)} too much. Share the load over more runs, or use a larger protection if the conductor carries it.`,
  }),
  {
    rule: 'run-over-drop', sheet: 'runs', key: 'dropRatio', severity: 'near', inStatus: true,
    find: (row) => {
      const [ratio, most, drop] = [row.number('dropRatio'), row.number('maxDrop'), row.number('drop')];
      if (ratio === null || most === null || drop === null || !exceeds(ratio, most)) return undefined;
      return {
        value: ratio, limit: most,
        message: `${row.name} loses ${volts(drop)}, ${percent(ratio, most)} of its voltage, and may lose ${percent(most, ratio)}.${remedy(row)}`,
      };
    },
  },
  mayNotClear,
  partial,
  missingInput('run-rail-missing', 'runs', 'rail', (row) => `${row.name} has no rail, so its voltage is not known. Choose the rail that feeds it.`),
  missingInput('run-conductor-missing', 'runs', 'conductor', (row) => `${row.name} has no conductor, so its drop is not known. Choose one of the conductors.`),
  missingInput('run-length-missing', 'runs', 'length', (row) => `${row.name} has no length, so its drop is not known. Enter the length of the cable, one way, in m.`),
  unknownBehind('run-voltage-missing', 'rail', 'supplies', 'voltage', 'the voltage of its rail is not known. Add the rail to the sheet Supplies, or correct the tag.'),
  unknownBehind('run-resistance-missing', 'conductor', 'conductors', 'resistance', 'the resistance of its conductor is not known. Enter it on the sheet Conductors, or choose another conductor.'),
  {
    rule: 'run-short-circuit-unknown', sheet: 'runs', key: 'faultCurrent', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const isKnown = row.number('faultCurrent') !== null || row.number('protection') === null;
      const cableIsKnown = row.number('length') !== null && row.numberOf('conductor', 'conductors', 'resistance') !== null;
      if (isKnown || !cableIsKnown || row.numberOf('rail', 'supplies', 'rated') !== null) return undefined;
      if (row.numberOf('rail', 'supplies', 'voltage') === null) return undefined;
      return {
        value: null, limit: null,
        message: `${row.name} has a protection, and the rated current of its supply is not known: whether a short circuit at its far end clears cannot be said. Enter it on the sheet Supplies.`,
      };
    },
  },
  notChecked('run-protection-not-checked', 'runs', 'protection', (row) => `${row.name} has no protection entered: neither overload nor a short circuit at its end is checked. Enter its rating in A.`),
  {
    rule: 'run-conductor-not-checked', sheet: 'runs', key: 'conductor', severity: 'note',
    find: (row) => row.book.target('runs', row.row.id, 'conductor') < 0 || carries(row) !== null ? undefined
      : { value: null, limit: null, message: `${row.name}: what its conductor carries is not known, so its current is not checked against it. Enter it on the sheet Conductors where a source says so.` },
  },
  {
    rule: 'run-voltage-not-checked', sheet: 'runs', key: 'minVoltage', severity: 'note',
    find: (row) => row.number('minVoltage') !== null || row.number('endVoltage') === null ? undefined
      : { value: null, limit: null, message: `${row.name}: no device on it says which voltage it needs, so the end voltage is not checked. Enter the least voltage of their types.` },
  },
];
