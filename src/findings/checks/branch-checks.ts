import { exceeds } from '../../electrical/index.ts';
import type { SheetName } from '../../schedule/index.ts';
import { BUS_ENDS, busEnds, type BusEnds } from '../../terminals/index.ts';
import {
  message, metres, milliamps, percent, roundedDown, roundedUp, type MessageValues,
} from '../../words/index.ts';
import type { Check, Found } from '../check.ts';
import type { Gathering } from '../facts.ts';
import type { Severity } from '../finding.ts';
import { excessIn, missingInput, overLimit, partialTotal, unknown, waitsFor } from './limit-checks.ts';
import { railAbsent } from './rail-checks.ts';
import { widthMissing } from './width-checks.ts';

const ON_TERMINALS: Gathering<BusEnds> = {
  sheet: 'branches',
  reads: [['branches', 'branch'], ...['terminal', 'strip', 'enclosure', 'potential', 'inside', 'outside']
    .map((key): readonly [SheetName, string] => ['terminals', key])],
  gather: busEnds,
};

/** What is said of a branch, with its values. */
interface Said {
  readonly said: string;
  readonly values: MessageValues;
}

/** A check of what terminals show of the terminators of a branch. */
function onTerminals(
  rule: string, severity: Severity,
  find: (ends: BusEnds, counted: number | null) => Said | undefined,
): Check {
  return {
    rule, sheet: 'branches', key: 'terminators', severity, inStatus: true,
    find: (row): Found | undefined => {
      const ends = row.fact(ON_TERMINALS);
      const found = ends === undefined ? undefined : find(ends, row.number('terminators'));
      if (found === undefined) return undefined;
      const sentence = row.sentence(() => row.say<string>(found.said, found.values));
      return { value: row.number('terminators'), limit: null, message: sentence };
    },
  };
}

/** What bus branches are held against. */
export const branchChecks: readonly Check[] = [
  overLimit({
    rule: 'branch-over-limit', sheet: 'branches', key: 'nodes', limit: (row) => row.number('limit'),
    message: message(
      '{name} carries {value, plural, one {# node} other {# nodes}} and may carry {limit}: {excess} too many. Move devices to another branch.'
    ),
    write: (value, limit) => ({ value, limit, excess: value - limit }),
  }),
  {
    rule: 'branch-over-reserve', sheet: 'branches', key: 'free', severity: 'near', inStatus: true,
    find: (row) => {
      const [free, nodes, limit, reserve] = [
        row.number('free'), row.number('nodes'), row.number('limit'), row.number('reserve'),
      ];
      if (free === null || nodes === null || limit === null || reserve === null) return undefined;
      if (!exceeds(nodes, nodes + free) || exceeds(nodes, limit)) return undefined;
      return {
        value: free, limit: 0,
        message: row.say('{name} carries {nodes, plural, one {# node} other {# nodes}} of {limit}, {into} into its reserve of {reserve}. Move devices to another branch, or give up part of the reserve.', {
          nodes, limit, into: -free, reserve: percent(reserve),
        }),
      };
    },
  },
  missingInput(
    'branch-limit-missing', 'branches', 'limit',
    message(
      '{name} has no limit, so whether it carries too many nodes is not known. Enter the most nodes that the bus may carry, or its standard, such as TIA-485-A.'
    )
  ),
  partialTotal(
    'branch-nodes-partial', 'branches', 'nodes',
    message(
      '{name} carries at least {value, plural, one {# node} other {# nodes}}: {missing, plural, one {# device row on it is not wholly known. Complete it, or its type,} other {# device rows on it are not wholly known. Complete them, or their types,}} to know the rest.'
    ),
    (value) => value
  ),
  overLimit({
    rule: 'branch-over-cable', sheet: 'branches', key: 'cableLength', limit: (row) => row.number('maxCable'),
    message: message(
      '{name} has {value} of cable and may have {limit}: {excess} too much. Move devices to another branch, or split it with a repeater.'
    ),
    write: excessIn(metres),
  }),
  waitsFor('branch-cable-partial', 'branches', 'cableLength', message(
    '{name}: the length of some of its cables is not known, so it has at least as much as shown.'
  ), (row) => row.number('maxCable') !== null && row.missing('cableLength') > 0),
  {
    // No cable at all is less than any limit, and no branch with nodes on it has none.
    rule: 'branch-cable-missing', sheet: 'branches', key: 'cableLength', severity: 'incomplete', inStatus: true,
    needs: 'maxCable',
    find: (row) => row.number('cableLength') !== 0 || row.missing('cableLength') > 0 || row.number('nodes') === 0
      ? undefined : unknown(row, message(
        '{name} has nodes and no run names it, so how much cable it has is not known. Enter the branch of its runs on the sheet {sheet}.'
      ), { sheet: row.titleOf('runs') }),
  },
  overLimit({
    rule: 'branch-over-bus-current', sheet: 'branches', key: 'busDemand', limit: (row) => row.number('busCurrent'),
    message: message(
      '{name}: its devices take {value} from the bus, whose supply gives {limit}: {excess} too much. Move devices to another branch, or feed some of them otherwise.'
    ),
    write: excessIn(milliamps),
  }),
  {
    rule: 'branch-over-bus-reserve', sheet: 'branches', key: 'busDemand', severity: 'near', inStatus: true,
    needs: 'busCurrent',
    find: (row) => {
      const [demand, most, reserve] = [row.number('busDemand'), row.number('busCurrent'), row.number('reserve')];
      if (demand === null || most === null || reserve === null) return undefined;
      const limit = most * (1 - reserve);
      if (!exceeds(demand, limit) || exceeds(demand, most)) return undefined;
      return {
        value: demand, limit,
        message: row.say('{name}: its devices take {demand} of the {most} that the supply of the bus gives, {into} into its reserve of {reserve}. Move devices to another branch, or give up part of the reserve.', {
          demand: milliamps(demand, limit), most: roundedDown(milliamps(most)),
          into: roundedUp(milliamps(demand - limit, 0)),
          reserve: percent(reserve),
        }),
      };
    },
  },
  waitsFor('branch-bus-partial', 'branches', 'busDemand', message(
    '{name}: what some of its devices take from the bus is not known, so they take at least as much as shown.'
  ), (row) => row.value('busCurrent') !== null && row.missing('busDemand') > 0),
  overLimit({
    rule: 'branch-over-terminators', sheet: 'branches', key: 'terminators', limit: () => BUS_ENDS,
    message: message(
      '{name} has {value} terminating resistors, {excess} more than the two at its ends: they load its drivers. Take out those that are not at an end of the line.'
    ),
    write: (value, limit) => ({ value, excess: value - limit }),
  }),
  {
    rule: 'branch-under-terminators', sheet: 'branches', key: 'terminators', severity: 'near', inStatus: true,
    find: (row) => {
      const terminators = row.number('terminators');
      return terminators === null || terminators >= BUS_ENDS ? undefined : {
        value: terminators, limit: BUS_ENDS,
        message: row.say(
          '{name} has {terminators, plural, one {# terminating resistor} other {# terminating resistors}} of the {ends} at its ends: what is sent is reflected there. Fit one at each end of the line.',
          { terminators, ends: BUS_ENDS }
        ),
      };
    },
  },
  railAbsent('branch-rail-absent', 'branches'),
  onTerminals('branch-over-terminators-on-terminals', 'over', ({ terminators }) => terminators <= BUS_ENDS ? undefined : {
    said: message('{name} has {terminators} terminating resistors on terminals, and a line has {ends}, at its ends: they load its drivers. Take out those that are not at an end of the line.'),
    values: { terminators, ends: BUS_ENDS },
  }),
  onTerminals('branch-terminator-midway', 'near', ({ midway }) => midway && {
    said: message('{name} goes on from the terminals {terminals} by {cables}, so their terminating resistor is not at an end of the line. Take it out, and fit one at each end.'),
    values: { terminals: midway.terminals.join(', '), cables: midway.cables.join(', ') },
  }),
  onTerminals('branch-terminator-half', 'near', ({ half }) => half.length === 0 ? undefined : {
    said: message('{name}: the terminating resistor on {terminals} has one of its two ends on a terminal, so it does not stand between both conductors. Enter the terminal of its other end, R1 or R2.'),
    values: { terminals: half.join(', ') },
  }),
  onTerminals('branch-terminators-differ', 'near', ({ terminators }, counted) => counted === null || counted >= terminators ? undefined : {
    said: message('{name} has {terminators, plural, one {# terminating resistor} other {# terminating resistors}} on terminals, and {counted} of the whole line {counted, plural, one {is} other {are}} entered. Correct one of them.'),
    values: { terminators, counted },
  }),
  widthMissing('branch-width-missing', 'branches', message(
    '{name}: the width of its coupler is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm.'
  )),
  {
    rule: 'branch-not-terminated', sheet: 'branches', key: 'terminated', severity: 'note',
    find: (row) => row.own('terminated') === true || row.number('terminators') !== null ? undefined : {
      value: row.own('terminated'), limit: true,
      message: row.say(
        '{name} is not marked as terminated. Fit the terminating resistors at both ends of the line and mark it.'
      ),
    },
  },
];
