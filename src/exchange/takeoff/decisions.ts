/** What a person says that a name means: a device type, a new type of that name, or nothing that is counted. */
export type NameDecision = { readonly type: string } | 'new' | 'leave-out';

/**
 * What a person says of one line: how many devices it has, that it counts with the quantity that it has or that is
 * proposed, or that it does not count.
 */
export type LineDecision = { readonly qty: number } | 'take' | 'leave-out';

/** Decisions of a person on a takeoff; plain data. */
export interface TakeoffDecisions {
  /** By the key of the name. */
  readonly names?: Readonly<Record<string, NameDecision>>;
  /** By the key of the line; for a list that was pasted it is the number of the line. */
  readonly lines?: Readonly<Record<string, LineDecision>>;
}

/** What was decided under a key, if anything; names such as `constructor` are keys like others. */
export function decisionOf<Decision>(
  decisions: Readonly<Record<string, Decision>> | undefined, key: string | number,
): Decision | undefined {
  return decisions !== undefined && Object.hasOwn(decisions, key) ? decisions[key] : undefined;
}
