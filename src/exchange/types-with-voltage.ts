import { columnOf, type Cells, type InputColumn } from '../schedule/index.ts';
import { railVoltages } from './rail-voltages.ts';

type Row = Readonly<Record<string, unknown>>;

/** The sheets that say on which rails the devices of a type hang. */
interface Sheets<Of> {
  readonly types: readonly Of[];
  readonly devices: readonly Of[];
  readonly runs: readonly Of[];
  readonly supplies: readonly Of[];
}

/**
 * The types with the nominal voltage of the rails that their devices hang on, by themselves or through their run, where
 * these agree and it is not the usual one.
 */
export function typesWithVoltage<Of>({ types, devices, runs, supplies }: Sheets<Of>, cellsOf: (row: Of) => Row,
  withVoltage: (row: Of, voltage: number) => Of): Of[] {
  const usual = (columnOf('types', 'voltage') as InputColumn).default;
  const volts = railVoltages(supplies.map(cellsOf) as Cells[]);
  const railOf = new Map([...runs].reverse().map(cellsOf).map(({ run, rail }) => [run, rail]));
  const found = new Map<unknown, Set<number | undefined>>();
  for (const { type, rail, run } of devices.map(cellsOf)) {
    const on = rail ?? railOf.get(run) ?? null;
    if (on !== null) found.set(type, (found.get(type) ?? new Set()).add(volts(on)));
  }
  return types.map((row) => {
    const [voltage, ...others] = found.get(cellsOf(row).type) ?? [];
    return voltage === undefined || others.length > 0 || voltage === usual ? row : withVoltage(row, voltage);
  });
}
