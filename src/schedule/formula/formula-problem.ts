import { KNOWN_FUNCTIONS } from './known-functions.ts';
import { mapReferences } from './reference.ts';

/** Deepest nesting of parentheses that is accepted; far below what exhausts the stack of the formula engine. */
const DEEPEST = 50;
/** Longest row of signs, as in 2 - - 3, that is accepted; for the same reason. */
const MOST_SIGNS = 8;

const CHANGES = 'changes by itself, and a schedule must not. Enter the value instead.';
const PLACES = 'tells where cells stand, which changes when rows move. Refer to the cells themselves.';
/**
 * The formula engine looks these up in cells that stand side by side in it, which those of a schedule need not (3.5.0).
 */
const SIDE_BY_SIDE = 'cannot be used here. Use XLOOKUP, or INDEX with MATCH.';
const REFUSED_FUNCTIONS: Readonly<Record<string, string>> = {
  NOW: CHANGES, TODAY: CHANGES, RAND: CHANGES, RANDBETWEEN: CHANGES,
  ROW: PLACES, COLUMN: PLACES, OFFSET: PLACES, SHEET: PLACES, SHEETS: PLACES, FORMULATEXT: PLACES, ISFORMULA: PLACES,
  VLOOKUP: SIDE_BY_SIDE, HLOOKUP: SIDE_BY_SIDE,
};

/**
 * What keeps a formula, in the form that documents keep, from standing in a schedule: anything that would be read in
 * another way than a person means, or whose value does not follow from the document.
 * @returns one sentence; `undefined` when nothing is found.
 */
export function formulaProblem(formula: string): string | undefined {
  const texts = formula.replaceAll(/"(?:[^"]|"")*"/g, '0');
  if (texts.includes('"')) return 'A quotation mark is missing in the formula. Put texts between two of them.';
  const rest = mapReferences(texts, () => '0').replaceAll('#REF!', '0');
  const foreign = /[!:'#~[\]@$]/.exec(rest);
  if (foreign !== null) {
    return `The formula cannot be read at ${foreign[0]}: refer to cells as D3, D3:D5, types!D3 or [types.D3], not to whole rows or columns.`;
  }
  for (const [, name] of rest.matchAll(/([A-Za-z_][\w.]*)\s*\(/g)) {
    const upper = name!.toUpperCase();
    if (Object.hasOwn(REFUSED_FUNCTIONS, upper)) return `${upper} ${REFUSED_FUNCTIONS[upper]!}`;
    if (!KNOWN_FUNCTIONS.has(upper)) return `${upper} is a function or a name that is not known. Correct its spelling, or enter the value instead.`;
  }
  return nestingProblem(rest);
}

function nestingProblem(rest: string): string | undefined {
  let depth = 0;
  for (const sign of rest) {
    if (sign === '(') depth += 1;
    if (sign === ')') depth -= 1;
    if (depth < 0) break;
    if (depth > DEEPEST) return `The formula nests more than ${DEEPEST} parentheses. Split it over several cells.`;
  }
  if (depth !== 0) return 'The parentheses of the formula do not match. Add or remove one.';
  const signs = new RegExp(String.raw`(?:[-+]\s*){${MOST_SIGNS + 1}}`);
  return signs.test(rest) ? `The formula has more than ${MOST_SIGNS} signs in a row. Take some out.` : undefined;
}
