// Puts the catalogues of messages into order, so that two people who add messages seldom touch the same lines.
import { readFileSync, writeFileSync } from 'node:fs';

for (const language of ['de', 'fr']) {
  const file = new URL(`../src/words/catalogue/${language}.json`, import.meta.url);
  /** @type {Record<string, string>} */
  const entries = JSON.parse(readFileSync(file, 'utf8'));
  const sorted = Object.keys(entries).sort().map((english) => [english, entries[english]]);
  writeFileSync(file, `${JSON.stringify(Object.fromEntries(sorted), null, 2)}\n`);
}
