export * from './connected-current.ts';
export * from './demand-current.ts';
export * from './device-nodes.ts';
export * from './draw-from-power.ts';
export * from './most-voltage-difference.ts';
