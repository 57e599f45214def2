export * from './exceeds.ts';
export * from './loading-ratio.ts';
