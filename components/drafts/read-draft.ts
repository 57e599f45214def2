import { VERSION } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { History, ScheduleDocument } from '../../src/schedule/index.ts';
import type { DraftBody } from './draft-store.ts';
import { fromVersion1 } from './migrate-draft.ts';
import { isAction, isSnapshot, isSound } from './sound-draft.ts';

/**
 * Makes the schedule of a draft, with its actions to undo.
 * @param body what the store gave, of whatever shape.
 * @returns `undefined` when it is damaged: its actions do not fit, or what they lead to is no schedule.
 */
export function readDraft(body: DraftBody): LoadSchedule | undefined {
  let schedule: LoadSchedule | undefined;
  try {
    if (
      !isSnapshot(body.base) || !body.actions.every(isAction) || !isSound(new ScheduleDocument(body.base))
    ) return undefined;
    schedule = new LoadSchedule(undefined, { session: body });
    if (isSound(schedule.document)) return schedule;
  } catch {
    // What a browser gave back has no promised shape: whatever this throws says that it is damaged.
  }
  schedule?.dispose();
  return undefined;
}

/** A draft of an older version, of whatever shape, as this one keeps it; `undefined` when it is damaged. */
export function renewDraft(body: DraftBody, version: number): DraftBody | undefined {
  if (version === VERSION) return body;
  try {
    if (!isSnapshot(body.base) || !body.actions.every(isAction)) return undefined;
    const renewed = fromVersion1(body);
    return repeatDraft(renewed) === undefined ? undefined : renewed;
  } catch {
    // As above: it has no promised shape.
    return undefined;
  }
}

/** The document to which a draft, of whatever shape, leads; `undefined` when it is damaged. */
export function repeatDraft({ base, actions }: DraftBody): ScheduleDocument | undefined {
  try {
    if (!isSnapshot(base) || !actions.every(isAction)) return undefined;
    const document = new ScheduleDocument(base);
    const history = new History(document);
    for (const action of actions) history.repeat(action);
    return isSound(document) ? document : undefined;
  } catch {
    // As above: it has no promised shape.
    return undefined;
  }
}
