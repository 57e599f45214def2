import { grouped } from '../schedule/index.ts';
import { lineKey, type LineDecision, type Takeoff, type TakeoffLine } from '../exchange/takeoff/index.ts';
import { Refusal } from './refusal.ts';

/** What a person says of a line: the option with its words as they were given, the line and the decision. */
export interface SaidOfLine {
  readonly given: string;
  readonly line: string;
  readonly decision: LineDecision;
}

/** How many lines are named at most. */
const MOST_NAMED = 12;

/**
 * The counts of the line that a person names by its number, with sheet and file before it where several lists have that
 * number, and its column behind it where one count of several is meant: `12`, `Level 1!12`, `a.xlsx!Level 1!12/4`.
 * @param given the option with its words.
 * @throws Refusal where there is no such line, or several.
 */
export function namedLines({ lines }: Takeoff, name: string, given: string): TakeoffLine[] {
  const named = lines.filter(({ key }) => [key, key.replace(/\/\d+$/, '')].some((each) => each === name || each.endsWith(`!${name}`)));
  const places = new Set(named.map(({ source }) => wholeKey(source)));
  if (places.size === 1) return named;
  throw new Refusal([`${given}: ${places.size === 0
    ? `there is no line ${name}. Give the number of a line, with its sheet and file where there are several lists, as in ${lines.find(({ qty }) => qty !== null)?.key ?? lines[0]!.key}.`
    : `several lists have a line ${name}. Name one of ${[...places].slice(0, MOST_NAMED).join(', ')}.`}`]);
}

/**
 * The decisions on lines, by their keys.
 * @throws Refusal where a line is not there, is decided on twice, or has several counts for one quantity.
 */
export function decisionsOn(takeoff: Takeoff, said: readonly SaidOfLine[]): Record<string, LineDecision> {
  const decided = new Map<string, SaidOfLine>();
  for (const each of said) {
    const { given, line, decision } = each;
    const named = namedLines(takeoff, line, given);
    if (named.length > 1 && typeof decision === 'object') {
      throw new Refusal([`${given}: line ${line} has several counts. Name one of ${named.map(({ key }) => key).join(', ')}.`]);
    }
    for (const { key } of named) {
      const before = decided.get(key);
      if (before !== undefined) throw new Refusal([`${given}: ${before.given} decides on the same. Leave one of them out.`]);
      decided.set(key, each);
    }
  }
  return Object.fromEntries([...decided].map(([key, { decision }]) => [key, decision]));
}

/** @throws Refusal where a line that is to be taken is not, though its name means a type; with the reason. */
export function refuseUntaken(takeoff: Takeoff, said: readonly SaidOfLine[]): void {
  const refused = said.flatMap(({ given, line, decision }) => {
    if (decision === 'leave-out' || (typeof decision === 'object' && decision.qty === 0)) return [];
    const lost = namedLines(takeoff, line, given).find(({ outcome, nameKey }) => (outcome === 'undecided' || outcome === 'left-out')
      && takeoff.names.find(({ key }) => key === nameKey)?.state !== 'undecided');
    return lost === undefined ? [] : [`${given}: it is not taken. ${lost.reason}`];
  });
  if (refused.length > 0) throw new Refusal(refused);
}

/** Lines on which nothing is decided, as an option may name them. */
export function openNames({ lines }: Takeoff): string[] {
  const isOne = new Set(lines.map(({ source: { file } }) => file)).size === 1;
  return [...grouped(lines, ({ source }) => wholeKey(source)).values()].flatMap((counts) => {
    const open = counts.filter(({ outcome }) => outcome === 'undecided');
    return [...new Set(open.map(({ source: { file, sheet, line, column } }) => lineKey({
      line, ...sheet === undefined ? {} : { sheet }, ...isOne || file === undefined ? {} : { file },
      ...open.length === counts.length || column === undefined ? {} : { column },
    })))];
  });
}

function wholeKey({ file, sheet, line }: TakeoffLine['source']): string {
  return lineKey({ line, ...file === undefined ? {} : { file }, ...sheet === undefined ? {} : { sheet } });
}
