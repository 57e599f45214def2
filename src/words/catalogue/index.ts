import type { Language } from '../language.ts';
import type { Translations } from '../words.ts';
import type { Area } from './translation.ts';
import { drafts } from './drafts.ts';
import { exchange } from './exchange/index.ts';
import { findings } from './findings/index.ts';
import { report } from './report/index.ts';
import { schema } from './schema/index.ts';
import { screen } from './screen/index.ts';
import { sharing } from './sharing.ts';

/** Every message by area. A message stands in one area only, the first that says it. */
export const CATALOGUE: Readonly<Record<string, Area>> = { schema, findings, screen, exchange, sharing, report, drafts };

/** The messages in one of the languages other than English, by the English text. */
export function translationsInto(language: Exclude<Language, 'en'>): Translations {
  const all = Object.values(CATALOGUE).flatMap((area) => Object.entries(area));
  return new Map(all.map(([english, other]) => [english, other[language]]));
}
