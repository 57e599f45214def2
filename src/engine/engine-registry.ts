import type { FormulaEngine } from './formula-engine.ts';

/** What makes formula engines. */
type EngineClass = typeof FormulaEngine;

// The formula engine is a large part of the software, and most schedules have no formula. So a page fetches it when a
// formula needs it, or when nothing more urgent is to be done. Whoever wants figures at once imports
// `engine-at-once.define.ts`, as the headless package and the terminal do.
let engine: EngineClass | undefined;
let coming: Promise<void> | undefined;
const waiting = new Set<() => void>();

/** The formula engine; `undefined` as long as it is not there. */
export function formulaEngine(): EngineClass | undefined {
  return engine;
}

/** The formula engine is there from now on: what waits for it is done. */
export function provideEngine(given: EngineClass): void {
  engine = given;
  const tasks = [...waiting];
  waiting.clear();
  for (const task of tasks) task();
}

/**
 * Fetches the formula engine where it is not there.
 * @returns a promise that rejects where it cannot be fetched; a later call tries again.
 */
export function fetchEngine(): Promise<void> {
  if (engine !== undefined) return Promise.resolve();
  return coming ??= fetched().finally(() => { coming = undefined; });
}

/** Does a task once, as soon as the formula engine comes. @returns a function that calls it off. */
export function onceEngineCame(task: () => void): () => void {
  waiting.add(task);
  return () => { waiting.delete(task); };
}

async function fetched(): Promise<void> {
  const { FormulaEngine: given } = await import('./formula-engine.ts');
  if (engine === undefined) provideEngine(given);
}
