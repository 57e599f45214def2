/**
 * Above the rounding of sums of thousands of terms, below the share of 1e-9 from which `exceeds` calls a limit
 * passed.
 */
const ROUNDING = 2e-10;

/** A capacity with room for the rounding of the sums that are held against it. */
export function withRounding(capacity: number): number {
  return capacity * (1 + ROUNDING);
}
