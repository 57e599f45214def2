// Makes the demos in other languages of the English one and the tables of texts: `npm run demos`.
import { readFileSync, writeFileSync } from 'node:fs';
import { DEMO_LANGUAGES, translateDemo } from './demos/translate-demo.ts';

const data = new URL('../data/', import.meta.url);
const demo = readFileSync(new URL('demo.schedule.json', data), 'utf8');
for (const language of DEMO_LANGUAGES) {
  writeFileSync(new URL(`demo.${language}.schedule.json`, data), translateDemo(demo, language));
}
