import { exceeds } from '../../electrical/index.ts';
import { ampereHours, amps, message, roundedDown, roundedUp } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';
import { START_UPS, type StartUp } from '../start-up.ts';
import { WORST_IN } from '../worst-in.ts';
import { overLimit, waitsFor } from './limit-checks.ts';

/** What it gives for a moment before it switches off [A]; `null` when it is not known. */
function peakOf(row: RowReader): number | null {
  const [usable, peak] = [row.number('usable'), row.number('peak')];
  return usable === null || peak === null ? null : usable * peak;
}

/** What to say of starting in turn: some rows later, every device by itself, or nothing, where no order helps. */
interface StartRemedies {
  readonly later: string;
  readonly oneByOne: string;
  readonly none: string;
}

/** What was tried and lets all devices come up: the fewest rows that start later, else every device by itself. */
export function startRemedy(
  row: RowReader, { later, oneByOne, amps: start }: StartUp, limit: number, said: StartRemedies,
): string {
  const enough = later.find((each) => !exceeds(each.amps, limit));
  if (enough !== undefined) return row.say<string>(said.later, { largest: enough.tags.join(', ') });
  return exceeds(oneByOne, limit) ? row.say<string>(said.none, { start: roundedUp(amps(start)) })
    : row.say<string>(said.oneByOne);
}

const REMEDIES: StartRemedies = {
  later: message('Let {largest} start later than the others, or fit a supply that holds its current.'),
  oneByOne: message('Let its devices start one after the other, or fit a supply that holds its current.'),
  none: message('Fit a supply that holds its current, or one that gives {start} for a moment; no order of starting helps.'),
};

/** What supplies are held against when the mains return and when they fail. */
export const startChecks: readonly Check[] = [
  {
    rule: 'supply-over-start', sheet: 'supplies', key: 'overload', severity: 'near', inStatus: true, needs: 'overload',
    find: (row) => {
      const [start, limit] = [row.fact(START_UPS.supplies), peakOf(row)];
      // Of one that gives nothing that is told, and nothing else helps.
      if (start === undefined || !limit || !exceeds(start.amps, limit)) return undefined;
      const values = { start: amps(start.amps, limit), limit: roundedDown(amps(limit, start.amps)) };
      return {
        value: start.amps, limit, message: row.sentence(() => [
          row.say('{name}: its devices ask for {start} when all start at the same time, as after a failure of the mains; it gives {limit}, then switches off and tries again, and may never come up.', values),
          startRemedy(row, start, limit, REMEDIES),
        ].join(' ')),
      };
    },
  },
  waitsFor('supply-start-partial', 'supplies', 'overload', message(
    '{name}: what some of its devices draw when they start is not known, so whether it comes up is not checked.'
  ), (row) => {
    const lacks = row.value('overload') === 'retries' ? row.fact(START_UPS.supplies)?.lacks : undefined;
    if (lacks !== undefined) row.awaits(...lacks);
    return lacks !== undefined;
  }),
  overLimit({
    rule: 'supply-over-battery', sheet: 'supplies', key: 'batteryNeeded', limit: (row) => row.number('battery'),
    message: message(
      '{name} needs a battery of {value} for its standby and has {limit}: {excess} too little. Fit a larger battery, or let less be on while the mains are off.'
    ),
    worst: WORST_IN.standby,
    write: (value, limit) => ({
      value: roundedUp(ampereHours(value, limit)), limit: roundedDown(ampereHours(limit, value)),
      excess: roundedUp(ampereHours(value - limit, 0)),
    }),
  }),
  {
    rule: 'supply-battery-missing', sheet: 'supplies', key: 'battery', severity: 'incomplete', inStatus: true,
    needs: 'standbyHours',
    find: (row) => {
      const needed = row.number('batteryNeeded');
      if (row.value('battery') !== null || needed === null || needed === 0) return undefined;
      return {
        value: null, limit: needed,
        message: row.say('{name} is to bridge a failure of the mains and has no battery entered; {needed} would do, discharged fast. Enter its capacity in Ah.', {
          needed: roundedUp(ampereHours(needed)),
        }),
      };
    },
  },
];
