/** A size of terminal. */
export interface TerminalSize {
  /** Rated cross-section [mm²]: the largest conductor that it takes. */
  readonly maxSize: number;
  /** Current [A] that it is tested with. */
  readonly amps: number;
  /** Width [mm] on the mounting rail. */
  readonly width: number;
}

/**
 * Terminals by their rated cross-section. Test currents: IEC 60947-7-1, from memory, those of 10 mm² and more read in a
 * maker's reprint. Widths: common practice, no source; a data sheet goes before them.
 */
export const TERMINAL_SIZES: readonly TerminalSize[] = [
  { maxSize: 2.5, amps: 24, width: 5.2 },
  { maxSize: 4, amps: 32, width: 6.2 },
  { maxSize: 6, amps: 41, width: 8.2 },
  { maxSize: 10, amps: 57, width: 10.2 },
  { maxSize: 16, amps: 76, width: 12.2 },
  { maxSize: 35, amps: 125, width: 16 },
];

/**
 * The smallest terminal that takes a conductor and carries a current.
 * @param size cross-section [mm²] of the conductor; `null` where it is not known, which asks for none.
 * @param amps current [A] that may flow for ever; `null` where it is not known.
 * @returns `undefined` where none of them does.
 *
 * @example terminalFor(4, 24) // { maxSize: 4, amps: 32, width: 6.2 }
 * @example terminalFor(1.5, 40) // { maxSize: 6, amps: 41, width: 8.2 }
 * @example terminalFor(50, null) // undefined
 */
export function terminalFor(size: number | null, amps: number | null): TerminalSize | undefined {
  return TERMINAL_SIZES.find((each) => each.maxSize >= (size ?? 0) && each.amps >= (amps ?? 0));
}

/**
 * Current [A] that a terminal, and a bridge in it, carries: that of the largest usual size that is not above its own.
 * @returns `null` for one smaller than any of them.
 *
 * @example terminalCurrent(2.5) // 24
 * @example terminalCurrent(5) // 32
 * @example terminalCurrent(1) // null
 */
export function terminalCurrent(maxSize: number): number | null {
  return TERMINAL_SIZES.findLast((each) => each.maxSize <= maxSize)?.amps ?? null;
}
