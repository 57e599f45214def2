export { buildReport, type LoadTableOptions } from './build-report.ts';
export type * from './report.ts';
export { STATE_SHAPES, STATE_WORDS } from './state-words.ts';
