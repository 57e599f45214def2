import { message, type Words } from '../words/index.ts';
import type { SheetName } from './schema/index.ts';

const COUNTS: Readonly<Record<SheetName, string>> = {
  devices: message('{n, plural, one {# device row} other {# device rows}}'),
  types: message('{n, plural, one {# device type} other {# device types}}'),
  supplies: message('{n, plural, one {# supply} other {# supplies}}'),
  ways: message('{n, plural, one {# way} other {# ways}}'),
  branches: message('{n, plural, one {# bus branch} other {# bus branches}}'),
  runs: message('{n, plural, one {# run} other {# runs}}'),
  conductors: message('{n, plural, one {# conductor} other {# conductors}}'),
  modules: message('{n, plural, one {# relay module} other {# relay modules}}'),
  outputs: message('{n, plural, one {# relay output} other {# relay outputs}}'),
  contacts: message('{n, plural, one {# contact} other {# contacts}}'),
  feeds: message('{n, plural, one {# feed} other {# feeds}}'),
  enclosures: message('{n, plural, one {# enclosure} other {# enclosures}}'),
  terminals: message('{n, plural, one {# terminal} other {# terminals}}'),
  cases: message('{n, plural, one {# case} other {# cases}}'),
  factors: message('{n, plural, one {# factor} other {# factors}}'),
};

/** A number of rows of a sheet, for a sentence: «12 device rows». */
export function rowCount(sheet: SheetName, n: number, words: Words): string {
  return words.say(COUNTS[sheet], { n });
}
