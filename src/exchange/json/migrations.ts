/** Version of the format that this software writes. */
export const VERSION = 1;

/** The object that a file holds, before anything about it is known but its version. */
export type RawFile = Readonly<Record<string, unknown>>;

/**
 * Brings a file of an older version up to the next: the entry of index 0 makes version 2 of version 1, and so on. A
 * change of the format adds one here and raises `VERSION`.
 */
export const MIGRATIONS: readonly ((file: RawFile) => RawFile)[] = [];

/** A file of any known version, brought up to the version of this software. */
export function migrate(file: RawFile, version: number, steps: typeof MIGRATIONS = MIGRATIONS): RawFile {
  return steps.slice(version - 1).reduce((current, step) => step(current), file);
}
