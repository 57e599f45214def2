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

export const LIST_SHAPES = [
  'lines', 'merged rooms', 'types × rooms', 'rooms × types', 'storeys', 'priced', 'side by side', 'per flat', 'flats (x3)', 'sum column', 'free text',
] as const;
export type ListShape = (typeof LIST_SHAPES)[number];

/** What a list means: how many of a type in a room, and whether a person is asked first. */
export interface Meant {
  readonly room: string;
  readonly type: string;
  readonly qty: number;
  readonly isAsked: boolean;
}

/** How many flats there are of each of those that are counted once. */
const FLATS = 3;
const HAVE_REMARKS: readonly ListShape[] = ['lines', 'merged rooms', 'priced', 'side by side', 'per flat'];

/** Rooms that are storeys: where rooms are titles, those below one are within it. */
const STOREYS = ['EG', '1. OG', 'Keller'];

/** Names of rooms that are titles, in the order in which these stand. */
function titled(rooms: readonly string[]): ReadonlyMap<string, string> {
  return new Map(rooms.map((room, place) => {
    const storey = rooms.slice(0, place).findLast((above) => STOREYS.includes(above));
    return [room, storey === undefined || STOREYS.includes(room) ? room : `${storey}, ${room}`];
  }));
}

/** What a list in a shape means; a column of sums without a word for it is asked about besides. */
export function meantBy(counted: readonly Counted[], shape: ListShape): Meant[] {
  const isPerFlat = shape === 'per flat' || shape === 'flats (x3)';
  const names = titled([...new Set(counted.map(({ room }) => room))]);
  return counted.map(({ room, type, quantity: { qty, isPlain }, isSuperseded }) => ({
    room: shape === 'flats (x3)' ? `Flat ${room} x${FLATS}` : shape === 'free text' ? names.get(room)! : room, type, qty: isPerFlat ? FLATS * qty : qty,
    isAsked: isPerFlat || (shape !== 'free text' && !isPlain) || (HAVE_REMARKS.includes(shape) && isSuperseded),
  }));
}

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
    // With a footnote; corrected by hand.
    case 7: return doubtful(`${qty}¹`, qty);
    case 8: return doubtful(`9̶${qty}`, qty);
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
  const line = ({ room, type, quantity, isSuperseded }: Counted, more: readonly string[] = []) =>
    [room, type, quantity.text, ...more, isSuperseded ? 'entfällt' : ''];
  const table = (): string[][] => {
    const remarks = ['Room', 'Device', 'Qty', 'Remarks'];
    switch (shape) {
      case 'types × rooms': case 'storeys': case 'flats (x3)': return [
        end(['Device', ...rooms.map((room) => shape === 'storeys' ? `Qty ${room}` : shape === 'flats (x3)' ? `Flat ${room} (x${FLATS})` : room)], 'Total'),
        ...types.map((type) => end([type, ...rooms.map((room) => at(room, type))], sumOf(ofType(type)))),
        ...total(end(['Total', ...rooms.map((room) => sumOf(ofRoom(room)))], sumOf(counted))),
      ];
      case 'sum column': return [
        ['Device', ...rooms, 'Σ'], ...types.map((type) => [type, ...rooms.map((room) => at(room, type)), sumOf(ofType(type))]),
      ];
      case 'rooms × types': return [
        end(['Room', ...types], 'Total'),
        ...rooms.map((room) => end([room, ...types.map((type) => at(room, type))], sumOf(ofRoom(room)))),
        ...total(end(['Total', ...types.map((type) => sumOf(ofType(type)))], sumOf(counted))),
      ];
      case 'priced': return [
        ['Room', 'Device', 'Qty', 'Unit price', 'Amount', 'Remarks'],
        ...counted.map((each) => line(each, ['12.50', String(12.5 * each.quantity.qty)])), ...total(['Total', '', sumOf(counted), '', '', '']),
      ];
      case 'per flat': return [
        ['Room', 'Device', 'Qty per flat', 'Flats', 'Remarks'], ...counted.map((each) => line(each, [String(FLATS)])),
      ];
      case 'side by side': {
        const [left, right] = [
          counted.filter((_, place) => place % 2 === 0), counted.filter((_, place) => place % 2 === 1),
        ];
        const blank = remarks.map(() => '');
        return [[...remarks, '', ...remarks], ...left.map((each, place) =>
          [...line(each), '', ...right[place] === undefined ? blank : line(right[place])]),
        ...total(['Total', '', sumOf(left), '', '', 'Total', '', sumOf(right), ''])];
      }
      default: return [
        remarks, ...rooms.flatMap((room) => ofRoom(room).map((each, place) =>
          line(shape === 'merged rooms' && place > 0 ? { ...each, room: '' } : each))),
        ...total(['Total', '', sumOf(counted), '']),
      ];
    }
  };
  if (shape === 'free text') {
    return [...rooms.flatMap((room) => [room, ...ofRoom(room).map(({ type, quantity: { qty } }, place) => place % 2 === 0 ? `${qty} x ${type}` : `${type} x ${qty}`)]),
      ...hasTotals ? [`Total: ${sumOf(counted)}`] : []].join('\n');
  }
  return table().map((cells) => cells.map((cell) => cell.includes(sign) ? `"${cell}"` : cell).join(sign)).join('\n');
}
