import type { Finding } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { isAcceptanceOf, SHEET_NAMES, tagOf, type Acceptance, type SheetName } from '../../schedule/index.ts';
import { compareLists } from './compare-lists.ts';
import type { MatchedRows } from './match-rows.ts';

/** What became of the acceptance of a finding. */
export interface AcceptanceChange {
  /** `lapsed`: it is kept and holds no longer, as the finding grew worse or is gone; `restored`: it holds again. */
  readonly kind: 'added' | 'withdrawn' | 'changed' | 'lapsed' | 'restored';
  readonly acceptance: Acceptance;
  /** What the finding that it is meant for says now; `null` where there is none. */
  readonly message: string | null;
}

const KINDS = { added: 'added', removed: 'withdrawn', changed: 'changed' } as const;

/** Which acceptances were added, withdrawn or changed, and which of the others lapsed or hold again. */
export function compareAcceptances(
  before: LoadSchedule, after: LoadSchedule, matched: Readonly<Record<SheetName, MatchedRows>>,
): AcceptanceChange[] {
  const tags = new Map(SHEET_NAMES.flatMap((sheet) =>
    matched[sheet].pairs.map((pair) => [`${sheet} ${tagOf(sheet, pair.before)}`, tagOf(sheet, pair.after)] as const)));
  // An acceptance goes with its row when that gets another tag.
  const followed = (old: Acceptance): Acceptance => ({ ...old, tag: tags.get(`${old.sheet} ${old.tag}`) ?? old.tag });
  const [olds, presents] = [before.content().accepted ?? [], after.content().accepted ?? []];
  const nameOf = ({ sheet, tag, rule, key }: Acceptance) => [sheet, tag, rule, key].join('\n');
  const changes = compareLists(olds.map(followed), presents, nameOf);
  const change = (kind: AcceptanceChange['kind'], acceptance: Acceptance): AcceptanceChange =>
    ({ kind, acceptance, message: findingOf(after, acceptance)?.message ?? null });

  const told = new Set(changes.map((each) => each.after));
  const held = new Set(olds.filter((old) => isHolding(before, old)).map((old) => nameOf(followed(old))));
  return [
    ...changes.map((each) => change(KINDS[each.kind], (each.after ?? each.before)!)),
    ...presents.filter((present) => !told.has(present)).flatMap((present) => {
      const [was, is] = [held.has(nameOf(present)), isHolding(after, present)];
      return was === is ? [] : [change(was ? 'lapsed' : 'restored', present)];
    }),
  ];
}

function findingOf({ findings }: LoadSchedule, acceptance: Acceptance): Finding | undefined {
  return findings.find((finding) => isAcceptanceOf(acceptance, finding));
}

function isHolding(schedule: LoadSchedule, acceptance: Acceptance): boolean {
  return findingOf(schedule, acceptance)?.accepted !== undefined;
}
