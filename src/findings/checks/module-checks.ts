import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { SHARED_COMMON } from '../common-sides.ts';
import { overLimit, unknown } from './limit-checks.ts';
import { railAbsent } from './rail-checks.ts';
import { widthMissing } from './width-checks.ts';

/** What relay modules are held against. */
export const moduleChecks: readonly Check[] = [
  overLimit({
    rule: 'module-over-common', sheet: 'modules', key: 'current', limit: (row) => row.number('common'),
    message: message(
      '{name} carries {value} over its common side, which may carry {limit}: {excess} too much. Move outputs to another module, or let some of them switch contactors.'
    ),
  }),
  overLimit({
    rule: 'module-over-outputs', sheet: 'modules', key: 'used', limit: (row) => row.number('outputs'),
    message: message(
      '{name} has {limit} outputs and {value} rows name it: {excess} too many. Move them to another module, or correct their module.'
    ),
    write: (value, limit) => ({ value, limit, excess: value - limit }),
  }),
  {
    rule: 'module-common-shared', sheet: 'modules', key: 'common', severity: 'over', inStatus: true, needs: 'common',
    find: (row) => {
      const sources = row.fact(SHARED_COMMON);
      return sources === undefined || row.number('common') === null ? undefined : {
        value: row.number('common'), limit: null,
        message: row.sentence(() => row.say('{name} has one common side, and its outputs are fed from {sources}: these come together there, live together and behind the protection of another. Move outputs to a module of their own, give them one feed, or empty Common where each has a contact of its own.', { sources: sources.join(', ') })),
      };
    },
  },
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
