export * from './accepted-line.ts';
