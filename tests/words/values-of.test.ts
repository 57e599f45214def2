import { expect, expectTypeOf, test } from 'vitest';
import { ENGLISH, type MessageValue, type NamesIn, type ValuesOf } from '../../src/words/index.ts';

test('the names of a message are known when it is compiled, those within choices too', () => {
  expectTypeOf<NamesIn<'Nothing to give.'>>().toEqualTypeOf<never>();
  expectTypeOf<NamesIn<'{name} ends at {end}.'>>().toEqualTypeOf<'name' | 'end'>();
  expectTypeOf<NamesIn<'{n, plural, =0 {none} one {# row of {sheet}} other {# rows of {sheet}}} in {file}'>>()
    .toEqualTypeOf<'n' | 'sheet' | 'file'>();
  expectTypeOf<NamesIn<'{of, select, row {The row takes} other {One takes {most, plural, one {#} other {#}}}} {size}'>>()
    .toEqualTypeOf<'of' | 'most' | 'size'>();
  expectTypeOf<NamesIn<string>>().toEqualTypeOf<string>();
});

test('a message cannot be said without one of its values, nor one without values with any', () => {
  expectTypeOf<ValuesOf<'{name} is {what}', 'name'>>()
    .toEqualTypeOf<[values: Readonly<Record<'what', MessageValue>>]>();
  // @ts-expect-error: {what} is missing.
  expect(() => ENGLISH.say('{name} is {what}', { name: 'L1' })).toThrow(/what/);
  // @ts-expect-error: all are missing.
  expect(() => ENGLISH.say('{name} is {what}')).toThrow(/name/);
  expect(ENGLISH.say('{name} is {what}', { name: 'L1', what: 2 })).toBe('L1 is 2');
});
