import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { ON_A_BRANCH } from '../waiting.ts';
import { waitedFor } from './limit-checks.ts';

/** What device types are held against. */
export const typeChecks: readonly Check[] = [
  waitedFor('type-nodes-missing', ON_A_BRANCH, 'nodes', message(
    '{name}: how many nodes one device counts on a branch is not known, and {waiting, plural, one {# device row waits} other {# device rows wait}} for it. Enter it; 0 if it is no bus participant.'
  )),
];
