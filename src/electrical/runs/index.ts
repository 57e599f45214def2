export * from './longest-run.ts';
export type { CollapsedRun, Run, RunSolution, Tap, WorkingRun } from './run.ts';
export type { RunLimits, RunProtection } from './run-limits.ts';
export * from './smallest-conductor.ts';
export { solveRun } from './solve-run.ts';
