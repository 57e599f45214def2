/**
 * Whether a kind of load is one on direct current.
 *
 * @param kind kind of load; `null` when it is not known
 * @returns whether it is
 *
 * Source: utilization categories of IEC 60947-4-1 and IEC 60947-5-1: DC-1, DC-12, DC-13.
 *
 * @example isDirect('dcCoil') // true
 */
export function isDirect(kind: string | null): boolean {
  return kind === 'dc' || kind === 'dcCoil';
}
