import { amps, message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { missingInput, notChecked, overLimit, overTarget, partialTotal } from './limit-checks.ts';
import { startChecks } from './start-checks.ts';
import { warmthChecks } from './warmth-checks.ts';

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
      '{name} carries at least {value}: {missing, plural, one {# device row on it is not wholly known. Complete it} other {# device rows on it are not wholly known. Complete them}} to know the rest.'
    ),
    amps
  ),
  notChecked(
    'supply-fuse-not-checked', 'supplies', 'fuse',
    message('{name} has no fuse entered: its demand is not checked against one. Enter its rating in A.')
  ),
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
