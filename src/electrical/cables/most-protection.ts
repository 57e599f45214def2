/**
 * Highest rating of a fuse or breaker that protects a cable against overload.
 *
 * `In = min(Iz, 1.45 × Iz ÷ k2)`, from `In ≤ Iz` and `k2 × In ≤ 1.45 × Iz`
 *
 * @param carriesAmps Iz, current that the cable carries where it lies [A], 0 or more; see `carriedCurrent`
 * @param operatingMultiple k2, multiple of its rating at which the protection acts within its conventional time,
 *   above 0; see `operatingMultiple`
 * @returns In [A]; `null` when the multiple is 0
 *
 * Limits: overload, not a short circuit. The load must not be more than the rating: Ib ≤ In.
 *
 * Source: IEC 60364-4-43, 433.1.
 *
 * @example mostProtection(20, 1.45) // 20
 * @example mostProtection(20, 1.6) // 18.125
 */
export function mostProtection(carriesAmps: number, operatingMultiple: number): number | null {
  return operatingMultiple === 0 ? null : carriesAmps * Math.min(1, 1.45 / operatingMultiple);
}
