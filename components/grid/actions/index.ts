export * from './clear-cells.ts';
export * from './enter-text.ts';
export * from './fill-down.ts';
export * from './fill-right.ts';
export * from './paste-text.ts';
export * from './plan.ts';
export * from './row-actions.ts';
