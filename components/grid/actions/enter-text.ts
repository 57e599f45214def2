import { editedText, readCell, textsInDoubtSentence } from '../../../src/editing/index.ts';
import {
  insertRows, renameTag, setCells, type CellEdit, type CellValue, type InputColumn, type ParsedCell,
} from '../../../src/schedule/index.ts';
import { cellsOfGroup, idAt, inputAt, type GridModel } from '../grid-model.ts';
import { columnsByLine, type GridSelection } from '../grid-selection.ts';
import { nothing, refused, type Plan } from './plan.ts';
import { ROW_ACTIONS } from './row-words.ts';

/** What the editor of a cell begins with. */
export function textToEdit(model: GridModel, line: number, columnIndex: number): string {
  const [id, column] = [idAt(model, line), model.columns[columnIndex]];
  return id < 0 || column === undefined ? '' : editedText(model, id, column);
}

/**
 * Takes a text that a person typed in one cell. On the blank line it begins a row; in a column that names its row, the
 * references to the old tag follow.
 */
export function enterText(model: GridModel, line: number, columnIndex: number, text: string): Plan {
  const column = inputAt(model, columnIndex);
  const kind = model.lines[line]?.kind;
  if (column === undefined || kind === undefined || kind === 'heading') return nothing();
  const id = idAt(model, line);
  const read = readCell(model, id, column, text);
  if (!read.ok) return refused(unread(model, column, read.problem));
  if (kind === 'blank') return read.value === null ? nothing() : newRow(model, line, column, read.value, read.hint);
  return changedCell(model, id, column, read.value, read.hint);
}

function unread({ words }: GridModel, column: InputColumn, problem: string): string {
  return words.say('{column}: {problem}', { column: words.text(column.title), problem });
}

function newRow(model: GridModel, line: number, column: InputColumn, value: CellValue, hint?: string): Plan {
  const { schedule: { document }, sheet, words } = model;
  const at = document.rows(sheet).length;
  const changes = insertRows(document, sheet, at, [{ ...cellsOfGroup(model, line), [column.key]: value }]);
  return {
    kind: 'act', label: words.say(ROW_ACTIONS[sheet].added), changes,
    ...(hint === undefined ? {} : { message: `${hint}.` })
  };
}

function changedCell(model: GridModel, id: number, column: InputColumn, value: CellValue, hint?: string): Plan {
  const { schedule: { document }, sheet, words } = model;
  const label = words.say('Edit of {column}', { column: words.text(column.title) });
  if (column.tag !== true) {
    const changes = setCells(document, [{ sheet, id, key: column.key, value }]);
    return changes.length === 0
      ? nothing()
      : { kind: 'act', label, changes, ...(hint === undefined ? {} : { message: `${hint}.` }) };
  }
  const changes = renameTag(document, sheet, id, typeof value === 'string' ? value : '');
  if (changes.length === 0) return nothing();
  const following = changes.length - 1;
  const message = [
    following === 0 ? '' : words.say(
      '{n, plural, one {# reference follows} other {# references follow}} the new tag {tag}.',
      { n: following, tag: String(value) }
    ),
    textsInDoubtSentence(document, changes, words),
  ].filter((each) => each !== '').join(' ');
  return { kind: 'act', label, changes, ...message === '' ? {} : { message } };
}

/** Takes a text for every selected cell that may be filled in. Tags are left out when more than one row is selected. */
export function enterTextInAll(model: GridModel, selection: GridSelection, text: string): Plan {
  return enterInAll(model, selection, (id, column) => readCell(model, id, column, text));
}

/** Takes for every selected cell that may be filled in what `read` makes of it, as `enterTextInAll`. */
export function enterInAll(
  model: GridModel, selection: GridSelection, read: (id: number, column: InputColumn) => ParsedCell,
): Plan {
  const { schedule: { document }, sheet, words } = model;
  const rows = [...columnsByLine(selection)]
    .map(([line, columns]) => ({ id: idAt(model, line), columns })).filter(({ id }) => id >= 0);
  const edits: CellEdit[] = [];
  for (const { id, columns } of rows) {
    for (const column of columns.flatMap((index) => inputAt(model, index) ?? [])) {
      if (column.tag === true && rows.length > 1) continue;
      const found = read(id, column);
      if (!found.ok) return refused(unread(model, column, found.problem));
      edits.push({ sheet, id, key: column.key, value: found.value });
    }
  }
  const changes = setCells(document, edits);
  if (changes.length === 0) return nothing();
  const n = changes.length;
  const label = words.say('Edit of {n, plural, one {# cell} other {# cells}}', { n });
  return {
    kind: 'act', label, changes, message: words.say('{n, plural, one {# cell} other {# cells}} changed.', { n }),
  };
}

/** Changes yes to no and back; an empty cell becomes yes. */
export function toggle(model: GridModel, line: number, columnIndex: number): Plan {
  const [id, column] = [idAt(model, line), inputAt(model, columnIndex)];
  if (column?.kind !== 'boolean' || id < 0) return nothing();
  return changedCell(model, id, column, model.schedule.value(model.sheet, id, column.key) !== true);
}
