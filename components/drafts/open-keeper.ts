import './draft-notices.define.ts';
import { DraftKeeper, type DraftsHost } from './draft-keeper.ts';
import type { DraftPlace } from './draft-store.ts';
import { IndexedDraftStore } from './indexed-draft-store.ts';

/** Keeps the drafts of an element in the browser. */
export function openKeeper(place: DraftPlace, host: DraftsHost): DraftKeeper {
  return new DraftKeeper(place, host, new IndexedDraftStore());
}
