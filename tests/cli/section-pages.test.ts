import { expect, it } from 'vitest';
import { sectionPages } from '../../src/cli/section-pages.ts';

const bytes = (text: string) => new Uint8Array(Buffer.from(text, 'latin1'));
const object = (number: number, ...lines: string[]) => `${number} 0 obj\n<<${lines.join('\n')}>>\nendobj\n`;

/** Nine pages in a tree of two levels, in which the objects of the pages are out of order. */
const TREE = [
  object(20, '/Type /Pages', '/Count 9', '/Kids [21 0 R 22 0 R]'),
  object(21, '/Type /Pages', '/Parent 20 0 R', '/Count 8', '/Kids [2 0 R 9 0 R 3 0 R 4 0 R 5 0 R 6 0 R 7 0 R 8 0 R]'),
  object(22, '/Type /Pages', '/Parent 20 0 R', '/Count 1', '/Kids [10 0 R]'),
].join('');
const MARKS = [
  object(31, '/Title (Supplies)', '/Dest [9 0 R /XYZ 32 700 0]', '/Parent 30 0 R', '/Next 32 0 R'),
  object(32, '/Title <FEFF0057>', '/Dest [3 0 R /XYZ 32 600.5 0]', '/Parent 30 0 R', '/SE 3 0 R', '/Next 33 0 R'),
  object(33, '/Title (Runs \\(all\\))', '/Dest [10 0 R /XYZ 32 600.5 0]', '/Parent 30 0 R'),
  object(30, '/Title (Load table)', '/Dest [2 0 R /XYZ 32 800 0]', '/Parent 29 0 R', '/First 31 0 R', '/Last 33 0 R'),
].join('');

it('finds the page of each section, not that of the title', () => {
  expect(sectionPages(bytes(`%PDF-1.4\n${TREE}${MARKS}`), 3)).toEqual([2, 3, 9]);
});

it('knows none where bookmarks are others than the sections, or name no page', () => {
  expect(sectionPages(bytes(`%PDF-1.4\n${TREE}${MARKS}`), 2)).toBeUndefined();
  expect(sectionPages(bytes(`%PDF-1.4\n${TREE}`), 3)).toBeUndefined();
  expect(sectionPages(bytes(`%PDF-1.4\n${MARKS}`), 3)).toBeUndefined();
});
