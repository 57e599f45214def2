import type { LoadSchedule } from '../../load-schedule.ts';
import { GONE, wholeTag, type Cells, type CellValue, type Row } from '../../schedule/index.ts';
import { grouped } from '../grouped.ts';
import { listsOf } from '../takeoff/index.ts';
import { plainKey } from '../takeoff/plain-words.ts';

/** What of a schedule is held against a list. */
export type RevisedSchedule = Pick<LoadSchedule, 'document' | 'value'>;

/** A device row, and the quantity that it is worth; `null` where that is not known. */
export interface Part {
  readonly row: Row;
  readonly qty: number | null;
}

/** What one row of a list is told by: texts as they are compared, empty where there is none. */
export interface Identity {
  readonly ref: string;
  readonly area: string;
  readonly type: string;
}

/** Device rows that were one row of a list, and that sharing out or a person has parted since. */
export interface Unit extends Identity {
  readonly parts: readonly Part[];
  /** Where it was counted; empty for rows that no list is known to have. */
  readonly source: string;
  /** Names of the lists in its source. */
  readonly lists: readonly string[];
}

/** What a row of a list is told by. */
export function identityOf({ ref, area, type }: Cells): Identity {
  return { ref: plainKey(ref), area: plainKey(area), type: plainKey(type) };
}

/**
 * The device rows of a schedule as they once were counted. Parts of one row have the same source, or, where none is
 * known, a ref that was made of one. A row without a type is nothing that a list counts.
 * @param refs of the list, as they are compared: what it names itself is no part.
 */
export function unitsOf(schedule: RevisedSchedule, refs: ReadonlySet<string>): Unit[] {
  const counted = schedule.document.rows('devices').filter(({ cells }) => plainKey(cells.type) !== '');
  const ownRef = (ref: CellValue | undefined) => {
    const own = plainKey(ref);
    return own === '' || refs.has(own) ? own : plainKey(wholeTag(ref as string));
  };
  const units = grouped(counted, ({ id, cells }) => {
    const [source, ref] = [textOf(cells.source), ownRef(cells.ref)];
    return JSON.stringify([plainKey(cells.type), plainKey(cells.area), source, ref, source === '' && ref === '' ? id : 0]);
  });
  return [...units.values()].map((rows): Unit => {
    const { cells } = rows[0]!;
    const source = textOf(cells.source);
    return {
      ...identityOf(cells), ref: ownRef(cells.ref), source, lists: source === '' ? [] : listsOf(source),
      parts: rows.map((row) => ({ row, qty: numberOf(schedule.value('devices', row.id, 'qty')) })),
    };
  });
}

/** Whether nothing is left of it but what an earlier list no longer had. */
export function isGone({ parts }: Unit): boolean {
  return parts.every(({ row }) => row.cells.state === GONE);
}

function textOf(cell: CellValue | undefined): string {
  return typeof cell === 'string' ? cell : '';
}

function numberOf(value: CellValue): number | null {
  return typeof value === 'number' ? value : null;
}
