export * from './build-lines.ts';
export * from './line.ts';
export * from './sight.ts';
export * from './sight-type.ts';
export * from './skip-headings.ts';
