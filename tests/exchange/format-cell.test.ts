import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  columnOf, decimalSign, detectDecimal, formatCell, inputColumns, isNumeric, parseCell, SHEET_NAMES,
  type CellValue, type InputColumn, type SheetName,
} from '../../src/schedule/index.ts';
import { makeWords } from '../../src/words/index.ts';

const column = (path: string) => columnOf(...path.split('.') as [SheetName, string]);

describe('formatCell', () => {
  it.each<[path: string, value: CellValue, locale: string, text: string]>([
    ['devices.connected', 2.4, 'en', '2.40'],
    ['devices.connected', 2.4, 'de', '2,40'],
    ['devices.connected', 12_500, 'en', '12\u2009500.00'],
    ['devices.connected', 1_234_567.891, 'fr', '1\u2009234\u2009567,89'],
    ['devices.connected', -0.001, 'en', '0.00'],
    ['supplies.spare', -1.5, 'en', '−1.50'],
    ['supplies.rated', 10, 'en', '10.00'],
    ['supplies.rated', 0.0375, 'en', '0.0375'],
    ['devices.unitDraw', 416.6666666666667, 'en', '416.7'],
    // Volts have two decimals, typed or worked out; those of the mains are whole ones.
    ['supplies.voltage', 24, 'en', '24.00'],
    ['runs.minVoltage', 20.4, 'en', '20.40'],
    ['runs.endVoltage', 22.1, 'en', '22.10'],
    ['feeds.voltage', 230, 'en', '230'],
    ['devices.qty', 9999, 'en', '9999'],
    ['devices.qty', 10_000, 'en', '10\u2009000'],
    ['devices.diversity', 0.7, 'en', '70\u202f%'],
    ['devices.diversity', 0.07, 'en', '7\u202f%'],
    ['devices.diversity', 0.125, 'de', '12,5\u202f%'],
    ['supplies.loading', 0.79149, 'en', '79\u202f%'],
    ['supplies.loading', 2 / 3, 'en', '67\u202f%'],
    ['supplies.redundant', true, 'en', 'yes'],
    ['supplies.redundant', null, 'en', ''],
    ['devices.connected', 1, 'not_a_locale', '1.00'],
  ])('shows %s %j in %s as %j', (path, value, locale, text) => {
    expect(formatCell(column(path), value, makeWords(locale), 'show')).toBe(text);
  });

  it.each<[path: string, value: CellValue, use: 'edit' | 'copy', text: string]>([
    ['devices.connected', 12_500.123456789, 'edit', '12500,123456789'],
    ['devices.diversity', 0.07, 'edit', '7 %'],
    ['devices.diversity', 0.07, 'copy', '0,07'],
    ['devices.distance', 1e-7, 'copy', '0,0000001'],
    ['supplies.spare', -1.5, 'edit', '-1,5'],
  ])('writes %s %j to %s as %j in German', (path, value, use, text) => {
    expect(formatCell(column(path), value, makeWords('de'), use)).toBe(text);
  });

  it('is read back exactly, whatever the number and the language', () => {
    // Only whole numbers may be metres as well.
    const unlimited = ({ metres: _metres, ...each }: InputColumn): InputColumn => ({
      ...each, kind: each.kind === 'integer' ? 'number' : each.kind, min: -Infinity, above: -Infinity, max: Infinity,
    });
    fc.assert(fc.property(
      fc.constantFrom(...SHEET_NAMES.flatMap(inputColumns).filter(isNumeric).map(unlimited)),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.constantFrom('en', 'de', 'fr-CH'),
      fc.constantFrom('edit' as const, 'copy' as const),
      (each, value, locale, use) => {
        const parsed = parseCell(
          each, formatCell(each, value, makeWords(locale), use), { decimal: decimalSign(locale) },
        );
        expect(parsed).toEqual({ ok: true, value: value + 0 });
      },
    ));
  });

  it('can be typed as it is shown', () => {
    const thousandth = fc.integer({ min: 0, max: 10_000_000 });
    fc.assert(fc.property(thousandth, fc.constantFrom('en', 'de'), (thousandths, locale) => {
      const distance = column('devices.distance') as InputColumn;
      const value = thousandths / 1000;
      const text = formatCell(distance, value, makeWords(locale), 'show');
      expect(parseCell(distance, text, { decimal: decimalSign(locale) })).toEqual({ ok: true, value });
    }));
  });
});

describe('detectDecimal', () => {
  it.each<[texts: string[], sign: '.' | ',' | undefined]>([
    [[], undefined],
    [['12', '1,200'], undefined],
    [['12,5', '1.200'], ','],
    [['0.35 A', '12'], '.'],
    [['1,200', '1,234,567'], '.'],
    [['1.234,5'], ','],
    [['0,350'], ','],
    [['12,5', '12.5'], undefined],
    [['1.2 is the floor', '25.11.2026', '12,5'], ','],
    [['=SUM(1.5,2.5)'], undefined],
  ])('%j proves %j', (texts, sign) => {
    expect(detectDecimal(texts)).toBe(sign);
  });
});
