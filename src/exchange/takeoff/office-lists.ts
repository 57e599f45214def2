import type { OfficeLists } from '../../schedule/index.ts';
import type { TakeoffColumn } from './columns.ts';
import type { NameDecision, TakeoffDecisions } from './decisions.ts';
import { TAKEOFF_FIELDS, type TakeoffField } from './field.ts';
import { headingFields } from './find-heading.ts';
import { deviceName } from './names/device-name.ts';
import type { TakeoffName } from './names/name-list.ts';
import type { Takeoff } from './read-takeoff.ts';
import type { RememberedColumns } from './remembered-columns.ts';

const LEAVE_OUT = 'leave-out';
/** Between what names a device and what describes it. */
const APART = ' | ';

/** What columns hold, as an office has it; fields of newer software are not known. */
export function officeColumns({ headings = {} }: OfficeLists = {}): RememberedColumns {
  return Object.fromEntries(Object.entries(headings).filter((entry): entry is [string, TakeoffField | 'ignore'] =>
    entry[1] === 'ignore' || TAKEOFF_FIELDS.includes(entry[1] as TakeoffField)));
}

/** Names that an office counts nothing under, as decisions on names, before which those of a person go. */
export function officeNames({ names = {} }: OfficeLists = {}): Record<string, NameDecision> {
  const leftOut = Object.entries(names).filter(([, meaning]) => meaning === LEAVE_OUT);
  return Object.fromEntries(leftOut.map(([name]) =>
    [name.split(APART).map((text) => deviceName(text).key).join(APART), LEAVE_OUT]));
}

/** Decisions of a person, behind those that an office has made for every list. */
export function withOfficeNames(decisions: TakeoffDecisions, lists: OfficeLists | undefined): TakeoffDecisions {
  return { ...decisions, names: { ...officeNames(lists), ...decisions.names } };
}

/**
 * What an office calls things, with what a takeoff adds: headings that mean something else than their words say, and
 * names that count nothing. Names of types are their aliases, and a heading without such a choice is read anew.
 * @returns the same lists where nothing was added.
 */
export function listsAfter(lists: OfficeLists | undefined, { columns, names }: Takeoff): OfficeLists | undefined {
  const chosen = columns.filter((column) => column.from === 'remembered' && isOwnMeaning(column, columns));
  const after = {
    ...lists,
    headings: renewed(lists?.headings, columns.map(({ heading }) => heading),
      chosen.map(({ heading, field }) => [heading, field ?? 'ignore'])),
    names: renewed(lists?.names, names.map(textOf),
      names.filter(({ state }) => state === 'left-out').map((name) => [textOf(name), LEAVE_OUT])),
  };
  return JSON.stringify(after) === JSON.stringify(lists ?? {}) ? lists : after;
}

/** A heading that stands over one column and means something else than its words say. */
function isOwnMeaning({ heading, field }: TakeoffColumn, columns: readonly TakeoffColumn[]): boolean {
  return heading !== '' && columns.filter((each) => each.heading === heading).length === 1
    && headingFields(heading)[0]?.field !== field;
}

function textOf({ texts }: TakeoffName): string {
  return texts.join(APART);
}

/** What was known of others than those that were met, and what is known of these now; nothing where that is all. */
function renewed(
  before: Readonly<Record<string, string>> | undefined, met: readonly string[],
  now: readonly (readonly [string, string])[],
): Record<string, string> | undefined {
  const entries = [...Object.entries(before ?? {}).filter(([text]) => !met.includes(text)), ...now];
  return entries.length === 0 ? undefined : Object.fromEntries(entries);
}
