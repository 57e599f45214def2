export * from './cell-text/index.ts';
export * from './change.ts';
export * from './commands/index.ts';
export * from './document.ts';
export * from './formula/index.ts';
export * from './history.ts';
export * from './row-count.ts';
export * from './schema/index.ts';
