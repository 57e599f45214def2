import { tagOf } from '../../schedule/index.ts';
import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { Gathering } from '../facts.ts';
import { overLimit, unknown } from './limit-checks.ts';
import { railAbsent } from './rail-checks.ts';
import { widthMissing } from './width-checks.ts';

/** The feeds and rails that the outputs of each module name, where they are several. */
const SOURCES: Gathering<readonly string[]> = {
  sheet: 'modules',
  reads: [['modules', 'module'], ['outputs', 'module'], ['outputs', 'feed'], ['outputs', 'rail']],
  gather: (document, book) => {
    const sources = new Map<string, Set<string>>();
    for (const { id } of document.rows('outputs')) {
      const [module, feed, rail] = ['module', 'feed', 'rail'].map((key) => book.value('outputs', id, key));
      // The rail counts where both are named, as it does in the circuits.
      const source = rail ?? feed;
      if (typeof module !== 'string' || typeof source !== 'string') continue;
      sources.set(module, (sources.get(module) ?? new Set()).add(source));
    }
    return new Map(document.rows('modules').flatMap((row) => {
      const those = [...sources.get(tagOf('modules', row)) ?? []];
      return those.length < 2 ? [] : [[row.id, those] as const];
    }));
  },
};

/** What relay modules are held against. */
export const moduleChecks: readonly Check[] = [
  overLimit({
    rule: 'module-over-common', sheet: 'modules', key: 'current', limit: (row) => row.number('common'),
    message: message(
      '{name} carries {value} over its common side, which may carry {limit}: {excess} too much. Move outputs to another module, or let some of them switch contactors.'
    ),
  }),
  {
    // Extra-low voltage stays separated from mains (IEC 60364-4-41, 414.4, from memory); two feeds are two protections.
    rule: 'module-common-mixed', sheet: 'modules', key: 'common', severity: 'over', inStatus: true, needs: 'common',
    find: (row) => {
      const sources = row.fact(SOURCES);
      return sources === undefined ? undefined : {
        value: row.own('common'), limit: null,
        message: row.say(
          '{name}: its outputs have one common side and name several sources, {sources}, so the voltage of one would come to the loads of another. Choose outputs of another module for these, or empty the common where each contact stands by itself.',
          { sources: sources.join(', ') }
        ),
      };
    },
  },
  overLimit({
    rule: 'module-over-outputs', sheet: 'modules', key: 'used', limit: (row) => row.number('outputs'),
    message: message(
      '{name} has {limit} outputs and {value} rows name it: {excess} too many. Move them to another module, or correct their module.'
    ),
    write: (value, limit) => ({ value, limit, excess: value - limit }),
  }),
  {
    rule: 'module-current-partial', sheet: 'modules', key: 'current', severity: 'incomplete', inStatus: true,
    elsewhere: true, needs: 'common',
    find: (row) => row.missing('current') === 0 ? undefined : unknown(row, message(
      '{name}: outputs that name it are not wholly known, so it carries at least what is shown. Complete them.'
    )),
  },
  railAbsent('module-rail-absent', 'modules'),
  widthMissing('module-width-missing', 'modules', message(
    '{name}: its width is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm.'
  )),
];
