import { columnOf, type InputColumn } from '../../schedule/index.ts';
import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { ON_DIRECT_CURRENT, switching, WITH_INRUSH } from '../waiting.ts';
import { awaitedInput } from './limit-checks.ts';

const RATING_MISSING = message(
  '{name}: its rating for {kind, select, resistive {resistive} lamp {lamp} motor {motor} coil {coil} dc {DC} other {DC coil}} loads is not known, and {waiting, plural, one {# output waits} other {# outputs wait}} for it. Enter it, or choose another contact there.'
);

/** What contacts are held against: each is to say what the outputs that have it need to know. */
export const contactChecks: readonly Check[] = [
  ...(columnOf('outputs', 'kind') as InputColumn).choices!
    .map((kind) => awaitedInput('contact-rating-missing', kind, switching(kind), RATING_MISSING, { kind })),
  awaitedInput('contact-dc-voltage-missing', 'maxDcVoltage', ON_DIRECT_CURRENT, message(
    '{name}: up to which direct voltage its ratings hold is not known, and {waiting, plural, one {# output waits} other {# outputs wait}} for it. Enter it, or choose another contact there.'
  )),
  awaitedInput('contact-inrush-missing', 'inrush', WITH_INRUSH, message(
    '{name}: its making capacity is not known, and {waiting, plural, one {# output waits} other {# outputs wait}} for it. Enter it, or choose another contact there.'
  )),
];
