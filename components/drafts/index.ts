export { Drafts } from './drafts.ts';
export type { DraftsHost } from './draft-keeper.ts';
