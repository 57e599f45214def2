import { explain, figureOf, lackingBehind, roomIn, type Explanation, type Room } from './engine/index.ts';
import { explainStatus, type ChecksMade } from './findings/index.ts';
import type { LoadSchedule } from './load-schedule.ts';
import { columnOf, isStatus, type SheetName } from './schedule/index.ts';

// Beside the schedule and not in it, since a page shows figures before anybody asks why they are what they are.

/**
 * Why the figure in a cell is what it is.
 * @returns `undefined` where the row is not there, or the cell holds what was entered.
 */
export function explainCell(
  schedule: LoadSchedule, sheet: SheetName, id: number, key: string,
): Explanation | undefined {
  const column = columnOf(sheet, key);
  if (isStatus(column)) {
    const standing = schedule.standing(sheet, id);
    if (standing === null) return undefined;
    const { deciding, made } = schedule.statusBasis(sheet, id);
    const waiting = made.waiting.map((each) => awaited(schedule, sheet, id, each));
    return explainStatus(sheet, standing, deciding, { ...made, waiting }, schedule.words);
  }
  return explain(schedule.document, schedule.figures, sheet, id, key, schedule.words);
}

/** What a check waits for, by its name and by its row where that is another: «Inrush of the relay output K1.3». */
function awaited(
  { document, figures, words }: LoadSchedule, sheet: SheetName, id: number, { key, lacks }: ChecksMade['waiting'][number],
): string {
  for (const place of lacks) {
    const found = lackingBehind(document, figures, place);
    if (found === undefined) continue;
    const [other, row, lacking] = found;
    return other === sheet && row === id ? words.text(columnOf(sheet, lacking).title)
      : figureOf(document, other, row, lacking, words);
  }
  return words.text(columnOf(sheet, key).title);
}

/**
 * How many more of the same an output or the place of a device row takes, or a supply, run or branch of a type.
 * @param typeId id of the row of that type.
 * @returns `undefined` where that is not known, or no such question.
 */
export function roomFor(schedule: LoadSchedule, sheet: SheetName, id: number, typeId?: number): Room | undefined {
  const isOver = (place: SheetName, at: number) => schedule.value(place, at, 'status') === 'over';
  return roomIn(schedule.document, schedule.figures, sheet, id, typeId, schedule.words, isOver);
}
