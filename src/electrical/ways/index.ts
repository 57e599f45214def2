export * from './available-current.ts';
export * from './discriminates.ts';
export * from './least-trip-multiple.ts';
export * from './operating-multiple.ts';
export * from './trip-multiple.ts';
export * from './way-kinds.ts';
