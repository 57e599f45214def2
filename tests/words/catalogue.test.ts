import { readFileSync } from 'node:fs';
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import { saidMessages } from '../support/messages.ts';

const { messages, unreadable } = saidMessages();
const file = (language: string) =>
  readFileSync(new URL(`../../src/words/catalogue/${language}.json`, import.meta.url), 'utf8');
const catalogues = ['de', 'fr'].map((language) =>
  ({ language, entries: JSON.parse(file(language)) as Record<string, string> }));
const texts = new Set(messages.map(({ text }) => text));
const formatted = new Map(messages.map((each) => [each.text, each.formatted]));

/** Kinds of parts of a message, as ICU MessageFormat has them. */
const LITERAL = 0;

/** What a message is given by name, and what it counts by. */
function valuesOf(text: string, isFormatted: boolean): string {
  if (!isFormatted) return [...text.matchAll(/\{([^}]*)\}/g)].map((match) => match[1]).sort().join();
  const names = new Set<string>();
  const visit = (parts: ReturnType<IntlMessageFormat['getAst']>): void => {
    for (const part of parts) {
      if ('options' in part) {
        names.add(`${part.value} counts`);
        for (const { value } of Object.values(part.options)) visit(value);
      } else if ('value' in part && (part.type as number) !== LITERAL) names.add(part.value);
    }
  };
  visit(new IntlMessageFormat(text, 'en', undefined, { ignoreTag: true }).getAst());
  return [...names].sort().join();
}

test('the scan of the code has worked', () => {
  expect(messages.length).toBeGreaterThan(400);
});

test('the scan can read every message in the code: none is put together while the program runs', () => {
  expect(unreadable).toEqual([]);
});

describe.each(catalogues)('the catalogue of $language', ({ language, entries }) => {
  test('has every message that the code says', () => {
    const missing = messages.filter(({ text }) => entries[text] === undefined);
    expect(missing.map(({ place, text }) => `${place}: ${text}`)).toEqual([]);
  });

  test('has no message that nothing says', () => {
    expect(Object.keys(entries).filter((english) => !texts.has(english))).toEqual([]);
  });

  test('stands in the order of the English texts, each once, as `npm run words` writes it', () => {
    const sorted = Object.keys(entries).sort().map((english) => [english, entries[english]]);
    expect(file(language)).toBe(`${JSON.stringify(Object.fromEntries(sorted), null, 2)}\n`);
  });

  test('gives each message the values that it has in English', () => {
    const differing = Object.entries(entries).filter(([english, other]) => {
      const isFormatted = formatted.get(english) ?? true;
      return valuesOf(other, isFormatted) !== valuesOf(english, isFormatted);
    });
    expect(differing).toEqual([]);
  });

  test('leaves no message empty', () => {
    expect(Object.entries(entries).filter(([, other]) => other.trim() === '')).toEqual([]);
  });
});
