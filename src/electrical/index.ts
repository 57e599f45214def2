export * from './branches/index.ts';
export * from './devices/index.ts';
export * from './limits/index.ts';
export * from './outputs/index.ts';
export * from './supplies/index.ts';
