export * from './explain-status.ts';
export * from './finding.ts';
export { Findings } from './findings.ts';
export * from './state-words.ts';
