// Puts the catalogues of messages into order, so that two people who add messages seldom touch the same lines.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readJson } from './read-json.mjs';

for (const language of ['de', 'fr']) {
  const file = fileURLToPath(new URL(`../src/words/catalogue/${language}.json`, import.meta.url));
  const entries = /** @type {Record<string, string>} */ (readJson(file));
  const sorted = Object.keys(entries).sort().map((english) => [english, entries[english]]);
  writeFileSync(file, `${JSON.stringify(Object.fromEntries(sorted), null, 2)}\n`);
}
