export * from './finding.ts';
export { Findings } from './findings.ts';
