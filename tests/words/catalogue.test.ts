import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../src/words/catalogue/index.ts';
import { saidMessages } from '../support/messages.ts';

const { messages, unreadable } = saidMessages();
const entries = Object.entries(CATALOGUE).flatMap(([area, of]) =>
  Object.entries(of).map(([english, { de, fr }]) => ({ area, english, de, fr })));
const known = new Set(entries.map(({ english }) => english));
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

describe('the catalogue', () => {
  test('is large enough for the scan of the code to have worked', () => {
    expect(messages.length).toBeGreaterThan(400);
  });

  test('has every message that the code says', () => {
    const missing = messages.filter(({ text }) => !known.has(text));
    expect(missing.map(({ place, text }) => `${place}: ${text}`)).toEqual([]);
  });

  test('has no message that nothing says', () => {
    const said = new Set(messages.map(({ text }) => text));
    expect(entries.filter(({ english }) => !said.has(english)).map(({ area, english }) => `${area}: ${english}`)).toEqual([]);
  });

  test('has each message once', () => {
    const twice = entries.filter(({ english }, index) => entries.findIndex((each) => each.english === english) !== index);
    expect(twice.map(({ area, english }) => `${area}: ${english}`)).toEqual([]);
  });

  test('can read every message in the code: none is put together while the program runs', () => {
    expect(unreadable).toEqual([]);
  });

  test('gives each message the same values in every language', () => {
    const differing = entries.flatMap(({ area, english, de, fr }) => {
      const values = valuesOf(english, formatted.get(english) ?? true);
      return [['de', de], ['fr', fr]].filter(([, text]) => valuesOf(text!, formatted.get(english) ?? true) !== values)
        .map(([language]) => `${area}, ${language}: ${english}`);
    });
    expect(differing).toEqual([]);
  });

  test('leaves no language empty', () => {
    expect(entries.filter(({ de, fr }) => de.trim() === '' || fr.trim() === '')).toEqual([]);
  });
});
