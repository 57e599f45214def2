import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { SCHEMA } from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { saidMessages } from '../support/messages.ts';

/** Words that practitioners do not use so, and what stands in their place, each way in which they could come back. */
const ENGLISH_OF_OLD = [
  /asked for \{|(what |\} )may be used|reckon|worked out|work(ing)? it out|comes? about|may make|sees an inrush/i,
  /(over|near) the limit|^over$|no working voltage|peripheral|points? on/i,
  /thicker|stronger|smaller (way|protection|fuse)|\bat once\b|\b(Most|Least) [a-z]+$/,
  /Voltage there|Drop share|Inrush in all|Full up to|[Ll]ess per kelvin|[Aa]s entered( first)?$|what is typed/,
  /measured off|cannot stand here|parted by|\b[Rr]oom (for|before|left)|[«»]/,
];
const OLD = {
  de: [
    /Buslinie|Busplätze|Lastaufstellung|Lasttabelle|Netzabgang|\bsofort/, /\b[Kk]napp\b|in Ordnung|Betriebsspannung/,
    /(CSV|Mengenauszug“?) (ein)?(lesen|schreiben)|(dicker|stärker)(er|en|e|es) (Leiter|Kabel)|kleiner(en|e) Abgang\b/,
  ],
  fr: [
    /[Ll]ignes? de bus|[Ll]iaisons?\b|courants? (demandé|raccordé)s?|charge raccordée/i, /conforme|tension de service|aussitôt/,
    /(bilan|tableau) de charge|\bpertes\b|[Cc]omme saisie?s?\b|^(Dimensionner|Répartir|Lire CSV|Écrire CSV)$/i,
    // What feeds field devices is a circuit; a rail is what parts are mounted on.
    /\brails?\b(?! de montage|\}|\.)(?<!ses rails|des rails|d’un rail)/i,
  ],
};

const catalogue = (language: string) => Object.entries(JSON.parse(readFileSync(
  new URL(`../../src/words/catalogue/${language}.json`, import.meta.url), 'utf8'
)) as Record<string, string>);

const among = (texts: readonly string[], old: readonly RegExp[]) =>
  texts.filter((text) => old.some((words) => words.test(text)));

test('no message says an old word', () => {
  const said = saidMessages().messages.map(({ text }) => text);
  expect(said.length).toBeGreaterThan(2000);
  expect(among(said, ENGLISH_OF_OLD)).toEqual([]);
});

test.each(['de', 'fr'] as const)('nor does the catalogue of %s', (language) => {
  // Names of values stand in braces, and are no words.
  const said = catalogue(language).map(([, text]) => text.replace(/\{[\w.]+\}/g, '{}'));
  expect(among(said, OLD[language])).toEqual([]);
});

test('no choice is called by a key, and names of columns are words too', () => {
  const called = Object.values(SCHEMA).flatMap(({ columns }) => columns).flatMap((column) =>
    [column.title, ...column.role === 'input' ? (column.choices ?? []).map((each) => ENGLISH.text(each)) : []]);
  expect(called.filter((each) => /-[a-z]+-|^[a-z]{2,}[A-Z]/.test(each))).toEqual([]);
  expect(among(called, ENGLISH_OF_OLD)).toEqual([]);
});
