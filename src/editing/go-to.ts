import type { LoadSchedule } from '../load-schedule.ts';
import { columnPlace, SCHEMA, SHEET_NAMES, tagOf, type SheetName } from '../schedule/index.ts';
import type { FoundCell } from './find-cells.ts';

/** Somewhere to go: a sheet, a row by its tag, or a cell by letter and number. */
export interface Target extends FoundCell {
  /** Id of the row; -1 for the sheet itself. */
  readonly id: number;
  /** What it is called. */
  readonly name: string;
  /** The sheet on which it is, and the number of the row. */
  readonly about: string;
}

const ADDRESS = /^(?:(\w+)[!.])?\$?([A-Za-z]{1,2})\$?(\d{1,7})$/;

/**
 * Where a typed text may lead, the best first: what is called just so, then what begins with it, then what holds it.
 * An empty text leads to the sheets.
 * @param own the sheet that a cell is meant on where none is named: `D3`, `supplies!B2`.
 * @param most how many are given at most.
 */
export function targetsOf(schedule: LoadSchedule, typed: string, own: SheetName, most = 50): Target[] {
  const { words } = schedule;
  const text = typed.trim().toLowerCase();
  const ranked: { readonly target: Target; readonly rank: number }[] = [];
  const add = (target: Target, also = ''): void => {
    const names = [target.name.toLowerCase(), also];
    const rank = names.includes(text) ? 0 : names.some((name) => name.startsWith(text)) ? 1
      : names.some((name) => name.includes(text)) ? 3 : undefined;
    if (rank !== undefined) ranked.push({ target, rank });
  };
  for (const sheet of SHEET_NAMES) {
    const { title, tag } = SCHEMA[sheet];
    add({ sheet, id: -1, key: tag, name: words.text(title), about: words.say('sheet') }, sheet);
    if (text === '') continue;
    schedule.rows(sheet).forEach((row, place) => {
      const name = tagOf(sheet, row);
      const about = words.say('{sheet}, row {row}', { sheet: words.text(title), row: String(place + 1) });
      if (name !== '') add({ sheet, id: row.id, key: tag, name, about });
    });
  }
  const cell = addressed(schedule, typed.trim(), own);
  if (cell !== undefined) ranked.push({ target: cell, rank: 2 });
  return ranked.sort((one, other) => one.rank - other.rank).slice(0, most).map(({ target }) => target);
}

function addressed(schedule: LoadSchedule, text: string, own: SheetName): Target | undefined {
  const [, name, letters, digits] = ADDRESS.exec(text) ?? [];
  const sheet = name === undefined ? own : SHEET_NAMES.find((each) => each === name.toLowerCase());
  if (sheet === undefined || letters === undefined) return undefined;
  const column = SCHEMA[sheet].columns[columnPlace(letters)];
  const row = schedule.rows(sheet)[Number(digits) - 1];
  if (column === undefined || row === undefined) return undefined;
  const { words } = schedule;
  const about = words.say('{sheet}, row {row}', { sheet: words.text(SCHEMA[sheet].title), row: digits! });
  return { sheet, id: row.id, key: column.key, name: words.text(column.title), about };
}
