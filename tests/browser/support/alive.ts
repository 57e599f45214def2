/** `gc()` as the browser of the tests has it by `--expose-gc`. */
type Collect = (options: { type: 'major', execution: 'async' }) => Promise<void>;

/**
 * How many of some objects are in memory still, after one collection of everything that nothing holds. It runs in a
 * task of its own: in the midst of a call the browser may take what earlier calls left on the machine's stack for
 * something that is held.
 */
export async function aliveOf(objects: readonly WeakRef<object>[]): Promise<number> {
  await (globalThis as unknown as { gc: Collect }).gc({ type: 'major', execution: 'async' });
  return objects.filter((each) => each.deref() !== undefined).length;
}
