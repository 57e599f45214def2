/** How much more room than is needed is made, so that it is seldom made. */
export const GROWTH = 1.5;

/** A bigger array that begins with what the old one holds. */
export function enlarged<T extends Float64Array | Int32Array | Uint8Array>(old: T, bigger: T): T {
  bigger.set(old);
  return bigger;
}
