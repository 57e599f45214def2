export * from './breaker-curve.ts';
export * from './breaker-share.ts';
export * from './feed-inrush.ts';
export * from './feed-trip-multiple.ts';
export * from './inrush-limit.ts';
export * from './start-surge.ts';
