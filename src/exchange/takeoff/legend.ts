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
  readonly #byCode = new Map<string, Explained | 'unclear'>();

  /** A code that is explained in two ways means neither. @returns whether it is. */
  add(code: string, explained: Explained): boolean {
    const { key } = deviceName(code);
    const before = this.#byCode.get(key);
    const isUnclear = before !== undefined && JSON.stringify(before) !== JSON.stringify(explained);
    this.#byCode.set(key, isUnclear ? 'unclear' : explained);
    return isUnclear;
  }

  find(code: string): Explained | undefined {
    const explained = this.#byCode.get(deviceName(code).key);
    return explained === 'unclear' ? undefined : explained;
  }
}

/** Whether columns are those of a legend: what codes mean, and no count, room or number of a device. */
export function isLegend(columns: readonly TakeoffColumn[]): boolean {
  const fields = new Set(columns.map(({ field }) => field));
  const explains = fields.has('description') || TYPE_FACTS.some((fact) => fields.has(fact));
  return fields.has('type') && explains && !['qty', 'total', 'area', 'rail', 'branch'].some((field) => fields.has(field as 'qty'));
}
