export * from './busy-event.ts';
export * from './command-event.ts';
export * from './go-to-event.ts';
export * from './grouping-event.ts';
export * from './look-event.ts';
export * from './sheet-choose-event.ts';
export * from './sight-event.ts';
export * from './try-event.ts';
