import { exceeds } from '../../electrical/index.ts';
import { NO_WORKING_VOLTAGE } from '../../schedule/index.ts';
import { amps, fixed, message, percent, roundedDown, roundedUp, volts } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';
import { missingInput, notChecked, overLimit, unknown } from './limit-checks.ts';

const underVoltage: Check = {
  rule: 'run-under-voltage', sheet: 'runs', key: 'voltageMargin', severity: 'over', inStatus: true,
  find: (row) => {
    const [margin, lowest] = [row.number('voltageMargin'), row.numberOf('rail', 'lowest')];
    if (margin === null || lowest === null || !exceeds(lowest, lowest + margin)) return undefined;
    return {
      value: margin, limit: 0,
      message: `${row.say('{name}: from {lowest} at its start, a device on it gets {lack} less than it needs at its place.', {
        lowest: volts(lowest), lack: roundedUp(volts(-margin, 0)),
      })} ${remedy(row)}`,
    };
  },
};

/** What would put a run right: a shorter one, or a thicker conductor. */
function remedy(row: RowReader): string {
  const longest = row.number('maxLength');
  const smallest = row.value('smallestConductor');
  const [current, protection] = [row.number('current'), row.number('protection')];
  if (current !== null && protection !== null && exceeds(current, protection)) {
    return row.say('No conductor and no length puts it right: it draws {current} through a protection of {protection}.', {
      current: amps(current, protection), protection: roundedDown(amps(protection, current)),
    });
  }
  const length = longest === null ? 0 : Number(fixed(longest, 1, 'down'));
  const [conductor, thicker] = [String(row.own('conductor')), String(smallest)];
  if (length > 0) {
    return smallest === null ? row.say('With {conductor} it may be {length} m long.', { conductor, length })
      : row.say(
        'With {conductor} it may be {length} m long; {thicker} would do at this length.', { conductor, length, thicker }
      );
  }
  if (smallest !== null) {
    return row.say('With {conductor} no length works; {thicker} would do at this length.', { conductor, thicker });
  }
  return row.say('No conductor on the sheet {sheet} would do: feed it from another place, or share the load over more runs.', {
    sheet: row.titleOf('conductors'),
  });
}

const collapses: Check = {
  rule: 'run-no-working-voltage', sheet: 'runs', key: 'endVoltage', severity: 'over', inStatus: true,
  find: (row) => row.outcome !== NO_WORKING_VOLTAGE ? undefined : {
    value: null, limit: null,
    message: `${row.say('{name} has no working voltage: its devices draw constant power, and the cable cannot deliver what they ask for at any voltage.')} ${remedy(row)}`,
  },
};

const mayNotClear: Check = {
  rule: 'run-may-not-clear', sheet: 'runs', key: 'faultCurrent', severity: 'near', inStatus: true,
  find: (row) => {
    const [fault, trip, protection] = [row.number('faultCurrent'), row.number('trip'), row.number('protection')];
    if (fault === null || trip === null || protection === null || !exceeds(trip * protection, fault)) return undefined;
    return {
      value: fault, limit: trip * protection,
      message: row.say('{name}: a short circuit at its far end draws {fault}, and the protection of {protection} needs {needed} ({trip} × its rating) to act at once. The supply may fold back and feed the fault without ever clearing it. Use a smaller or faster protection, a thicker or shorter cable, or a supply with a higher peak.', {
        fault: amps(
          fault, trip * protection
        ), protection: amps(protection), needed: roundedUp(amps(trip * protection, fault)), trip,
      }),
    };
  },
};

const partial: Check = {
  rule: 'run-current-partial', sheet: 'runs', key: 'current', severity: 'incomplete', inStatus: true,
  find: (row) => {
    const missing = row.missing('current');
    return missing === 0 ? undefined : {
      value: row.number('current'), limit: null,
      message: row.say(
        '{name}: {missing, plural, one {# device row on it has no known current, so its drop is at least what is shown. Complete it} other {# device rows on it have no known current, so its drop is at least what is shown. Complete them}} to know the rest.',
        { missing }
      ),
    };
  },
};

/** Finds a reference that is entered but leads to no number, as a voltage or a resistance that is not known. */
function unknownBehind(
  rule: string, key: string, sheet: 'supplies' | 'conductors', of: string, message: string
): Check {
  return {
    rule, sheet: 'runs', key, severity: 'incomplete', inStatus: true,
    find: (row) => row.own(key) === null || row.numberOf(key, of) !== null ? undefined
      : { value: row.own(key), limit: null, message: row.say(message, { sheet: row.titleOf(sheet) }) },
  };
}

/** What runs are held against. */
export const runChecks: readonly Check[] = [
  underVoltage,
  collapses,
  overLimit({
    rule: 'run-over-carries', sheet: 'runs', key: 'current', limit: (row) => row.number('carries'),
    message: message(
      '{name} carries {value} and its cable may carry {limit} where it lies: {excess} too much. Use a thicker conductor or more pairs, or lay it apart from other circuits.'
    ),
  }),
  {
    rule: 'run-protection-over-carries', sheet: 'runs', key: 'protection', severity: 'over', inStatus: true,
    find: (row) => {
      const [protection, most] = [row.number('protection'), row.number('carries')];
      if (protection === null || most === null || !exceeds(protection, most)) return undefined;
      return {
        value: protection, limit: most,
        message: row.say('{name} is protected by {protection} and its cable may carry {most} where it lies: the cable would overheat before the protection acts. Use a smaller protection or a thicker conductor.', {
          protection: amps(protection, most), most: roundedDown(amps(most, protection)),
        }),
      };
    },
  },
  overLimit({
    rule: 'run-over-protection', sheet: 'runs', key: 'current', limit: (row) => row.number('protection'),
    message: message(
      '{name} carries {value} through a protection of {limit}: {excess} too much. Share the load over more runs, or use a larger protection if the conductor carries it.'
    ),
  }),
  {
    rule: 'run-over-drop', sheet: 'runs', key: 'dropRatio', severity: 'near', inStatus: true,
    find: (row) => {
      const [ratio, most, drop] = [row.number('dropRatio'), row.number('maxDrop'), row.number('drop')];
      if (ratio === null || most === null || drop === null || !exceeds(ratio, most)) return undefined;
      return {
        value: ratio, limit: most,
        message: `${row.say('{name} loses {drop}, {ratio} of its voltage, and may lose {most}.', {
          drop: volts(drop), ratio: percent(ratio, most), most: roundedDown(percent(most, ratio)),
        })} ${remedy(row)}`,
      };
    },
  },
  mayNotClear,
  partial,
  missingInput(
    'run-rail-missing', 'runs', 'rail',
    message('{name} has no rail, so its voltage is not known. Choose the rail that feeds it.')
  ),
  missingInput(
    'run-conductor-missing', 'runs', 'conductor',
    message('{name} has no conductor, so its drop is not known. Choose one of the conductors.')
  ),
  missingInput(
    'run-length-missing', 'runs', 'length',
    message('{name} has no length, so its drop is not known. Enter the length of the cable, one way, in m.')
  ),
  unknownBehind(
    'run-voltage-missing', 'rail', 'supplies', 'voltage',
    message('{name}: the voltage of its rail is not known. Add the rail to the sheet {sheet}, or correct the tag.')
  ),
  unknownBehind(
    'run-resistance-missing', 'conductor', 'conductors', 'resistance',
    message(
      '{name}: the resistance of its conductor is not known. Enter it on the sheet {sheet}, or choose another conductor.'
    )
  ),
  {
    rule: 'run-short-circuit-unknown', sheet: 'runs', key: 'faultCurrent', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const isKnown = row.number('faultCurrent') !== null || row.number('protection') === null;
      const cableIsKnown = row.number('length') !== null && row.numberOf('conductor', 'resistance') !== null;
      if (isKnown || !cableIsKnown || row.numberOf('rail', 'rated') !== null) return undefined;
      if (row.numberOf('rail', 'voltage') === null) return undefined;
      return unknown(row, message(
        '{name} has a protection, and the rated current of its supply is not known: whether a short circuit at its far end clears cannot be said. Enter it on the sheet {sheet}.'
      ), {
        sheet: row.titleOf('supplies'),
      });
    },
  },
  notChecked(
    'run-protection-not-checked', 'runs', 'protection',
    message(
      '{name} has no protection entered: neither overload nor a short circuit at its end is checked. Enter its rating in A.'
    )
  ),
  {
    rule: 'run-carries-unknown', sheet: 'runs', key: 'carries', severity: 'incomplete', inStatus: true, elsewhere: true,
    find: (row) => !row.names('conductor') || row.numberOf('conductor', 'maxCurrent') !== null ? undefined
      : unknown(
        row,
        message(
          '{name}: what its conductor carries is not known, so its current is not checked against it. Enter it on the sheet {sheet} where a source says so.'
        ),
        { sheet: row.titleOf('conductors') }
      ),
  },
  {
    rule: 'run-voltage-not-checked', sheet: 'runs', key: 'minVoltage', severity: 'note',
    find: (row) => row.number('minVoltage') !== null || row.number('endVoltage') === null ? undefined
      : unknown(
        row,
        message(
          '{name}: no device on it says which voltage it needs, so the end voltage is not checked. Enter the least voltage of their types.'
        )
      ),
  },
];
