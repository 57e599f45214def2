/** Kinds of protected ways: breakers by their curve, fuses by the standards' names for them, electronic channels. */
export const WAY_KINDS = ['B', 'C', 'D', 'gG', 'fast', 'slow', 'electronic'] as const;

/** What protects a way: a breaker (B, C, D), a fuse (gG, fast, slow) or an electronic channel. */
export type WayKind = (typeof WAY_KINDS)[number];

/** A fuse, breaker or electronic channel. */
export interface ProtectionDevice {
  readonly kind: WayKind;
  /** Its rating [A], above 0. */
  readonly ratedAmps: number;
}
