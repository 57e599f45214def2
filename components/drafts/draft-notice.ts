import type { DraftHead } from './draft-store.ts';

/** What a person is told about drafts, until it is put away. Those that name a draft offer what can be done with it. */
export type DraftNotice =
  /** It is shown; the page's file is as it was when it began, or could not be had. */
  | { readonly kind: 'restored' | 'unchecked'; readonly head: DraftHead }
  /** It is there, but something else is shown; the page's schedule may be another than the one that it began from. */
  | { readonly kind: 'kept' | 'changed' | 'discarded'; readonly head: DraftHead }
  /** It is kept under the same key, but is one of another schedule. */
  | { readonly kind: 'other'; readonly head: DraftHead }
  /** It cannot be shown: other software wrote it, or it is damaged. */
  | { readonly kind: 'foreign' | 'damaged'; readonly head: DraftHead }
  /** What is shown was handed out as a file [ms]; whether that was written cannot be known. */
  | { readonly kind: 'saved'; readonly at: number }
  /** Another tab or element has a draft, from the start or since. */
  | { readonly kind: 'elsewhere' | 'taken' }
  /** Nothing can be kept. */
  | { readonly kind: 'unavailable' | 'full' | 'failed' };
