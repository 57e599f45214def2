import type { Cells } from '../../schedule/index.ts';
import type { TakeoffColumn } from './columns.ts';
import { TYPE_FACTS } from './field.ts';
import { deviceName } from './names/device-name.ts';

/** What is said of a device type: draw [mA], power [W], nodes, price, partNumber; those that are known. */
export type TypeFacts = Cells;

/** What a legend says of a code. */
export interface Explained {
  readonly description: string;
  readonly facts: TypeFacts;
}

/** What the legends of a takeoff say of the codes in its lists. */
export class Legend {
  readonly #byCode = new Map<string, Explained>();

  /** The first explanation of a code counts. @returns whether it is another one than before. */
  add(code: string, explained: Explained): boolean {
    const { key } = deviceName(code);
    const before = this.#byCode.get(key);
    if (before === undefined) this.#byCode.set(key, explained);
    return before !== undefined && before.description !== explained.description;
  }

  find(code: string): Explained | undefined {
    return this.#byCode.get(deviceName(code).key);
  }
}

/** Whether columns are those of a legend: what codes mean, and no count, room or number of a device. */
export function isLegend(columns: readonly TakeoffColumn[]): boolean {
  const fields = new Set(columns.map(({ field }) => field));
  const explains = fields.has('description') || TYPE_FACTS.some((fact) => fields.has(fact));
  return fields.has('type') && explains && !['qty', 'total', 'area', 'rail', 'branch'].some((field) => fields.has(field as 'qty'));
}
