export * from './edited-text.ts';
export * from './find-cells.ts';
export * from './go-to.ts';
export * from './read-cell.ts';
export * from './replace-text.ts';
export * from './series.ts';
export * from './texts-in-doubt.ts';
