/**
 * What several consumers draw together in each period.
 *
 * `P(k) = Σ Pi(k)`
 *
 * @param profiles Pi, power of each consumer in each period, in one unit [W, kW or A], 0 or more; all over the same
 *   periods
 * @returns P for each period; empty for no consumers
 *
 * Errors: throws a `RangeError` where the profiles have not as many periods each.
 *
 * Source: arithmetic.
 *
 * @example coincidentPowers([[0, 600, 200], [200, 0, 1000]]) // [200, 600, 1200]
 */
export function coincidentPowers(profiles: readonly (readonly number[])[]): number[] {
  const periods = profiles[0]?.length ?? 0;
  if (profiles.some((profile) => profile.length !== periods)) {
    throw new RangeError('The profiles have different numbers of periods; give all over the same ones.');
  }
  return Array.from({ length: periods }, (_none, period) =>
    profiles.reduce((sum, profile) => sum + profile[period]!, 0));
}
