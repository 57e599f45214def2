import { exceeds } from '../../electrical/index.ts';
import { degrees, message, roundedDown } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';
import { inItsCase, WORST_IN } from '../worst-in.ts';
import { lacks, missingInput, waitsFor } from './limit-checks.ts';
import { railAbsent } from './rail-checks.ts';
import { widthMissing } from './width-checks.ts';

/** Up to here supplies give their rated current without derating [°C]: common practice, no source. */
const RATED_AT = 40;

const TOP = { path: 'enclosure.top', by: 'enclosure', sheet: 'enclosures', key: 'top' } as const;

/** Temperature at the top of its enclosure [°C]; `null` when it is not known. */
const topOf = (row: RowReader) => row.numberOf('enclosure', 'top');

/** Whether nobody said what it gives where it is warm. */
const hasNoDerating = (row: RowReader) => row.own('derating') === null && lacks(row, 'fullUpTo');

const hasEnclosure = (row: RowReader) => row.value('enclosure') !== null;

/** What supplies are held against where they are mounted, and what they have to say for it. */
export const warmthChecks: readonly Check[] = [
  {
    rule: 'supply-over-off', sheet: 'supplies', key: 'offAt', severity: 'over', inStatus: true, needs: 'offAt',
    find: (row) => {
      const [top, off] = [topOf(row), row.number('offAt')];
      if (top === null || off === null || exceeds(off, top)) return undefined;
      return {
        value: top, limit: off,
        message: inItsCase(row.say('{name} stands in {top} at the top of its enclosure and switches itself off at {off}. Use a larger enclosure, move supplies or losses out of it, or cool it.', {
          top: degrees(top), off: roundedDown(degrees(off)),
        }), row, WORST_IN.warmth.supplies),
      };
    },
  },
  {
    rule: 'supply-warm-derating-unknown', sheet: 'supplies', key: 'usable', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const limit = row.number('fullUpTo');
      if (limit === null || row.number('rated') === null || row.number('usable') !== null) return undefined;
      // What its enclosure lacks is told there.
      if (!lacks(row, 'lessPerKelvin') && row.own('enclosure') !== null) return undefined;
      const said = lacks(row, 'lessPerKelvin')
        ? row.say(
          '{name} gives its full current up to {limit}, and what it gives where it stands is not known. Enter its derating per K.',
          { limit: roundedDown(degrees(limit)) }
        )
        : row.say(
          '{name} gives its full current up to {limit}, and what it gives where it stands is not known. Enter its enclosure, and complete that on the sheet {sheet}.',
          { limit: roundedDown(degrees(limit)), sheet: row.titleOf('enclosures') }
        );
      return { value: null, limit, message: said };
    },
  },
  {
    rule: 'supply-derating-missing', sheet: 'supplies', key: 'fullUpTo', severity: 'incomplete', inStatus: true,
    needs: 'enclosure',
    find: (row) => {
      const top = topOf(row);
      if (top === null || !exceeds(top, RATED_AT) || !hasNoDerating(row)) return undefined;
      return {
        value: null, limit: null,
        message: inItsCase(row.say('{name} stands in {top} at the top of its enclosure, and what it gives above {rated} is not known. Enter up to where it gives its full output and its derating per K above that, or its derating there; 100 % if its data sheet says so.', {
          top: degrees(top), rated: degrees(RATED_AT),
        }), row, WORST_IN.warmth.supplies),
      };
    },
  },
  waitsFor('supply-top-unknown', 'supplies', 'enclosure', message(
    '{name}: how warm it gets at the top of its enclosure is not wholly known, so what it gives there is not checked.'
  ), (row) => {
    const [top, off, full] = [topOf(row), row.number('offAt'), row.number('fullUpTo')];
    if (!hasEnclosure(row) || (off === null && full === null && !hasNoDerating(row))) return false;
    return top === null || row.partialBehind(TOP) !== undefined;
  }),
  missingInput(
    'supply-efficiency-missing', 'supplies', 'efficiency',
    message('{name} has no efficiency, so neither its heat nor what it takes from a feed is known. Enter it as its data sheet gives it.'),
    (row) => hasEnclosure(row) || row.value('feed') !== null
  ),
  railAbsent('supply-rail-absent', 'supplies'),
  widthMissing('supply-width-missing', 'supplies', message(
    '{name}: the width of one unit is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm.'
  )),
];
