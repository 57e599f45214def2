import { PASTE_KEYS, type Operation } from './operation.ts';
import { block, deviceRow, railTag, type Size } from './workload.ts';

export type Family = 'edit' | 'paste' | 'row';

/** One kind of operation that is timed, several times in a row, and then taken back as often. */
export interface Kind {
  readonly name: string;
  readonly family: Family;
  /** The list of findings is put in order within the measured time. */
  readonly listsFindings?: true;
  /** The operation of call `call`; it changes a value whenever it is called. */
  readonly operation: (size: Size, call: number) => Operation;
}

export const PASTED_ROWS = 1_000;

/** Places spread over the sheet, so that no call finds what the one before has warmed. */
const spread = ({ rows }: Size, call: number) => (Math.floor(rows / 2) + call * 7_919) % rows;
const middle = ({ rows }: Size) => Math.floor(rows / 2);

/** In the order in which they run; the first call of the first kind is the first edit of a session. */
export const KINDS: readonly Kind[] = [
  {
    name: 'diversity edit', family: 'edit',
    operation: (size, call) => ({
      op: 'set', sheet: 'devices', at: spread(size, call), key: 'diversity', value: 0.123 + call / 1_000,
    }),
  },
  {
    name: 'quantity edit', family: 'edit',
    operation: (size, call) => ({ op: 'set', sheet: 'devices', at: spread(size, call), key: 'qty', value: 11 + call }),
  },
  {
    name: 'rail edit', family: 'edit',
    operation: (size, call) => {
      const at = spread(size, call);
      const other = (at + 1 + (call % (size.rails - 1))) % size.rails;
      return { op: 'set', sheet: 'devices', at, key: 'rail', value: railTag(other) };
    },
  },
  {
    name: 'type draw edit', family: 'edit',
    operation: (_size, call) => ({ op: 'set', sheet: 'types', at: (call * 4) % 24, key: 'draw', value: 200 + call }),
  },
  {
    name: 'supply rating edit', family: 'edit',
    operation: ({ rails }, call) =>
      ({ op: 'set', sheet: 'supplies', at: call % rails, key: 'rated', value: 77 + call }),
  },
  {
    name: 'quantity edit and list of findings', family: 'edit', listsFindings: true,
    operation: (size, call) => ({ op: 'set', sheet: 'devices', at: spread(size, call), key: 'qty', value: 31 + call }),
  },
  {
    name: 'paste 1,000 × 8', family: 'paste',
    operation: (size, call) => ({
      op: 'paste', at: Math.floor((size.rows - PASTED_ROWS) / 2), lines: block(size, PASTED_ROWS, PASTE_KEYS, call + 1),
    }),
  },
  {
    name: 'insert a row', family: 'row',
    operation: (size, call) => ({ op: 'insert', at: middle(size), cells: deviceRow(size, call, 3) }),
  },
  { name: 'delete a row', family: 'row', operation: (size) => ({ op: 'remove', at: middle(size) - 150 }) },
  {
    name: 'move a row', family: 'row',
    operation: (size, call) => ({ op: 'move', from: middle(size) - 100, to: middle(size) + 100 + call }),
  },
];
