export { joinVariant } from './join-variant.ts';
export { dropVariant, freeName, keepVariant, variantOf, withoutVariant } from './kept-variants.ts';
export { makeVariant, type VariantAbout } from './make-variant.ts';
