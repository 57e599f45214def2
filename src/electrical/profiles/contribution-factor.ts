/**
 * Contribution factor of one member of a group: the share of its own maximum that it draws when the group has its
 * maximum.
 *
 * `c = P ÷ Pmax,i`
 *
 * @param powerAtPeak P, what it draws in the period of the coincident maximum, in one unit, 0 to its own maximum
 * @param ownMaximum Pmax,i, its own maximum, in the same unit, 0 or more
 * @returns c, 0 to 1; `null` when it never draws anything
 *
 * Source: T. Gonen, Electric Power Distribution System Engineering, ch. 2: the coincident maximum is Σ c × Pmax,i.
 *
 * @example contributionFactor(600, 1000) // 0.6
 */
export function contributionFactor(powerAtPeak: number, ownMaximum: number): number | null {
  return ownMaximum === 0 ? null : powerAtPeak / ownMaximum;
}
