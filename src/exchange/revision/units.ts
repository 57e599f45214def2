import type { LoadSchedule } from '../../load-schedule.ts';
import { GONE, grouped, wholeTags, type Cells, type CellValue, type Row } from '../../schedule/index.ts';
import { listsOf } from '../takeoff/index.ts';
import { plainKey } from '../takeoff/plain-words.ts';
import { calledIn } from '../takeoff/source-text.ts';

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
  /** What its parts are told by, each once. */
  readonly identities: readonly Identity[];
  /** What the list that it was counted in called it; what it is told by where its source does not say it. */
  readonly called: readonly Identity[];
  /** Its type as the list called it. */
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
  const calledOf = (row: Row) => {
    const called = calledIn(textOf(row.cells.source));
    return called === undefined ? identify(row) : identityOf(called);
  };
  const units = grouped(counted, (row) => {
    const { ref, area, type } = calledOf(row);
    const source = textOf(row.cells.source);
    if (source !== '') return JSON.stringify([source, type, row.cells.state ?? null]);
    return ref === '' ? row.id : JSON.stringify([ref, area, type]);
  });
  return [...units.values()].map((rows): Unit => {
    const source = textOf(rows[0]!.cells.source);
    const called = distinct(rows.map(calledOf));
    return {
      identities: distinct(rows.map(identify)), called, type: called[0]!.type,
      source, lists: source === '' ? [] : listsOf(source),
      parts: rows.map((row) => ({ row, qty: numberOf(schedule.value('devices', row.id, 'qty')) })),
    };
  });
}

function distinct(identities: readonly Identity[]): Identity[] {
  return [...new Map(identities.map((each) => [JSON.stringify(each), each])).values()];
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
