import type { Gathering } from './facts.ts';

/** The least of the highest voltages that devices on a supply bear, by their types [V]. */
export const LEAST_BORNE: Gathering<number> = {
  sheet: 'supplies', reads: [['devices', 'rail'], ['devices', 'type'], ['devices', 'qty'], ['types', 'maxVoltage']],
  gather: (document, book) => {
    const found = new Map<number, number>();
    const { numbers, targets } = book.columns('devices');
    const [rails, types, quantities] = [targets.get('rail')!, targets.get('type')!, numbers.get('qty')!];
    const most = book.columns('types').numbers.get('maxVoltage')!;
    for (const { id } of document.rows('devices')) {
      const [rail, type] = [rails[id]!, types[id]!];
      if (rail < 0 || type < 0 || quantities[id] === 0 || !(most[type]! < (found.get(rail) ?? Infinity))) continue;
      found.set(rail, most[type]!);
    }
    return found;
  },
};
