export * from './language.ts';
export * from './load-words.ts';
export * from './message.ts';
export * from './quantity.ts';
export * from './rounding.ts';
export * from './values-of.ts';
export * from './words.ts';
