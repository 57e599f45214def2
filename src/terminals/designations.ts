import { STRIP_KINDS, type StripKind } from './wanted.ts';

/**
 * Designation of the usual strip of a kind: X1 for mains, X2 and X3 for plus and minus, X4 for the bus, behind the
 * enclosure as the place where it is. Source: IEC 81346-1 for the aspects + and −, IEC 81346-2 for the class X, from
 * memory; the numbers are common practice, no source.
 */
export function usualStrip(enclosure: string, kind: StripKind): string {
  const place = enclosure === '' || /^[+=-]/.test(enclosure) ? enclosure : `+${enclosure}`;
  return `${place}-X${STRIP_KINDS.indexOf(kind) + 1}`;
}

/** Number of a terminal: what its designation ends with behind the colon; `undefined` where that is no number. */
export function numberOf(terminal: string): number | undefined {
  const digits = /:(\d+)$/.exec(terminal)?.[1];
  return digits === undefined ? undefined : Number(digits);
}
