import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { DEMO_LANGUAGES, translateDemo } from '../../scripts/demos/translate-demo.ts';
import { readSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { SCHEMA, SHEET_NAMES, type Column, type Content, type SheetName } from '../../src/schedule/index.ts';

const fileOf = (language: string) =>
  readFileSync(new URL(`../../data/demo${language === 'en' ? '' : `.${language}`}.schedule.json`, import.meta.url), 'utf8');

function contentOf(file: string): Content {
  const read = readSchedule(file);
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return read.content;
}

const english = new LoadSchedule(contentOf(fileOf('en')));

/** Columns in which every language holds the same: all but texts and what names a row by its tag. */
const isSame = ({ kind, role, key }: Column) => role === 'computed' ? key !== 'smallestConductor' && key !== 'group'
  : kind !== 'text' && kind !== 'reference';

/** A figure; a case by its place, as its name is another in each language. */
const figure = (of: LoadSchedule, sheet: SheetName, id: number, key: string) => {
  const value = of.value(sheet, id, key);
  return key === 'worstCase' ? of.rows('cases').findIndex(({ cells }) => cells.case === value) : value;
};

describe.each(DEMO_LANGUAGES)('the demo in %s', (language) => {
  const schedule = new LoadSchedule(contentOf(fileOf(language)));

  test('is what the English one and the table of texts make; after a change of either, `npm run demos`', () => {
    expect(fileOf(language) === translateDemo(fileOf('en'), language)).toBe(true);
  });

  test.each(SHEET_NAMES)('has the same figures and statuses on the sheet %s', (sheet) => {
    const figures = (of: LoadSchedule) => of.rows(sheet).map(({ id }) => SCHEMA[sheet].columns.filter(isSame)
      .map(({ key }) => [key, figure(of, sheet, id, key), of.partialSign(sheet, id, key)]));
    expect(figures(schedule)).toEqual(figures(english));
  });

  test('has the same findings, in the same places', () => {
    const found = (of: LoadSchedule) =>
      of.findings.map(({ rule, sheet, id, key, severity, accepted }) =>
        [rule, sheet, id, key, severity, accepted?.date]);
    expect(found(schedule)).toEqual(found(english));
  });

  test('names every type, and almost every area and note otherwise than the English one', () => {
    const texts = (sheet: 'devices' | 'types' | 'runs', key: string) =>
      schedule.rows(sheet).map(({ cells }, at) => [cells[key], english.rows(sheet)[at]!.cells[key]])
        .filter(([text]) => typeof text === 'string');
    const alike = (of: ReturnType<typeof texts>) => of.filter(([own, other]) => own === other).map(([own]) => own);
    // The same word in both.
    expect(alike(texts('types', 'type'))).toEqual(language === 'de' ? ['Router'] : []);
    expect(alike(texts('types', 'description'))).toEqual([]);
    expect(new Set(alike(texts('devices', 'area')).map((area) => String(area).replace(/^[\d.–]+ /, ''))))
      .toEqual(new Set(['Foyer', 'Café', 'Studio', 'Studios', 'KP-1', 'KP-2']));
    expect(new Set(alike(texts('runs', 'note')))).toEqual(new Set(['Foyer', 'Café', 'Studios']));
  });

  test('is written as its language is', () => {
    const texts = Object.values(schedule.content().sheets).flatMap((rows) => rows.flatMap((cells) =>
      Object.entries(cells).flatMap(([key, text]) => key === 'aliases' ? [] : [text])))
      .filter((text) => typeof text === 'string');
    expect(texts.filter((text) => /\p{L}'\p{L}/u.test(text))).toEqual([]);
    if (language === 'de') expect(texts.filter((text) => /[«»”]| [:;!?](?!\S)/.test(text))).toEqual([]);
    else expect(texts.filter((text) => /[„“”]|«(?!\u00a0)|(?<!\u00a0)»|(?<![\s\d])[;!?]| [:;!?]/.test(text))).toEqual([]);
    // Numbers of rooms and clauses of standards keep their point, and aliases their English.
    const own = schedule.rows('types').flatMap(({ cells }) => [cells.type, cells.description]);
    expect(own.filter((text) => /\d\.\d/.test(String(text)))).toEqual([]);
  });
});
