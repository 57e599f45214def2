import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { MADE_OF_IT } from '../waiting.ts';
import { awaitedInput } from './limit-checks.ts';

/** What conductors are held against. */
export const conductorChecks: readonly Check[] = [
  awaitedInput('conductor-resistance-missing', 'resistance', MADE_OF_IT, message(
    '{name}: its resistance is not known, and {waiting, plural, one {# run waits} other {# runs wait}} for it. Enter it in Ω/km, or choose another conductor there.'
  )),
  awaitedInput('conductor-current-missing', 'maxCurrent', MADE_OF_IT, message(
    '{name}: what it carries is not known, and {waiting, plural, one {# run waits} other {# runs wait}} for it. Enter it, with the source that says so, or use a conductor of which it is known.'
  )),
];
