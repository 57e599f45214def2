import { HyperFormula } from 'hyperformula';
import { expect, test } from 'vitest';
import { scheduleOf, typeFormula, valueAt } from '../support/schedules.ts';

test('the formula engine of a page gives the same results beside a schedule as without one', () => {
  const own = HyperFormula.buildFromArray([['=INT(-2.5)', '=ROUND(2.5,0)']], { licenseKey: 'gpl-v3' });
  const before = own.getSheetValues(0);
  const functions = new Set(HyperFormula.getRegisteredFunctionNames('enGB'));
  const schedule = scheduleOf({ enclosures: [{ enclosure: 'E' }] });
  expect(typeFormula(schedule, 'enclosures', 0, 'ambient', '=INT(-2.5)')).toBeUndefined();
  // OpenFormula rounds down; the engine's own function goes towards zero (hyperformula 3.5.0).
  expect(valueAt(schedule, 'enclosures', 0, 'ambient')).toBe(-3);
  const beside = HyperFormula.buildFromArray([['=INT(-2.5)', '=ROUND(2.5,0)']], { licenseKey: 'gpl-v3' });
  expect(beside.getSheetValues(0)).toEqual(before);
  expect(before).toEqual([[-2, 3]]);
  const added = HyperFormula.getRegisteredFunctionNames('enGB').filter((name) => !functions.has(name));
  expect(added.every((name) => name.startsWith('ELV.'))).toBe(true);
  for (const each of [own, beside]) each.destroy();
  schedule.dispose();
});

test.each([
  ['=INT(2.9)+int(3.9)', 5], ['=LEN("INT(2)")', 6], ['=INT(INT(4.5)/3)', 1], ['=ROUND(INT(2.7);0)', 2],
])('%s is %d: INT is found where it is a function, and nowhere else', (formula, value) => {
  const schedule = scheduleOf({ enclosures: [{ enclosure: 'E' }] });
  expect(typeFormula(schedule, 'enclosures', 0, 'ambient', formula)).toBeUndefined();
  expect(valueAt(schedule, 'enclosures', 0, 'ambient')).toBe(value);
  schedule.dispose();
});
