import type { Cells, Content } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

/** A rail L1 with device rows of these types, D1 and so on, one device each. */
const ON_RAIL = (supply: Cells, types: readonly Cells[], rows: readonly string[]): Content['sheets'] => ({
  supplies: [{ rail: 'L1', rated: 10, ...supply }], types: types.map((type) => ({ draw: 10, ...type })),
  devices: rows.map((type, at) => ({ ref: `D${at + 1}`, type, qty: 1, rail: 'L1' })),
});
const FOR_24: Cells = { type: 'A', minVoltage: 21.6, maxVoltage: 26.4 };
const FOR_12: Cells = { type: 'B', voltage: 12 };
const rows = (count: number, type: string) => Array.from({ length: count }, () => type);

/** Devices that do not bear the voltage of their rail, several of which have one cause. */
export const VOLTAGE_CASES: readonly FindingCase[] = [
  {
    rule: 'supply-wrong-voltage', sheet: 'supplies', sheets: ON_RAIL({ voltage: 48 }, [FOR_24], rows(5, 'A')),
    severity: 'over', key: 'voltage', value: 48, limit: 26.4, inStatus: true,
    message: 'Rail L1 has 48.00 V, and 5 of the 5 device rows on it are not made for that: A stands 26.40 V (D1, D2, D3 and 2 more rows). Correct its voltage, or put them on a rail of theirs; where types work on it, enter their voltages.',
    // One alone is told at its row, and half of them are not most.
    silent: [
      ON_RAIL({}, [FOR_24], rows(5, 'A')), ON_RAIL({ voltage: 48 }, [FOR_24], ['A']),
      ON_RAIL({ voltage: 24 }, [FOR_24, FOR_12], ['A', 'B', 'B', 'A']),
    ],
  },
  {
    rule: 'supply-wrong-voltage', sheet: 'supplies', sheets: ON_RAIL({ voltage: 12 }, [FOR_24, FOR_12], ['A', 'A', 'B']),
    severity: 'over', key: 'voltage', value: 12, limit: 21.6, inStatus: true,
    message: 'Rail L1 has 12.00 V, and 2 of the 3 device rows on it are not made for that: A needs 21.60 V (D1, D2). Correct its voltage, or put them on a rail of theirs; where types work on it, enter their voltages.',
    silent: [],
  },
  {
    // 24 V × 0.85 and × 1.15
    rule: 'supply-wrong-voltage', sheet: 'supplies', severity: 'over', key: 'voltage', value: 27.6, limit: 26.4, inStatus: true,
    sheets: ON_RAIL({ tolerance: 0.15 }, [FOR_24, { type: 'C', minVoltage: 20.5, maxVoltage: 28 }], ['A', 'C']),
    message: 'Rail L1 has 24.00 V, from 20.40 V to 27.60 V, and 2 of the 2 device rows on it are not made for that: A stands 26.40 V (D1); C needs 20.50 V (D2). Use a supply that holds its voltage closer, or types that bear it.',
    silent: [ON_RAIL({ tolerance: 0.1 }, [FOR_24, { type: 'C', minVoltage: 20.5, maxVoltage: 28 }], ['A', 'C'])],
  },
  {
    rule: 'device-other-voltage', sheet: 'devices', severity: 'over', key: 'rail', value: 24, limit: 12, inStatus: false,
    sheets: ON_RAIL({}, [FOR_24, FOR_12], ['B', 'A', 'A', 'A', 'B']),
    message: 'Ref D1 is one of 2 rows on rail L1 that are not made for its 24.00 V: B is made for 12.00 V (D1, D5). Put them on a rail of their voltage, or correct the voltages of their types.',
    silent: [ON_RAIL({}, [FOR_24, FOR_12], ['B', 'B', 'A'])],
  },
  {
    // 24 V × 1.05
    rule: 'device-over-voltage', sheet: 'devices', severity: 'over', key: 'rail', value: 25.2, limit: 25, inStatus: false,
    sheets: ON_RAIL({ tolerance: 0.05 }, [FOR_24, { type: 'D', maxVoltage: 25 }], ['D', 'A', 'A', 'D']),
    message: 'Ref D1 is one of 2 rows on rail L1 that are not made for its 24.00 V, from 22.80 V to 25.20 V: D stands 25.00 V (D1, D4). Put them on a rail that holds its voltage closer, or use types that bear it.',
    silent: [],
  },
];
