import { exceeds } from '../../electrical/index.ts';
import type { SheetName } from '../../schedule/index.ts';
import { amps, message, roundedDown, roundedUp, volts, type Quantity } from '../../words/index.ts';
import type { Check } from '../check.ts';

interface Measurement {
  readonly rule: string;
  readonly sheet: SheetName;
  /** Keys of what is measured, of what it is compared with, and of the share by which they may differ. */
  readonly key: string;
  readonly expected: string;
  readonly tolerance: string;
  readonly write: (value: number, other?: number) => Quantity;
  /** What it usually means when more, and when less, is measured than was worked out, and what to do. */
  readonly more: string;
  readonly less: string;
}

/**
 * A check that a measured figure is what was worked out. A figure that follows from a partial total is not compared.
 */
function asWorkedOut({ rule, sheet, key, expected, tolerance, write, more, less }: Measurement): Check {
  return {
    rule, sheet, key, severity: 'near',
    find: (row) => {
      const [measured, worked, share] = [row.number(key), row.number(expected), row.number(tolerance)];
      if (measured === null || worked === null || share === null || row.isPartial(expected)) return undefined;
      const [difference, allowed] = [Math.abs(measured - worked), share * worked];
      if (!exceeds(difference, allowed)) return undefined;
      const values = {
        measured: write(measured, worked), worked: write(worked, measured), difference: write(difference, allowed),
        allowed: roundedDown(write(allowed, difference)),
      };
      const said = measured > worked
        ? `${row.say('{name}: {measured} measured, {worked} worked out: {difference} more, where {allowed} may differ.', values)} ${row.say(more)}`
        : `${row.say('{name}: {measured} measured, {worked} worked out: {difference} less, where {allowed} may differ.', values)} ${row.say(less)}`;
      return { value: measured, limit: worked, message: said };
    },
  };
}

/** What was measured at commissioning, held against limits and against what was worked out. */
export const measuredChecks: readonly Check[] = [
  {
    rule: 'supply-measured-over-usable', sheet: 'supplies', key: 'measuredCurrent', severity: 'over',
    find: (row) => {
      const [measured, usable] = [row.number('measuredCurrent'), row.number('usable')];
      if (measured === null || usable === null || !exceeds(measured, usable)) return undefined;
      return {
        value: measured, limit: usable,
        message: row.say('{name} was measured at {measured} and may be used for {usable}: {excess} too much. Move devices to another rail, or fit a larger supply.', {
          measured: amps(measured, usable), usable: roundedDown(amps(usable, measured)),
          excess: roundedUp(amps(measured - usable, 0)),
        }),
      };
    },
  },
  {
    rule: 'run-measured-under-voltage', sheet: 'runs', key: 'measuredVoltage', severity: 'over',
    find: (row) => {
      const [measured, least] = [row.number('measuredVoltage'), row.number('minVoltage')];
      if (measured === null || least === null || !exceeds(least, measured)) return undefined;
      return {
        value: measured, limit: least,
        message: row.say('{name} was measured at {measured} at its far end, where a device needs {least}. Check joints, length and conductor; use a thicker conductor or more pairs.', {
          measured: volts(measured, least), least: roundedUp(volts(least, measured)),
        }),
      };
    },
  },
  asWorkedOut({
    rule: 'supply-measured-current-differs', sheet: 'supplies', key: 'measuredCurrent', expected: 'demand',
    tolerance: 'currentTolerance', write: amps,
    more: message(
      'Usually more is switched on at once than the diversity says, or a device is missing in the schedule or draws more than entered. Check diversity, counts and draws.'
    ),
    less: message(
      'Usually devices are not fitted, switched off or dimmed, or draw less than entered. Check that all of them work.'
    ),
  }),
  asWorkedOut({
    rule: 'supply-measured-voltage-differs', sheet: 'supplies', key: 'measuredVoltage', expected: 'voltage',
    tolerance: 'voltageTolerance', write: volts,
    more: message(
      'Usually its output is set above the nominal voltage. Check that the devices accept it, or set it lower.'
    ),
    less: message(
      'Usually it is overloaded and limits its current, or its output is set too low. Check its load and its setting.'
    ),
  }),
  asWorkedOut({
    rule: 'run-measured-current-differs', sheet: 'runs', key: 'measuredCurrent', expected: 'current',
    tolerance: 'currentTolerance', write: amps,
    more: message(
      'Usually a device is missing in the schedule, draws more than entered, or is wired to another run than entered. Check what hangs on it.'
    ),
    less: message(
      'Usually devices are not fitted, switched off or dimmed, or the run is broken on the way. Check that all of them work.'
    ),
  }),
  asWorkedOut({
    rule: 'run-measured-voltage-differs', sheet: 'runs', key: 'measuredVoltage', expected: 'endVoltage',
    tolerance: 'voltageTolerance', write: volts,
    more: message(
      'Usually devices are switched off, the supply is set above nominal, or the cable is shorter or thicker than entered. Check these.'
    ),
    less: message(
      'Usually a joint has a high resistance, the cable is longer or thinner than entered, or carries more. Check joints, length and conductor.'
    ),
  }),
];
