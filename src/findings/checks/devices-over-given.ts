import { exceeds } from '../../electrical/index.ts';
import { amps, roundedDown } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { OVERSIZED } from '../oversized.ts';

interface Given {
  readonly rule: string;
  readonly sheet: 'supplies' | 'runs';
  /** The reference by which device rows name the row. */
  readonly by: 'rail' | 'run';
  /** Keys of what may be given to them, and of what they ask for together. */
  readonly given: string;
  readonly asked: string;
  /** What is said where several rows have devices that are too large: `most`, `rows`, and the largest `draw`. */
  readonly message: string;
}

/**
 * Two checks that no device draws more by itself than it may be given: what feeds it is over whatever the diversity. It
 * is told at the device where there is one, and here once where there are several, unless all of them together are told
 * to be too much, or nothing is given at all.
 */
export function devicesOverGiven({ rule, sheet, by, given, asked, message }: Given): readonly [Check, Check] {
  const each = { sheet, key: given, severity: 'over', inStatus: true } as const;
  return [
    {
      ...each, rule,
      find: (row) => {
        const [found, most, all] = [row.fact(OVERSIZED[by].rows), row.number(given), row.number(asked)];
        if (found === undefined || found.rows === 1 || most === null || most === 0) return undefined;
        if (all !== null && exceeds(all, most)) return undefined;
        const { draw, rows } = found;
        return {
          value: draw, limit: most, waiting: rows,
          message: row.say(message, { most: roundedDown(amps(most, draw)), rows, draw: amps(draw, most) }),
        };
      },
    },
    {
      ...each, rule: `${rule}-elsewhere`, elsewhere: true,
      find: (row) => {
        const found = row.fact(OVERSIZED[by].rows);
        return found === undefined ? undefined : {
          value: found.draw, limit: row.number(given),
          message: row.say('{name}: one device on it draws more by itself than it may be given.'),
        };
      },
    },
  ];
}
