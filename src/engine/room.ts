import { alternatingCurrent, demandCurrent, drawFromPower, exceeds, roomForMore } from '../electrical/index.ts';
import { tagOf, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import type { Workbook } from './workbook.ts';

/** How many more of the same something takes. A count is `null` where any number fits, as one more takes nothing. */
export interface Room {
  /** Up to what it may carry: beyond it is over. */
  readonly count: number | null;
  /** Up to its target, or the reserve of a branch: beyond it is near the limit. */
  readonly withinTarget: number | null;
  readonly sentence: string;
}

/** Something that more of the same would use up; NaN is unknown. */
interface Limit {
  readonly name: string;
  readonly most: number;
  readonly taken: number;
  readonly each: number;
}

interface Question {
  /** What there may be more of, for the sentence. */
  readonly of: string;
  /** Those that are not known are not reckoned with, apart from the first. */
  readonly limits: readonly Limit[];
  /** The first limit again, as far as the design aims to go. */
  readonly target: Limit;
  readonly isPartial: boolean;
  /** What else to say. */
  readonly remark?: string;
}

/**
 * How many more of the same an output, a supply or a branch takes: `⌊(limit − taken) ÷ each⌋` for each of its limits,
 * the least of them.
 *
 * @param id row of `outputs`, `supplies` or `branches`
 * @param typeId for supplies and branches the device type of which there may be more; an output takes more of its own
 *   load
 * @returns counts and one sentence that says them; `undefined` for another sheet, without a type where one is needed,
 *   and where what one takes or what may be taken is not known
 */
export function roomIn(
  document: ScheduleDocument, book: Workbook, sheet: SheetName, id: number, typeId?: number,
): Room | undefined {
  const question = sheet === 'outputs' ? ofOutput(book, id)
    : typeId === undefined ? undefined
      : sheet === 'supplies' ? ofSupply(document, book, id, typeId)
        : sheet === 'branches' ? ofBranch(document, book, id, typeId) : undefined;
  return question && answer(question);
}

function ofOutput(book: Workbook, id: number): Question {
  const own = (key: string) => book.number('outputs', id, key);
  const contact = book.target('outputs', id, 'contact');
  const steady = {
    name: 'the rating', most: own('rating'), taken: own('current'),
    each: alternatingCurrent(1, own('power'), own('voltage'), own('powerFactor')) ?? NaN,
  };
  const making = {
    name: 'the inrush that the contact may make', most: book.number('contacts', contact, 'inrush'),
    taken: own('inrushTotal'), each: own('inrush'),
  };
  return {
    of: 'of this load', limits: [steady, making], isPartial: false,
    target: { ...steady, name: 'the target', most: steady.most * own('target') },
    ...(isKnown(making) ? {} : { remark: ' Its inrush is not known and not reckoned with.' }),
  };
}

function ofSupply(document: ScheduleDocument, book: Workbook, id: number, typeId: number): Question {
  const own = (key: string) => book.number('supplies', id, key);
  const type = (key: string) => book.number('types', typeId, key);
  const draw = Number.isNaN(type('draw')) ? drawFromPower(type('power'), own('voltage')) ?? NaN : type('draw');
  const diversity = Number.isNaN(type('diversity')) ? 1 : type('diversity');
  const usable = {
    name: 'what may be used', most: own('usable'), taken: own('demand'), each: demandCurrent(draw / 1000, diversity),
  };
  return {
    of: ofType(document, typeId), limits: [usable, { ...usable, name: 'the rating of its fuse', most: own('fuse') }],
    target: { ...usable, name: 'the target', most: usable.most * own('target') },
    isPartial: book.isPartial('supplies', id, 'demand'),
    ...(Number.isNaN(own('fullUpTo')) ? {} : { remark: ' That more load makes its enclosure warmer is not reckoned with.' }),
  };
}

function ofBranch(document: ScheduleDocument, book: Workbook, id: number, typeId: number): Question {
  const own = (key: string) => book.number('branches', id, key);
  const limit = {
    name: 'the limit', most: own('limit'), taken: own('points'), each: book.number('types', typeId, 'points'),
  };
  return {
    of: ofType(document, typeId), limits: [limit],
    target: { ...limit, name: 'the reserve', most: own('free') + limit.taken },
    isPartial: book.isPartial('branches', id, 'points'),
  };
}

function ofType(document: ScheduleDocument, typeId: number): string {
  const row = document.row('types', typeId);
  return `of the type ${row === undefined ? '' : tagOf('types', row)}`.trimEnd();
}

const isKnown = ({ most, taken, each }: Limit): boolean => !Number.isNaN(most + taken + each);

function roomBelow({ most, taken, each }: Limit): number | null {
  return exceeds(taken, most) ? 0 : roomForMore(most, taken, each);
}

/** The limit that leaves the least room. */
function tightest(limits: readonly Limit[]): Limit {
  return limits.reduce((least, other) => (roomBelow(other) ?? Infinity) < (roomBelow(least) ?? Infinity) ? other : least);
}

function answer({ of, limits, target, isPartial, remark = '' }: Question): Room | undefined {
  if (!isKnown(limits[0]!) || !isKnown(target)) return undefined;
  const known = limits.filter(isKnown);
  const limit = tightest(known);
  const within = tightest([limit, target]);
  const [count, withinTarget] = [roomBelow(limit), roomBelow(within)];
  const most = isPartial ? 'at most ' : '';
  const said = (number: number) => number === 0 ? 'none' : `${most}${number}`;
  const sentence = count === null || withinTarget === null ? `One more ${of} takes nothing: any number fits.`
    : count === 0 ? `Room for no more ${of} before ${limit.name}.`
      : within === limit ? `Room for ${said(count)} more ${of} before ${limit.name}.`
        : `Room for ${said(count)} more ${of} before ${limit.name}, ${said(withinTarget)} before ${target.name}.`;
  return { count, withinTarget, sentence: sentence + remark };
}
