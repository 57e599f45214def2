export * from './exceeds.ts';
export * from './loading-ratio.ts';
export * from './room-for-more.ts';
