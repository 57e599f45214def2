/** How far a figure may be from the expected one: by the larger of the two. */
export interface Tolerance {
  /** Allowed difference, in the unit of the figure. */
  readonly absolute: number;
  /** Allowed difference, as a share of the expected figure. */
  readonly relative: number;
}

/** Nothing but the rounding of the arithmetic. */
export const EXACT: Tolerance = { absolute: 1e-12, relative: 1e-12 };

/**
 * The tolerance of a printed figure: half a unit of its last digit, so `printed('12.70')` is 0.005 and `printed('316')`
 * is 0.5. The tiny share on top lets a figure that was rounded at exactly half pass.
 */
export function printed(digits: string): Tolerance {
  const decimals = digits.split('.')[1]?.length ?? 0;
  return { absolute: 0.5 * 10 ** -decimals, relative: 1e-12 };
}

/**
 * Matcher of the test runner for a number near another, alone or anywhere within an expected value:
 * `expect(drops).toEqual([closeTo(1.2, EXACT), null])`.
 */
export function closeTo(expected: number, tolerance: Tolerance) {
  const allowed = Math.max(tolerance.absolute, tolerance.relative * Math.abs(expected));
  return {
    $$typeof: Symbol.for('jest.asymmetricMatcher'),
    asymmetricMatch: (actual: unknown) =>
      typeof actual === 'number' && Math.abs(actual - expected) <= allowed,
    toString: () => 'closeTo',
    toAsymmetricMatcher: () => `${expected} ± ${allowed}`,
    getExpectedType: () => 'number',
  };
}
