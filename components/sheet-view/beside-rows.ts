/** What stands above the rows, or in their place; it is fetched with them. */
export { emptySheet } from './empty-sheet.ts';
export { keyNeeded } from './key-needed.ts';
export { sightLine } from './sight-line.ts';
