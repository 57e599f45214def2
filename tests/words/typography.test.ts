import { describe, expect, test } from 'vitest';
import de from '../../src/words/catalogue/de.json' with { type: 'json' };
import fr from '../../src/words/catalogue/fr.json' with { type: 'json' };

const german = Object.values(de);
const french = Object.values(fr);

/** Clauses of standards, and the number that JSON is shown with, keep their point. */
const KEEPS_POINT =
  /NEC 210\.20|433\.1|3\.7\.16|tab\p{L}+ (?:41\.2|52\.1)|[BS] ?\.?(?:7671, (?:523\.5|A\p{L}+ 4, 6\.1)|52\.1[47])|JSON .*12\.5/giu;
const withoutClauses = (texts: readonly string[]) => texts.map((text) => text.replace(KEEPS_POINT, ''));

/** The texts in which something is found. */
const having = (texts: readonly string[], what: RegExp) => texts.filter((text) => what.test(text));

describe('German', () => {
  test('quotes „so“', () => {
    expect(having(german, /[«»”]/)).toEqual([]);
    expect(german.filter((text) => text.split('„').length !== text.split('“').length)).toEqual([]);
  });

  test('has a comma before decimals, but in what JSON and standards write', () => {
    expect(having(withoutClauses(german), /\d\.\d/)).toEqual([]);
  });

  test('has typographic apostrophes and no space before a mark', () => {
    expect(having(german, /\p{L}'\p{L}|[ \u00a0\u202f][:;!?](?!\S)/u)).toEqual([]);
  });
});

describe('French', () => {
  test('quotes « so », with spaces that do not break', () => {
    expect(having(french, /[„“”]|«(?!\u00a0)|(?<!\u00a0)»/)).toEqual([]);
  });

  test('has a narrow space that does not break before ; ! ?, and a full one before a colon', () => {
    expect(having(french, /[\p{L}\d}»)] ?[;!?](?:\s|$)/u)).toEqual([]);
    expect(having(french, /[\p{L}\d}»)] ?:(?:\s|$)/u)).toEqual([]);
    expect(having(french, /\u00a0[;!?]|\u202f:/)).toEqual([]);
  });

  test('has typographic apostrophes', () => {
    expect(having(french, /\p{L}'\p{L}/u)).toEqual([]);
  });

  test('has a comma before decimals, but in what JSON and standards write', () => {
    expect(having(withoutClauses(french), /\d\.\d/)).toEqual([]);
  });
});
