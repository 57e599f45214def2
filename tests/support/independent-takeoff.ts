/** A quantity as it is written, and how many it means; `isPlain` where nobody needs to be asked. */
export interface WrittenQuantity {
  readonly text: string;
  readonly qty: number;
  readonly isPlain: boolean;
}

/** Devices of a type in a room, as they were counted. */
export interface Counted {
  readonly room: string;
  readonly type: string;
  readonly quantity: WrittenQuantity;
  /** A remark that the devices count no longer. */
  readonly isSuperseded: boolean;
}

export const LIST_SHAPES = ['lines', 'merged rooms', 'types × rooms', 'rooms × types', 'storeys'] as const;
export type ListShape = (typeof LIST_SHAPES)[number];

/** How a count may be written: as a number, or in one of the ways that leave a doubt. */
export function writtenAs(qty: number, way: number): WrittenQuantity {
  const plain = { text: String(qty), qty, isPlain: true };
  const doubtful = (text: string, meant: number) => ({ text, qty: meant, isPlain: false });
  switch (way) {
    case 1: return { ...plain, text: `${qty} no.` };
    case 2: return doubtful(`${qty} + 2 spare`, qty + 2);
    case 3: return doubtful(`2 x ${qty}`, 2 * qty);
    case 4: return doubtful(`${qty} pr.`, 2 * qty);
    case 5: return doubtful(`ca. ${qty}`, qty);
    case 6: return doubtful(`${qty + 1} (incl. 1 spare)`, qty + 1);
    default: return plain;
  }
}

/** A list of what was counted, in one of the shapes of offices, with totals that are right. */
export function writeList(counted: readonly Counted[], shape: ListShape, sign: string, hasTotals: boolean): string {
  const rooms = [...new Set(counted.map(({ room }) => room))];
  const types = [...new Set(counted.map(({ type }) => type))];
  const at = (room: string, type: string) => counted.find((each) => each.room === room && each.type === type)?.quantity.text ?? '';
  const sumOf = (some: readonly Counted[]) => String(some.reduce((sum, { quantity: { qty } }) => sum + qty, 0));
  const ofRoom = (room: string) => counted.filter((each) => each.room === room);
  const ofType = (type: string) => counted.filter((each) => each.type === type);
  const total = (cells: string[]) => hasTotals ? [cells] : [];
  const end = (cells: string[], sum: string) => hasTotals ? [...cells, sum] : cells;
  const table = (): string[][] => {
    switch (shape) {
      case 'types × rooms': case 'storeys': return [
        end(['Device', ...rooms.map((room) => shape === 'storeys' ? `Qty ${room}` : room)], 'Total'),
        ...types.map((type) => end([type, ...rooms.map((room) => at(room, type))], sumOf(ofType(type)))),
        ...total(end(['Total', ...rooms.map((room) => sumOf(ofRoom(room)))], sumOf(counted))),
      ];
      case 'rooms × types': return [
        end(['Room', ...types], 'Total'),
        ...rooms.map((room) => end([room, ...types.map((type) => at(room, type))], sumOf(ofRoom(room)))),
        ...total(end(['Total', ...types.map((type) => sumOf(ofType(type)))], sumOf(counted))),
      ];
      default: return [
        ['Room', 'Device', 'Qty', 'Remarks'],
        ...rooms.flatMap((room) => ofRoom(room).map(({ type, quantity, isSuperseded }, place) => [
          shape === 'merged rooms' && place > 0 ? '' : room, type, quantity.text, isSuperseded ? 'entfällt' : '',
        ])),
        ...total(['Total', '', sumOf(counted), '']),
      ];
    }
  };
  return table().map((cells) => cells.map((cell) => cell.includes(sign) ? `"${cell}"` : cell).join(sign)).join('\n');
}
