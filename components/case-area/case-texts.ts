import type { CaseLoading, RowLoading } from '../../src/engine/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { fixed, percent, type Quantity, type SafeSide, type Words } from '../../src/words/index.ts';

const NARROW_NO_BREAK_SPACE = '\u202f';

/** What a case is called: its name, its place where it has none, or what stands for the diversity of rows alone. */
export function caseText(schedule: LoadSchedule, place: number, words: Words): string {
  return place < 0 ? words.say('own diversity')
    : schedule.cases.cases[place]!.name || words.say('case {n}', { n: place + 1 });
}

/** What a group is called; loads of none are told too. */
export function groupText(group: string, words: Words): string {
  return group === '' ? words.say('of no group') : group;
}

/** A quantity as a table has it. */
export function quantityText({ value, decimals, unit }: Quantity, words: Words): string {
  return `${words.number(value, decimals).replace('-', '−')}${NARROW_NO_BREAK_SPACE}${unit}`;
}

/** A loading in percent; with decimals where rounding would hide that it is not just 100 %. */
export function loadingText(loading: number | null, words: Words): string {
  // Without the noise of the last digits: 45.5 % is 46 %, not 45 % of 45.499999999999996 %.
  return loading === null ? words.say('unknown') : quantityText(percent(Number(loading.toPrecision(12)), 1), words);
}

/** The loading of a row in a case: at least so much where not all of it is known. */
export function rowLoadingText(
  { isPartial }: Pick<RowLoading, 'isPartial'>, { loading }: Pick<CaseLoading, 'loading'>, words: Words,
): string {
  return `${isPartial && loading !== null ? `≥${NARROW_NO_BREAK_SPACE}` : ''}${loadingText(loading, words)}`;
}

/** A share in percent with one decimal at the most, a limit rounded to its safe side. */
export function shareText(share: number, words: Words, side?: SafeSide): string {
  return `${words.number(Number(fixed(share * 100, 1, side)))}${NARROW_NO_BREAK_SPACE}%`;
}
