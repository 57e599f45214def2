import { amps, degrees, message, roundedDown } from '../../words/index.ts';
import { isFormula } from '../../schedule/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';
import { missingInput, notChecked, overLimit, overTarget, partialTotal, unknown } from './limit-checks.ts';

/** Whether its feed has a breaker that its start is held against, where its maker says nothing of it. */
const isStartAsked = (row: RowReader) => row.valueOf('feed', 'curve') !== null && row.value('maxOnB16') === null;

/** Finds an input that is asked for where a supply has a feed. */
function missingWithFeed(rule: string, key: string, said: string, when?: (row: RowReader) => boolean): Check {
  return {
    rule, sheet: 'supplies', key, severity: 'incomplete', inStatus: true, needs: 'feed',
    find: (row) => row.value(key) !== null || isFormula(row.own(key)) || when?.(row) === false ? undefined
      : unknown(row, said, { feed: String(row.own('feed')) }),
  };
}

/** What supplies are held against. */
export const supplyChecks: readonly Check[] = [
  overLimit({
    rule: 'supply-over-usable', sheet: 'supplies', key: 'demand', limit: (row) => row.number('usable'),
    message: message(
      '{name} is asked for {value} and may be used for {limit}: {excess} too much. Move devices to another rail, lower the diversity, or fit a larger supply.'
    ),
  }),
  overLimit({
    rule: 'supply-over-fuse', sheet: 'supplies', key: 'demand', limit: (row) => row.number('fuse'),
    message: message(
      '{name} is asked for {value} through a fuse of {limit}: {excess} too much. Share the load over several fused ways, or fit a larger fuse if the conductors carry it.'
    ),
  }),
  overTarget({
    rule: 'supply-over-target', sheet: 'supplies', current: 'demand', rating: 'usable',
    message: message(
      '{name} is loaded to {loading} of {rating}, above its target of {target} by {excess}: move that much to another rail, or fit a larger supply.'
    ),
  }),
  missingInput(
    'supply-rating-missing', 'supplies', 'rated',
    message('{name} has no rated current, so nothing can be said of its loading. Enter the rating of one unit in A.')
  ),
  {
    rule: 'supply-warm-derating-unknown', sheet: 'supplies', key: 'usable', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const limit = row.number('fullUpTo');
      if (limit === null || row.number('rated') === null || row.number('usable') !== null) return undefined;
      const said = row.number('lessPerKelvin') === null
        ? row.say(
          '{name} gives its full current up to {limit}, and what it gives where it stands is not known. Enter how much it gives less per kelvin.',
          { limit: roundedDown(degrees(limit)) }
        )
        : row.say(
          '{name} gives its full current up to {limit}, and what it gives where it stands is not known. Enter its enclosure, and complete that on the sheet {sheet}.',
          { limit: roundedDown(degrees(limit)), sheet: row.titleOf('enclosures') }
        );
      return { value: null, limit, message: said };
    },
  },
  partialTotal(
    'supply-demand-partial', 'supplies', 'demand',
    message(
      '{name} carries at least {value}: {missing, plural, one {# row on it is not wholly known. Complete it} other {# rows on it are not wholly known. Complete them}} to know the rest.'
    ),
    amps
  ),
  notChecked(
    'supply-fuse-not-checked', 'supplies', 'fuse',
    message('{name} has no fuse entered: its demand is not checked against one. Enter its rating in A.')
  ),
  notChecked(
    'supply-loss-not-checked', 'supplies', 'efficiency',
    message('{name} has no efficiency entered: its losses are not worked out. Enter it to know them.'),
    (row) => row.own('feed') === null
  ),
  missingWithFeed('supply-efficiency-missing', 'efficiency', message(
    '{name} has no efficiency entered, so what it takes from feed {feed} is not known. Enter it, as its data sheet has it at full load.'
  )),
  missingWithFeed('supply-power-factor-missing', 'inputPowerFactor', message(
    '{name} has no power factor at its input entered, so what it takes from feed {feed} is not known. Enter it, as its data sheet has it at full load.'
  )),
  missingWithFeed('supply-input-inrush-missing', 'inputInrush', message(
    '{name} has no inrush at its input entered, so whether the breaker of feed {feed} stands the start of its supplies is not known. Enter the peak current of one unit, or how many of them a breaker B 16 stands.'
  ), isStartAsked),
  {
    rule: 'supply-input-unknown', sheet: 'supplies', key: 'inputCurrent', severity: 'incomplete', inStatus: true,
    elsewhere: true, needs: 'feed',
    find: (row) => {
      const isStartKnown = row.valueOf('feed', 'curve') === null || row.number('surge') !== null;
      return row.number('inputCurrent') !== null && isStartKnown ? undefined
        : unknown(row, message('{name}: what it takes from its feed is not known. Complete what that follows from.'));
    },
  },
  notChecked(
    'supply-enclosure-not-checked', 'supplies', 'enclosure',
    message('{name} has no enclosure entered: its losses count in none. Choose where it is mounted.')
  ),
];
