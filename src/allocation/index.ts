export { packBins, type Packing, type PackOptions } from './packing/index.ts';
export * from './sharing/index.ts';
export * from './sizing/index.ts';
