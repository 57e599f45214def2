export * from './explain-status.ts';
export * from './finding.ts';
export * from './finding-name.ts';
export { Findings, type ChecksMade } from './findings.ts';
export { RATINGS } from './checks/way-remedy.ts';
export { remedyOf, type Remedy } from './remedy.ts';
export { hasGrownWorse } from './has-grown-worse.ts';
export * from './shown-text.ts';
export * from './state-words.ts';
