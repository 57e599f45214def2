import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { DRAWING_AS_IT, ON_A_BRANCH, ON_A_RETRYING_RAIL, ON_A_SUPPLIED_BRANCH } from '../waiting.ts';
import { awaitedInput, lacks } from './limit-checks.ts';

/** What device types are held against. */
export const typeChecks: readonly Check[] = [
  awaitedInput('type-draw-missing', 'draw', DRAWING_AS_IT, message(
    '{name}: what one draws is not known, and {waiting, plural, one {# device row waits} other {# device rows wait}} for it. Enter its draw in mA, or its power.'
  ), undefined, (row) => lacks(row, 'power')),
  awaitedInput('type-nodes-missing', 'nodes', ON_A_BRANCH, message(
    '{name}: how many nodes one device counts on a branch is not known, and {waiting, plural, one {# device row waits} other {# device rows wait}} for it. Enter it; 0 if it is no bus participant.'
  )),
  awaitedInput('type-bus-draw-missing', 'busDraw', ON_A_SUPPLIED_BRANCH, message(
    '{name}: what one takes from the supply of its bus is not known, and {waiting, plural, one {# device row waits} other {# device rows wait}} for it. Enter it in mA; 0 if it takes none.'
  )),
  awaitedInput('type-inrush-missing', 'inrush', ON_A_RETRYING_RAIL, message(
    '{name}: what one draws when it starts is not known, and {waiting, plural, one {# device row waits} other {# device rows wait}} for it, since their supply tries again and again on overload. Enter it; 0 if it is no more than its draw.'
  )),
];
