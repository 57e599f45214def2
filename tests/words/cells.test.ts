import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkCell, columnOf, decimalSign, formatCell, inputColumns, parseCell, SHEET_NAMES,
  type CellValue, type InputColumn, type SheetName,
} from '../../src/schedule/index.ts';
import { ENGLISH, loadWords, type Words } from '../../src/words/index.ts';

const SPOKEN: Readonly<Record<string, Words>> = {
  en: ENGLISH, de: await loadWords('de-AT'), fr: await loadWords('fr-CA'), it: await loadWords('it'),
};

const column = (path: string) => columnOf(...path.split('.') as [SheetName, string]) as InputColumn;

function typed(language: string, path: string, text: string) {
  const words = SPOKEN[language]!;
  return parseCell(column(path), text, { words, decimal: decimalSign(words.locale) });
}

describe('what is typed', () => {
  test.each<[language: string, path: string, text: string, value: CellValue]>([
    ['de', 'supplies.redundant', 'ja', true],
    ['de', 'supplies.redundant', 'Nein', false],
    ['de', 'supplies.redundant', 'yes', true],
    ['fr', 'supplies.redundant', 'Oui', true],
    ['fr', 'supplies.redundant', 'non', false],
    ['de', 'types.purpose', 'Beleuchtung', 'lighting'],
    ['de', 'types.purpose', ' steuerung ', 'control'],
    ['de', 'types.purpose', 'lighting', 'lighting'],
    ['fr', 'types.purpose', 'éclairage', 'lighting'],
    ['fr', 'types.purpose', 'Terrain', 'field'],
    ['fr', 'outputs.kind', 'moteur', 'motor'],
    ['de', 'outputs.kind', 'Lampe', 'lamp'],
    ['de', 'enclosures.mounting', 'Einzelgehäuse Wandanbau', 'wall'],
    ['fr', 'enclosures.mounting', 'row-end-wall', 'row-end-wall'],
    ['de', 'types.load', 'Leistung', 'power'],
    ['fr', 'runs.basis', 'courant d’emploi', 'demand'],
    ['it', 'types.purpose', 'lighting', 'lighting'],
    ['de', 'ways.kind', 'flink', 'fast'],
    ['fr', 'ways.kind', 'temporisé', 'slow'],
    ['fr', 'ways.kind', 'electronic', 'electronic'],
    ['de', 'branches.limit', 'TIA-485-A', 32],
    ['de', 'devices.distance', '12,5', 12.5],
    ['fr', 'devices.distance', '1 234,5 m', 1234.5],
    ['it', 'devices.distance', '12,5', 12.5],
    ['en', 'devices.distance', '12,5', 12.5],
    ['de', 'devices.distance', '12.5', 12.5],
    ['de', 'devices.qty', '1.200', 1200],
    ['de', 'devices.qty', '12,5 m', 12.5],
    ['en', 'devices.qty', '1,200', 1200],
    ['fr', 'devices.unitDraw', '0,35 A', 350],
    ['de', 'devices.diversity', '62,5 %', 0.625],
  ])('in %s, %s understands “%s” as %j', (language, path, text, value) => {
    expect(typed(language, path, text)).toMatchObject({ ok: true, value });
  });

  test.each<[language: string, path: string, text: string, hint: string]>([
    ['de', 'devices.unitDraw', '8,4 W', '8,4 W bei 24 V sind 350 mA'],
    ['fr', 'devices.unitDraw', '0,3 W', '0,3 W sous 24 V donnent 12,5 mA'],
  ])('in %s, %s says what became of “%s”', (language, path, text, hint) => {
    expect(typed(language, path, text)).toMatchObject({ ok: true, hint });
  });

  test.each<[language: string, path: string, text: string, problem: string]>([
    [
      'de', 'devices.qty', '12,5',
      '„12,5“ ist keine ganze Zahl; erlaubt: eine ganze Zahl (mindestens 0). 12 oder 13 eingeben.',
    ],
    [
      'fr', 'devices.qty', '12,5',
      '«\u00a012,5\u00a0» n’est pas un nombre entier\u202f; valeur permise\u00a0: un nombre entier (au moins 0). Saisir 12 ou 13.',
    ],
    [
      'de', 'supplies.voltage', '230',
      '„230“ liegt außerhalb des Bereichs; erlaubt: mehr als 0 und höchstens 120 V. Einen solchen Wert eingeben oder die Zelle leeren.',
    ],
    ['de', 'devices.diversity', '1,4',
      '„1,4“ ist mehr als 1; erlaubt: 0 bis 1 (höchstens 100\u202f%). Der Gleichzeitigkeitsfaktor ist der gleichzeitig zu erwartende Anteil. '
      + 'Manche Unterlagen nennen den Kehrwert: in diesem Fall 0,714 eingeben.'],
    [
      'de', 'supplies.target', '80',
      '„80“ ist mehr als 1; erlaubt: mehr als 0 und höchstens 1 (höchstens 100\u202f%). 80\u202f% oder 0,8 eingeben, wenn 80 von hundert gemeint ist.',
    ],
    [
      'fr', 'types.purpose', 'heating',
      '«\u00a0heating\u00a0» n’est pas dans la liste\u202f; valeurs permises\u00a0: éclairage, terrain, commande, autre. Saisir l’une d’elles ou rien.',
    ],
    [
      'de', 'supplies.redundant', 'vielleicht',
      '„vielleicht“ ist weder ja noch nein; nur diese sind erlaubt. Ja oder nein eingeben oder die Zelle leeren.',
    ],
    [
      'de', 'devices.unitDraw', '8,4 lm',
      '„8,4 lm“ hat die Einheit „lm“, die hier nicht passt; erlaubt: eine Zahl (mindestens 0 mA). Die Zahl allein oder mit mA, A oder W eingeben.',
    ],
    [
      'it', 'devices.qty', '12,5',
      '“12,5” is not a whole number; a whole number (0 or more) is allowed. Type 12 or 13.',
    ],
  ])('in %s, %s refuses “%s” and says why', (language, path, text, problem) => {
    expect(typed(language, path, text)).toEqual({ ok: false, problem });
  });

  test('a number that could mean two things is read by neither sign, in any language', () => {
    const parsed = parseCell(column('devices.distance'), '1,234', { words: SPOKEN.de });
    expect(parsed).toEqual({
      ok: false, problem: '„1,234“ kann 1,234 oder 1234 bedeuten; erlaubt: eine Zahl mit nur einer Bedeutung. 1,234 oder 1234 eingeben.',
    });
  });
});

describe('what is written', () => {
  test.each<[language: string, path: string, value: CellValue, text: string]>([
    ['de', 'supplies.redundant', true, 'ja'],
    ['fr', 'supplies.redundant', false, 'non'],
    ['de', 'types.purpose', 'lighting', 'Beleuchtung'],
    ['fr', 'enclosures.mounting', 'wall', 'séparée murale'],
    ['it', 'types.purpose', 'lighting', 'lighting'],
    // A tag stays what it is, even where it is also a word of the schema.
    ['de', 'devices.type', 'lamp', 'lamp'],
    ['de', 'devices.note', 'yes', 'yes'],
    ['fr', 'supplies.rated', 12.5, '12,50'],
  ])('in %s, %s shows %j as %s', (language, path, value, text) => {
    expect(formatCell(column(path), value, SPOKEN[language]!, 'show')).toBe(text);
  });

  test('is read back as it was, in every language and for every use', () => {
    const listed = SHEET_NAMES.flatMap(inputColumns).filter(({ kind }) => kind === 'choice' || kind === 'boolean');
    expect(listed.length).toBeGreaterThan(5);
    fc.assert(fc.property(
      fc.constantFrom(...listed), fc.constantFrom('en', 'de', 'fr', 'it'), fc.constantFrom(
        'show' as const, 'edit' as const, 'copy' as const
      ), fc.nat(),
      (each, language, use, seed) => {
        const values: CellValue[] = each.kind === 'boolean' ? [true, false] : [...each.choices!];
        const value = values[seed % values.length]!;
        const words = SPOKEN[language]!;
        expect(parseCell(each, formatCell(each, value, words, use), { words })).toEqual({ ok: true, value });
      },
    ));
  });
});

describe('what a value is held against', () => {
  test.each<[language: string, path: string, value: CellValue, problem: string]>([
    [
      'de', 'outputs.qty', 2.5,
      '„2,5“ ist keine ganze Zahl; erlaubt: eine ganze Zahl (mindestens 0). 2 oder 3 eingeben.',
    ],
    [
      'fr', 'types.purpose', 3,
      '«\u00a03\u00a0» ne peut pas figurer ici\u202f; valeur permise\u00a0: éclairage, terrain, commande, autre. Saisir une telle valeur ou vider la cellule.',
    ],
    [
      'de', 'supplies.peak', 20,
      '„20“ liegt außerhalb des Bereichs; erlaubt: 1 bis 10. Einen solchen Wert eingeben oder die Zelle leeren.',
    ],
  ])('in %s, %s refuses %j', (language, path, value, problem) => {
    expect(checkCell(column(path), value, undefined, SPOKEN[language])).toBe(problem);
  });
});
