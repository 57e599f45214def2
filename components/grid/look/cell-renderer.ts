import type Handsontable from 'handsontable/base';
import { render } from 'lit';
import { STATE_WORDS, type Finding } from '../../../src/findings/index.ts';
import { markShape, type Mark } from '../../look/index.ts';
import { isPointed, type Pointed } from '../editing/pointing.ts';
import { inputAt, type GridModel } from '../grid-model.ts';
import { headingText } from './heading-text.ts';
import { cellLook, openFindings, rowMark } from './cell-look.ts';

/** Texts of more signs than this may be cut off, and are shown whole under the pointer. */
const LONG = 16;

/** What the renderer reads; `model` changes, `readonly` with it. */
export interface RenderSource {
  readonly model: GridModel;
  readonly readonly: boolean;
  /** The cells that a formula being typed is pointed at. */
  readonly pointed?: Pick<Pointed, 'from' | 'to'> | undefined;
}

/** Shapes are drawn once and copied, as a grid draws hundreds of cells at a time. */
const shapes = new Map<Mark, Element>();

function shapeOf(mark: Mark): Node {
  let shape = shapes.get(mark);
  if (shape === undefined) {
    const box = document.createElement('div');
    render(markShape(mark), box);
    shape = box.querySelector('svg')!;
    shapes.set(mark, shape);
  }
  return shape.cloneNode(true);
}

/** The findings of the row drawn last, kept as its cells are drawn one after the other. */
interface Kept {
  model: GridModel | undefined;
  id: number;
  findings: readonly Finding[];
}

/**
 * The function by which the grid draws a cell, and one that forgets what it keeps, to be called before each drawing.
 * The grid itself clears classes and ARIA attributes of a cell that it draws again, but no others.
 */
export function cellRenderer(source: RenderSource): { draw: Handsontable.renderers.BaseRenderer; forget: () => void } {
  const kept: Kept = { model: undefined, id: -1, findings: [] };
  const findingsOf = (model: GridModel, id: number): readonly Finding[] => {
    if (kept.model !== model || kept.id !== id) {
      Object.assign(kept, { model, id, findings: model.schedule.findingsOf(model.sheet, id) });
    }
    return kept.findings;
  };
  const draw = (_hot: Handsontable, cell: HTMLTableCellElement, row: number, columnIndex: number): void => {
    const { model } = source;
    const [line, column] = [model.lines[row], model.columns[columnIndex]];
    cell.removeAttribute('title');
    if (line === undefined || column === undefined) { cell.replaceChildren(); return; }
    if (line.kind === 'heading') {
      cell.classList.add('heading');
      cell.setAttribute('aria-readonly', 'true');
      cell.replaceChildren(columnIndex === 0 ? headingText(model, line) : ''); return;
    }
    if (line.kind === 'blank') {
      cell.classList.add('blank', column.role === 'input' ? 'own' : 'computed');
      if (inputAt(model, columnIndex) === undefined) cell.setAttribute('aria-readonly', 'true');
      cell.replaceChildren(); return;
    }
    const look = cellLook(model, line.id, column, findingsOf(model, line.id));
    cell.classList.add(...look.classes);
    if (source.pointed !== undefined && isPointed(source.pointed, { line: row, column: columnIndex })) cell.classList.add('pointed');
    if (look.readOnly || source.readonly) cell.setAttribute('aria-readonly', 'true');
    if (look.invalid) cell.setAttribute('aria-invalid', 'true');
    if (look.description !== '') {
      cell.setAttribute('aria-description', look.description);
      cell.title = look.description;
    } else if (look.text.length > LONG) cell.title = look.text;
    if (look.status === undefined) {
      if (cell.childNodes.length === 1 && cell.firstChild instanceof Text) cell.firstChild.data = look.text;
      else cell.replaceChildren(look.text);
    } else {
      cell.classList.add('judged', look.status);
      cell.replaceChildren(shapeOf(look.status), look.text);
    }
  };
  return { draw, forget: () => { kept.model = undefined; } };
}

/** Row header: the number of the row as entered, by which formulas call it, and the shape of its status. */
export function drawRowHeading(source: RenderSource, row: number, heading: HTMLTableCellElement): void {
  const { model } = source;
  const line = model.lines[row];
  heading.removeAttribute('title');
  heading.classList.remove('blank', 'heading');
  const box = heading.querySelector('.rowHeader') ?? heading;
  if (line?.kind !== 'row') {
    heading.classList.add(line?.kind ?? 'blank');
    box.replaceChildren(line?.kind === 'blank' ? '+' : '');
    return;
  }
  const number = String(model.schedule.document.position(model.sheet, line.id) + 1);
  const found = model.schedule.findingsOf(model.sheet, line.id);
  const mark = rowMark(model, line.id, found);
  const said = openFindings(found).map(({ message }) => message);
  if (said.length > 0 || mark !== undefined) heading.title = said.join('\n') || model.words.say(STATE_WORDS[mark!]);
  box.replaceChildren(...mark === undefined ? [] : [shapeOf(mark)], number);
}
