import { describe, expect, it } from 'vitest';
import { readQuantity } from '../../src/exchange/takeoff/quantity.ts';
import type { DecimalSign } from '../../src/schedule/index.ts';
import { loadWords } from '../../src/words/index.ts';

const plainCounts: [text: string, qty: number, unit?: string, decimal?: DecimalSign][] = [
  ['12', 12], [' 12 ', 12], ['12 no.', 12], ['12 No', 12], ['12nos', 12], ['12 pcs', 12], ['12 Stk', 12],
  ['12 Stk.', 12],
  ['12 Stück', 12], ['12 pièces', 12], ['12 u', 12], ['12x', 12], ['12 ea.', 12], ['12,0', 12], ['12.0', 12],
  ['1 200', 1200], ['1\u202f200', 1200], ['1\u00a0200 u', 1200], ['1’200', 1200],
  ['12 St', 12], ['12 St.', 12], ['12 Stck.', 12], ['12 Stücke', 12], ['12 mal', 12], ['12 Geräte', 12],
  ['12 pcs.', 12], ['12 un.', 12],
  ['12 unités', 12], ['12 pces', 12], ['12 fois', 12], ['12', 12, 'U'], ['12', 12, 'Un.'], ['12,0 Stk.', 12], [
    '1.200 Stk.', 1200, '', ',',
  ],
  ['1,200', 1200, '', '.'], ['1.200', 1200, '', ','], ['0', 0], ['12', 12, 'Stk'], ['12', 12, 'pcs.'], ['１２', 12],
];

describe('a plain count', () => {
  it.each(plainCounts)('%j is %d', (text, qty, unit, decimal) => {
    expect(readQuantity(text, unit, decimal)).toEqual({ qty });
  });
});

const doubtful: [text: string, qty: number | null, unit?: string, decimal?: DecimalSign][] = [
  ['ca. 12', 12], ['approx. 12', 12], ['env. 3', 3], ['~12', 12], ['12?', 12], ['12 (tbc)', 12], ['min. 12', 12],
  ['10-12', null], ['1 lot', 1], ['1', 1, 'psch'], ['1,0', 1, 'psch'], ['ca. 2.5', 2.5],
  ['as needed', null], ['=3*4', null], ['-', null],
  // Both readings are whole numbers or not, so that only a person knows.
  ['1,200', null], ['1.000', null],
  ['12,5', 12.5], ['12.5', 12.5], ['1.325,5', 1325.5], ['-3', -3], ['1e9', null],
  // A slip of the keyboard: more than a million.
  ['1,234,567', null], ['99999999999999999999', null], ['1200000', null],
];

describe('a quantity in doubt', () => {
  it.each(doubtful)('%j shows %s and says what to do', (text, qty, unit, decimal) => {
    const found = readQuantity(text, unit, decimal);
    expect(found.qty).toBe(qty);
    expect(found.doubt).toMatch(/\. [A-Z].*\.$/);
  });
});

const proposed: [text: string, qty: number, unit?: string][] = [
  ['2 pr.', 4], ['2', 4, 'pr'], ['3 Paar', 6], ['1 paire', 2], ['3 + 1 spare', 4], ['3+1', 4], ['3 (+1 Reserve)', 4],
  ['3 Stk + 1 Stk Reserve', 4], ['6 + 2 + 1', 9], ['12 (incl. 2 spare)', 12], ['12 (davon 2 Reserve)', 12],
  ['12 dont 2 de réserve', 12], ['12 pcs (incl. 2 spare)', 12], ['12 including 2 spare', 12],
  ['2x3', 6], ['2 x 6', 12], ['2×3 Stk', 6], ['2*3', 6], ['ca. 12', 12], ['~12', 12], ['12 (tbc)', 12],
];

it.each(proposed)('%j is put in a doubtful way: %d is proposed, and asked for', (text, qty, unit) => {
  expect(readQuantity(text, unit)).toMatchObject({ qty, proposal: qty });
  expect(readQuantity(text, unit).doubt).toContain(`probably means ${qty}. Confirm it, or say how many there are.`);
});

it.each<[text: string, unit?: string]>([
  ['10-12'], ['12 (2 spare)'], ['2 x 6 W'], ['3 + 1 W'], ['12 + 10 %'], ['1 lot'], ['1', 'psch'], ['2 (incl. 12 spare)'], ['-3'],
  ['2 pr. + 1'], ['3 + ?'], ['2 sets of 3'], ['1,200 + 1'],
])('nothing is proposed for %j in %j, which may mean several things', (text, unit) => {
  const found = readQuantity(text, unit);
  expect(found.proposal).toBeUndefined();
  expect(found.doubt).toMatch(/\.$/);
});

it('a product of metres is a length', () => {
  expect(readQuantity('2 x 2.5 m')).toMatchObject({ qty: 5, proposal: 5, isLength: true });
});

it.each([
  ['18 m', ''], ['18', 'm'], ['18,0', 'lfm'], ['18 ml', ''], ['18 lfd. m', ''], ['18', 'lfd.m.'], ['18', 'm.l.'], [
    '18 mètres linéaires', '',
  ],
])('%j in %j is a length', (text, unit) => {
  expect(readQuantity(text, unit)).toEqual({ qty: 18, isLength: true });
});

it('is read, and doubted, in the language that is asked for', async () => {
  expect(readQuantity('ca. 2,5', 'Stk', ',', await loadWords('de')))
    .toEqual({ qty: 2.5, doubt: '„ca. 2,5“ in „Stk“ ist keine eindeutige Stückzahl. Angeben, wie viele es sind.' });
  expect(readQuantity('1 lot', '', ',', await loadWords('fr')))
    .toEqual({ qty: 1, doubt: '«\u00a01 lot\u00a0» n’est pas un simple nombre. Indiquer combien il y en a.' });
});

it('is unknown, without a doubt, where nothing stands', () => {
  expect(readQuantity('', 'Stk')).toEqual({ qty: null });
});
