import type { Finding } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import {
  isAcceptanceOf, SHEET_NAMES, tagOf, type Acceptance, type Row, type RowAcceptance, type SheetName,
} from '../../schedule/index.ts';
import { compareLists, type MatchedRows } from '../../schedule/compare/index.ts';

/** What became of the acceptance of a finding. */
export interface AcceptanceChange {
  /** `lapsed`: it is kept and holds no longer, as the finding grew worse or is gone; `restored`: it holds again. */
  readonly kind: 'added' | 'withdrawn' | 'changed' | 'lapsed' | 'restored';
  readonly acceptance: Acceptance;
  /** What the finding that it is meant for says now; `null` where there is none. */
  readonly message: string | null;
}

/** An acceptance of one of both schedules. */
interface Entry {
  readonly acceptance: Acceptance;
  /** Without the tag, which its row may change. */
  readonly own: RowAcceptance;
  /** Id that its row has in the schedule after; a number that no row has where it is not there. */
  readonly id: number;
  /** Of its row, rule and column. */
  readonly name: string;
  readonly isHolding: boolean;
}

const KINDS = { added: 'added', removed: 'withdrawn', changed: 'changed' } as const;

/** Which acceptances were added, withdrawn or changed, and which of the others lapsed or hold again. */
export function compareAcceptances(
  before: LoadSchedule, after: LoadSchedule, matched: Readonly<Record<SheetName, MatchedRows>>,
): AcceptanceChange[] {
  const ids = new Map(SHEET_NAMES.flatMap((sheet) =>
    matched[sheet].pairs.map((pair) => [`${sheet} ${pair.before.id}`, pair.after.id] as const)));
  const olds = entriesOf(before, (sheet, id) => ids.get(`${sheet} ${id}`) ?? -1 - id);
  const presents = entriesOf(after, (_sheet, id) => id);
  const changes = compareLists(olds, presents, ({ name }) => name, ({ own }) => own);
  const change = (kind: AcceptanceChange['kind'], { acceptance, own, id }: Entry): AcceptanceChange =>
    ({ kind, acceptance, message: findingOf(after, acceptance.sheet, id, own)?.message ?? null });

  const told = new Set(changes.map((each) => each.after));
  const held = new Set(olds.filter(({ isHolding }) => isHolding).map(({ name }) => name));
  return [
    ...changes.map((each) => change(KINDS[each.kind], (each.after ?? each.before)!)),
    ...presents.filter((present) => !told.has(present) && held.has(present.name) !== present.isHolding)
      .map((present) => change(present.isHolding ? 'restored' : 'lapsed', present)),
  ];
}

/** @param idOf the id that a row has in the schedule after. */
function entriesOf(schedule: LoadSchedule, idOf: (sheet: SheetName, id: number) => number): Entry[] {
  const nameOf = (sheet: SheetName, row: number | string, { rule, key }: RowAcceptance) =>
    [sheet, row, rule, key].join('\n');
  const attached = (sheet: SheetName, row: Row) => (row.accepted ?? []).map((own): Entry => {
    const id = idOf(sheet, row.id);
    const isHolding = findingOf(schedule, sheet, row.id, own)?.accepted !== undefined;
    return { acceptance: { sheet, tag: tagOf(sheet, row), ...own }, own, id, name: nameOf(sheet, id, own), isHolding };
  });
  const unattached = schedule.document.unattached.map((each): Entry =>
    ({ acceptance: each, own: each, id: -1, name: nameOf(each.sheet, `“${each.tag}”`, each), isHolding: false }));
  const ofRows = SHEET_NAMES.flatMap((sheet) => schedule.rows(sheet).flatMap((row) => attached(sheet, row)));
  return [...ofRows, ...unattached];
}

function findingOf(
  schedule: LoadSchedule, sheet: SheetName, id: number, acceptance: RowAcceptance,
): Finding | undefined {
  return schedule.findingsOf(sheet, id).find((finding) => isAcceptanceOf(acceptance, finding));
}
