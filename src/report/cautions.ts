import { message } from '../words/index.ts';

/** What must be said wherever figures are shown or printed, the gist of it first. */
export const CAUTIONS = [
  message('These figures support design by a competent person and never replace it.'),
  message('Local wiring rules, the makers’ instructions and licensed practice decide.'),
  message('Mains work is for licensed electricians, with the circuit isolated and proved dead.'),
  message('Measure before energising.'),
] as const;
