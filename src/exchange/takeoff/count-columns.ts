import { looksLikeArea } from './area-words.ts';
import { areRivals, placeOf } from './count-headings.ts';
import { isStatus } from './superseded-words.ts';
import { namesTotal } from './total-words.ts';

/** A column that may hold counts. */
export interface CountColumn {
  readonly heading: string;
  /** Its heading says that it counts. */
  readonly isSaid: boolean;
  /** Its values by the place of their line; `undefined` for what is no plain count. */
  readonly counts: readonly (number | undefined)[];
}

/** Which of several columns hold counts, and which their total. */
export interface CountChoice<Column> {
  readonly counts: readonly Column[];
  /** Counts beside those of a whole list, as «Qty option»: whether they count besides only a person knows. */
  readonly asked: readonly Column[];
  readonly total: Column | undefined;
}

/**
 * Chooses the columns of counts of a list with headings: one alone, or one for each storey, room or type with a total
 * of the line. None where counts of several revisions stand side by side, of which only a person knows which to take.
 */
export function chooseCounts<Column extends CountColumn>(columns: readonly Column[]): CountChoice<Column> {
  // What is there already, an option or a spare may count besides.
  const aside = columns.filter(({ heading }) => isStatus(heading));
  const rest = columns.filter((column) => !aside.includes(column));
  const none = { counts: [], asked: [], total: undefined };
  if (rest.length === 0) return { ...none, asked: aside };
  const sum = aside.length === 0 || rest.length < 2 ? undefined
    : rest.find((column) => isSum(column, columns.filter((each) => each !== column)));
  const { counts, asked, total } = sum === undefined ? chooseMain(rest)
    : { counts: rest.filter((column) => column !== sum), asked: [], total: sum };
  return counts.length === 0 || areRivals(counts.length > 1 ? counts.map(({ heading }) => heading) : []) ? none
    : { counts, asked: [...asked, ...aside], total };
}

function chooseMain<Column extends CountColumn>(columns: readonly Column[]): CountChoice<Column> {
  const said = columns.filter(({ isSaid }) => isSaid);
  const plain = said.filter(({ heading }) => placeOf(heading) === '');
  const isAlone = said.length === 1 && !columns.some((column) => !column.isSaid && looksLikeArea(column.heading));
  const bare = plain.length === 0 && isAlone ? said : plain;
  const parts = columns.filter((column) => !bare.includes(column)
    && (column.isSaid || plain.length > 0 || said.length === 0 || looksLikeArea(column.heading)));
  const others = parts.filter(({ isSaid }) => isSaid);
  const isRival = parts.length > 1 && areRivals(parts.map(({ heading }) => heading));
  if (bare.length === 0) {
    // «All» and «Σ» may be the sum of the others without a word for it.
    const sum = parts.findLast((column) => parts.length > 2 && isSum(column, parts.filter((part) => part !== column)));
    if (isRival) return { counts: [], asked: [], total: undefined };
    return { counts: parts.filter((part) => part !== sum), asked: sum === undefined ? [] : [sum], total: undefined };
  }
  const total = isRival ? undefined : bare.find((column) => isTotal(column, parts));
  if (total !== undefined) return { counts: parts, asked: [], total };
  const count = bare.find(({ heading }) => !namesTotal(heading)) ?? bare[0]!;
  const rest = [...bare.filter((column) => column !== count), ...others];
  const sum = rest.find((column) => isSum(column, [count]) && namesTotal(column.heading));
  return { counts: [count], asked: rest.filter((column) => column !== sum), total: sum };
}

/** A column is a total of others when it adds them up, or is called so above counts of storeys and rooms. */
function isTotal(column: CountColumn, parts: readonly CountColumn[]): boolean {
  if (parts.length < 2) return false;
  return isSum(column, parts) || (namesTotal(column.heading)
    && parts.every(({ heading, isSaid }) => isSaid || looksLikeArea(heading)));
}

/** Whether a column has the sum of others in most lines, one at least. */
function isSum({ counts }: CountColumn, parts: readonly CountColumn[]): boolean {
  let [equal, other] = [0, 0];
  for (const [line, count] of counts.entries()) {
    const values = parts.map((part) => part.counts[line]).filter((value) => value !== undefined);
    if (count === undefined || values.length === 0) continue;
    if (Math.abs(values.reduce((sum, value) => sum + value, 0) - count) < 5e-4) equal += 1;
    else other += 1;
  }
  return equal > other;
}
