import type { CellExplanation } from '../../../components/cell-explanation/cell-explanation.ts';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { SCHEMA, type SheetName } from '../../../src/schedule/index.ts';
import { part } from '../element-mount.ts';

/**
 * Has every column of some rows, counted from 1, explained below the rows, and looks at each explanation. Only to the
 * last cell goes the selection too: to draw the grid anew takes longer than all that is looked at.
 */
export async function explainEach(
  element: LoadScheduleElement, sheet: SheetName, rows: readonly number[], look: (explanation: ShadowRoot) => void
): Promise<void> {
  const explanation = part(element, 'elv-cell-explanation') as CellExplanation;
  const seen = async (): Promise<void> => {
    await explanation.updateComplete;
    look(explanation.shadowRoot!);
  };
  for (const { key } of SCHEMA[sheet].columns) {
    for (const row of rows) {
      explanation.place = { sheet, id: element.schedule.rows(sheet)[row - 1]!.id, key };
      await seen();
    }
  }
  await element.select(sheet, rows.at(-1)!, SCHEMA[sheet].columns.at(-1)!.key);
  await seen();
}
