/**
 * The numbers of some rows, in their order, or of the rows that they name; NaN where they name none. One short loop for
 * all columns is compiled early.
 */
export function gather(
  numbers: Float64Array, targets: Int32Array | undefined, ids: readonly number[],
): Float64Array {
  const found = new Float64Array(ids.length);
  for (let place = 0; place < ids.length; place += 1) {
    const id = targets === undefined ? ids[place]! : targets[ids[place]!]!;
    found[place] = id < 0 ? NaN : numbers[id]!;
  }
  return found;
}
