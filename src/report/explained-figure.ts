import { explanationText } from '../engine/index.ts';
import { explainCell } from '../explanations.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import type { SheetName } from '../schedule/index.ts';

/** Why a figure is what it is, for programs. */
export interface ExplainedFigure {
  readonly sheet: SheetName;
  /** Number of the row in its sheet, from 1. */
  readonly row: number;
  readonly key: string;
  /** Name of the figure. */
  readonly title: string;
  /** The rule in words. */
  readonly words: string;
  /** The rule with the numbers in it; `null` where it is no calculation. */
  readonly numbers: string | null;
  readonly result: string;
  readonly source: string;
  /** All of it in one line. */
  readonly text: string;
}

/**
 * Explains the figure in a cell.
 * @returns `undefined` for a cell that holds a text or nothing.
 */
export function explainedFigure(
  schedule: LoadSchedule, sheet: SheetName, id: number, key: string,
): ExplainedFigure | undefined {
  const explanation = explainCell(schedule, sheet, id, key);
  if (explanation === undefined) return undefined;
  const { title, words, numbers = null, result, source } = explanation;
  const row = schedule.document.position(sheet, id) + 1;
  return { sheet, row, key, title, words, numbers, result, source, text: explanationText(explanation) };
}
