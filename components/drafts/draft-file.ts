import type { DraftBody, DraftHead } from './draft-store.ts';

/** What `format` says in a draft that was saved as a file. */
const DRAFT_FORMAT = 'elv-load-schedule-draft';

const BEGINNING = new RegExp(String.raw`^\uFEFF?\s*\{\s*"format"\s*:\s*"${DRAFT_FORMAT}"`);

/** Writes a draft as it is, which may be damaged or of other software. */
export function writeDraftFile(head: DraftHead | undefined, body: DraftBody | undefined): string {
  return JSON.stringify({ format: DRAFT_FORMAT, ...head, ...body });
}

/** Whether a text is a draft that was saved as a file. */
export function isDraftFile(text: string): boolean {
  return BEGINNING.test(text);
}
