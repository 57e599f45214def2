export { packBins, type Packing, type PackOptions } from './packing/index.ts';
export { rowNames } from './row-names.ts';
export * from './sharing/index.ts';
export * from './sizing/index.ts';
