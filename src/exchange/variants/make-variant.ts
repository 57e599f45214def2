import {
  referencesOf, SHEET_NAMES, toSnapshot, type Cells, type Content, type SheetName, type Variant, type VariantPart,
} from '../../schedule/index.ts';
import { formulasIn } from '../../schedule/formula/formulas-in.ts';
import { isSameData } from '../../schedule/compare/index.ts';

/** What a person says of a variant. */
export type VariantAbout = Pick<Variant, 'name' | 'note' | 'date'>;

/**
 * The variant that was tried out: the sheets that differ from the schedule with which it began, and those that
 * formulas of these name, so that each part can be read by itself. Details, revisions and everything else that stands
 * beside the sheets are no part of it.
 * @param base the schedule with which it began.
 * @param tried the whole of it as it was tried out.
 */
export function makeVariant(base: Content, tried: Content, about: VariantAbout): Variant {
  const stated = new Set(SHEET_NAMES.filter((sheet) => !isSameSheet(sheet, base, tried)));
  for (const content of [base, tried]) addNamed(content, stated);
  return { ...about, base: partOf(base, stated), tried: partOf(tried, stated) };
}

/** Whether the rows of a sheet and their acceptances are the same in two schedules. */
export function isSameSheet(sheet: SheetName, one: Content | VariantPart, other: Content | VariantPart): boolean {
  const [own, others] = [one.sheets[sheet] ?? [], other.sheets[sheet] ?? []];
  return own.length === others.length && own.every((cells, row) => isSameRow(cells, others[row]!))
    && isSameData(acceptedOf(one, sheet), acceptedOf(other, sheet));
}

function isSameRow(one: Cells, other: Cells): boolean {
  const filled = (cells: Cells) => Object.keys(cells).filter((key) => cells[key] !== null);
  const keys = filled(one);
  return keys.length === filled(other).length
    && keys.every((key) => one[key] === other[key] || isSameData(one[key], other[key]));
}

const acceptedOf = ({ accepted = [] }: Content | VariantPart, sheet: SheetName) =>
  accepted.filter((each) => each.sheet === sheet);

/** Adds the sheets that formulas of stated ones name, and those that formulas of these name. */
function addNamed(content: Content, stated: Set<SheetName>): void {
  const { sheets } = toSnapshot(content).snapshot;
  // A set gives what is added while it is gone through, too.
  for (const sheet of stated) {
    for (const { cells } of sheets[sheet]) {
      for (const [, formula] of formulasIn(sheet, cells)) {
        for (const each of referencesOf(formula)) if (each !== undefined) stated.add(each.sheet);
      }
    }
  }
}

function partOf({ sheets, accepted = [] }: Content, stated: ReadonlySet<SheetName>): VariantPart {
  const own = accepted.filter(({ sheet }) => stated.has(sheet));
  return {
    sheets: Object.fromEntries(SHEET_NAMES.filter((sheet) => stated.has(sheet))
      .map((sheet) => [sheet, sheets[sheet] ?? []])),
    ...(own.length === 0 ? {} : { accepted: own }),
  };
}
