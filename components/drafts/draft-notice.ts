/** What a person is told about drafts, until it is put away. Those that name a draft offer what can be done with it. */
export type DraftNotice =
  /** It is shown. */
  | { readonly kind: 'restored'; readonly id: number; readonly at: number }
  /** It is there, but something else is shown. */
  | { readonly kind: 'kept' | 'discarded'; readonly id: number; readonly at: number }
  /** It cannot be shown: other software wrote it, or it is damaged. */
  | { readonly kind: 'foreign' | 'damaged'; readonly id: number; readonly at: number }
  /** Another tab or element has a draft, from the start or since. */
  | { readonly kind: 'elsewhere' | 'taken' }
  /** Nothing can be kept. */
  | { readonly kind: 'unavailable' | 'full' | 'failed' };
