import type { LoadSchedule } from '../../load-schedule.ts';
import { SCHEMA, tagOf } from '../../schedule/index.ts';
import type { LeftOut } from '../../terminals/index.ts';
import { message } from '../../words/index.ts';

const WHY: Readonly<Record<LeftOut['why'], string>> = {
  untagged: message('{sheet}, row {row}: it has no tag, so no terminals are laid out for it. Enter one.'),
  doubled: message('{sheet}, row {row}: {tag} stands above already, so no terminals are laid out for it. Give it another tag.'),
  railless: message('{sheet}, row {row}: {tag} names no rail, so no terminals are laid out for it. Enter its way or its rail.'),
};

/** Why a row has no terminals, and what to do. */
export function leftOutSentence({ document, words }: LoadSchedule, { sheet, id, why }: LeftOut): string {
  return words.say<string>(WHY[why], {
    sheet: words.text(SCHEMA[sheet].title), row: document.position(sheet, id) + 1,
    tag: tagOf(sheet, document.row(sheet, id)!),
  });
}
