import type { Explanation } from '../engine/index.ts';
import { columnOf, formatCell, SCHEMA, type SheetName } from '../schedule/index.ts';
import { message, type Words } from '../words/index.ts';
import type { Finding, Standing } from './finding.ts';
import type { ChecksMade } from './findings.ts';
import { STATE_WORDS } from './state-words.ts';

/** What became of the checks of a row; of those that wait, what they wait for: «Inrush of the relay output K1.3». */
type Made = Omit<ChecksMade, 'waiting'> & { readonly waiting: readonly string[] };

/**
 * Explains the status of a row.
 * @param deciding the findings that make it what it is; none where it is within limits.
 * @param made what became of its checks.
 */
export function explainStatus(
  sheet: SheetName, status: Standing, deciding: readonly Finding[], made: Made, words: Words,
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

/** «6 checks made; 1 waits for: Inrush of the relay output K1.3; not asked for while nothing is entered: Fuse» */
function checksMade(sheet: SheetName, { made, waiting, unasked }: Made, words: Words): string {
  return [
    words.say('{n, plural, =0 {no check} one {# check} other {# checks}} of its limits made', { n: made }),
    ...(waiting.length === 0 ? [] : [words.say(
      '{n, plural, one {# waits} other {# wait}} for: {columns}', {
        n: waiting.length, columns: [...new Set(waiting)].join(', '),
      }
    )]),
    ...(unasked.length === 0 ? []
      : [words.say('not asked for while nothing is entered: {columns}', {
        columns: unasked.map((key) => words.text(columnOf(sheet, key).title)).join(', '),
      })]),
    ...(NOT_JUDGED[sheet] === undefined ? [] : [words.say<string>(NOT_JUDGED[sheet])]),
  ].reduce((one, other) => words.say('{one}; {other}', { one, other }));
}
