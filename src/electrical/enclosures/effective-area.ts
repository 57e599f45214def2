/** How an enclosure stands: which of its sides can give off heat. */
export type Mounting =
  | 'free' | 'wall' | 'row-end-free' | 'row-end-wall' | 'row-middle-free' | 'row-middle-wall' | 'row-middle-wall-covered'
  | 'flush';

/** Surface factors: what a square metre counts for. The floor counts for nothing. */
const TOP = { exposed: 1.4, covered: 0.7 };
const SIDE = { exposed: 0.9, covered: 0.5 };

interface Covered {
  readonly back: boolean;
  /** Of the two sides, how many stand against a neighbour. */
  readonly sides: 0 | 1 | 2;
  readonly top: boolean;
}

const COVERED: Record<Exclude<Mounting, 'flush'>, Covered> = {
  'free': { back: false, sides: 0, top: false },
  'wall': { back: true, sides: 0, top: false },
  'row-end-free': { back: false, sides: 1, top: false },
  'row-end-wall': { back: true, sides: 1, top: false },
  'row-middle-free': { back: false, sides: 2, top: false },
  'row-middle-wall': { back: true, sides: 2, top: false },
  'row-middle-wall-covered': { back: true, sides: 2, top: true },
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
  if (mounting === 'flush') return SIDE.exposed * widthMm * heightMm / 1e6;
  if (!Object.hasOwn(COVERED, mounting)) return null;
  const { back, sides, top } = COVERED[mounting];
  const squareMillimetres = (top ? TOP.covered : TOP.exposed) * widthMm * depthMm
    + (SIDE.exposed + (back ? SIDE.covered : SIDE.exposed)) * widthMm * heightMm
    + (sides * SIDE.covered + (2 - sides) * SIDE.exposed) * depthMm * heightMm;
  return squareMillimetres / 1e6;
}
