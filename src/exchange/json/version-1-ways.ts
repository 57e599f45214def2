import { type WayKind } from '../../electrical/index.ts';
import { nextTags } from '../../schedule/index.ts';

/** Trip multiple of a run of version 1 whose cell was empty. */
const USUAL_TRIP = 5;

/** Kinds of ways by the multiples that version 1 had names for, and by those of breakers on direct current. */
const KINDS = new Map<unknown, WayKind>([
  [4, 'fast'], [5, 'B'], [7, 'gG'], [7.5, 'B'], [10, 'C'], [15, 'C'], [20, 'D'], [30, 'D'],
]);

/** The columns in which version 1 kept the protection of a run, by those of ways. */
export const OF_WAYS: Readonly<Record<string, string>> = { protection: 'rated', trip: 'trip' };

type Cells<Value> = Readonly<Record<string, Value>>;

/** A run of version 1 without its protection, and the way that this was; no way where it had none. */
export function runAndWay<Value>(
  { protection, trip, ...run }: Cells<Value>, taken: ReadonlySet<unknown>, isFilled: (value: unknown) => boolean,
): { readonly run: Cells<Value | string>; readonly way?: Cells<Value | string | number> } {
  if (!isFilled(protection)) return { run: isFilled(trip) ? { ...run, tripOfVersion1: trip! } : run };
  const multiple = isFilled(trip) ? trip! : USUAL_TRIP;
  const tag = freeTag(typeof run.run === 'string' ? run.run.trim() : '', taken);
  const kind = KINDS.get(typeof multiple === 'string' ? Number(multiple.replace(/^\s*=/, '')) : multiple);
  return {
    run: { ...run, way: tag },
    way: {
      way: tag, ...(isFilled(run.rail) ? { rail: run.rail! } : {}), ...(kind === undefined ? {} : { kind }),
      rated: protection!, trip: multiple,
    },
  };
}

function freeTag(tag: string, taken: ReadonlySet<unknown>): string {
  const wanted = tag === '' ? 'F1' : tag;
  return taken.has(wanted) ? nextTags(wanted, 1, taken as ReadonlySet<string>)[0]! : wanted;
}
