import { isFormula } from '../../schedule/index.ts';
import { amps, message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';
import { missingInput, notChecked, overLimit, overTarget, partialTotal, unknown } from './limit-checks.ts';
import { startChecks } from './start-checks.ts';
import { warmthChecks } from './warmth-checks.ts';

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
  {
    rule: 'supply-purposes-mixed', sheet: 'supplies', key: 'purpose', severity: 'note',
    find: (row) => {
      const { purposes } = row;
      if (purposes.length < 2) return undefined;
      const names = purposes.map((purpose) => row.words.text(purpose));
      return {
        value: purposes.join(', '), limit: null,
        message: row.say('{name} serves {purposes} together. Common practice is a separate supply for each: move the devices of the other purposes.', {
          purposes: row.say('{names} and {last}', { names: names.slice(0, -1).join(', '), last: names.at(-1)! }),
        }),
      };
    },
  },
  ...warmthChecks,
  ...startChecks,
];
