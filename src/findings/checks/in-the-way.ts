import { columnOf, isNumeric, withUnit } from '../../schedule/index.ts';
import type { Against, RowReader } from '../row-reader.ts';

/** What counts against a row: «Fuse 63.00 A against 7.50 A, Efficiency (not known)»; empty where nothing does. */
export function inTheWay(row: RowReader, all: readonly Against[]): string {
  const { sheet, words } = row;
  return [...new Set(all.map(({ key, severity, value, limit }) => {
    const column = columnOf(sheet, key);
    const figure = words.text(column.title);
    if (severity === 'incomplete') return words.say('{figure} (not known)', { figure });
    return !isNumeric(column) || typeof value !== 'number' || typeof limit !== 'number' ? figure
      : words.say('{figure} {value} against {limit}', {
        figure, value: withUnit(column, value, words), limit: withUnit(column, limit, words),
      });
  }))].join(', ');
}
