import { decisionOf, type TakeoffDecisions } from './decisions.ts';
import type { LineDraft } from './line.ts';
import { lineKey } from './source.ts';

/** The lines of a list that may count twice: its devices are asked about, but for those that were decided on. */
export function askedLines(lines: readonly LineDraft[], why: string, decisions: TakeoffDecisions): LineDraft[] {
  return lines.map((draft) =>
    draft.kind !== 'device' || decisionOf(decisions.lines, lineKey(draft.source)) !== undefined ? draft
      : { ...draft, kind: 'undecided', flag: 'sum', remarks: [why, ...draft.remarks] });
}
