import type { Explanation } from '../engine/index.ts';
import { columnOf, formatCell, SCHEMA, type SheetName } from '../schedule/index.ts';
import { message, type Words } from '../words/index.ts';
import type { Finding, Standing } from './finding.ts';
import type { ChecksMade } from './findings.ts';
import { STATE_WORDS } from './state-words.ts';

/**
 * Explains the status of a row.
 * @param deciding the findings that make it what it is; none where it is within limits.
 * @param made what became of its checks.
 */
export function explainStatus(
  sheet: SheetName, status: Standing, deciding: readonly Finding[], made: ChecksMade, words: Words,
): Explanation {
  const checks = checksMade(sheet, made, words);
  const reasons = deciding.length === 0
    ? words.say('no limit is passed and no entry is missing') : deciding.map(({ message }) => message).join(' ');
  return {
    title: words.text(columnOf(sheet, 'status').title),
    words: words.say('the worst that the limits of this {row} say', { row: words.text(SCHEMA[sheet].rowName) }),
    numbers: words.say('{one}; {other}', { one: reasons, other: checks }),
    checks,
    result: words.say(STATE_WORDS[status]),
    source: words.say('the findings of the row; the limits are those of its columns'),
    parts: deciding.map(({ key, id, value }) => {
      const label = words.within(columnOf(sheet, key).title);
      const text = value === null ? words.say('not known') : formatCell(columnOf(sheet, key), value, words, 'show');
      return { path: key, label, labelInGeneral: label, sheet, id, key, text };
    }),
  };
}

/** What no check of a sheet looks at, though who reads a status may think so. */
const NOT_JUDGED: Partial<Readonly<Record<SheetName, string>>> = {
  outputs: message('not judged here: the cable to its load'),
};

/** «6 checks made; 1 check waits for: Conductor; not asked for while nothing is entered: Fuse» */
function checksMade(sheet: SheetName, { made, waiting, unasked }: ChecksMade, words: Words): string {
  const titles = (keys: readonly string[]) =>
    [...new Set(keys)].map((key) => words.text(columnOf(sheet, key).title)).join(', ');
  return [
    words.say('{n, plural, =0 {no check} one {# check} other {# checks}} of its limits made', { n: made }),
    ...(waiting.length === 0 ? [] : [words.say(
      '{n, plural, one {# waits} other {# wait}} for: {columns}', { n: waiting.length, columns: titles(waiting) }
    )]),
    ...(unasked.length === 0 ? []
      : [words.say('not asked for while nothing is entered: {columns}', { columns: titles(unasked) })]),
    ...(NOT_JUDGED[sheet] === undefined ? [] : [words.say<string>(NOT_JUDGED[sheet])]),
  ].reduce((one, other) => words.say('{one}; {other}', { one, other }));
}
