export { tooLarge } from './area-bound.ts';
export { decide } from './decide.ts';
export { unlessStopped, type Decision, type Steps, type Stop } from './decision.ts';
export { fitDecreasing, howMany } from './fit-decreasing.ts';
export { leastBins, leastBesides, type BinChoice, type LeastBins } from './least-bins.ts';
export { packBins, type Packing, type PackOptions } from './pack-bins.ts';
export { runSteps, stopAt } from './run-steps.ts';
export { classesOf, type Fill, type SizeClasses } from './size-classes.ts';
export { withRounding } from './with-rounding.ts';
