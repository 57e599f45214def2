import {
  parseJson, readSchedule, unreadable, VERSION, writeSchedule, type ReadSchedule, type Unreadable,
} from '../../src/exchange/index.ts';
import { ScheduleDocument, toContent, type LoggedAction } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import type { DraftBody, DraftHead } from './draft-store.ts';
import { renewDraft, repeatDraft } from './read-draft.ts';
import { isView } from './sound-draft.ts';

/**
 * Reads a draft that was saved as a file: what it began with, and the actions up to the first that cannot be repeated;
 * a note says which one that is. A draft of newer software is not read, nor one whose beginning is damaged.
 */
export function readDraftFile(text: string, words: Words): ReadSchedule | Unreadable {
  const parsed = parseJson(text, words);
  if (!parsed.ok) return parsed;
  const { base, count, version, actions, view } = parsed.value as Partial<DraftHead & DraftBody>;
  // A schedule file judges the version, and in the end everything, as this too comes from wherever it may.
  const asSchedule = (document: ScheduleDocument, of: number | undefined) => {
    const file = { ...JSON.parse(writeSchedule(toContent(document))) as object, version: of };
    return withoutPlaces(readSchedule(JSON.stringify(file), words));
  };
  const judged = asSchedule(new ScheduleDocument(), version);
  if (!judged.ok) return judged;
  const logged: readonly LoggedAction[] = Array.isArray(actions) ? actions : [];
  const { document, repeated } = furthest(logged, (number) => {
    const body = renewDraft({ base: base!, actions: logged.slice(0, number) }, version!);
    return body && repeatDraft(body);
  });
  if (document === undefined) {
    return unreadable('not-a-schedule', '/base',
      words.say(
        'The draft is damaged: what it began with cannot be read, so nothing of it can be restored. Go on from the schedule file that was saved last.'
      ));
  }
  if (view !== undefined && isView(view)) document.view = view;
  const read = asSchedule(document, VERSION);
  const all = typeof count === 'number' ? Math.max(count, logged.length) : logged.length;
  if (!read.ok || repeated === all) return read;
  const note = words.say(
    'The draft is damaged from action {number} of {all} on; everything before it is restored',
    { number: repeated + 1, all }
  );
  return { ...read, notes: [note, ...read.notes] };
}

/** The last state before one that cannot be had: found by halving, as each takes a while to make. */
function furthest<State>(
  actions: readonly unknown[], stateAfter: (number: number) => State | undefined,
): { document: State | undefined; repeated: number } {
  const whole = stateAfter(actions.length);
  if (whole !== undefined) return { document: whole, repeated: actions.length };
  let [repeated, broken] = [0, actions.length];
  let document = stateAfter(0);
  while (document !== undefined && broken - repeated > 1) {
    const number = Math.floor((repeated + broken) / 2);
    const state = stateAfter(number);
    if (state === undefined) broken = number;
    else [document, repeated] = [state, number];
  }
  return { document, repeated };
}

/** Lines and columns would be those of a text that nobody sees. */
function withoutPlaces(reading: ReadSchedule | Unreadable): ReadSchedule | Unreadable {
  return reading.ok ? reading
    : {
      ...reading,
      problems: reading.problems.map(({ code, severity, path, message }) => ({ code, severity, path, message })),
    };
}
