import type { Solution } from './column.ts';

/** Current of the one device behind a way that draws most. */
export const waySolution: Solution = {
  from: 'runs', by: 'way', of: [], each: ['largest'], gives: ['largest'], givesEach: [],
  solve: (_own, each) => {
    const known = each.flatMap(([amps]) => (typeof amps === 'number' ? [amps] : []));
    return { figures: { largest: Math.max(0, ...known) }, missing: each.length - known.length };
  },
};
