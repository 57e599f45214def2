/** Factors of IEC 60364-5-52, Table B.52.14, every 5 °C from 10 °C: from memory, sure. */
const AMBIENT = [1.22, 1.17, 1.12, 1.06, 1, 0.94, 0.87, 0.79, 0.71, 0.61, 0.5];
/** Table B.52.17, bunched, for 1 to 20 circuits: from memory, sure. */
const BUNCHED = [
  1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.54, 0.52, 0.5, 0.45, 0.45, 0.45, 0.41, 0.41, 0.41, 0.41, 0.38, 0.38, 0.38, 0.38,
];

/** How a cable lies, and what its conductor is made for. */
export interface Laid {
  /** What one pair carries alone [A]. */
  readonly alone: number;
  readonly pairs: number;
  readonly grouped: number;
  /** Around the cable, of the conductor at the most, and around the cable for `alone` [°C]. */
  readonly ambient: number;
  readonly highest: number;
  readonly base: number;
}

/** Current that a cable carries where it lies [A], by walking the tables; it shares nothing with the software. */
export function independentCarries({ alone, pairs, grouped, ambient, highest, base }: Laid): number {
  const around = ambient < 10 ? 10 : ambient;
  let share = around >= highest ? 0 : Math.sqrt((highest - around) / (highest - base));
  if (highest === 70 && base === 30 && around < 60) {
    const steps = (around - 10) / 5;
    const before = Math.floor(steps);
    share = AMBIENT[before]! * (before + 1 - steps) + AMBIENT[before + 1]! * (steps - before);
  }
  const circuits = Math.max(pairs, grouped);
  return alone * pairs * share * (BUNCHED[circuits - 1] ?? circuits ** -0.5);
}
