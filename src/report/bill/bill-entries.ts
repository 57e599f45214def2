import { panelOf } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { isBlank, tagOf, type SheetName } from '../../schedule/index.ts';
import type { BillItem, BillKind } from './bill.ts';

/** What one row of the schedule adds to a bill. */
export interface BillEntry extends Pick<BillItem, 'panel' | 'kind' | 'item' | 'unit' | 'partNumber' | 'price'> {
  /** `null` where it is not known. */
  readonly quantity: number | null;
  /** The row, as a sentence names it. */
  readonly row: number;
  readonly ref: string | null;
}

/** How the rows of a sheet are bought. */
interface Bought {
  readonly kind: BillKind;
  readonly unit: BillItem['unit'];
  readonly item: (row: Reader) => string;
  readonly quantity: (row: Reader) => number | null;
  /** The reference to the row that says part number and price; without it they stand in the row itself. */
  readonly by?: 'type' | 'conductor';
}

/** Reads one row of a sheet. */
class Reader {
  readonly schedule: LoadSchedule;
  readonly sheet: SheetName;
  readonly id: number;

  constructor(schedule: LoadSchedule, sheet: SheetName, id: number) {
    this.schedule = schedule;
    this.sheet = sheet;
    this.id = id;
  }

  number(key: string): number | null {
    const value = this.schedule.value(this.sheet, this.id, key);
    return typeof value === 'number' ? value : null;
  }

  text(key: string): string | null {
    const value = this.schedule.value(this.sheet, this.id, key);
    return typeof value === 'string' && value !== '' ? value : null;
  }

  /** The row that a reference names; `undefined` for none. */
  through(sheet: SheetName, key: string): Reader | undefined {
    const id = this.schedule.target(this.sheet, this.id, key);
    return id < 0 ? undefined : new Reader(this.schedule, sheet, id);
  }
}

/** What is bought of each sheet, in the order of the bill. */
const BOUGHT: Partial<Record<SheetName, Bought>> = {
  devices: {
    kind: 'device', unit: 'pcs', by: 'type', quantity: (row) => row.number('qty'),
    item: (row) => row.text('type') ?? row.schedule.words.say('Device without a type'),
  },
  supplies: {
    kind: 'supply', unit: 'pcs', quantity: (row) => row.number('units'),
    item: (row) => {
      const [words, voltage, rated] = [row.schedule.words, row.number('voltage'), row.number('rated')];
      return voltage === null || rated === null ? words.say('Supply of unknown rating')
        : words.say('Supply {voltage} V, {rated} A', { voltage, rated });
    },
  },
  ways: {
    kind: 'way', unit: 'pcs', quantity: () => 1,
    item: (row) => {
      const [words, kind, rated] = [row.schedule.words, row.text('kind'), row.number('rated')];
      return kind === null || rated === null ? words.say('Way of unknown kind or rating')
        : words.say('Way, {kind}, {rated} A', { kind: words.text(kind), rated });
    },
  },
  modules: {
    kind: 'module', unit: 'pcs', quantity: () => 1,
    item: (row) => {
      const [words, outputs] = [row.schedule.words, row.number('outputs')];
      return outputs === null ? words.say('Relay module with an unknown number of outputs')
        : words.say('Relay module, {outputs, plural, one {# output} other {# outputs}}', { outputs });
    },
  },
  enclosures: {
    kind: 'enclosure', unit: 'pcs', quantity: () => 1,
    item: (row) => {
      const [height, width, depth] = [row.number('height'), row.number('width'), row.number('depth')];
      const { words } = row.schedule;
      return height === null || width === null || depth === null ? words.say('Enclosure of unknown size')
        : words.say('Enclosure {height} × {width} × {depth} mm', { height, width, depth });
    },
  },
  runs: {
    kind: 'conductor', unit: 'm', by: 'conductor',
    quantity: (row) => {
      const [length, pairs] = [row.number('length'), row.number('pairs')];
      return length === null || pairs === null ? null : length * pairs;
    },
    item: (row) => row.text('conductor') ?? row.schedule.words.say('Cable of unknown conductors'),
  },
};

const LISTS = { type: 'types', conductor: 'conductors' } as const;

/** What every row of the schedule that is bought adds to a bill, sheet by sheet. */
export function billEntries(schedule: LoadSchedule): BillEntry[] {
  return (Object.entries(BOUGHT) as [SheetName, Bought][]).flatMap(([sheet, bought]) =>
    schedule.rows(sheet).flatMap((row, place): BillEntry[] => {
      if (isBlank(row)) return [];
      const { kind, unit, by } = bought;
      const reader = new Reader(schedule, sheet, row.id);
      const list = by === undefined ? reader : reader.through(LISTS[by], by);
      return [{
        panel: panelOf(schedule, sheet, row.id), kind, item: bought.item(reader), unit,
        quantity: bought.quantity(reader), row: place, ref: tagOf(sheet, row) || null,
        partNumber: list?.text('partNumber') ?? null, price: list?.number('price') ?? null,
      }];
    }));
}
