import type { Content } from '../snapshot.ts';

/** What became of an entry of a list. */
export interface ListChange<Entry> {
  readonly kind: 'added' | 'removed' | 'changed';
  readonly before: Entry | null;
  readonly after: Entry | null;
}

/** A key that this version does not know; a value that is not there is `null`. */
export interface UnknownChange {
  /** Where it stands in the file: `details/owner`. */
  readonly path: string;
  readonly before: unknown;
  readonly after: unknown;
}

/**
 * Compares lists whose entries are known by a name; of those that share one, the first goes with the first.
 * @param dataOf what is compared of an entry; all of it unless said otherwise.
 */
export function compareLists<Entry>(
  before: readonly Entry[], after: readonly Entry[],
  nameOf: (entry: Entry) => string, dataOf: (entry: Entry) => unknown = (entry) => entry,
): ListChange<Entry>[] {
  const left = [...after];
  const gone = before.flatMap((old): ListChange<Entry>[] => {
    const place = left.findIndex((each) => nameOf(each) === nameOf(old));
    if (place < 0) return [{ kind: 'removed', before: old, after: null }];
    const [present] = left.splice(place, 1) as [Entry];
    return isSameData(dataOf(old), dataOf(present)) ? [] : [{ kind: 'changed', before: old, after: present }];
  });
  return [...gone, ...left.map((present): ListChange<Entry> => ({ kind: 'added', before: null, after: present }))];
}

/** Compares what files hold beyond what this version knows, key by key. */
export function compareUnknown(before: Content, after: Content): UnknownChange[] {
  const [old, present] = [unknownByPath(before), unknownByPath(after)];
  return [...new Set([...old.keys(), ...present.keys()])].flatMap((path) => {
    const [was, is] = [old.get(path) ?? null, present.get(path) ?? null];
    return isSameData(was, is) ? [] : [{ path, before: was, after: is }];
  });
}

function unknownByPath({ unknown = {} }: Content): Map<string, unknown> {
  return new Map(Object.entries(unknown).flatMap(([place, keys]) =>
    Object.entries(keys as object).map(([key, value]): [string, unknown] => [
      place === 'file' ? key : `${place}/${key}`, value,
    ])));
}

/** Whether two pieces of JSON hold the same, in whatever order their keys stand. */
export function isSameData(one: unknown, other: unknown): boolean {
  return inOneOrder(one) === inOneOrder(other);
}

function inOneOrder(value: unknown): string {
  return JSON.stringify(value, (
    _key, inner: unknown
  ) => typeof inner !== 'object' || inner === null || Array.isArray(inner) ? inner
    : Object.fromEntries(Object.entries(inner).sort(([one], [other]) => (one < other ? -1 : 1))));
}
