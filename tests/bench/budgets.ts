import { BUILD, FIRST_FIGURES, HEAP, LONGEST_STEP, longestOf, undoOf, type Figures } from './figures.ts';
import { KINDS, type Family } from './kinds.ts';
import type { CandidateName } from './peers/index.ts';

/** One promise about speed or memory, and what was measured. */
export interface Budget {
  readonly text: string;
  /** `undefined` where the run did not measure what it takes. */
  readonly value: number | undefined;
  readonly limit: number;
  readonly unit: string;
}

const kindsOf = (family: Family) => KINDS.filter((kind) => kind.family === family && kind.listsFindings !== true)
  .map(({ name }) => name);

/** The budgets of the engine. @param bySize figures by number of device rows. */
export function budgets(bySize: ReadonlyMap<number, Figures>): Budget[] {
  const list: Budget[] = [];
  const own = (rows: number, name: string, who: CandidateName = 'schedule') => bySize.get(rows)?.get(name)?.get(who);
  const over = (value: number | undefined, base: number | undefined) =>
    value === undefined || base === undefined ? undefined : value / base;
  const add = (rows: number, text: string, value: number | undefined, limit: number, unit: string) => {
    if (bySize.has(rows)) list.push({ text: `${rows.toLocaleString('en')} rows: ${text}`, value, limit, unit });
  };
  const against = (rows: number, name: string, part: number) => {
    const share = over(own(rows, name), own(rows, name, 'workbook'));
    add(rows, `${name}, part of the SUMIFS workbook’s time`, share, 1 / part, '');
  };
  const growth = (name: string, times: number) =>
    add(50_000, `${name}, times that at 10,000 rows`, over(own(50_000, name), own(10_000, name)), times, '×');

  for (const name of kindsOf('edit')) against(10_000, name, 500);
  against(10_000, BUILD, 5);
  add(10_000, FIRST_FIGURES, own(10_000, FIRST_FIGURES), 300, 'ms');
  for (const name of kindsOf('paste')) against(10_000, name, 30);
  for (const name of kindsOf('edit')) growth(name, 3);
  add(50_000, BUILD, own(50_000, BUILD), 2_500, 'ms');
  // 200 ms: the longest wait after an input that the Web Vitals measure INP calls good.
  add(50_000, LONGEST_STEP, own(50_000, LONGEST_STEP), 200, 'ms');
  for (const name of kindsOf('paste')) growth(name, 2);
  for (const rows of [10_000, 50_000]) {
    for (const name of kindsOf('row')) {
      const usual = own(rows, name);
      add(rows, name, usual, rows === 10_000 ? 10 : 40, 'ms');
      add(rows, `${longestOf(name)} of 200`, own(rows, longestOf(name)), 5 * (usual ?? 0) + 20, 'ms');
    }
    for (const name of (['edit', 'paste', 'row'] as const).flatMap(kindsOf)) {
      add(rows, `${undoOf(name)}, times the operation`, over(own(rows, undoOf(name)), own(rows, name)), 2, '×');
    }
    add(rows, HEAP, own(rows, HEAP), 3.5, 'KB');
  }
  return list;
}

export function isMet({ value, limit }: Budget): boolean {
  return value === undefined || value <= limit;
}
