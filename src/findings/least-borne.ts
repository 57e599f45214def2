import type { Gathering } from './facts.ts';

/** The least of the highest voltages that the devices on each row of a sheet bear, by their types [V]. */
const leastBorne = (sheet: 'supplies' | 'runs', by: 'rail' | 'run'): Gathering<number> => ({
  sheet, reads: [['devices', by], ['devices', 'type'], ['devices', 'qty'], ['types', 'maxVoltage']],
  gather: (document, book) => {
    const found = new Map<number, number>();
    const { numbers, targets } = book.columns('devices');
    const [places, types, quantities] = [targets.get(by)!, targets.get('type')!, numbers.get('qty')!];
    const most = book.columns('types').numbers.get('maxVoltage')!;
    for (const { id } of document.rows('devices')) {
      const [place, type] = [places[id]!, types[id]!];
      if (place < 0 || type < 0 || quantities[id] === 0 || !(most[type]! < (found.get(place) ?? Infinity))) continue;
      found.set(place, most[type]!);
    }
    return found;
  },
});

/** The same for supplies and for runs. */
export const LEAST_BORNE = { supplies: leastBorne('supplies', 'rail'), runs: leastBorne('runs', 'run') };
