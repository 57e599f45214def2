import { exceeds } from '../../electrical/index.ts';
import { GONE } from '../../schedule/index.ts';
import { amps, message, roundedDown } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { namingNone, namingOne, where, withoutNumber } from '../only.ts';
import { OVERSIZED } from '../oversized.ts';
import type { RowReader } from '../row-reader.ts';
import { countNamed, lacks, unknown, unknownTo } from './limit-checks.ts';

/**
 * What keeps the current of a device row from being known, as the key of an input and what is said of it. What stands
 * there and has no value is told by checks of its own.
 */
function missingForCurrent(row: RowReader): { key: string; message: string } | undefined {
  if (lacks(row, 'qty')) {
    return { key: 'qty', message: message('The current of {row} is not known{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Enter how many devices there are.') };
  }
  if (row.number('qty') !== null && lacks(row, 'unitDraw')) {
    if (row.own('type') === null) {
      return {
        key: 'unitDraw',
        message: message('The current of {row} is not known{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Choose a type, or enter the unit draw in mA.'),
      };
    }
    if (row.numberOf('type', 'power') !== null) {
      // Its run is told to have no rail.
      if (row.own('rail') === null && row.own('run') !== null) return undefined;
      return {
        key: 'unitDraw',
        message: message(
          'The current of {row} is not known{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Its type gives a power: choose a rail, whose voltage makes it a current, or enter the unit draw here in mA.'
        ),
      };
    }
    // What its type does not say is found once, there; a type that there is not, at its name.
    return undefined;
  }
  return undefined;
}

/** How many rows wait for the current of a device row: its rail, its run and the ways of that; its branch for nodes. */
const waitingFor = (row: RowReader, key: string) =>
  countNamed(row, 'rail', 'run', ...key === 'qty' || row.own('type') === null ? ['branch'] : [])
  + ['way', 'secondWay'].filter((by) => row.valueOf('run', by) !== null).length;

function currentUnknown(rule: string, key: string): Check {
  return {
    rule, sheet: 'devices', key, severity: 'incomplete', only: withoutNumber('demand'),
    find: (row) => {
      const missing = missingForCurrent(row);
      return missing?.key === key
        ? unknownTo(waitingFor(row, key), row, missing.message, { row: nameWithin(row) }) : undefined;
    },
  };
}

/** A device row as it is named within a sentence. */
function nameWithin(row: RowReader): string {
  const { tag } = row;
  return tag === '' ? row.say('a device row without a tag') : row.say('ref {tag}', { tag });
}

/**
 * The one device row that asks for more than what feeds it may give, whatever the diversity; `given` stands behind
 * `by`. Several have one cause, and are told there.
 */
function oneTooMuch(rule: string, by: 'rail' | 'run', given: string, said: string): Check {
  return {
    rule, sheet: 'devices', key: 'unitDraw', severity: 'over',
    only: where(['unitDraw', `${by}.${given}`, 'qty'], (draw, most, qty) => qty !== 0 && exceeds(draw / 1000, most)),
    find: (row) => {
      const [draw, most] = [row.number('unitDraw')!, row.numberOf(by, given)!];
      // Where nothing is given, the cause lies there.
      if (most === 0 || row.fact(OVERSIZED[by].alone) === undefined) return undefined;
      return {
        value: draw / 1000, limit: most,
        message: row.sentence(() => row.say(said, {
          draw: amps(draw / 1000, most), most: roundedDown(amps(most, draw / 1000)), on: String(row.value(by)),
        })),
      };
    },
  };
}

/** What device rows are held against. */
export const deviceChecks: readonly Check[] = [
  currentUnknown('device-quantity-missing', 'qty'),
  currentUnknown('device-draw-missing', 'unitDraw'),
  oneTooMuch('device-over-supply', 'rail', 'usable', message(
    '{name}: one device draws {draw}, and rail {on} has {most} usable. No diversity helps: put it on a larger supply.'
  )),
  oneTooMuch('device-over-run', 'run', 'carries', message(
    '{name}: one device draws {draw}, and the cable of run {on} may carry {most}. No diversity helps: use a larger conductor or more pairs.'
  )),
  {
    rule: 'device-start-unknown', sheet: 'devices', key: 'type', severity: 'incomplete', only: namingNone('type'),
    find: (row) => row.own('type') !== null || row.valueOf('rail', 'overload') !== 'retries' ? undefined : unknown(
      row, message(
        '{name} has no type, so what it draws when it starts is not known, and its supply tries again and again on overload. Choose a type that says it.'
      )
    ),
  },
  {
    rule: 'device-without-rail', sheet: 'devices', key: 'rail', severity: 'incomplete', only: namingNone('rail'),
    find: (row) => {
      // What its run lacks is found there, or at the way of that.
      return row.own('rail') !== null || row.own('run') !== null ? undefined
        : unknown(row, message('{name} has no rail, so its current counts in no supply. Choose a rail.'));
    },
  },
  {
    rule: 'device-nodes-missing', sheet: 'devices', key: 'nodes', severity: 'incomplete', needs: 'branch',
    only: withoutNumber('nodes'),
    find: (row) => {
      // What its type does not say is found once, there; that it has none, where its current waits for one too.
      if (row.own('type') !== null || row.number('unitDraw') === null) return undefined;
      const values = { branch: String(row.own('branch')) };
      return unknown(
        row,
        message(
          '{name} counts an unknown number of nodes on branch {branch}. Choose a type that says how many nodes one device counts.'
        ),
        values
      );
    },
  },
  {
    rule: 'device-run-on-other-rail', sheet: 'devices', key: 'run', severity: 'incomplete', only: namingOne('run'),
    find: (row) => {
      if (row.own('rail') === null) return undefined;
      const rail = row.valueOf('run', 'rail');
      if (rail === null || rail === row.own('rail')) return undefined;
      return {
        value: row.own('rail'), limit: rail,
        message: row.say('{name} is on rail {rail} but its run {run} is fed from rail {other}. Correct one of them.', {
          rail: String(row.own('rail')), run: String(row.own('run')), other: String(rail),
        }),
      };
    },
  },
  {
    rule: 'device-beyond-run', sheet: 'devices', key: 'distance', severity: 'incomplete',
    only: where(['distance', 'run.length'], exceeds),
    find: (row) => {
      const [distance, length] = [row.number('distance')!, row.numberOf('run', 'length')!];
      return {
        value: distance, limit: length,
        message: row.say(
          '{name} is {distance} m along its run, which is {length} m long. Correct one of them.', { distance, length }
        ),
      };
    },
  },
  {
    rule: 'device-gone', sheet: 'devices', key: 'state', severity: 'incomplete', needs: 'state',
    find: (row) => row.own('state') !== GONE ? undefined : {
      value: row.number('qty'), limit: null,
      message: row.number('qty') === null
        ? row.say('{name} is no longer in its list, and still stands here. Delete the row, or empty its state where it stays.')
        : row.say('{name} is no longer in its list, and its {qty, plural, one {# device} other {# devices}} still count. Delete the row, or empty its state where they stay.', { qty: row.number('qty')! }),
    },
  },
];
