export * from './ambient-factor.ts';
export * from './carried-current.ts';
export * from './conductor-temperature.ts';
export * from './grouping-factor.ts';
export * from './most-protection.ts';
