/** How a list may come twice: names of both, and whether the second one is called a copy of the first, or older. */
export interface Issue {
  readonly of: 'sheet' | 'file';
  readonly names: readonly [string, string];
  readonly isAside: boolean;
}

export const ISSUES: readonly Issue[] = [
  { of: 'sheet', names: ['Rev 0', 'Rev 1'], isAside: false }, { of: 'sheet', names: ['Hall', 'Hall (2)'], isAside: true },
  { of: 'file', names: ['list.csv', 'list - Kopie.csv'], isAside: true }, { of: 'file', names: ['list.csv', 'list neu.csv'], isAside: false },
  { of: 'file', names: ['list v1.csv', 'list v2.csv'], isAside: false }, { of: 'file', names: ['list.csv', 'list ancien.csv'], isAside: true },
];

/** A list of rooms with a router each, and once more with some quantities one higher; what each of them counts. */
export function issuesOf(
  { rooms, qty, changed }: { readonly rooms: number; readonly qty: number; readonly changed: number },
  { of, names, isAside }: Issue,
): {
  readonly tables: { readonly cells: string; readonly sheet?: string; readonly file?: string }[];
  readonly first: number;
  readonly second: number;
  readonly isAside: boolean;
} {
  const list = (higher: number) => ['Room;Device;Qty',
    ...Array.from({ length: rooms }, (_, room) => `R${room};Router;${qty + (room < higher ? 1 : 0)}`)].join('\n');
  return {
    tables: [{ cells: list(0), [of]: names[0] }, { cells: list(changed), [of]: names[1] }],
    first: rooms * qty, second: rooms * qty + changed, isAside,
  };
}
