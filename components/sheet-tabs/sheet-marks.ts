import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { SheetName } from '../../src/schedule/index.ts';

/** What a tab says about its sheet. */
export interface SheetMark {
  readonly severity: 'over' | 'near' | 'incomplete';
  /** Rows with a finding of this severity. */
  readonly rows: number;
}

/** The worst finding of each sheet and the number of rows that have it; notes and accepted findings do not count. */
export function sheetMarks(schedule: LoadSchedule): Map<SheetName, SheetMark> {
  const worst = new Map<SheetName, { severity: SheetMark['severity']; ids: Set<number> }>();
  for (const { severity, sheet, id, accepted } of schedule.findings) {
    if (severity === 'note' || accepted !== undefined) continue;
    const mark = worst.get(sheet);
    if (mark === undefined) worst.set(sheet, { severity, ids: new Set([id]) });
    else if (mark.severity === severity) mark.ids.add(id);
  }
  return new Map([...worst].map(([sheet, { severity, ids }]) => [sheet, { severity, rows: ids.size }]));
}
