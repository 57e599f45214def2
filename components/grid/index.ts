export * from './events.ts';
export * from './keys.ts';
export * from './schedule-grid.ts';
export * from './selection-statistics.ts';
