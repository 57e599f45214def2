export * from './limit-diversity.ts';
export * from './spare-current.ts';
export * from './supply-loss.ts';
export * from './usable-current.ts';
