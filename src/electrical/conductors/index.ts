export * from './awg-area.ts';
export * from './awg-diameter.ts';
export * from './copper-resistance.ts';
export * from './loop-resistance-per-metre.ts';
export * from './resistance-at.ts';
