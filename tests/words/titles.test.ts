import { describe, expect, test } from 'vitest';
import { SCHEMA, SHEET_NAMES } from '../../src/schedule/index.ts';
import { loadWords } from '../../src/words/index.ts';

const LOCALES = ['en', 'de', 'fr'];
const languages = await Promise.all(LOCALES.map((locale) => loadWords(locale)));
const cases = LOCALES.flatMap(
  (locale, index) => SHEET_NAMES.map((sheet) => ({ locale, sheet, words: languages[index]! })),
);

/** A name as headings are compared, without their case. */
const plain = (name: string) => name.toLowerCase();

describe('titles', () => {
  test.each(cases)('of $sheet in $locale: each is of one column, and no other’s key or English title',
    ({ sheet, words }) => {
    const { columns } = SCHEMA[sheet];
    for (const column of columns) {
      const title = plain(words.text(column.title));
      const meant = columns.filter(
        (other) => [other.key, other.title, words.text(other.title)].map(plain).includes(title),
      );
      expect(meant.map(({ key }) => key)).toEqual([column.key]);
    }
  });

  test.each(LOCALES.map((locale, index) => ({
    locale, words: languages[index]!,
  })))('of sheets in $locale are all different', ({ words }) => {
    const titles = SHEET_NAMES.map((sheet) => words.text(SCHEMA[sheet].title));
    expect(new Set(titles).size).toBe(titles.length);
  });

  test.each(cases)('of choices in $locale on $sheet: each word means one value, in the language and in English',
    ({ sheet, words }) => {
    for (const column of SCHEMA[sheet].columns) {
      const choices = column.role === 'input' ? column.choices ?? [] : [];
      for (const choice of choices) {
        const word = plain(words.text(choice));
        expect(choices.filter((other) => [other, words.text(other)].map(plain).includes(word))).toEqual([choice]);
        expect(word).not.toContain(',');
      }
    }
  });
});

test.each([
  ['en', 'Demand', 'demand'], ['en', 'Unit draw', 'unit draw'], ['de', 'Demand', 'Strombedarf'], [
    'de', 'Usable', 'nutzbarer Strom',
  ],
  ['de', 'Longest', 'größte Länge'], ['de', 'Inrush headroom', 'Reserve beim Einschalten'], ['fr', 'Status', 'état'],
])('within a sentence in %s, %s is %s', (locale, title, text) => {
  expect(languages[LOCALES.indexOf(locale)]!.within(title)).toBe(text);
});
