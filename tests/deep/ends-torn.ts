import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** Sizes of the format of the log [bytes]: doc/log_format.md of LevelDB. */
const [BLOCK, HEADER] = [32_768, 7];
/** A record that is whole in one piece, and the last piece of one that is not. */
const [FULL, LAST] = [1, 4];

/**
 * Whether a log of LevelDB, in which Chromium keeps its databases, ends in the midst of a record, as where its writer
 * was killed. It is read as if that record were not there, but what the next visit writes stands behind it; and the
 * visit after that takes the log for damaged, and throws away the whole database. That is a fault of LevelDB, known as
 * its issue 1287 («reuse_logs can reuse a log with an incomplete record»), and no page can prevent it.
 */
export function endsTorn(log: Buffer): boolean {
  let [at, isWhole] = [0, true];
  while (at < log.length) {
    const left = BLOCK - at % BLOCK;
    if (left < HEADER) {
      at = Math.min(at + left, log.length);
      continue;
    }
    if (at + HEADER > log.length) return true;
    const type = log[at + 6];
    isWhole = type === FULL || type === LAST;
    at += HEADER + log.readUInt16LE(at + 4);
  }
  return at > log.length || !isWhole;
}

/** Whether the database of the page in a browser's folder was torn when the browser was killed. */
export async function isDatabaseTorn(profile: string): Promise<boolean> {
  const files = await readdir(join(profile, 'Default', 'IndexedDB'), { recursive: true });
  const logs = files.filter((name) => name.endsWith('.log'));
  const torn = await Promise.all(logs.map(async (name) =>
    endsTorn(await readFile(join(profile, 'Default', 'IndexedDB', name)))));
  return torn.includes(true);
}
