export * from './derating-at.ts';
export * from './effective-area.ts';
export * from './free-width.ts';
export * from './inside-temperature.ts';
export * from './needed-area.ts';
export * from './temperature-rise.ts';
export * from './top-temperature.ts';
