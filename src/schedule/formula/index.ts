export * from './content.ts';
export * from './formula-text.ts';
export * from './reference.ts';
