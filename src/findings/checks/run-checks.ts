import { exceeds, mostProtection } from '../../electrical/index.ts';
import { NO_WORKING_VOLTAGE } from '../../schedule/index.ts';
import { amps, degrees, message, percent, roundedDown, roundedUp, volts } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { LACKING_VOLTAGE } from '../lacking-voltage.ts';
import { MISFIT } from '../misfit.ts';
import { MISPLACED, UNREAD_DISTANCES } from '../misplaced.ts';
import type { RowReader } from '../row-reader.ts';
import { inItsCase, WORST_IN } from '../worst-in.ts';
import { devicesOverGiven } from './devices-over-given.ts';
import { missingInput, overLimit, unknown, waitsFor } from './limit-checks.ts';
import { carriesOf, isTooWarm, remedy } from './run-remedy.ts';
import { secondWayChecks, waitingForExtra } from './second-way-checks.ts';

type WayOfRun = 'way' | 'secondWay';

/** Told once for all device rows on the run, which have no status of their own. */
const underVoltage: Check = {
  rule: 'run-under-voltage', sheet: 'runs', key: 'voltageMargin', severity: 'over', inStatus: true,
  find: (row) => {
    const [margin, lowest] = [row.number('voltageMargin'), row.numberOf('rail', 'lowest')];
    if (margin === null || lowest === null || !exceeds(lowest, lowest + margin)) return undefined;
    // Within the rounding of the arithmetic a run may lack what none of its rows does.
    const lacking = row.fact(LACKING_VOLTAGE);
    // What lacks voltage before any cable is told at the rail, or at the device.
    if (lacking === undefined && row.fact(MISFIT.runs) !== undefined) return undefined;
    const { tag, others } = lacking ?? { tag: '', others: 0 };
    const values = { lowest: volts(lowest), lack: roundedUp(volts(-margin, 0)), others };
    const said = tag === '' ? row.say(
      '{name}: from {lowest} at its start, a device on it gets {lack} less than it needs at its place{others, plural, =0 {} one {, and # more row gets too little} other {, and # more rows get too little}}.', values
    ) : row.say(
      '{name}: from {lowest} at its start, ref {tag} gets {lack} less than it needs at its place{others, plural, =0 {} one {, and # more row gets too little} other {, and # more rows get too little}}.', { ...values, tag }
    );
    return {
      value: margin, limit: 0,
      message: row.sentence(() => `${inItsCase(said, row, WORST_IN.runs.margin)} ${remedy(row)}`),
    };
  },
};

const collapses: Check = {
  rule: 'run-no-working-voltage', sheet: 'runs', key: 'endVoltage', severity: 'over', inStatus: true,
  find: (row) => row.outcome !== NO_WORKING_VOLTAGE ? undefined : {
    value: null, limit: null,
    message: row.sentence(() => {
      const said = row.say('{name} has no stable operating point: its devices draw constant power, and the cable cannot deliver what they ask for at any voltage.');
      return `${inItsCase(said, row, WORST_IN.runs.collapse)} ${remedy(row)}`;
    }),
  },
};

/** What makes a way of a run act at once [A], and the current of a short circuit far from it, where it is less. */
function tooLittle(row: RowReader, by: WayOfRun): { fault: number; needed: number; isCable: boolean } | undefined {
  const [rated, trip] = [row.numberOf(by, 'rated'), row.numberOf(by, 'trip')];
  const [fault, available] = [row.number('faultCurrent'), row.numberOf(by, 'available')];
  if (fault === null || available === null || rated === null || trip === null) return undefined;
  const needed = rated * trip;
  return exceeds(needed, fault) ? { fault, needed, isCable: !exceeds(needed, available) } : undefined;
}

const mayNotClear = (rule: string, by: WayOfRun): Check => ({
  rule, sheet: 'runs', key: by === 'way' ? 'faultCurrent' : by, severity: 'near', inStatus: true,
  find: (row) => {
    const found = tooLittle(row, by);
    if (found?.isCable !== true) return undefined;
    const { fault, needed } = found;
    const [rated, trip] = [amps(row.numberOf(by, 'rated')!), row.numberOf(by, 'trip')!];
    const [drawn, asked] = [roundedDown(amps(fault, needed)), roundedUp(amps(needed, fault))];
    return {
      value: fault, limit: needed,
      message: row.value('secondWay') !== null ? row.say('{name}: a short circuit as far from {way} as may be, when its other way has opened, draws {fault}, and {way} of {rated} needs {needed} ({trip} × its rating) to trip instantaneously. Use a lower-rated or faster way, or a larger conductor or a shorter cable.', {
        way: String(row.value(by)), fault: drawn, rated, needed: asked, trip,
      }) : row.say('{name}: a short circuit at its far end draws {fault}, and its way of {rated} needs {needed} ({trip} × its rating) to trip instantaneously. Use a lower-rated or faster way, or a larger conductor or a shorter cable.', {
        fault: drawn, rated, needed: asked, trip,
      }),
    };
  },
});

/** Told once, at the way or at its supply. */
const wayMayNotAct = (rule: string, by: WayOfRun): Check => ({
  rule, sheet: 'runs', key: 'faultCurrent', severity: 'near', inStatus: true, elsewhere: true,
  find: (row) => {
    const found = tooLittle(row, by);
    return found?.isCable !== false ? undefined : {
      value: found.fault, limit: found.needed,
      message: row.say('{name}: its way may never act on a short circuit, as the supply has too little left for it.'),
    };
  },
});

/** A way of a run and its cable: rating, what the cable carries, k2. */
function besideCable(row: RowReader, by: WayOfRun): { rated: number; carries: number; k2: number | null } | undefined {
  const [rated, carries] = [row.numberOf(by, 'rated'), carriesOf(row)];
  return rated === null || carries === null ? undefined : { rated, carries, k2: row.numberOf(by, 'k2') };
}

/** Either way of a run has to protect its cable by itself, as the other may be open. */
const protectionChecks = (by: WayOfRun, name: string): readonly Check[] => [
  {
    rule: `run-${name}-over-carries`, sheet: 'runs', key: by, severity: 'over', inStatus: true,
    find: (row) => {
      const found = besideCable(row, by);
      if (found === undefined || !exceeds(found.rated, found.carries)) return undefined;
      const { rated, carries } = found;
      return {
        value: rated, limit: carries,
        message: row.say('{name} is protected by {rated} and its cable may carry {most} where it lies: the cable would overheat before the way acts. Use a lower-rated way or a larger conductor.', {
          rated: amps(rated, carries), most: roundedDown(amps(carries, rated)),
        }),
      };
    },
  },
  {
    rule: `run-${name}-acts-late`, sheet: 'runs', key: by, severity: 'over', inStatus: true,
    find: (row) => {
      const { rated, carries, k2 } = besideCable(row, by) ?? { rated: 0, carries: 0, k2: null };
      const most = k2 === null ? null : mostProtection(carries, k2);
      if (most === null || exceeds(rated, carries) || !exceeds(rated, most)) return undefined;
      return {
        value: rated, limit: most,
        message: row.say('{name} is protected by {rated}, which acts on overload at {k2} × its rating, and its cable may carry {carries} where it lies: it could get more than 1.45 × that for an hour. Use a way of at most {most}, one that acts sooner, or a larger conductor.', {
          rated: amps(rated, most), k2: k2!, carries: roundedDown(amps(carries)), most: roundedDown(amps(most, rated)),
        }),
      };
    },
  },
];

const wayUnknown = (rule: string, by: WayOfRun): Check => ({
  rule, sheet: 'runs', key: by, severity: 'incomplete', inStatus: true, elsewhere: true,
  find: (row) => {
    const isKnown = row.knows(by, 'rated', 'trip', 'k2', 'available') && row.knows('rail', 'innerResistance');
    return isKnown || !row.names(by) ? undefined : unknown(row, message(
      '{name}: when its way acts, or what its supply has for it, is not known. Complete the way and its supply.'
    ));
  },
});

const partial: Check = {
  rule: 'run-current-partial', sheet: 'runs', key: 'current', severity: 'incomplete', inStatus: true, elsewhere: true,
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

/** What runs are held against. */
export const runChecks: readonly Check[] = [
  overLimit({
    rule: 'run-over-cores', sheet: 'runs', key: 'cores', limit: (row) => row.number('cores'),
    // Two for each pair, and two for the bus where the cable takes that along.
    value: (row) => {
      const pairs = row.number('pairs');
      return pairs === null ? null : 2 * pairs + (row.own('branch') === null ? 0 : 2);
    },
    message: message(
      '{name} has {value, plural, one {# core} other {# cores}} in use and its cable has {limit}: {excess} too many. Take a cable with more cores.'
    ),
    write: (value, limit) => ({ value, limit, excess: value - limit }),
  }),
  underVoltage,
  collapses,
  overLimit({
    rule: 'run-over-carries', sheet: 'runs', key: 'current', limit: carriesOf,
    message: message(
      '{name} carries {value} and its cable may carry {limit} where it lies: {excess} too much. Use a larger conductor or more pairs, or lay it apart from other circuits.'
    ),
    worst: WORST_IN.runs.current,
  }),
  {
    rule: 'run-too-warm', sheet: 'runs', key: 'ambient', severity: 'over', inStatus: true,
    find: (row) => {
      const [ambient, most] = [row.number('ambient'), row.numberOf('conductor', 'maxTemperature')];
      if (ambient === null || most === null || !isTooWarm(row)) return undefined;
      return {
        value: ambient, limit: most,
        message: row.say('{name} lies in {ambient} and its conductor may get {most}: it may not get any warmer, so no size of it carries anything there. Lay it where it is cooler, or use a conductor that may get warmer.', {
          ambient: degrees(ambient), most: roundedDown(degrees(most)),
        }),
      };
    },
  },
  ...devicesOverGiven({
    rule: 'run-devices-over-carries', sheet: 'runs', by: 'run', given: 'carries', asked: 'current',
    message: message(
      '{name} may carry {most}, and single devices of {rows} rows on it draw more than that, up to {draw}: no diversity helps. Use a larger conductor or more pairs.'
    ),
  }),
  ...protectionChecks('way', 'protection'),
  ...protectionChecks('secondWay', 'second-protection'),
  {
    rule: 'run-temperature-below-ambient', sheet: 'runs', key: 'temperature', severity: 'incomplete', inStatus: true,
    needs: 'temperature',
    find: (row) => {
      const [temperature, ambient] = [row.number('temperature'), row.number('ambient')];
      if (temperature === null || ambient === null || !exceeds(ambient, temperature)) return undefined;
      return {
        value: temperature, limit: ambient,
        message: row.say('{name}: its conductors are entered at {temperature} and it is {ambient} around them, so they cannot be that cool and drop more than is shown. Empty the temperature, which then follows from the load, or correct the ambient.', {
          temperature: degrees(temperature, ambient), ambient: degrees(ambient, temperature),
        }),
      };
    },
  },
  {
    rule: 'run-temperature-over-conductor', sheet: 'runs', key: 'temperature', severity: 'over', inStatus: true,
    needs: 'temperature',
    find: (row) => {
      const [temperature, most] = [row.number('temperature'), row.numberOf('conductor', 'maxTemperature')];
      if (temperature === null || most === null || !exceeds(temperature, most)) return undefined;
      return {
        value: temperature, limit: most,
        message: row.say('{name}: its conductors are entered at {temperature} and may get {most}: their insulation does not last. Use a larger conductor or one that may get warmer, or empty the temperature, which then follows from the load.', {
          temperature: degrees(temperature, most), most: roundedDown(degrees(most, temperature)),
        }),
      };
    },
  },
  waitsFor('run-devices-misplaced', 'runs', 'current', message(
    '{name}: a device row on it is entered on another rail, beyond its end or at no distance that can be read, so what it carries and drops is not sure.'
  ), (row) => row.fact(MISPLACED.runs) !== undefined || row.fact(UNREAD_DISTANCES) !== undefined),
  {
    rule: 'run-over-drop', sheet: 'runs', key: 'dropRatio', severity: 'near', inStatus: true,
    find: (row) => {
      const [ratio, most, drop] = [row.number('dropRatio'), row.number('maxDrop'), row.number('drop')];
      if (ratio === null || most === null || drop === null || !exceeds(ratio, most)) return undefined;
      // What its cable loses too much of is told of the devices that lack it, with the same remedy.
      if (row.fact(LACKING_VOLTAGE) !== undefined) return undefined;
      return {
        value: ratio, limit: most,
        message: row.sentence(() => `${inItsCase(row.say('{name} loses {drop}, {ratio} of its voltage, and may lose {most}.', {
          drop: volts(drop), ratio: percent(ratio, most), most: roundedDown(percent(most, ratio)),
        }), row, WORST_IN.runs.drop)} ${remedy(row)}`),
      };
    },
  },
  {
    rule: 'run-available-partial', sheet: 'runs', key: 'available', severity: 'incomplete', inStatus: true,
    elsewhere: true,
    find: (row) => !row.names('way') || !row.isPartial('available') ? undefined : unknown(row, message(
      '{name}: what its supply has left for a short circuit is not wholly known, as not all that hangs on it is.'
    )),
  },
  mayNotClear('run-may-not-clear', 'way'),
  mayNotClear('run-second-may-not-clear', 'secondWay'),
  wayMayNotAct('run-way-may-not-act', 'way'),
  wayMayNotAct('run-second-way-may-not-act', 'secondWay'),
  ...secondWayChecks,
  partial,
  // Told at the tag that stands twice.
  waitsFor('run-current-unsure', 'runs', 'current', message(
    '{name}: of which type a device on it is, or of which rail, is not sure, so neither is what it carries and drops.'
  ), (row) => row.isPartial('current') && row.missing('current') === 0),
  missingInput(
    'run-rail-missing', 'runs', 'rail',
    message('{name} has no rail, so its voltage is not known. Choose the rail that feeds it.'),
    (row) => row.own('way') === null
  ),
  waitsFor('run-way-without-rail', 'runs', 'rail', message(
    '{name}: its way has no rail, so its voltage is not known.'
  ), (row) => row.own('way') !== null && row.value('rail') === null),
  missingInput(
    'run-conductor-missing', 'runs', 'conductor',
    message(
      '{name} has no conductor, so its drop is not known{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Choose one of the conductors.'
    ), undefined, waitingForExtra
  ),
  missingInput(
    'run-length-missing', 'runs', 'length',
    message(
      '{name} has no length, so its drop is not known{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Enter the length of the cable, one way, in m.'
    ), undefined, (row) => waitingForExtra(row) + (row.valueOf('branch', 'maxCable') === null ? 0 : 1)
  ),
  waitsFor('run-voltage-missing', 'runs', 'rail', message(
    '{name}: the voltage of its rail is not known.'
  ), (row) => row.value('rail') !== null && row.numberOf('rail', 'voltage') === null),
  waitsFor('run-resistance-missing', 'runs', 'conductor', message(
    '{name}: the resistance of its conductor is not known.'
  ), (row) => row.value('conductor') !== null && row.numberOf('conductor', 'resistance') === null),
  wayUnknown('run-way-unknown', 'way'),
  wayUnknown('run-second-way-unknown', 'secondWay'),
  {
    rule: 'run-way-on-other-rail', sheet: 'runs', key: 'way', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const [own, other] = [row.own('rail'), row.valueOf('way', 'rail')];
      if (own === null || other === null || own === other) return undefined;
      return {
        value: other, limit: own,
        message: row.say('{name} is on rail {rail} but its way {way} hangs on rail {other}. Empty the rail of the run, which then is that of its way, or choose a way behind {rail}.', {
          rail: String(own), way: String(row.own('way')), other: String(other),
        }),
      };
    },
  },
  {
    rule: 'run-lowest-unknown', sheet: 'runs', key: 'endVoltage', severity: 'incomplete', inStatus: true,
    elsewhere: true,
    // What decouples or buffers its supply is not as if there were nothing where it cannot be read.
    find: (row) => !row.names('rail') || (row.numberOf('rail', 'lowest') !== null
      && !['seriesDrop', 'battery', 'standbyHours'].some((key) => row.isUnreadable('rail', key))) ? undefined : unknown(row, message(
      '{name}: the lowest voltage of its supply is not known, so whether its devices have what they need cannot be said.'
    )),
  },
  {
    rule: 'run-carries-unknown', sheet: 'runs', key: 'carries', severity: 'incomplete', inStatus: true, elsewhere: true,
    find: (row) => !row.names('conductor') || row.knows('conductor', 'maxCurrent', 'maxTemperature', 'baseTemperature')
      ? undefined
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
    find: (row) => row.number('minVoltage') !== null || row.number('endVoltage') === null || row.number('largest') === 0 ? undefined
      : unknown(
        row,
        message(
          '{name}: no device on it says which voltage it needs, so the end voltage is not checked. Enter the minimum voltage of their types.'
        )
      ),
  },
];
