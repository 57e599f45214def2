export * from './column-letters.ts';
export * from './content.ts';
export * from './formula-problem.ts';
export * from './formula-text.ts';
export * from './letter-of.ts';
export * from './reference.ts';
