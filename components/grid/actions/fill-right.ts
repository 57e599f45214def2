import { editedText, readCell } from '../../../src/editing/index.ts';
import {
  columnLetters, columnPlace, mapLettered, SCHEMA, setCells, type CellEdit, type LetteredCell, type SheetName,
} from '../../../src/schedule/index.ts';
import { idAt, inputAt, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';
import { nothing, refused, type Plan } from './plan.ts';

/**
 * Fills each selected block with its first column, or a single column with the one before it, as if it were typed
 * there; references of formulas to their own sheet move along.
 */
export function fillRight(model: GridModel, { blocks }: GridSelection): Plan {
  const { schedule, sheet, words } = model;
  const edits: CellEdit[] = [];
  for (const { lines, columns } of blocks) {
    const from = columns.length > 1 ? columns[0]! : columns[0]! - 1;
    const source = model.columns[from];
    if (source === undefined) return nothing(words.say('There is no column before to fill from.'));
    for (const id of lines.map((line) => idAt(model, line)).filter((each) => each >= 0)) {
      const text = editedText(model, id, source);
      for (const place of columns) {
        const column = inputAt(model, place);
        if (place === from || column === undefined || column.tag === true) continue;
        const read = readCell(model, id, column, text.startsWith('=') ? movedRight(text, sheet, source.key, column.key) : text);
        if (!read.ok) return refused(words.say('{column}: {problem}', { column: words.text(column.title), problem: read.problem }));
        edits.push({ sheet, id, key: column.key, value: read.value });
      }
    }
  }
  const changes = setCells(schedule.document, edits);
  const n = changes.length;
  if (n === 0) return nothing();
  return {
    kind: 'act', label: words.say('Fill of {n, plural, one {# cell} other {# cells}}', { n }), changes,
    message: words.say('{n, plural, one {# cell} other {# cells}} filled.', { n }),
  };
}

function movedRight(formula: string, sheet: SheetName, from: string, to: string): string {
  const placeOf = (key: string) => SCHEMA[sheet].columns.findIndex((column) => column.key === key);
  const by = placeOf(to) - placeOf(from);
  const moved = ({ sheet: named, letters, row, fixedColumn, fixedRow }: LetteredCell): string => {
    const stays = fixedColumn || named !== undefined;
    const column = stays ? letters : columnLetters(Math.max(0, columnPlace(letters) + by));
    return `${named === undefined ? '' : `${named}!`}${fixedColumn ? '$' : ''}${column}${fixedRow ? '$' : ''}${row}`;
  };
  return mapLettered(formula, (_part, first, last) => (last === undefined ? moved(first) : `${moved(first)}:${moved(last)}`));
}
