import type { Words } from '../../words/index.ts';
import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import { withTicks } from './ticks.ts';
import { withWays } from './with-ways.ts';

/** Changes of what a person enters, with what follows from it at once: ways by kind and rating, what ticks are for. */
export function asEntered(document: ScheduleDocument, changes: readonly Change[], words: Words): Change[] {
  return withTicks(document, withWays(document, changes, words));
}
