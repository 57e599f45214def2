import './draft-notices.define.ts';
import { DraftKeeper, type DraftsHost } from './draft-keeper.ts';
import { IndexedDraftStore } from './indexed-draft-store.ts';

/** Keeps the drafts of an element in the browser. */
export function openKeeper(key: string, host: DraftsHost): DraftKeeper {
  return new DraftKeeper(key, host, new IndexedDraftStore());
}
