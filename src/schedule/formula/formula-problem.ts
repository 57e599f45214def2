import { message, type Words } from '../../words/index.ts';
import { KNOWN_FUNCTIONS } from './known-functions.ts';
import { mapReferences } from './reference.ts';

/** Deepest nesting of parentheses that is accepted; far below what exhausts the stack of the formula engine. */
const DEEPEST = 50;
/** Longest row of signs, as in 2 - - 3, that is accepted; for the same reason. */
const MOST_SIGNS = 8;

const CHANGES = message('{name} changes by itself, and a schedule must not. Enter the value instead.');
const PLACES = message('{name} tells where cells stand, which changes when rows move. Refer to the cells themselves.');
/**
 * The formula engine looks these up in cells that stand side by side in it, which those of a schedule need not (3.5.0).
 */
const SIDE_BY_SIDE = message('{name} cannot be used here. Use XLOOKUP, or INDEX with MATCH.');
const REFUSED_FUNCTIONS: Readonly<Record<string, string>> = {
  NOW: CHANGES, TODAY: CHANGES, RAND: CHANGES, RANDBETWEEN: CHANGES,
  ROW: PLACES, COLUMN: PLACES, OFFSET: PLACES, SHEET: PLACES, SHEETS: PLACES, FORMULATEXT: PLACES, ISFORMULA: PLACES,
  VLOOKUP: SIDE_BY_SIDE, HLOOKUP: SIDE_BY_SIDE,
};

/** Says at which {sign} a formula cannot be read, and how cells are named where it stands. */
export type PlaceWords = typeof BY_LETTER | typeof BY_KEY;
export const BY_LETTER = message(
  'The formula cannot be read at {sign}: refer to cells as D3, D3:D5, types!D3 or [types.D3], not to whole rows or columns.',
);
export const BY_KEY = message(
  'The formula cannot be read at {sign}: in a file, refer to cells as [qty], [devices.qty@TAG], [devices.qty#3] or [devices.qty#3:#5].',
);

/**
 * What keeps a formula, in the form that documents keep, from standing in a schedule: anything that would be read in
 * another way than a person means, or whose value does not follow from the document.
 * @returns one sentence; `undefined` when nothing is found.
 */
export function formulaProblem(formula: string, words: Words, placed: PlaceWords): string | undefined {
  const texts = formula.replaceAll(/"(?:[^"]|"")*"/g, '0');
  if (texts.includes('"')) {
    return words.say('A quotation mark is missing in the formula. Put texts between two of them.');
  }
  const rest = mapReferences(texts, () => '0').replaceAll('#REF!', '0');
  const foreign = /[!:'#~[\]@$]/.exec(rest);
  if (foreign !== null) return words.say(placed, { sign: foreign[0] });
  for (const [, name] of rest.matchAll(/([A-Za-z_][\w.]*)\s*\(/g)) {
    const upper = name!.toUpperCase();
    if (Object.hasOwn(REFUSED_FUNCTIONS, upper)) return words.say(REFUSED_FUNCTIONS[upper]!, { name: upper });
    if (!KNOWN_FUNCTIONS.has(upper)) {
      return words.say(
        '{name} is a function or a name that is not known. Correct its spelling, or enter the value instead.',
        { name: upper }
      );
    }
  }
  return nestingProblem(rest, words);
}

function nestingProblem(rest: string, words: Words): string | undefined {
  let depth = 0;
  for (const sign of rest) {
    if (sign === '(') depth += 1;
    if (sign === ')') depth -= 1;
    if (depth < 0) break;
    if (depth > DEEPEST) {
      return words.say(
        'The formula nests more than {most} parentheses. Split it over several cells.', { most: DEEPEST }
      );
    }
  }
  if (depth !== 0) return words.say('The parentheses of the formula do not match. Add or remove one.');
  const signs = new RegExp(String.raw`(?:[-+]\s*){${MOST_SIGNS + 1}}`);
  return signs.test(rest)
    ? words.say('The formula has more than {most} signs in a row. Take some out.', { most: MOST_SIGNS })
    : undefined;
}
