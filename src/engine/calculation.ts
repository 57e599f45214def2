import type { ScheduleDocument, SheetName } from '../schedule/index.ts';
import type { CaseTable } from './cases/case-table.ts';
import type { SheetColumns } from './sheet-columns.ts';
import type { Solutions } from './solutions.ts';
import type { TagIndex } from './tag-index.ts';

/** What a document is worked out with. */
export interface Calculation {
  readonly document: ScheduleDocument;
  readonly columns: Readonly<Record<SheetName, SheetColumns>>;
  readonly tags: TagIndex;
  readonly solutions: Solutions;
  readonly cases: CaseTable;
}
