/** How an enclosure stands: which of its sides can give off heat. */
export type Mounting =
  | 'free' | 'wall' | 'row-end-free' | 'row-end-wall' | 'row-middle-free' | 'row-middle-wall' | 'row-middle-wall-covered'
  | 'flush';

/** Surface factors: what a square metre of each counts for, of the sides both together. The floor counts nothing. */
interface Factors {
  readonly top: number;
  readonly front: number;
  readonly back: number;
  readonly sides: number;
}

const FREE: Factors = { top: 1.4, front: 0.9, back: 0.9, sides: 0.9 + 0.9 };
const [AGAINST_WALL, AT_END, IN_MIDDLE] = [{ back: 0.5 }, { sides: 0.9 + 0.5 }, { sides: 0.5 + 0.5 }];

const FACTORS: Record<Mounting, Factors> = {
  'free': FREE,
  'wall': { ...FREE, ...AGAINST_WALL },
  'row-end-free': { ...FREE, ...AT_END },
  'row-end-wall': { ...FREE, ...AT_END, ...AGAINST_WALL },
  'row-middle-free': { ...FREE, ...IN_MIDDLE },
  'row-middle-wall': { ...FREE, ...IN_MIDDLE, ...AGAINST_WALL },
  'row-middle-wall-covered': { ...FREE, ...IN_MIDDLE, ...AGAINST_WALL, top: 0.7 },
  'flush': { ...FREE, top: 0, back: 0, sides: 0 },
};

/**
 * Effective cooling surface of an enclosure.
 *
 * `A = t × W × D + (0.9 + b) × W × H + s × D × H`
 *
 * t is 1.4 for an exposed and 0.7 for a covered top; b is 0.9 for an exposed and 0.5 for a covered back; s is the sum
 * of 0.9 for each exposed and 0.5 for each covered side. Of an enclosure that is let into a wall, `flush`, the front
 * alone counts, `0.9 × W × H`: the wall around it may be insulated.
 *
 * @param heightMm H, outside height [mm], above 0
 * @param widthMm W, outside width [mm], above 0
 * @param depthMm D, outside depth [mm], above 0
 * @param mounting how it stands
 * @returns A [m²]; `null` when the mounting is none of the eight
 *
 * Limits: closed enclosures without vents or fans.
 *
 * Source: surface factors of IEC TR 60890, Table 3 (number of the table from memory). It has none for an enclosure let
 * into a wall (from memory); its front alone is an allowance on the safe side, common practice, no source.
 *
 * @example effectiveArea(2000, 800, 600, 'free') // 5.712
 */
export function effectiveArea(heightMm: number, widthMm: number, depthMm: number, mounting: Mounting): number | null {
  if (!Object.hasOwn(FACTORS, mounting)) return null;
  const { top, front, back, sides } = FACTORS[mounting];
  const squareMillimetres = top * widthMm * depthMm + (front + back) * widthMm * heightMm + sides * depthMm * heightMm;
  return squareMillimetres / 1e6;
}
