import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { MADE_OF_IT } from '../waiting.ts';
import { waitedFor } from './limit-checks.ts';

/** What conductors are held against. */
export const conductorChecks: readonly Check[] = [
  waitedFor('conductor-current-missing', MADE_OF_IT, 'maxCurrent', message(
    '{name}: what it carries is not known, and {waiting, plural, one {# run waits} other {# runs wait}} for it. Enter it, with the source that says so, or use a conductor of which it is known.'
  )),
];
