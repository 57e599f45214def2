import { describe, expect, test } from 'vitest';
import { explanationText, type Explanation } from '../../src/engine/index.ts';
import { explainCell, roomFor } from '../../src/explanations.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { SCHEMA, SHEET_NAMES, type Content } from '../../src/schedule/index.ts';
import { loadWords } from '../../src/words/index.ts';
import { ENGLISH_LEFT } from '../support/english-left.ts';
import { outside, PSEUDO } from '../support/pseudo-words.ts';
import { idAt, reference, typeFormula } from '../support/schedules.ts';

/** A small schedule in which every figure is known and every name is a letter with digits. */
const SHEETS: Content['sheets'] = {
  types: [
    { type: 'T1', power: 12.5, load: 'power', minVoltage: 19.2, diversity: 0.75 },
    { type: 'T2', draw: 8.5, purpose: 'control' },
  ],
  supplies: [
    {
      rail: 'R1', rated: 10, units: 2, redundant: true, fuse: 12.5, efficiency: 0.92, enclosure: 'E1', fullUpTo: 45,
      lessPerKelvin: 0.025,
    },
    { rail: 'R2', rated: 5, redundant: true },
    { rail: 'R3', rated: 2.5, battery: 12.5 },
    { rail: 'R4', rated: 2.5, seriesDrop: 0.5, battery: 7.5 },
  ],
  branches: [{ branch: 'B1', reserve: 0.125 }],
  conductors: [{ conductor: 'C1', size: 1.5, resistance: 12.1, maxCurrent: 15.5 }],
  runs: [{ run: 'L1', rail: 'R1', branch: 'B1', conductor: 'C1', length: 42.5, way: 'F1' }],
  ways: [{ way: 'F1', rail: 'R1', kind: 'B', rated: 4 }],
  contacts: [{ contact: 'K1', resistive: 16, lamp: 10, inrush: 165 }],
  outputs: [
    { output: 'Q1', contact: 'K1', kind: 'lamp', qty: 4, power: 57.5, inrush: 12.5, feed: 'F1' },
    { output: 'Q2', contact: 'K1', feed: 'F1' },
  ],
  feeds: [{ feed: 'F1', rated: 16 }],
  enclosures: [
    { enclosure: 'E1', height: 600, width: 400, depth: 200, mounting: 'wall', otherLoss: 7.5, ambient: 35 },
    { enclosure: 'E2', height: 600, width: 400, depth: 200, mounting: 'flush', otherLoss: 7.5, ambient: 35 },
  ],
  devices: [
    { ref: 'D1', type: 'T1', qty: 3, rail: 'R1', branch: 'B1', run: 'L1', distance: 12.5 },
    { ref: 'D2', type: 'T2', qty: 2, rail: 'R1', branch: 'B1', diversity: 0.5 },
    { ref: 'D3', rail: 'R1' },
  ],
};

function* explanations(schedule: LoadSchedule): Generator<{ place: string; explanation: Explanation }> {
  for (const sheet of SHEET_NAMES) {
    for (const { id } of schedule.rows(sheet)) {
      for (const { key, ...column } of SCHEMA[sheet].columns) {
        if ('status' in column) continue;
        const explanation = explainCell(schedule, sheet, id, key);
        if (explanation !== undefined) yield { place: `${sheet}.${key}`, explanation };
      }
    }
  }
}

function speaking(words: LoadSchedule['words']): LoadSchedule {
  return new LoadSchedule({ details: {}, sheets: SHEETS }, { words });
}

/** All that an explanation says but the figure that it comes to. */
const saidBy = ({ title, words, numbers, source, parts }: Explanation) =>
  [title, words, numbers ?? '', source, ...parts.map(({ label }) => label)];

describe('an explanation', () => {
  test('of any figure says nothing that another language could not say', () => {
    const left = [...explanations(speaking(PSEUDO))].flatMap(({ place, explanation }) =>
      saidBy(explanation).filter((text) => /\p{L}{2}/u.test(outside(text).left)).map((text) => `${place}: ${text}`));
    expect(left).toEqual([]);
  });

  test.each(['de', 'fr'])('of any figure is said in %s, with decimal commas', async (locale) => {
    const all = [...explanations(speaking(await loadWords(locale)))];
    expect(all.length).toBeGreaterThan(100);
    for (const { place, explanation } of all) {
      const text = [explanationText(explanation), explanation.source, ...saidBy(explanation)].join('\n');
      expect(`${place}: ${ENGLISH_LEFT.exec(text)?.[0] ?? ''}`).toBe(`${place}: `);
      // Clauses of standards, such as 433.1, keep their point.
      expect(explanationText(explanation)).not.toMatch(/\d\.\d/);
      expect(text).not.toMatch(/[{}]|undefined|NaN/);
    }
  });

  // The figures by hand: 3 × 12.5 W ÷ 24 V is 520.83 mA each; 10 A × (2 − 1) × 1 in an enclosure that stays below 45
  // °C.
  test.each<[locale: string, sheet: 'devices' | 'supplies' | 'branches', key: string, text: string]>([
    [
      'de', 'devices', 'unitDraw',
      'Stromaufnahme je Gerät = Leistung des Gerätetyps T1 ÷ Spannung der Versorgung R1 × 1000 = 12,50\u00a0W ÷ 24,00\u00a0V × 1000 = 520,8\u00a0mA',
    ],
    [
      'fr', 'devices', 'demand',
      'Courant d’emploi = courant installé × facteur de simultanéité = 1,56\u00a0A × 75\u202f% = 1,17\u00a0A',
    ],
    [
      'de', 'supplies', 'connected',
      // 1.5625 A + 17 mA, and 21 mA that the run draws more, as 12.5 m of 12.1 Ω/km leave its devices some 23.6 V.
      'Anschlussstrom = Summe der Anschlussströme der Gerätezeilen, der Mehrströme der Leitungen und der Ströme der Relaisausgänge, die sie nennen = 3 Gerätezeilen + 1 Leitung, davon 1 nicht bekannt = ≥ 1,60\u00a0A',
    ],
    ['fr', 'branches', 'cables', 'Câbles = nombre de câbles qui le nomment = 1 câble = 1'],
  ])('in %s of %s.%s', async (locale, sheet, key, text) => {
    const schedule = speaking(await loadWords(locale));
    expect(explanationText(explainCell(schedule, sheet, idAt(schedule, sheet), key)!)).toBe(text);
  });
});

test('an input says whether somebody entered it or the column gives it', () => {
  const schedule = new LoadSchedule({ details: {}, sheets: SHEETS });
  const said = (key: string, at: number) => {
    const { words, source } = explainCell(schedule, 'supplies', idAt(schedule, 'supplies', at), key)!;
    return [words, source];
  };
  expect(said('units', 0)).toEqual(['entered here', 'the person who entered it']);
  expect(said('units', 2)[0]).toBe('default, as nothing is entered here');
});

describe('the room that is left', () => {
  // 165 A less 4 × 12.5 A of inrush, by 12.5 A: 9. Another output on its feed is not wholly known.
  test.each([
    [
      'de',
      'Platz für weitere Lasten dieser Art bis zum Einschaltvermögen des Kontakts: 9. Nicht alles, was an seinem Netzstromkreis, seinem Modul oder seiner Schiene hängt, ist bekannt; der Platz kann kleiner sein.',
    ],
    [
      'fr',
      'Place pour d’autres charges identiques avant le pouvoir de fermeture du contact\u00a0: 9. Tout ce qui dépend de son départ, de son module ou de son circuit n’est pas connu\u00a0: il peut y avoir moins de place.',
    ],
  ])('on an output in %s', async (locale, sentence) => {
    const schedule = speaking(await loadWords(locale));
    expect(roomFor(schedule, 'outputs', idAt(schedule, 'outputs'))?.sentence).toBe(sentence);
  });

  // 10 A, 8 A to the target, less 3 × 390.625 mA, 2 × 8.5 mA × 0.5 and 0.02 A that the run costs, by 390.625 mA: 22 and
  // 17. At once 10 A less 3 × 520.833 mA, 2 × 8.5 mA and 0.02 A, by 520.833 mA: 16.
  test.each([
    [
      'de',
      'Platz für weitere Geräte vom Typ T1 bis zum nutzbaren Strom: höchstens 22, bis alles zugleich zu viel ist: höchstens 16.',
    ],
    [
      'fr',
      'Place pour d’autres appareils du type T1 avant le courant utilisable\u00a0: au plus 22, avant que tout à la fois ne soit de trop\u00a0: au plus 16.',
    ],
  ])('on a supply in %s', async (locale, sentence) => {
    const schedule = speaking(await loadWords(locale));
    expect(roomFor(schedule, 'supplies', idAt(schedule, 'supplies'), idAt(schedule, 'types'))?.sentence)
      .toContain(sentence);
  });
});

describe('a formula that cannot stand', () => {
  const REFUSED = [
    '=NOW()', '=OFFSET(D1;1;1)', '=VLOOKUP(1;D1;1)', '="', '=D:D', '=NIX(1)', '=(1', '=1+++++++++++1', '=nowhere!A1',
    '=ZZ1', `=${reference('runs', 'status')}`, '=A99',
    '=A1:types!A1', `=${'1+'.repeat(1001)}1`, '=⟦⟧', '=1;2;', '=SUM()', `=${'('.repeat(60)}1${')'.repeat(60)}`,
  ];

  test.each(['de', 'fr'])('is refused in %s', async (locale) => {
    const [english, schedule] = [speaking(await loadWords('en')), speaking(await loadWords(locale))];
    for (const formula of REFUSED) {
      const problem = typeFormula(schedule, 'devices', 0, 'qty', formula)!;
      expect(problem).not.toBe(typeFormula(english, 'devices', 0, 'qty', formula));
      // Formulas name sheets by their keys in every language.
      expect(SHEET_NAMES.reduce((text, name) => text.replaceAll(name, ''), problem)).not.toMatch(ENGLISH_LEFT);
    }
  });
});
