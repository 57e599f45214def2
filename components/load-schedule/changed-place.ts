import type { LoadSchedule } from '../../src/load-schedule.ts';
import { SCHEMA, type Change } from '../../src/schedule/index.ts';
import type { Place } from '../look/index.ts';

/**
 * The first cell that some changes reached; of a row that was put in or moved its tag, of one that went that which
 * follows.
 */
export function changedPlace({ document }: LoadSchedule, changes: readonly Change[]): Place | undefined {
  for (const change of changes) {
    if (change.op === 'set') return { sheet: change.sheet, id: change.id, key: change.key };
    if (!('sheet' in change)) continue;
    const { sheet } = change;
    const rows = document.rows(sheet);
    const id = change.op === 'accept' ? change.id : rows[Math.min(change.op === 'move' ? change.to : change.at, rows.length - 1)]?.id;
    if (id !== undefined) return { sheet, id, key: SCHEMA[sheet].tag };
  }
  return undefined;
}
