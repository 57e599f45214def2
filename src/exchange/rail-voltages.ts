import { columnOf, type Cells, type InputColumn } from '../schedule/index.ts';

/**
 * Nominal voltages of the rails of a supplies sheet, for turning watts into a draw.
 * @returns a function that gives the voltage [V] of a rail; `undefined` for one that is not there or whose voltage is a
 *   formula.
 */
export function railVoltages(supplies: readonly Cells[]): (rail: unknown) => number | undefined {
  const usual = (columnOf('supplies', 'voltage') as InputColumn).default;
  const voltages = new Map<unknown, number>();
  for (const { rail = null, voltage = null } of supplies) {
    const value = voltage ?? usual;
    if (rail !== null && !voltages.has(rail) && typeof value === 'number') voltages.set(rail, value);
  }
  return (rail) => voltages.get(rail);
}
