import { textsInDoubt, type Change, type ScheduleDocument } from '../schedule/index.ts';
import type { Words } from '../words/index.ts';

/** What is said of texts that do not follow a new tag, since which row they name is in doubt; empty where none is. */
export function textsInDoubtSentence(document: ScheduleDocument, changes: readonly Change[], words: Words): string {
  const n = textsInDoubt(document, changes);
  return n === 0 ? '' : words.say(
    '{n, plural, one {# text stays as it is, because it may also name a row} other {# texts stay as they are, because they may also name rows}} of another sheet with the tag of before. See which are meant.',
    { n }
  );
}
