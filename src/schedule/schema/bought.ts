import type { InputColumn } from './column.ts';

/**
 * What is known of something that is bought, for the bill of quantities. Both may be empty.
 * @param one says of what the price is: `unit`, `metre`.
 */
export function boughtColumns(one: string): readonly InputColumn[] {
  return [
    {
      role: 'input', key: 'partNumber', rare: 'purchase', title: 'Part number', kind: 'text', optional: true,
      help: 'Number by which it is ordered; it stands in the bill of quantities.',
    },
    {
      role: 'input', key: 'price', rare: 'purchase', title: 'Price', kind: 'number', min: 0, decimals: 2, optional: true,
      help: `Price of one ${one}, in the currency of the office; it stands in the bill of quantities.`,
    },
  ];
}
