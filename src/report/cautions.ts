/** What must be said wherever figures are printed. */
export const CAUTIONS: readonly string[] = [
  'These figures support design by a competent person and never replace it.',
  'Local wiring rules, the makers’ instructions and licensed practice decide.',
  'Mains work is for licensed electricians, with the circuit isolated and proved dead.',
  'Measure before energising.',
];
