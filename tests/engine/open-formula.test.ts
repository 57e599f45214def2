import { describe, expect, test } from 'vitest';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { reference, scheduleOf, typeFormula, valueAt } from '../support/schedules.ts';

// Semantics of OpenFormula: OASIS OpenDocument 1.3, part 4. Clauses are named by their titles; the numbers of their
// chapters are from memory. The examples are of our own.

/** Types with draws 1, 2, 3, nothing and 5 mA in column E, 24 V each (the default) in D, names in A, a text in B. */
function types(): LoadSchedule {
  return scheduleOf({
    types: [
      { type: 'a', draw: 1 }, { type: 'b', draw: 2 }, {
        type: 'c', draw: 3, description: 'b',
      }, { type: 'd' }, { type: 'e', draw: 5 },
    ],
    enclosures: [{ enclosure: 'E' }],
  });
}

/** What a formula comes to: in a column that allows its sign, on a sheet of its own. */
function result(formula: string, negative: boolean): unknown {
  const schedule = types();
  const key = negative ? 'ambient' : 'otherLoss';
  const problem = typeFormula(schedule, 'enclosures', 0, key, formula);
  const value = problem ?? valueAt(schedule, 'enclosures', 0, key);
  schedule.dispose();
  return value;
}

const OPERATORS = '5.5 Operators, table of precedence';
const LOGIC = '6.15 Logical functions';
const ROUNDING = '6.17 Rounding functions';
const MATHEMATICS = '6.16 Mathematical functions';
const STATISTICS = '6.18 Statistical functions';
const INFORMATION = '6.13 Information functions';
const REFERENCES = '5.8 References';
const CONSTANTS = '5.3 Constant numbers and 5.4 Constant strings';

test.each<[clause: string, formula: string, value: number, why: string]>([
  [OPERATORS, '=2+3*4', 14, '* before +'],
  [OPERATORS, '=(2+3)*4', 20, 'parentheses first'],
  [OPERATORS, '=10-4-3', 3, '- from the left'],
  [OPERATORS, '=100/10/2', 5, '/ from the left'],
  [OPERATORS, '=2^3^2', 64, '^ from the left'],
  [OPERATORS, '=2*3^2', 18, '^ before *'],
  [OPERATORS, '=-2^2', 4, 'prefix - before ^'],
  [OPERATORS, '=10-2^2', 6, 'but ^ before infix -'],
  [OPERATORS, '=50%', 0.5, 'postfix %'],
  [OPERATORS, '=50%^2', 0.25, '% before ^'],
  [OPERATORS, '=-50%', -0.5, 'prefix - and %'],
  [OPERATORS, '=200*10%', 20, '% before *'],
  [OPERATORS, '=2--3', 5, 'infix and prefix -'],
  [OPERATORS, '=+4', 4, 'prefix +'],
  [OPERATORS, '=VALUE(1+2&3)', 33, '+ before &'],
  [OPERATORS, '=IF(1&2="12";1;0)', 1, '& before ='],
  [OPERATORS, '=IF(1+1>1;1;0)', 1, '+ before >'],
  [OPERATORS, '=IF(2<>3;1;0)', 1, '<>'],
  [OPERATORS, '=IF(2<=2;1;0)+IF(2>=3;10;20)', 21, '<= and >='],
  [OPERATORS, '=IF(1<2=TRUE();1;0)', 1, 'comparisons from the left'],
  [CONSTANTS, '=1E3', 1000, 'exponent without a sign'],
  [CONSTANTS, '=2.5e-1*4', 1, 'exponent with a sign'],
  [CONSTANTS, '=.5', 0.5, 'no digit before the point'],
  [CONSTANTS, '=LEN("A1")', 2, 'a text is not a reference'],
  [CONSTANTS, '=LEN("types!E2:E3;[.E2]")', 17, 'nor is one that looks like several'],
  [CONSTANTS, '=LEN("NOW()")', 5, 'nor a function'],
  [CONSTANTS, '=IF("A1"="a1";1;0)', 1, 'texts compare without case, as the option search-criteria says'],
  [LOGIC, '=IF(1=1;5;6)', 5, 'IF that holds'],
  [LOGIC, '=IF(1=2;5;6)', 6, 'IF that does not'],
  [LOGIC, '=IF(1=2;1/0;6)', 6, 'the other branch is not worked out'],
  [LOGIC, '=IFERROR(1/0;7)', 7, 'IFERROR of an error'],
  [LOGIC, '=IFERROR(8;7)', 8, 'IFERROR of none'],
  [LOGIC, '=IF(AND(1=1;2=2);1;0)+IF(OR(1=2;2=2);2;0)+IF(NOT(1=2);4;0)', 7, 'AND, OR, NOT'],
  [ROUNDING, '=ROUND(2.5;0)', 3, 'half away from zero'],
  [ROUNDING, '=ROUND(-2.5;0)', -3, 'below zero too'],
  [ROUNDING, '=ROUND(1234;-2)', 1200, 'negative digits round before the point'],
  [ROUNDING, '=ROUND(2.345;2)', 2.35, 'at the second decimal'],
  [ROUNDING, '=ROUNDUP(2.1;0)', 3, 'away from zero'],
  [ROUNDING, '=ROUNDUP(-2.1;0)', -3, 'below zero too'],
  [ROUNDING, '=ROUNDDOWN(-2.9;0)', -2, 'towards zero'],
  [ROUNDING, '=INT(2.9)', 2, 'down'],
  [ROUNDING, '=INT(-2.1)', -3, 'down, not towards zero'],
  [ROUNDING, '=EVEN(-1)', -2, 'away from zero'],
  [MATHEMATICS, '=MOD(5;3)', 2, 'MOD'],
  [MATHEMATICS, '=MOD(-5;3)', 1, 'has the sign of the divisor'],
  [MATHEMATICS, '=MOD(5;-3)', -1, 'has the sign of the divisor'],
  [MATHEMATICS, '=ABS(-3)', 3, 'ABS'],
  [MATHEMATICS, '=SQRT(9)', 3, 'SQRT'],
  [MATHEMATICS, '=PRODUCT(2;3;4)', 24, 'PRODUCT'],
  [MATHEMATICS, '=SUM(1;2;3)', 6, 'SUM of numbers'],
  [MATHEMATICS, '=SUM(types!E1:E5)', 11, 'empty cells do not count: 1 + 2 + 3 + 5'],
  [MATHEMATICS, '=SUM(types!A1:E5)', 131, 'nor do texts in a range: 11 + 5 × 24'],
  [MATHEMATICS, '=SUM(types!E1:E2;types!E5)', 8, 'ranges and cells: 1 + 2 + 5'],
  [MATHEMATICS, '=SUMIF(types!E1:E5;">2")', 8, '3 + 5'],
  [MATHEMATICS, '=SUMIF(types!A1:A5;"b";types!E1:E5)', 2, 'adds beside what it looks for'],
  [MATHEMATICS, '=SUMPRODUCT(types!E1:E3;types!E1:E3)', 14, '1 + 4 + 9'],
  [STATISTICS, '=AVERAGE(types!E1:E5)', 2.75, '11 ÷ 4: the empty cell does not count'],
  [STATISTICS, '=MIN(types!E1:E5)', 1, 'the empty cell is not 0'],
  [STATISTICS, '=MAX(types!A1:E5)', 24, 'texts do not count'],
  [STATISTICS, '=MEDIAN(types!E1:E5)', 2.5, 'of 1, 2, 3 and 5'],
  [INFORMATION, '=COUNT(types!A1:E5)', 9, 'numbers only: 4 draws, 5 voltages'],
  [INFORMATION, '=COUNTA(types!A1:B5)', 6, 'whatever is not empty'],
  [INFORMATION, '=COUNTIF(types!E1:E5;">2")', 2, 'a condition'],
  [INFORMATION, '=COUNTIF(types!A1:B5;"b")', 2, 'over several columns'],
  [INFORMATION, '=COUNTIF(types!E1:E5;3)', 1, 'a number'],
  [REFERENCES, '=types!E2', 2, 'a cell of another sheet'],
  [REFERENCES, '=types.E2', 2, 'with a point'],
  ['3.3 Non-scalar evaluation', '=SUM(types!E1:E3*2)', 2, 'of a range where one value is asked for, that in the row of the formula'],
  [REFERENCES, '=Types.e2', 2, 'in any case of letters'],
  [REFERENCES, '=types!$E$2', 2, 'with dollar signs'],
  [REFERENCES, '=$types.E2', 2, 'a dollar sign before the sheet'],
  [REFERENCES, "='types'!E2", 2, 'a sheet in quotes'],
  [REFERENCES, '=[types.E2]', 2, 'in brackets'],
  [REFERENCES, "=[$'types'.$E2]", 2, 'with all of these'],
  [REFERENCES, '=SUM([types.E2:.E5])', 10, 'a range in brackets: 2 + 3 + 5'],
  [REFERENCES, '=SUM([types.E2:types.E5])', 10, 'that names its sheet twice'],
  [REFERENCES, '=SUM(types!E2:types!E5)', 10, 'and without brackets'],
  [REFERENCES, '=SUM(types!E5 : E2)', 10, 'corners in any order'],
])('%s: %s is %d (%s)', (_clause, formula, value) => {
  expect(result(formula, value < 0)).toEqual(closeTo(value, EXACT));
});

test('references without a sheet mean the own one: A1, $A$1, [.A1], [.A1:.A2]', () => {
  const schedule = scheduleOf({ branches: [{ limit: 10 }, { limit: 20 }, {}, { branch: 'B' }] });
  for (
    const [formula, value] of [
      ['=B1+1', 11], ['=$B$2', 20], ['=[.B1]*2', 20], ['=SUM([.B1:.B2])', 30], ['=SUM(B1:B3)', 30],
    ] as const
  ) {
    expect([formula, typeFormula(schedule, 'branches', 3, 'limit', formula)]).toEqual([formula, undefined]);
    expect([formula, valueAt(schedule, 'branches', 3, 'limit')]).toEqual([formula, value]);
  }
});

describe('what cannot stand in a schedule is refused, and the sentence says why', () => {
  test.each([
    ['=', /not a formula/],
    ['=2+', /not a formula/],
    ['=ROUND(2,5)', /separated by ; and decimals by a point/],
    ['=2,5', /decimals by a point/],
    ['=1;2', /not a formula/],
    ['=(1', /parentheses.*do not match/],
    ['=1)+(2', /parentheses.*do not match/],
    ['="a', /quotation mark is missing/],
    ['=NOW()', /^NOW changes by itself/],
    ['=1+today()', /^TODAY changes by itself/],
    ['=RAND()', /^RAND changes by itself/],
    ['=RANDBETWEEN (1;6)', /^RANDBETWEEN changes by itself/],
    ['=ROW(types!E3)', /^ROW tells where cells stand/],
    ['=COLUMN(types!E3)', /^COLUMN tells where cells stand/],
    ['=OFFSET(types!E1;1;0)', /^OFFSET tells where cells stand/],
    ['=VLOOKUP("b";types!A1:E5;4;FALSE())', /^VLOOKUP cannot be used here\. Use XLOOKUP/],
    ['=HLOOKUP(1;types!E1:E3;2)', /^HLOOKUP cannot be used here/],
    ['=SUM(D:D)', /not to whole rows or columns/],
    ['=SUM(types!D:D)', /not to whole rows or columns/],
    ['=SUM(1:3)', /not to whole rows or columns/],
    ['=TWICE(2)', /function/],
    ['=draw', /function or a name that is not known/],
    ['=RULE.DEVICES.CONNECTED(1;2)', /function or a name that is not known/],
    ['=TYPED.INPUT("a.b";1)', /function or a name that is not known/],
    ['=ROUND()', /too few or too many arguments/],
    ['=IF(1;2;3;4)', /too few or too many arguments/],
    ['=rooms!A1', /no sheet rooms: the sheets are devices, types/],
    ['=types!Z1', /no column Z: its columns are A to [A-Z]\./],
    ['=types!D99', /no row 99/],
    ['=types!D0', /no row 0/],
    ['=SUM([types.E1:enclosures.E1])', /reaches from the sheet types to enclosures/],
    ['=⟦types#draw@1⟧', /cannot stand in a formula/],
  ])('%s', (formula, problem) => expect(result(formula, false)).toMatch(problem));

  test('a status, which is worked out from the findings', () => {
    const schedule = scheduleOf({ supplies: [{ rail: 'L1', rated: 10 }], branches: [{ branch: 'B' }] });
    expect(schedule.checkFormula('supplies', 'rated', `=${reference('branches', 'status')}`)).toMatchObject({
      ok: false, problem: expect.stringMatching(/^Status of the sheet branches .* no formula can read it/) as string,
    });
  });

  test('one that is too long, nested too deeply, or has too many signs', () => {
    expect(result(`=1${'+1'.repeat(999)}`, false)).toBe(1000);
    expect(result(`=1${'+1'.repeat(1000)}`, false)).toMatch(/2002 characters; at most 2000/);
    expect(result(`=${'('.repeat(50)}1${')'.repeat(50)}`, false)).toBe(1);
    expect(result(`=${'('.repeat(990)}1${')'.repeat(990)}`, false)).toMatch(/nests more than 50/);
    expect(result(`=${'ABS('.repeat(50)}1${')'.repeat(50)}`, false)).toBe(1);
    expect(result(`=${'-'.repeat(8)}1`, false)).toBe(1);
    expect(result(`=${'-'.repeat(1900)}1`, false)).toMatch(/more than 8 signs/);
  });
});
