export * from './build-lines.ts';
export * from './line.ts';
