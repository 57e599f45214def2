export * from './check-cell.ts';
export * from './decimal-sign.ts';
export * from './detect-decimal.ts';
export * from './format-cell.ts';
export * from './hidden-characters.ts';
export * from './parse-cell.ts';
export * from './units.ts';
export * from './with-unit.ts';
