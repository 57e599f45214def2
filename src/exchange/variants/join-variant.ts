import {
  referencesOf, SHEET_NAMES, toSnapshot, type Content, type SheetName, type Variant, type VariantPart,
} from '../../schedule/index.ts';
import { formulasIn } from '../../schedule/formula/formulas-in.ts';
import { joinSchedules, type Join, type JoinChoice } from '../join/index.ts';
import { isSameSheet } from './make-variant.ts';

/**
 * The schedule with a variant in it: what the variant changed since it was kept counts, and so does what the schedule
 * changed since. What both changed, each in its own way, is a conflict, where the schedule stands until it is decided.
 * While the sheets of the variant are as they were, it comes in as it is, the order of rows included.
 * @param choices what was decided about conflicts, by their names: `mine` is the schedule, `theirs` the variant.
 */
export function joinVariant(
  schedule: Content, variant: Variant, choices: Readonly<Record<string, JoinChoice>> = {},
): Join {
  const { base, tried } = variant;
  const [was, is] = [asContent(base), asContent(tried)];
  return comesAsItIs(schedule, variant)
    ? { ...joinSchedules(was, is, was), content: withPart(schedule, tried), moved: [] }
    : joinSchedules(schedule, is, was, choices);
}

const asContent = ({ sheets, accepted = [] }: VariantPart): Content => ({ details: {}, sheets, accepted });

const statedIn = ({ sheets }: VariantPart) => SHEET_NAMES.filter((sheet) => sheets[sheet] !== undefined);

/** Whether its sheets are as they were, and no formula of another one would have to follow its rows. */
function comesAsItIs(schedule: Content, { base }: Variant): boolean {
  const stated = new Set(statedIn(base));
  return [...stated].every((sheet) => isSameSheet(sheet, schedule, base)) && !namesAny(schedule, stated);
}

function namesAny(schedule: Content, stated: ReadonlySet<SheetName>): boolean {
  const { sheets } = toSnapshot(schedule).snapshot;
  return SHEET_NAMES.some((sheet) => !stated.has(sheet) && sheets[sheet].some(({ cells }) =>
    formulasIn(sheet, cells).some(([, formula]) =>
      referencesOf(formula).some((each) => each !== undefined && stated.has(each.sheet)))));
}

function withPart(schedule: Content, tried: VariantPart): Content {
  const stated = statedIn(tried);
  return {
    ...schedule,
    sheets: { ...schedule.sheets, ...Object.fromEntries(stated.map((sheet) => [sheet, tried.sheets[sheet]!])) },
    accepted: [
      ...(schedule.accepted ?? []).filter(({ sheet }) => !stated.includes(sheet)), ...tried.accepted ?? [],
    ],
  };
}
