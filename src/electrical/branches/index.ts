export * from './free-nodes.ts';
