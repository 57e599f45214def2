export * from './fault-current.ts';
export * from './may-not-clear.ts';
export * from './trip-characteristics.ts';
