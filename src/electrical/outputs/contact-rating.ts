/** What a relay contact switches, by how hard it is on the contact. */
export type LoadKind = 'resistive' | 'lamp' | 'motor' | 'coil' | 'dc' | 'dcCoil';

/**
 * Rating of a contact for a kind of load: of its six ratings the one that applies.
 *
 * @param kind kind of load; `null` when it is not known
 * @param resistiveAmps rating for resistive loads, category AC-1 [A], `null` when not known
 * @param lampAmps rating for lamps and drivers, categories AC-5a and AC-5b [A], `null` when not known
 * @param motorAmps rating for motors, category AC-3 [A], `null` when not known
 * @param coilAmps rating for coils, category AC-15 [A], `null` when not known
 * @param dcAmps rating for direct current without inductance, category DC-1 or DC-12 [A], `null` when not known
 * @param dcCoilAmps rating for coils on direct current, category DC-13 [A], `null` when not known
 * @returns the rating [A]; `null` when the kind or its rating is not known
 *
 * Limits: a rating for one kind says nothing about another; none is derived from the others.
 *
 * Source: utilization categories of IEC 60947-4-1 and IEC 60947-5-1.
 *
 * @example contactRating('lamp', 16, 5, null, null, null, null) // 5
 */
export function contactRating(
  kind: LoadKind | null,
  resistiveAmps: number | null, lampAmps: number | null, motorAmps: number | null, coilAmps: number | null,
  dcAmps: number | null, dcCoilAmps: number | null,
): number | null {
  switch (kind) {
    case 'resistive': return resistiveAmps;
    case 'lamp': return lampAmps;
    case 'motor': return motorAmps;
    case 'coil': return coilAmps;
    case 'dc': return dcAmps;
    case 'dcCoil': return dcCoilAmps;
    default: return null;
  }
}
