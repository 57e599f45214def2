import { allowedDropError, exceeds, expectedDrop, measuredState, type MeasuredState } from '../../electrical/index.ts';
import { amps, message, roundedDown, roundedUp, volts, type Quantity } from '../../words/index.ts';
import type { Check, Found } from '../check.ts';
import { LEAST_BORNE } from '../least-borne.ts';
import { CHANGED_OVER, LOW_FEED, NOT_FITTED } from '../measured-causes.ts';
import type { RowReader } from '../row-reader.ts';
import { inItsCase, WORST_IN, type CaseNames } from '../worst-in.ts';

type MeasuredSheet = 'supplies' | 'runs';

/** The current that is worked out, and the least at which what feeds the row limits or protects. */
const AMPS: Readonly<Record<MeasuredSheet, {
  readonly worked: string;
  readonly worst: CaseNames;
  readonly limit: (row: RowReader) => number | null;
}>> = {
  supplies: { worked: 'demand', worst: WORST_IN.demand.supplies, limit: (row) => row.number('rated') },
  runs: { worked: 'current', worst: WORST_IN.runs.current, limit: (row) => least(ratedOf(row), row.number('carries'), rated(row)) },
};

const rated = (row: RowReader) => row.numberOf('rail', 'rated');

/** The way that carries all that was measured of a run; of two each carries a part. */
const ratedOf = (row: RowReader) => row.value('secondWay') === null ? row.numberOf('way', 'rated') : null;

function least(...values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : Math.min(...known);
}

/** What ought to be measured: the voltage of the rail. */
const nominalOf = (row: RowReader): number | null =>
  row.sheet === 'supplies' ? row.number('voltage') : row.numberOf('rail', 'voltage');

/** What voltage, current and calculation say together; `undefined` where nothing is plainly wrong. */
function stateOf(row: RowReader): MeasuredState | undefined {
  const nominalVolts = nominalOf(row);
  if (nominalVolts === null) return undefined;
  const isSupply = row.sheet === 'supplies';
  const { worked, limit } = AMPS[row.sheet as MeasuredSheet];
  return measuredState({
    volts: row.number('measuredVoltage'), amps: row.number('measuredCurrent'), nominalVolts, isSupply,
    limitAmps: limit(row), expectedAmps: row.number(worked),
  });
}

/** What is plainly wrong, in the words of each sheet, with what a practitioner does first. */
const STATES: readonly [MeasuredState, Readonly<Record<MeasuredSheet, string>>][] = [
  ['reversed', {
    supplies: message(
      '{name} was measured at {measured} and ought to have {nominal}: plus and minus are changed over. Switch it off, look at the leads of the meter first, then at the wiring of the output; test every device that was connected.'
    ),
    runs: message(
      '{name} was measured at {measured} at its far end and ought to have {nominal}: plus and minus are changed over. Switch it off, look at the leads of the meter first, then put its conductors right at one end; test every device that was connected.'
    ),
  }],
  ['dead', {
    supplies: message(
      '{name} was measured at {measured} and ought to have {nominal}: it is dead. See whether mains is at its input and its protection closed, then whether the voltage returns with the output disconnected: if so, look for a short circuit behind it; if not, replace it.'
    ),
    runs: message(
      '{name} was measured at {measured} at its far end and ought to have {nominal}: it is dead. See whether its rail has voltage and its protection is closed, then look for an open terminal or a broken conductor.'
    ),
  }],
  ['short circuit', {
    supplies: message(
      '{name} was measured at {measured} and ought to have {nominal}: it feeds a short circuit, limits its current or tries again and again. Disconnect its ways one by one until the voltage returns: the fault is on the last one.'
    ),
    runs: message(
      '{name} was measured at {measured} at its far end and ought to have {nominal}, with as much current as feeds a short circuit. Switch it off, disconnect its devices one by one, and measure the resistance of the cable before it is switched on again.'
    ),
  }],
  ['open', {
    supplies: message(
      '{name} has its voltage and gives {current}, where {worked} are calculated. See whether the devices are switched on and fitted, then look for an open protection or terminal behind it.'
    ),
    runs: message(
      '{name} has its voltage and carries {current}, where {worked} are calculated. See whether the devices are switched on and fitted, then look for an open terminal at them.'
    ),
  }],
];

/** Where all supplies of a feed are low, what is looked at before one of them is. */
function lowFeed(row: RowReader, state: MeasuredState | 'low', measured: Quantity, nominal: Quantity): string | undefined {
  const low = row.sheet === 'supplies' && ['dead', 'short circuit', 'low'].includes(state) ? row.fact(LOW_FEED) : undefined;
  return low === undefined ? undefined : row.say(
    '{name} was measured at {measured} and ought to have {nominal}, and all {n} supplies that were measured on feed {feed} are low. Measure the mains at {feed} under load, and look at its protection, before anything else.',
    { measured, nominal, feed: low.feed, n: low.count });
}

/** Checks of what is plainly wrong. That devices draw nothing may only mean that they are off. */
const stateChecks = (['supplies', 'runs'] as const).flatMap((sheet) => STATES.map(([state, said]): Check => ({
  rule: `${sheet === 'runs' ? 'run' : 'supply'}-measured-${state.replace(' ', '-')}`, sheet,
  key: state === 'open' ? 'measuredCurrent' : 'measuredVoltage', needs: 'measuredVoltage',
  severity: state === 'open' ? 'near' : 'over', inStatus: true,
  find: (row) => {
    if (stateOf(row) !== state) return undefined;
    const [measured, nominal, worked] = [
      row.number('measuredVoltage')!, nominalOf(row)!, row.number(AMPS[sheet].worked) ?? 0,
    ];
    const [value, limit] = state === 'open' ? [row.number('measuredCurrent'), worked] : [measured, nominal];
    const values = {
      measured: volts(measured), nominal: volts(nominal), worked: amps(worked),
      current: amps(row.number('measuredCurrent') ?? 0),
    };
    const sentence = lowFeed(row, state, values.measured, values.nominal) ?? row.say(said[sheet], values);
    return { value, limit, message: state === 'open' ? inItsCase(sentence, row, AMPS[sheet].worst) : sentence };
  },
})));

/** A check of what was measured where nothing is plainly wrong, which would be the cause of all else. */
function measuredCheck(
  name: string, sheet: MeasuredSheet, key: 'measuredCurrent' | 'measuredVoltage', severity: 'over' | 'near',
  find: (row: RowReader, measured: number) => Omit<Found, 'value'> & { readonly value?: number } | undefined,
): Check {
  return {
    rule: `${sheet === 'runs' ? 'run' : 'supply'}-measured-${name}`, sheet, key, severity, inStatus: true, needs: key,
    find: (row) => {
      const measured = row.number(key);
      if (measured === null || ![undefined, 'open'].includes(stateOf(row))) return undefined;
      const found = find(row, measured);
      return found === undefined ? undefined : { value: measured, ...found };
    },
  };
}

/** More current than may flow. */
function overCurrent(
  name: string, sheet: MeasuredSheet, limitOf: (row: RowReader) => number | null, said: string
): Check {
  return measuredCheck(name, sheet, 'measuredCurrent', 'over', (row, measured) => {
    const limit = limitOf(row);
    return limit === null || !exceeds(measured, limit) ? undefined : {
      limit,
      message: row.say(said, {
        measured: amps(measured, limit), limit: roundedDown(amps(limit, measured)),
        excess: roundedUp(amps(measured - limit, 0)),
      }),
    };
  });
}

/** What one current that is not as worked out usually means, and what to do. */
const DIFFERS: Readonly<Record<MeasuredSheet, { readonly more: string; readonly less: string }>> = {
  supplies: {
    more: message(
      'Usually more is switched on at the same time than the diversity says, or a device is missing in the schedule or draws more than entered. Check diversity, counts and draws.'
    ),
    less: message(
      'Usually devices are not fitted, switched off or dimmed, or draw less than entered. Check that all of them work.'
    ),
  },
  runs: {
    more: message(
      'Usually a device is missing in the schedule, draws more than entered, or is wired to another run than entered. Check what hangs on it.'
    ),
    less: message(
      'Usually devices are not fitted, switched off or dimmed, or the run is broken on the way. Check that all of them work.'
    ),
  },
};

/** What of all that a difference may mean is looked at first, where the figures point at one thing. */
function likely(row: RowReader): string | undefined {
  if (row.sheet !== 'runs') return undefined;
  const other = row.fact(CHANGED_OVER);
  if (other !== undefined) {
    return row.say('What {other} has is measured here, and what this run has is measured there: see first whether their cables are changed over at the terminals.', { other });
  }
  const lacking = row.fact(NOT_FITTED);
  return lacking === undefined ? undefined : row.say(
    '{n, plural, one {One {type} draws} other {# {type} draw}} as much: see first whether {n, plural, one {one is} other {as many are}} missing, not connected or switched off.',
    { n: lacking.count, type: lacking.type });
}

/** A current that is not as worked out. A figure that follows from a partial total is not compared. */
function currentDiffers(sheet: MeasuredSheet, most: (row: RowReader) => number | null): Check {
  const key = AMPS[sheet].worked;
  return measuredCheck('current-differs', sheet, 'measuredCurrent', 'near', (row, measured) => {
    const [worked, share, limit] = [row.number(key), row.number('currentTolerance'), most(row)];
    if (worked === null || share === null || row.isPartial(key) || stateOf(row) === 'open') return undefined;
    const [difference, allowed] = [Math.abs(measured - worked), share * worked];
    if (!exceeds(difference, allowed) || (limit !== null && exceeds(measured, limit))) return undefined;
    const values = {
      measured: amps(measured, worked), worked: amps(worked, measured), difference: amps(difference, allowed),
      allowed: roundedDown(amps(allowed, difference)),
    };
    const differs = measured > worked
      ? row.say('{name}: {measured} measured, {worked} calculated: {difference} more, where {allowed} may differ.', values)
      : row.say('{name}: {measured} measured, {worked} calculated: {difference} less, where {allowed} may differ.', values);
    const usual = row.say(measured > worked ? DIFFERS[sheet].more : DIFFERS[sheet].less);
    const said = [differs, likely(row), usual].filter((each) => each !== undefined).join(' ');
    return { limit: worked, message: inItsCase(said, row, AMPS[sheet].worst) };
  });
}

/**
 * Voltage up to which a supply is as it was entered [V]: with its tolerance, the diode of redundant units and, above,
 * the charging of its battery.
 */
function boundOf(row: RowReader, sign: 1 | -1): number | null {
  const [nominal, tolerance] = [row.number('voltage'), row.number('tolerance')];
  if (sign > 0) return row.number('highest');
  return nominal === null || tolerance === null ? null : nominal * (1 - tolerance) - (row.number('seriesDrop') ?? 0);
}

/** The voltage of a supply beyond what it may differ by. */
function supplyVoltage(name: string, severity: 'over' | 'near', sign: 1 | -1, said: string): Check {
  return measuredCheck(name, 'supplies', 'measuredVoltage', severity, (row, measured) => {
    const [nominal, share, bound] = [row.number('voltage'), row.number('voltageTolerance'), boundOf(row, sign)];
    if (nominal === null || share === null || bound === null) return undefined;
    const [difference, allowed] = [sign * (measured - bound), share * nominal];
    if ((sign > 0 && isBeyondDevices(row, measured)) || !exceeds(difference, allowed)) return undefined;
    const low = sign > 0 ? undefined : lowFeed(row, 'low', volts(measured, bound), volts(bound));
    return {
      limit: bound,
      message: low ?? row.say(said, {
        measured: volts(measured, bound), nominal: volts(bound), difference: volts(difference, allowed),
        allowed: roundedDown(volts(allowed, difference)),
      }),
    };
  });
}

/** The least that a device of the row bears [V], without end where none says. */
const leastBorne = (row: RowReader): number => row.fact(LEAST_BORNE[row.sheet as MeasuredSheet]) ?? Infinity;

/** Whether a device there does not bear a voltage, which is then told of it and nothing else. */
const isBeyondDevices = (row: RowReader, measured: number): boolean => exceeds(measured, leastBorne(row));

/** What was measured and a device there does not bear, whatever the rail was entered to give. */
const beyondDevices = (sheet: MeasuredSheet, said: string) =>
  measuredCheck('over-voltage', sheet, 'measuredVoltage', 'over', (row, measured) => {
    const most = leastBorne(row);
    return !exceeds(measured, most) ? undefined : {
      limit: most,
      message: row.say(said, {
        measured: volts(measured, most), most: roundedDown(volts(most, measured)),
        excess: roundedUp(volts(measured - most, 0)),
      }),
    };
  });

const usable = (row: RowReader) => row.number('usable');
const fuse = (row: RowReader) => least(ratedOf(row), row.number('carries'));

/**
 * Whether each device has what it needs at its own place, though the far end has less than one of them needs: from the
 * start, as it was measured or else at its lowest, no more is lost than leaves each its margin.
 */
function hasEnoughBefore(row: RowReader, atEnd: number): boolean {
  const [end, margin] = [row.number('endVoltage'), row.number('voltageMargin')];
  const lowest = row.numberOf('rail', 'lowest');
  if (end === null || margin === null || lowest === null) return false;
  const start = row.numberOf('rail', 'measuredVoltage') ?? lowest;
  const lacks = Math.max(0, lowest - start) + Math.max(0, start - atEnd - (lowest - end));
  return !exceeds(lacks, margin);
}

/** What was measured at commissioning, held against limits and against what was worked out. */
export const measuredChecks: readonly Check[] = [
  ...stateChecks,
  overCurrent('over-usable', 'supplies', usable, message(
    '{name} was measured at {measured}, which exceeds the usable {limit} by {excess}. Move devices to another rail, or fit a larger supply.'
  )),
  overCurrent('over-protection', 'runs', ratedOf, message(
    '{name} was measured at {measured} through a protection of {limit}: {excess} too much. Switch devices off until it holds, find the one that draws too much or is missing in the schedule, and share the load over more runs.'
  )),
  overCurrent('over-carries', 'runs', (row) => row.number('carries'), message(
    '{name} was measured at {measured} and its cable may carry {limit} where it lies: {excess} too much. Switch devices off until it does, then use a larger conductor or more pairs.'
  )),
  currentDiffers('supplies', usable),
  currentDiffers('runs', fuse),
  supplyVoltage('under-voltage', 'over', -1, message(
    '{name}: {measured} measured, {difference} below {nominal}, where {allowed} may differ. Disconnect its load: if the voltage returns, it is overloaded; if not, measure the mains at its input against its nameplate, then set it higher or replace it.'
  )),
  beyondDevices('supplies', message(
    '{name} was measured at {measured}, and a device on it stands {most} at the most: {excess} too much. Disconnect its devices, set it lower or replace it, and test every device that was connected.'
  )),
  supplyVoltage('voltage-differs', 'near', 1, message(
    '{name}: {measured} measured, {difference} above {nominal}, where {allowed} may differ. Check that the devices accept it, or set it lower.'
  )),
  beyondDevices('runs', message(
    '{name} was measured at {measured} at its far end, and a device on it stands {most} at the most: {excess} too much. Disconnect its devices, see whether its cable hangs on another rail, and test every device that was connected.'
  )),
  measuredCheck('above-start', 'runs', 'measuredVoltage', 'near', (row, measured) => {
    const [nominal, share] = [nominalOf(row), row.number('voltageTolerance')];
    const start = row.numberOf('rail', 'measuredVoltage') ?? row.numberOf('rail', 'highest');
    if (nominal === null || share === null || start === null) return undefined;
    const [more, allowed] = [measured - start, share * nominal];
    return isBeyondDevices(row, measured) || !exceeds(more, allowed) ? undefined : {
      limit: start,
      message: row.say('{name} was measured at {measured} at its far end, {more} above the {start} at its start, where {allowed} may differ, and no cable adds voltage. See whether it hangs on another rail or is joined with one, then measure both ends again.', {
        measured: volts(measured, start), start: volts(start, measured), more: volts(more, allowed),
        allowed: roundedDown(volts(allowed, more)),
      }),
    };
  }),
  measuredCheck('under-voltage', 'runs', 'measuredVoltage', 'over', (row, measured) => {
    const needed = row.number('minVoltage');
    return needed === null || !exceeds(needed, measured) || hasEnoughBefore(row, measured) ? undefined : {
      limit: needed,
      message: row.say('{name} was measured at {measured} at its far end, where a device needs {needed}. Check joints, length and conductor; use a larger conductor or more pairs.', {
        measured: volts(measured, needed), needed: roundedUp(volts(needed, measured)),
      }),
    };
  }),
  measuredCheck('drop-differs', 'runs', 'measuredVoltage', 'near', (row, measured) => {
    const [drop, current, nominal] = [row.number('drop'), row.number('current'), nominalOf(row)];
    const [atRail, share] = [row.numberOf('rail', 'measuredVoltage'), row.number('voltageTolerance')];
    if (drop === null || current === null || nominal === null || share === null) return undefined;
    if (row.isPartial('drop')) return undefined;
    const decoupling = row.valueOf('rail', 'seriesDrop');
    const start = atRail ?? nominal - (typeof decoupling === 'number' ? decoupling : 0);
    const [lost, expected] = [start - measured, expectedDrop(drop, current, row.number('measuredCurrent'))];
    const allowed = allowedDropError(expected, atRail === null ? share * nominal : null);
    return !exceeds(lost - expected, allowed) ? undefined : {
      value: lost, limit: expected,
      message: row.say('{name} loses {lost} as measured, where {expected} are calculated and {allowed} more may be. Look for a joint or a terminal of high resistance first; then check length and conductor.', {
        lost: volts(lost, expected), expected: volts(expected, lost), allowed: roundedDown(volts(allowed)),
      }),
    };
  }),
];
