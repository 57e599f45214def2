import { exceeds } from '../../electrical/index.ts';
import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { namingNone, withoutNumber } from '../only.ts';
import type { RowReader } from '../row-reader.ts';
import { unknown } from './limit-checks.ts';

/** What keeps the current of a device row from being known, as the key of an input and what is said of it. */
function missingForCurrent(row: RowReader): { key: string; message: string } {
  if (row.number('qty') === null) {
    return { key: 'qty', message: message('The current of {row} is not known. Enter how many devices there are.') };
  }
  if (row.number('unitDraw') === null) {
    if (row.own('type') === null) {
      return {
        key: 'unitDraw',
        message: message('The current of {row} is not known. Choose a type, or enter the unit draw in mA.'),
      };
    }
    if (row.numberOf('type', 'power') !== null) {
      return {
        key: 'unitDraw',
        message: message(
          'The current of {row} is not known. Its type gives a power: choose a rail, whose voltage makes it a current, or enter the unit draw here in mA.'
        ),
      };
    }
    return {
      key: 'unitDraw',
      message: message(
        'The current of {row} is not known. Enter a draw or a power for its type, or the unit draw here in mA.'
      ),
    };
  }
  return { key: 'diversity', message: message('The current of {row} is not known. Correct its diversity.') };
}

function currentUnknown(rule: string, key: string): Check {
  return {
    rule, sheet: 'devices', key, severity: 'incomplete', only: withoutNumber('demand'),
    find: (row) => {
      const missing = missingForCurrent(row);
      return missing.key === key ? unknown(row, missing.message, { row: nameWithin(row) }) : undefined;
    },
  };
}

/** A device row as it is named within a sentence. */
function nameWithin(row: RowReader): string {
  const { tag } = row;
  return tag === '' ? row.say('a device row without a tag') : row.say('ref {tag}', { tag });
}

/** What device rows are held against. */
export const deviceChecks: readonly Check[] = [
  currentUnknown('device-quantity-missing', 'qty'),
  currentUnknown('device-draw-missing', 'unitDraw'),
  currentUnknown('device-diversity-missing', 'diversity'),
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
      if (row.own('rail') !== null) return undefined;
      const rail = row.value('rail');
      return rail === null ? unknown(
        row, message('{name} has no rail, so its current counts in no supply. Choose a rail.')
      )
        : unknown(row, message(
          '{name} is fed from rail {rail} as its run is, and there is no such supply, so its current counts in none. Add it to the sheet {sheet}, or correct the run.'
        ), {
          rail: String(rail), sheet: row.titleOf('supplies'),
        });
    },
  },
  {
    rule: 'device-nodes-missing', sheet: 'devices', key: 'nodes', severity: 'incomplete', needs: 'branch',
    only: withoutNumber('nodes'),
    find: (row) => {
      // What its type does not say is found once, there.
      if (row.number('qty') !== null && row.names('type')) return undefined;
      const values = { branch: String(row.own('branch')) };
      return unknown(
        row,
        message(
          '{name} counts an unknown number of nodes on branch {branch}. Enter its quantity and a type that says how many nodes one device counts.'
        ),
        values
      );
    },
  },
  {
    rule: 'device-run-on-other-rail', sheet: 'devices', key: 'run', severity: 'incomplete', needs: 'run',
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
    rule: 'device-beyond-run', sheet: 'devices', key: 'distance', severity: 'incomplete', needs: 'distance',
    find: (row) => {
      const [distance, length] = [row.number('distance'), row.numberOf('run', 'length')];
      if (distance === null || length === null || !exceeds(distance, length)) return undefined;
      return {
        value: distance, limit: length,
        message: row.say(
          '{name} is {distance} m along its run, which is {length} m long. Correct one of them.', { distance, length }
        ),
      };
    },
  },
];
