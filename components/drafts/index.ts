export { isDraftFile } from './draft-file.ts';
export { Drafts } from './drafts.ts';
export type { DraftsHost } from './draft-keeper.ts';
