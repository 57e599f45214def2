import { letterOf, type Column } from '../../../src/schedule/index.ts';
import type { Words } from '../../../src/words/index.ts';
import type { GridModel } from '../grid-model.ts';

/**
 * Draws the heading of a column: its title, below it the letter that formulas call it by, whether rows are sorted or
 * picked by it, and its unit; and what opens the ways to do that.
 */
export function drawColumnHeading(
  { sheet, sight, words }: GridModel, column: Column, heading: HTMLTableCellElement,
): void {
  const box = heading.querySelector('.colHeader') ?? heading;
  const title = part('title', words.text(column.title));
  const line = part('below', '');
  const isSorted = sight.sort?.key === column.key;
  const isPicked = column.key in sight.columns;
  line.append(
    part('letter', letterOf(sheet, column.key)),
    part('used', `${isPicked ? '⊂' : ''}${isSorted ? sight.sort.down ? '↓' : '↑' : ''}`),
    part('unit', column.kind === 'ratio' ? '%' : column.unit ?? ''),
  );
  const menu = part('menu', '▾');
  menu.title = words.say('Sort by this column, or pick rows by it');
  menu.setAttribute('aria-hidden', 'true');
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
