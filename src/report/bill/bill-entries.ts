import { numberOf, panelOf, textOf } from '../../engine/index.ts';
import { isCable, isPerMetre } from '../../exchange/takeoff/per-metre.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { GONE, isBlank, tagOf, type Cells, type SheetName } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import type { BillItem, BillKind } from './bill.ts';

/** What one row of the schedule adds to a bill. */
export interface BillEntry extends Pick<BillItem, 'key' | 'panel' | 'kind' | 'item' | 'unit' | 'partNumber' | 'price'> {
  /** `null` where it is not known. */
  readonly quantity: number | null;
  /** More of it is bought than drawings show. */
  readonly isCable: boolean;
  /** The row, as a sentence names it. */
  readonly row: number;
  readonly ref: string | null;
  /** The list that it was counted in no longer has it. */
  readonly isGone: boolean;
}

/** How the rows of a sheet are bought. */
interface Bought {
  readonly kind: BillKind;
  readonly unit: BillItem['unit'];
  /** What makes rows the same item whatever the language: a name, or ratings. */
  readonly told: (row: BoughtRow) => readonly (string | number | null)[];
  readonly item: (row: BoughtRow) => string;
  readonly quantity: (row: BoughtRow) => number | null;
  /** The reference to the row that says part number and price; without it they stand in the row itself. */
  readonly by?: 'type' | 'conductor';
}

/** A row, as it is read for the bill. */
interface BoughtRow {
  readonly words: Words;
  readonly number: (key: string) => number | null;
  readonly text: (key: string) => string | null;
}

/** What is bought of each sheet, in the order of the bill. */
const BOUGHT: Partial<Record<SheetName, Bought>> = {
  devices: {
    kind: 'device', unit: 'pcs', by: 'type', told: (row) => [row.text('type')], quantity: (row) => row.number('qty'),
    item: (row) => row.text('type') ?? row.words.say('Device without a type'),
  },
  supplies: {
    kind: 'supply', unit: 'pcs', told: (row) => [row.number('voltage'), row.number('rated')], quantity: (row) => row.number('units'),
    item: (row) => {
      const [words, voltage, rated] = [row.words, row.number('voltage'), row.number('rated')];
      return voltage === null || rated === null ? words.say('Supply of unknown rating')
        : words.say('Supply {voltage} V, {rated} A', { voltage, rated });
    },
  },
  ways: {
    kind: 'way', unit: 'pcs', told: (row) => [row.text('kind'), row.number('rated')], quantity: () => 1,
    item: (row) => {
      const [words, kind, rated] = [row.words, row.text('kind'), row.number('rated')];
      return kind === null || rated === null ? words.say('Way of unknown kind or rating')
        : words.say('Way, {kind}, {rated} A', { kind: words.text(kind), rated });
    },
  },
  modules: {
    kind: 'module', unit: 'pcs', told: (row) => [row.number('outputs')], quantity: () => 1,
    item: (row) => {
      const [words, outputs] = [row.words, row.number('outputs')];
      return outputs === null ? words.say('Relay module with an unknown number of outputs')
        : words.say('Relay module, {outputs, plural, one {# output} other {# outputs}}', { outputs });
    },
  },
  enclosures: {
    kind: 'enclosure', unit: 'pcs', quantity: () => 1,
    told: (row) => [row.number('height'), row.number('width'), row.number('depth')],
    item: (row) => {
      const [height, width, depth] = [row.number('height'), row.number('width'), row.number('depth')];
      const { words } = row;
      return height === null || width === null || depth === null ? words.say('Enclosure of unknown size')
        : words.say('Enclosure {height} × {width} × {depth} mm', { height, width, depth });
    },
  },
  runs: {
    kind: 'conductor', unit: 'm', by: 'conductor', told: (row) => [row.text('conductor')],
    quantity: (row) => {
      const [length, pairs] = [row.number('length'), row.number('pairs')];
      const behind = row.text('secondWay') === null ? 0 : row.number('secondLength');
      return length === null || pairs === null || behind === null ? null : (length + behind) * pairs;
    },
    item: (row) => row.text('conductor') ?? row.words.say('Cable of unknown conductors'),
  },
};

const LISTS = { type: 'types', conductor: 'conductors' } as const;

/** What every row of the schedule that is bought adds to a bill, sheet by sheet. */
export function billEntries(schedule: LoadSchedule): BillEntry[] {
  const reader = (sheet: SheetName, id: number): BoughtRow => ({
    words: schedule.words,
    number: (key) => numberOf(schedule, sheet, id, key), text: (key) => textOf(schedule, sheet, id, key),
  });
  return (Object.entries(BOUGHT) as [SheetName, Bought][]).flatMap(([sheet, bought]) =>
    schedule.rows(sheet).flatMap((row, place): BillEntry[] => {
      if (isBlank(row)) return [];
      const { kind, by } = bought;
      const own = reader(sheet, row.id);
      const listed = by === undefined ? row.id : schedule.target(sheet, row.id, by);
      const list = listed < 0 ? undefined : reader(by === undefined ? sheet : LISTS[by], listed);
      const type: Cells = by === 'type' ? { type: own.text('type'), description: list?.text('description') ?? null } : {};
      const isLong = isPerMetre(type);
      return [{
        key: keyOf(kind, bought.told(own)), panel: panelOf(schedule, sheet, row.id), kind, item: bought.item(own), unit: isLong ? 'm' : bought.unit,
        isCable: kind === 'conductor' || (isLong && isCable(type)),
        quantity: bought.quantity(own), isGone: row.cells.state === GONE, row: place, ref: tagOf(sheet, row) || null,
        partNumber: list?.text('partNumber') ?? null, price: list?.number('price') ?? null,
      }];
    }));
}

/** The same item has the same key in every bill; `?` is what is not known as a whole; slashes of names stand twice. */
function keyOf(kind: BillKind, told: readonly (string | number | null)[]): string {
  return [kind, ...told.includes(null) ? ['?'] : told.map((each) => String(each).replaceAll('/', '//'))].join('/');
}
