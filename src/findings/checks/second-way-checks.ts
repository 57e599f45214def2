import { exceeds, FAULT_TEMPERATURE, loopResistancePerMetre, sharedFault } from '../../electrical/index.ts';
import { amps, message, roundedDown, roundedUp, volts } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';
import { inItsCase, limitedBy, WORST_IN } from '../worst-in.ts';
import { countNamed, lacks, unknown, unknownTo } from './limit-checks.ts';

/** How many rows wait for what a run draws more where its voltage is lower: its ways and its supply. */
export const waitingForExtra = (row: RowReader) =>
  row.number('extra') === null || row.value('secondWay') !== null && row.number('firstDemand') === null
    ? countNamed(row, 'way', 'secondWay', 'rail') : 0;

/** Whether a run has two ways, of one rail, that feed it at its two ends. */
function hasTwo(row: RowReader): boolean {
  const [way, second] = [row.value('way'), row.value('secondWay')];
  return way !== null && second !== null && way !== second && row.valueOf('way', 'rail') === row.valueOf('secondWay', 'rail');
}

/** What both ways together need to act at once, and the least that a short circuit shared by both draws [A]. */
function shared(row: RowReader): { fault: number; needed: number } | undefined {
  const needs = (['way', 'secondWay'] as const).map((by) => {
    const [rated, trip] = [row.numberOf(by, 'rated'), row.numberOf(by, 'trip')];
    return rated === null || trip === null ? NaN : rated * trip;
  }) as [number, number];
  const [ohmPerKm, pairs] = [row.numberOf('conductor', 'resistance'), row.number('pairs')];
  const [whole, available] = [row.number('wholeLength'), row.number('available')];
  const [lowest, inner] = [row.numberOf('rail', 'lowest'), row.numberOf('rail', 'innerResistance')];
  if (whole === null || ohmPerKm === null || pairs === null) return undefined;
  const loop = loopResistancePerMetre(ohmPerKm, FAULT_TEMPERATURE, pairs);
  if (loop === null || available === null || lowest === null || inner === null) return undefined;
  const fault = sharedFault(lowest, loop, whole, inner, available, ...needs);
  return Number.isNaN(fault) ? undefined : { fault, needed: needs[0] + needs[1] };
}

/** What runs with a second way are held against besides. */
export const secondWayChecks: readonly Check[] = [
  {
    rule: 'run-joins-supplies', sheet: 'runs', key: 'secondWay', severity: 'over', inStatus: true,
    find: (row) => {
      const [one, other] = [row.valueOf('way', 'rail'), row.valueOf('secondWay', 'rail')];
      if (one === null || other === null || one === other) return undefined;
      return {
        value: other, limit: one,
        message: row.say('{name} is fed from rail {one} through {way} and from rail {other} through {second}: a cable must not join two supplies, as each would feed into the other. Choose another way of rail {one}, or split the run in two.', {
          one: String(one), way: String(row.value('way')), other: String(other), second: String(row.value('secondWay')),
        }),
      };
    },
  },
  {
    rule: 'run-second-way-same', sheet: 'runs', key: 'secondWay', severity: 'incomplete', inStatus: true,
    find: (row) => row.value('secondWay') === null || row.value('secondWay') !== row.value('way') ? undefined : unknown(row, message(
      '{name} names the same way at both of its ends, so what either carries is not known. Choose another way of its rail for the second.'
    )),
  },
  {
    rule: 'run-first-way-missing', sheet: 'runs', key: 'way', severity: 'incomplete', inStatus: true,
    find: (row) => row.value('secondWay') === null || row.value('way') !== null ? undefined
      : unknownTo(waitingForExtra(row), row, message(
        '{name} has a second way and no way at its start, so what either carries is not known{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Choose its way, or empty the second.'
      )),
  },
  {
    rule: 'run-second-length-missing', sheet: 'runs', key: 'secondLength', severity: 'incomplete', inStatus: true,
    find: (row) => !hasTwo(row) || !lacks(row, 'secondLength') ? undefined
      : unknownTo(waitingForExtra(row), row, message(
        '{name} has a second way, and how long the cable is from its far end to there is not known, so its drop is not known either{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Enter the length to the second way in m.'
      )),
  },
  {
    rule: 'run-ways-share-fault', sheet: 'runs', key: 'faultCurrent', severity: 'near', inStatus: true,
    find: (row) => {
      const found = shared(row);
      if (found === undefined || !exceeds(found.needed, found.fault)) return undefined;
      const { fault, needed } = found;
      return {
        value: fault, limit: needed,
        message: inItsCase(row.say('{name}: its two ways share a short circuit on it. Where that is hardest on them it draws {fault} in all, and to trip instantaneously they need {needed} together: neither may trip. Use lower-rated or faster ways, or one way alone.', {
          fault: roundedDown(amps(fault, needed)), needed: roundedUp(amps(needed, fault)),
        }), row, limitedBy(row, fault)),
      };
    },
  },
  {
    rule: 'run-one-way-open', sheet: 'runs', key: 'openMargin', severity: 'note',
    find: (row) => {
      const [margin, closed] = [row.number('openMargin'), row.number('voltageMargin')];
      if (margin === null || closed === null || !exceeds(0, margin) || exceeds(0, closed)) return undefined;
      return {
        value: margin, limit: 0,
        message: inItsCase(row.say('{name} is judged with both of its ways closed. While one of them is open a device on it gets up to {lack} less than it needs. Let an opened way be signalled, and prove both at commissioning.', {
          lack: roundedUp(volts(-margin, 0)),
        }), row, WORST_IN.runs.openMargin),
      };
    },
  },
];
