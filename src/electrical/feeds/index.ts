export * from './breaker-curve.ts';
export * from './breaker-share.ts';
export * from './inrush-limit.ts';
