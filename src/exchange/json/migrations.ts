import { fromVersion1, type RawObject } from './version-1.ts';

/** Version of the format that this software writes. */
export const VERSION = 2;

/**
 * Bring a file of an older version up to the next: the entry of index 0 makes version 2 of version 1, and so on. A
 * change of the format adds one here and raises `VERSION`.
 */
export const MIGRATIONS: readonly ((file: RawObject) => RawObject)[] = [fromVersion1];

/** A file of any known version, brought up to the version of this software. */
export function migrate(file: RawObject, version: number, steps: typeof MIGRATIONS = MIGRATIONS): RawObject {
  return steps.slice(version - 1).reduce((current, step) => step(current), file);
}
