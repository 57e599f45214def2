export { guardText, unguardText } from './guard-text.ts';
export { headingsOf, readHeading, type Heading } from './headings.ts';
export { readCsv, type ReadCsv } from './read-csv.ts';
export { recogniseSheet } from './recognise-sheet.ts';
export { writeCsv } from './write-csv.ts';
