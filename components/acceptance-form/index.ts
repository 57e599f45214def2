export * from './accepted-line.ts';
export * from './finding-name.ts';
