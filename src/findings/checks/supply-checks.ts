import { amps, degrees, type Check } from '../check.ts';
import { missingInput, notChecked, overLimit, overTarget, partialTotal } from './limit-checks.ts';

/** What supplies are held against. */
export const supplyChecks: readonly Check[] = [
  overLimit({
    rule: 'supply-over-usable', sheet: 'supplies', key: 'demand', limit: (row) => row.number('usable'),
    message: (row, demand, usable) =>
      `${row.name} is asked for ${amps(demand, usable)} and may be used for ${amps(usable, demand)}: ${amps(demand - usable, 0)} too much. Move devices to another rail, lower the diversity, or fit a larger supply.`,
  }),
  overLimit({
    rule: 'supply-over-fuse', sheet: 'supplies', key: 'demand', limit: (row) => row.number('fuse'),
    message: (row, demand, fuse) =>
      `${row.name} is asked for ${amps(demand, fuse)} through a fuse of ${amps(fuse, demand)}: ${amps(demand - fuse, 0)} too much. Share the load over several fused ways, or fit a larger fuse if the conductors carry it.`,
  }),
  overTarget({
    rule: 'supply-over-target', sheet: 'supplies', current: 'demand', rating: 'usable',
    remedy: 'move that much to another rail, or fit a larger supply.',
  }),
  missingInput('supply-rating-missing', 'supplies', 'rated', (row) => `${row.name} has no rated current, so nothing can be said of its loading. Enter the rating of one unit in A.`),
  {
    rule: 'supply-warm-derating-unknown', sheet: 'supplies', key: 'usable', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const limit = row.number('fullUpTo');
      if (limit === null || row.number('rated') === null || row.number('usable') !== null) return undefined;
      const missing = row.number('lessPerKelvin') === null ? 'Enter how much it gives less per kelvin.' : 'Enter its enclosure, and complete that on the sheet Enclosures.';
      return { value: null, limit, message: `${row.name} gives its full current up to ${degrees(limit)}, and what it gives where it stands is not known. ${missing}` };
    },
  },
  partialTotal('supply-demand-partial', 'supplies', 'demand', 'device row', 'A'),
  notChecked('supply-fuse-not-checked', 'supplies', 'fuse', (row) => `${row.name} has no fuse entered: its demand is not checked against one. Enter its rating in A.`),
  notChecked('supply-loss-not-checked', 'supplies', 'efficiency', (row) => `${row.name} has no efficiency entered: its losses are not worked out. Enter it to know them.`),
  notChecked('supply-enclosure-not-checked', 'supplies', 'enclosure', (row) => `${row.name} has no enclosure entered: its losses count in none. Choose where it is mounted.`),
];
