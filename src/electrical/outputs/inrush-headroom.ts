/**
 * Peak current that is left before the making capacity of a contact.
 *
 * `h = îr − î`
 *
 * @param contactInrushAmps îr, peak current that the contact may make [A], above 0
 * @param inrushTotalAmps î, peak current of its loads together [A], 0 or more
 * @returns h [A]; negative when the peak is beyond what the contact may make
 *
 * Source: arithmetic; rated making capacity, IEC 60947-4-1.
 *
 * @example inrushHeadroom(100, 80) // 20
 */
export function inrushHeadroom(contactInrushAmps: number, inrushTotalAmps: number): number {
  return contactInrushAmps - inrushTotalAmps;
}
