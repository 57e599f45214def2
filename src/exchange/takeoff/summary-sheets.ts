import type { Words } from '../../words/index.ts';
import { decisionOf, type TakeoffDecisions } from './decisions.ts';
import type { LineDraft } from './line.ts';
import type { OpenPart } from './part.ts';
import { plainWords } from './plain-words.ts';
import { lineKey } from './source.ts';
import { namesTotal } from './total-words.ts';

const SUMMARY = /\b(?:summary|overview|all|recap|ubersicht|uebersicht|zusammenfassung|zusammenstellung|recapitulatif|recapitulation|synthese|ensemble)\b/;

/**
 * A sheet that adds up the others would count everything twice: its lines are asked about. It is known by its name, or
 * by coming to the sum of two others or more.
 */
export function askOfSummaries(
  drafts: readonly (readonly LineDraft[])[], parts: readonly OpenPart[], decisions: TakeoffDecisions, words: Words,
): LineDraft[] {
  const counted = drafts.map((lines) => lines.reduce((sum, { isTotal, qty }) => isTotal ? sum : sum + (qty ?? 0), 0));
  const all = counted.reduce((sum, each) => sum + each, 0);
  const lists = counted.filter((sum) => sum > 0).length;
  return drafts.flatMap((lines, place) => {
    const { sheet } = parts[place]!.table;
    const isNamed = sheet !== undefined && (namesTotal(sheet) || SUMMARY.test(plainWords(sheet).join(' ')));
    const isSum = lists > 2 && counted[place]! > 0 && Math.abs(2 * counted[place]! - all) < 5e-4;
    if (lists < 2 || !(isNamed || isSum)) return lines;
    const why = isSum ? words.say('This part comes to the sum of all others, {qty}. Take its lines only if they count besides.', { qty: counted[place]! })
      : words.say('By its name the sheet “{sheet}” sums up others. Take its lines only if they count besides.', { sheet: sheet! });
    return lines.map((draft) => draft.kind !== 'device' || decisionOf(decisions.lines, lineKey(draft.source)) !== undefined ? draft
      : { ...draft, kind: 'undecided' as const, flag: 'sum' as const, remarks: [why, ...draft.remarks] });
  });
}
