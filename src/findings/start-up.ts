import { startCurrent, type Starting } from '../electrical/index.ts';
import type { Touched, Workbook } from '../engine/index.ts';
import { tagOf, type ScheduleDocument, type SheetName } from '../schedule/index.ts';

/** What the devices of a supply ask for when all of them start at once. */
export interface StartUp {
  /** Sum over the rows that are known [A]. */
  readonly amps: number;
  /** Rows of which it is not known. */
  readonly missing: number;
  /** Tags of the rows that ask for most, the largest first. */
  readonly largest: readonly string[];
}

/** As many rows are named. */
const NAMED = 3;

/** What device rows hang on here. */
const READ: readonly [SheetName, string][] = [
  ['devices', 'rail'], ['devices', 'type'], ['devices', 'qty'], ['devices', 'unitDraw'], ['devices', 'ref'],
  ['types', 'inrush'], ['supplies', 'overload'],
];

/**
 * What starts at once behind the supplies that switch off and try again on overload; all others get over it. It is
 * gathered in one pass, and only where there is such a supply.
 */
export class StartUps {
  readonly #document: ScheduleDocument;
  readonly #book: Workbook;
  #ups: ReadonlyMap<number, StartUp>;

  constructor(document: ScheduleDocument, book: Workbook) {
    this.#document = document;
    this.#book = book;
    this.#ups = this.#gather();
  }

  /** What starts behind a supply; `undefined` where no device does, or where the supply gets over it. */
  of(supply: number): StartUp | undefined {
    return this.#ups.get(supply);
  }

  /** Gathers again what a change concerns. @returns the supplies behind which something else starts than before. */
  update(touched: Touched): number[] {
    if (!READ.some(([sheet, key]) => touched.concerns(sheet, key))) return [];
    const before = this.#ups;
    this.#ups = this.#gather();
    return [...new Set([...before.keys(), ...this.#ups.keys()])]
      .filter((id) => JSON.stringify(before.get(id)) !== JSON.stringify(this.#ups.get(id)));
  }

  #gather(): ReadonlyMap<number, StartUp> {
    const retrying = new Set(this.#document.rows('supplies').filter(({ cells }) => cells.overload === 'retries')
      .map(({ id }) => id));
    const rows = new Map<number, { tag: string; starting: Starting }[]>();
    if (retrying.size === 0) return new Map();
    const [rails, types] = [this.#book.targets('devices', 'rail'), this.#book.targets('devices', 'type')];
    for (const row of this.#document.rows('devices')) {
      const [rail, type] = [rails[row.id]!, types[row.id]!];
      if (!retrying.has(rail)) continue;
      const own = (key: string) => this.#book.number('devices', row.id, key);
      const inrushAmps = type < 0 ? NaN : this.#book.number('types', type, 'inrush');
      const starting = { quantity: own('qty'), drawAmps: own('unitDraw') / 1000, inrushAmps };
      const others = rows.get(rail);
      if (others === undefined) rows.set(rail, [{ tag: tagOf('devices', row), starting }]);
      else others.push({ tag: tagOf('devices', row), starting });
    }
    return new Map([...rows].map(([id, all]) => [id, startUpOf(all)]));
  }
}

function startUpOf(rows: readonly { readonly tag: string; readonly starting: Starting }[]): StartUp {
  const each = rows.map(({ tag, starting }) => ({ tag, amps: startCurrent([starting]), starting }));
  const known = each.filter(({ amps }) => !Number.isNaN(amps));
  const largest = known.filter(({ tag }) => tag !== '').sort((one, other) => other.amps - one.amps).slice(0, NAMED);
  return {
    amps: startCurrent(known.map(({ starting }) => starting)), missing: each.length - known.length,
    largest: largest.map(({ tag }) => tag),
  };
}
