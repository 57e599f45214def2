import type { LoadSchedule } from '../../load-schedule.ts';
import { GONE, grouped, wholeTags, type Cells, type CellValue, type Row } from '../../schedule/index.ts';
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
export interface Unit {
  readonly parts: readonly Part[];
  /** What its parts are told by, each once; their type is the same. */
  readonly identities: readonly Identity[];
  readonly type: string;
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
  const identify = ({ cells }: Row): Identity => {
    const keys = wholeTags(textOf(cells.ref)).map(plainKey);
    return { ...identityOf(cells), ref: keys.find((key) => refs.has(key)) ?? keys.at(-1)! };
  };
  const units = grouped(counted, (row) => {
    const { ref, area, type } = identify(row);
    const source = textOf(row.cells.source);
    if (source !== '') return JSON.stringify([source, type, row.cells.state ?? null]);
    return ref === '' ? row.id : JSON.stringify([ref, area, type]);
  });
  return [...units.values()].map((rows): Unit => {
    const source = textOf(rows[0]!.cells.source);
    const identities = new Map(rows.map(identify).map((each) => [JSON.stringify(each), each]));
    return {
      identities: [...identities.values()], type: plainKey(rows[0]!.cells.type),
      source, lists: source === '' ? [] : listsOf(source),
      parts: rows.map((row) => ({ row, qty: numberOf(schedule.value('devices', row.id, 'qty')) })),
    };
  });
}

/** Whether nothing is left of it but what an earlier list no longer had. */
export function isGone({ parts }: Unit): boolean {
  return parts.every(({ row }) => row.cells.state === GONE);
}

/** The text of a cell; empty where it holds none. */
export function textOf(cell: CellValue | undefined): string {
  return typeof cell === 'string' ? cell : '';
}

function numberOf(value: CellValue): number | null {
  return typeof value === 'number' ? value : null;
}
