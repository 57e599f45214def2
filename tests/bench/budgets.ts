import { FIRST_FIGURES, FORMULA_AFTER, firstFormula, HEAP, undoOf, type Figures } from './figures.ts';
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
  const loop = (rows: number, name: string, times: number) =>
    add(rows, `${name}, times the plain loop`, over(own(rows, name), own(rows, name, 'loop')), times, '×');

  for (const name of kindsOf('edit')) against(10_000, name, 500);
  for (const name of kindsOf('paste')) against(10_000, name, 30);
  for (const rows of [10_000, 100_000]) {
    for (const name of [...kindsOf('edit'), ...kindsOf('row')]) loop(rows, name, 4);
    loop(rows, FIRST_FIGURES, 6);
    for (const pasted of FORMULA_AFTER) {
      add(rows, firstFormula(pasted), own(rows, firstFormula(pasted)), rows === 10_000 ? 50 : 500, 'ms');
    }
    for (const name of (['edit', 'paste', 'row'] as const).flatMap(kindsOf)) {
      add(rows, `${undoOf(name)}, times the operation`, over(own(rows, undoOf(name)), own(rows, name)), 2, '×');
    }
    add(rows, HEAP, own(rows, HEAP), rows === 10_000 ? 3.5 : 1.5, 'KB');
  }
  return list;
}

export function isMet({ value, limit }: Budget): boolean {
  return value === undefined || value <= limit;
}
