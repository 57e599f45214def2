import { STANDINGS, type Standing, type StatusMove } from '../../src/findings/finding.ts';
import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import { tagOf, type Change, type Row, type SheetName } from '../../src/schedule/index.ts';
import { rowName } from '../look/index.ts';

/** A row that an action had stand otherwise, by its name; one that came stood nowhere, and one that went does. */
export interface RowMove extends StatusMove {
  readonly tag: string;
}

const keyOf = (sheet: SheetName, id: number) => `${sheet} ${id}`;

function inserted(changes: readonly Change[]): Map<string, { readonly sheet: SheetName; readonly row: Row }> {
  return new Map(changes.flatMap((change) => change.op === 'insert'
    ? change.rows.map((row) => [keyOf(change.sheet, row.id), { sheet: change.sheet, row }] as const) : []));
}

/** Whether a row was blank: each of its cells is emptied by what takes the action back. */
function wasBlank({ cells }: Row, id: number, sheet: SheetName, inverse: readonly Change[]): boolean {
  const emptied = new Set(inverse.flatMap((change) =>
    change.op === 'set' && change.sheet === sheet && change.id === id && change.value === null ? [change.key] : []));
  return Object.entries(cells).every(([key, value]) => value === null || emptied.has(key));
}

const isTold = ({ from, to }: StatusMove) => from !== to && !((from ?? 'ok') === 'ok' && (to ?? 'ok') === 'ok');

/**
 * The rows that stand otherwise than before an action, the worst first. Of rows that came or went those are left out
 * that are within limits.
 */
export function rowMoves(schedule: LoadSchedule, { moved = [], changes, inverse }: ScheduleEvent): RowMove[] {
  const [came, went] = [inserted(changes), inserted(inverse)];
  const known = new Map(moved.map((move) => [keyOf(move.sheet, move.id), move]));
  // The number of a row that went may be that of one that came: what stands alike did move then.
  for (const [key, { sheet, row: { id } }] of came) {
    const to = went.has(key) && !known.has(key) ? schedule.standing(sheet, id) : null;
    if (to !== null) known.set(key, { sheet, id, from: to, to });
  }
  const moves = [...known].flatMap(([key, { sheet, id, from, to }]): RowMove[] => {
    const row = schedule.document.row(sheet, id);
    const gone = went.get(key);
    const left = gone && { sheet, id, from, to: null, tag: tagOf(sheet, gone.row) || schedule.words.say('a row without a tag') };
    if (row === undefined) return left === undefined ? [] : [left];
    const isNew = came.has(key) || wasBlank(row, id, sheet, inverse);
    const now: RowMove = { sheet, id, from: isNew ? null : from, to, tag: rowName(schedule, { sheet, id }) };
    return left !== undefined && came.has(key) ? [left, now] : [now];
  });
  return moves.filter(isTold).sort((one, other) => rank(one.to) - rank(other.to));
}

/** What is there no more comes last. */
const rank = (standing: Standing | null) => standing === null ? STANDINGS.length : STANDINGS.indexOf(standing);
