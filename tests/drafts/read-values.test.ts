import { expect, test } from 'vitest';
import { ReadValues } from '../../components/load-schedule/read-values.ts';

const [first, second] = [{ name: 'first' }, { name: 'second' }];

test('a value that was kept names the action after which it was read, and settles those before it', () => {
  const values = new ReadValues();
  values.note('none', undefined);
  values.note('one', first);
  values.note('two', second);
  expect(values.kept('one')).toMatchObject({ after: first });
  expect([values.kept('none'), values.kept('one')]).toEqual([undefined, undefined]);
  expect(values.kept('two')).toMatchObject({ after: second });
});

test('a value that is read again counts from then on', () => {
  const values = new ReadValues();
  values.note('one', first);
  values.note('two', second);
  values.note('one', undefined);
  expect(values.kept('two')).toMatchObject({ after: second });
  expect(values.kept('one')).toMatchObject({ after: undefined });
});

test('the oldest of many long values are forgotten, and never the last', () => {
  const values = new ReadValues();
  const long = (sign: string) => sign.repeat(5_000_000);
  values.note(long('a'), first);
  values.note(long('b'), second);
  expect(values.kept(long('a'))).toBeUndefined();
  expect(values.kept(long('b'))).toMatchObject({ after: second });
});
