export * from './fault-current.ts';
export * from './longest-clearing.ts';
export * from './may-not-clear.ts';
export * from './shared-fault.ts';
