export * from './free-points.ts';
