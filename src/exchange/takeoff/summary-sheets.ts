import type { Words } from '../../words/index.ts';
import { grouped } from '../../schedule/index.ts';
import { askedLines } from './asked-lines.ts';
import type { TakeoffDecisions } from './decisions.ts';
import type { LineDraft } from './line.ts';
import type { OpenPart } from './part.ts';
import { plainKey, plainWords } from './plain-words.ts';
import { namesTotal } from './total-words.ts';

const SUMMARY = /\b(?:summary|overview|all|recap|ubersicht|uebersicht|zusammenfassung|zusammenstellung|recapitulatif|recapitulation|synthese|ensemble)\b/;

/** What a list counts, before anything is decided. */
interface Counted {
  readonly place: number;
  readonly qty: number;
  readonly lines: number;
  readonly hasAreas: boolean;
  /** By what devices are called. */
  readonly byName: ReadonlyMap<string, number>;
}

/**
 * A list that adds up others would count everything twice: its lines are asked about. It is known by the name of its
 * sheet, or by coming to the sum of the others, of all sheets or of its own.
 */
export function askOfSummaries(
  drafts: readonly (readonly LineDraft[])[], parts: readonly OpenPart[], decisions: TakeoffDecisions, words: Words,
): LineDraft[][] {
  const lists = drafts.map(countedIn).filter(({ qty }) => qty > 0);
  return drafts.map((lines, place) => {
    const own = lists.find((list) => list.place === place);
    const { table, table: { sheet } } = parts[place]!;
    const isNamed = sheet !== undefined && (namesTotal(sheet) || SUMMARY.test(plainWords(sheet).join(' ')));
    const others = lists.filter((list) => list !== own);
    const beside = others.filter((list) => parts[list.place]!.table === table);
    const isSum = own !== undefined && (isSumOf(own, others, false) || isSumOf(own, beside, true));
    if (lists.length < 2 || !(isNamed || isSum)) return [...lines];
    const why = isSum ? words.say('This part comes to the sum of all others, {qty}. Take its lines only if they count besides.', { qty: own.qty })
      : words.say('By its name the sheet “{sheet}” sums up others. Take its lines only if they count besides.', { sheet: sheet! });
    return askedLines(lines, why, decisions);
  });
}

function countedIn(drafts: readonly LineDraft[], place: number): Counted {
  const lines = drafts.filter(({ isTotal, qty }) => !isTotal && (qty ?? 0) !== 0);
  const byName = [...grouped(lines, ({ names }) => plainKey(names.join(' ')))].map(([name, of]) => [name, sumOf(of)] as const);
  const hasAreas = lines.some(({ cells }) => cells.area !== undefined);
  return { place, qty: sumOf(lines), lines: lines.length, hasAreas, byName: new Map(byName) };
}

/**
 * Whether a list comes to the sum of others: of two or more in all; of a single one, to which it may be equal by chance
 * or as the same storey, by each name in fewer lines, or on one sheet without its places.
 */
function isSumOf(own: Counted, others: readonly Counted[], isSameSheet: boolean): boolean {
  if (others.length === 0 || !isSame(own.qty, sumOf(others))) return false;
  if (others.length > 1) return true;
  const [other] = others;
  const isShorter = own.lines < other!.lines && own.byName.size === other!.byName.size
    && [...own.byName].every(([name, qty]) => isSame(qty, other!.byName.get(name)));
  return isShorter || (isSameSheet && !own.hasAreas && other!.hasAreas);
}

function sumOf(counted: readonly { readonly qty: number | null }[]): number {
  return counted.reduce((sum, { qty }) => sum + (qty ?? 0), 0);
}

function isSame(one: number, other: number | undefined): boolean {
  return other !== undefined && Math.abs(one - other) < 5e-4;
}
