import { expect, test } from 'vitest';
import { decimalsOf, SCHEMA, type Column } from '../../src/schedule/index.ts';

/** Currents of a bus are of some milliamperes a device: two decimals would lose them. */
const ON_BUS = ['busCurrent', 'busDemand'];

test('amperes have two decimals everywhere, those of a bus three', () => {
  const amperes = Object.values(SCHEMA).flatMap(({ columns }): readonly Column[] => columns)
    .filter(({ unit }) => unit === 'A');
  expect(amperes.length).toBeGreaterThan(30);
  for (const column of amperes) {
    expect([column.key, decimalsOf(column)]).toEqual([column.key, ON_BUS.includes(column.key) ? 3 : 2]);
  }
});
