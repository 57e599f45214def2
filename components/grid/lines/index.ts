export * from './build-lines.ts';
export * from './line.ts';
export * from './skip-headings.ts';
