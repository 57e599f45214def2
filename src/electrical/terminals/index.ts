export * from './rated-terminals.ts';
