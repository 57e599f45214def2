import { expect, test } from 'vitest';
import { loadWords } from '../../src/words/index.ts';

test.each([
  ['en', 'Mar 2, 2026'], ['en-GB', '2 Mar 2026'], ['de', '02.03.2026'], ['de-CH', '02.03.2026'], ['fr', '02/03/2026'], ['fr-CA', '2026-03-02'],
])('a date is written as %s has it: %s', async (locale, text) => {
  expect((await loadWords(locale)).date('2026-03-02')).toBe(text);
});

test.each(['', '–', 'spring 2026', '02.03.2026', '2026-02-30', '2026-13-01', '2026-3-2'])('what is no date stays as it was entered: “%s”', async (text) => {
  expect((await loadWords('de')).date(text)).toBe(text);
});
