export * from './column-letters.ts';
export * from './content.ts';
export * from './file-rows.ts';
export * from './formula-text.ts';
export * from './formulas-in.ts';
export * from './key-form.ts';
export * from './letter-of.ts';
export * from './reference.ts';
