import { letterOf, type Column } from '../../../src/schedule/index.ts';
import type { Words } from '../../../src/words/index.ts';
import type { GridModel } from '../grid-model.ts';

/**
 * Draws the heading of a column: its title, below it the letter that formulas call it by and its unit; and what opens
 * the ways to sort and to pick rows by it, which shows whether that is done.
 */
export function drawColumnHeading(
  { sheet, sight, words }: GridModel, column: Column, heading: HTMLTableCellElement,
): void {
  const box = heading.querySelector('.colHeader') ?? heading;
  const title = part('title', words.text(column.title));
  const line = part('below', '');
  line.append(part('letter', letterOf(sheet, column.key)), part('unit', column.kind === 'ratio' ? '%' : column.unit ?? ''));
  const isSorted = sight.sort?.key === column.key;
  const isPicked = column.key in sight.columns;
  const menu = part('menu', `${isPicked ? '⊂' : ''}${isSorted ? sight.sort.down ? '↓' : '↑' : isPicked ? '' : '▾'}`);
  menu.title = words.say('Sort by this column, or pick rows by it');
  menu.setAttribute('aria-hidden', 'true');
  menu.classList.toggle('used', isSorted || isPicked);
  box.replaceChildren(title, line, menu);
  heading.classList.add('named', column.role);
  heading.classList.toggle('numeric', column.kind === 'integer' || column.kind === 'number' || column.kind === 'ratio');
  heading.title = words.text(column.help);
  if (isSorted) heading.setAttribute('aria-sort', sight.sort.down ? 'descending' : 'ascending');
  else heading.removeAttribute('aria-sort');
}

function part(name: string, text: string): HTMLElement {
  const element = document.createElement('span');
  element.className = name;
  element.textContent = text;
  return element;
}

/** Draws the corner before the headings, which selects everything; the library names it in English alone. */
export function drawCorner(words: Words, heading: HTMLTableCellElement): void {
  heading.querySelector('.colHeader')?.replaceChildren();
  heading.removeAttribute('title');
  heading.setAttribute('aria-label', words.say('Select the whole sheet'));
}
