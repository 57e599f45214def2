import { evaluateArithmetic } from './arithmetic.ts';
import { independentCarries } from './independent-carries.ts';
import { measuredRun } from './independent-measured.ts';
import { recalculate, type InputRow, type InputSchedule } from './independent.ts';

/** What a run may be found to fail; the first four are over its limits, the last two near them. */
export type RunFault =
  | 'end voltage' | 'no working voltage' | 'conductor current' | 'conductor protection' | 'drop' | 'short circuit'
  | 'measured over' | 'measured near';

export interface RunFigures {
  readonly run: string;
  readonly current: number | null;
  readonly endVoltage: number | null;
  readonly faultCurrent: number;
  /** What the cable carries where it lies [A]; without end where its conductor does not say. */
  readonly carries: number;
  readonly faults: readonly RunFault[];
}

/**
 * Volt drop and short circuit of every run that carries known devices, found by letting the node voltages settle hop by
 * hop from the supply: currents give voltages, voltages give currents. From the nominal voltage downwards this comes to
 * rest at the working voltage, or falls to nothing where constant-power devices leave none.
 * @param schedule a parsed schedule file in which every run has its rail, conductor and length
 * @returns one entry for each run, in their order
 */
export function recalculateRuns(schedule: InputSchedule): RunFigures[] {
  const sheet = (name: string): readonly InputRow[] => schedule.sheets[name] ?? [];
  const find = (name: string, key: string, tag: unknown): InputRow =>
    sheet(name).find((row) => row[key] === tag) ?? {};
  const { devices } = recalculate(schedule);

  return sheet('runs').map((run): RunFigures => {
    const supply = find('supplies', 'rail', run.rail);
    const conductor = find('conductors', 'conductor', run.conductor);
    const voltage = number(supply.voltage, 24);
    const length = number(run.length);
    const pairs = number(run.pairs, 1);
    const ohmsPerMetre = (2 * number(conductor.resistance) / 1000 / pairs)
      * (1 + 0.00393 * (number(run.temperature, 20) - 20));

    const loads: Load[] = [];
    let neededVolts = 0;
    sheet('devices').forEach((device, index) => {
      const amps = run.basis === 'demand' ? devices[index]!.demand : devices[index]!.connected;
      if (device.run !== run.run || amps === null) return;
      const type = find('types', 'type', device.type);
      loads.push({ metres: number(device.distance, length), amps, constantPower: type.load === 'power' });
      neededVolts = Math.max(neededVolts, number(type.minVoltage, 0));
    });

    const settled = settle(loads, voltage, ohmsPerMetre);
    const faultCurrent = Math.min(
      voltage / (ohmsPerMetre * length), number(supply.rated) * number(supply.units, 1) * number(supply.peak, 1.2));
    const faults: RunFault[] = [];
    const carries = independentCarries({
      alone: number(conductor.maxCurrent, Infinity), pairs, grouped: number(run.grouped, pairs),
      ambient: number(run.ambient, 30), highest: number(conductor.maxTemperature, 70), base: number(
        conductor.baseTemperature, 30
      ),
    });
    if (settled === null) faults.push('no working voltage');
    else {
      if (settled.endVoltage < neededVolts) faults.push('end voltage');
      if (settled.current > carries) faults.push('conductor current');
      if (1 - settled.endVoltage / voltage > number(run.maxDrop, 0.05)) faults.push('drop');
    }
    if (number(run.protection, 0) > carries) faults.push('conductor protection');
    if (faultCurrent < number(run.trip, 5) * number(run.protection, 0)) faults.push('short circuit');
    const current = settled?.current ?? null;
    const limits = [number(run.protection, Infinity), carries];
    const measured = measuredRun(run, {
      nominal: voltage, worked: current, limit: Math.min(...limits, number(supply.rated)), most: Math.min(...limits),
      needed: neededVolts, drop: settled === null ? null : voltage - settled.endVoltage, rail: supply,
    });
    if (measured.over) faults.push('measured over');
    if (measured.near) faults.push('measured near');
    return {
      run: String(run.run), current: settled?.current ?? null, endVoltage: settled?.endVoltage ?? null,
      faultCurrent, carries, faults,
    };
  });
}

interface Load {
  readonly metres: number;
  /** Current at the nominal voltage. */
  readonly amps: number;
  readonly constantPower: boolean;
}

/** Working point of a run; `null` when there is none. */
function settle(
  loads: readonly Load[], voltage: number, ohmsPerMetre: number,
): { current: number; endVoltage: number } | null {
  const along = [...loads].sort((a, b) => a.metres - b.metres);
  let volts = along.map(() => voltage);
  for (let round = 0; round < 100_000; round += 1) {
    const currents = along.map((load, index) => load.constantPower ? load.amps * voltage / volts[index]! : load.amps);
    let flowing = currents.reduce((sum, amps) => sum + amps, 0);
    const current = flowing;
    let here = voltage;
    let metres = 0;
    const next = along.map((load, index) => {
      here -= flowing * ohmsPerMetre * (load.metres - metres);
      metres = load.metres;
      flowing -= currents[index]!;
      return here;
    });
    if (next.some((value) => value <= 0)) return null;
    const moved = Math.max(0, ...next.map((value, index) => Math.abs(value - volts[index]!)));
    volts = next;
    if (moved < 1e-12) return { current, endVoltage: Math.min(voltage, ...volts) };
  }
  return null;
}

function number(cell: InputRow[string], ifEmpty = NaN): number {
  if (typeof cell === 'string' && cell.startsWith('=')) return evaluateArithmetic(cell) ?? NaN;
  return typeof cell === 'number' ? cell : ifEmpty;
}
