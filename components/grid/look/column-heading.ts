import { letterOf, type Column, type SheetName } from '../../../src/schedule/index.ts';
import type { Words } from '../../../src/words/index.ts';

/** Draws the heading of a column: its title, below it the letter that formulas call it by and its unit. */
export function drawColumnHeading(sheet: SheetName, column: Column, words: Words, heading: HTMLTableCellElement): void {
  const box = heading.querySelector('.colHeader') ?? heading;
  const title = document.createElement('span');
  title.className = 'title';
  title.textContent = words.text(column.title);
  const letter = document.createElement('span');
  letter.className = 'letter';
  letter.textContent = letterOf(sheet, column.key);
  const unit = document.createElement('span');
  unit.className = 'unit';
  unit.textContent = column.kind === 'ratio' ? '%' : column.unit ?? '';
  const line = document.createElement('span');
  line.className = 'below';
  line.append(letter, unit);
  box.replaceChildren(title, line);
  heading.classList.add('named', column.role);
  heading.classList.toggle('numeric', column.kind === 'integer' || column.kind === 'number' || column.kind === 'ratio');
  heading.title = words.text(column.help);
}

/** Draws the corner before the headings, which selects everything; the library names it in English alone. */
export function drawCorner(words: Words, heading: HTMLTableCellElement): void {
  heading.querySelector('.colHeader')?.replaceChildren();
  heading.removeAttribute('title');
  heading.setAttribute('aria-label', words.say('Select the whole sheet'));
}
