import { evaluateArithmetic } from './arithmetic.ts';
import { independentCarries } from './independent-carries.ts';
import { settle } from './independent-circuit.ts';
import { measuredRun } from './independent-measured.ts';
import { isMisfit } from './independent-voltage.ts';
import { independentLowest, independentWarmth } from './independent-warmth.ts';
import { recalculate, TRIPS, type InputRow, type InputSchedule } from './independent.ts';

/** What a run may be found to fail; the first four are over its limits, the last two near them. */
export type RunFault =
  | 'device voltage' | 'no working voltage' | 'conductor current' | 'conductor protection' | 'drop' | 'short circuit'
  | 'measured over' | 'measured near' | 'too warm';

export interface RunFigures {
  readonly run: string;
  readonly current: number | null;
  /** Lowest voltage on it, from the lowest of its supply; and the drop from the nominal one. */
  readonly endVoltage: number | null;
  readonly drop: number | null;
  readonly faultCurrent: number;
  /** What the cable leaves of a short circuit at its end, and what makes its way act at once, NaN for none [A]. */
  readonly shortCircuit: number;
  readonly actsAt: number;
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
  const { devices, supplies, runs } = recalculate(schedule);
  const demandOf = (run: InputRow, index: number) => runs[index]!.extra! + sheet('devices')
    .reduce((sum, device, at) => device.run === run.run ? sum + (devices[at]!.demand ?? 0) : sum, 0);

  return sheet('runs').map((run): RunFigures => {
    const way = find('ways', 'way', run.way);
    const rail = run.rail ?? way.rail;
    const at = sheet('supplies').findIndex((row) => row.rail === rail);
    const supply = sheet('supplies')[at]!;
    const conductor = find('conductors', 'conductor', run.conductor);
    const voltage = number(supply.voltage, 24);
    const lowest = independentLowest(
      voltage, number(supply.tolerance, 0), number(supply.seriesDrop, 0), supply.redundant === true,
      typeof supply.battery === 'number' || number(supply.standbyHours, 0) > 0)!;
    const length = number(run.length);
    const pairs = number(run.pairs, 1);

    const onIt = sheet('devices').flatMap((device, place) => {
      const amps = run.basis === 'demand' ? devices[place]!.demand : devices[place]!.connected;
      if (device.run !== run.run || amps === null) return [];
      const type = find('types', 'type', device.type);
      const load = { metres: number(device.distance, length), amps, watts: 0 };
      return [{
        needed: number(type.minVoltage, 0), amps,
        load: type.load === 'power' ? { ...load, amps: 0, watts: amps * voltage } : load,
      }];
    });
    const alone = number(conductor.maxCurrent, Infinity);
    const laid = {
      pairs, grouped: number(run.grouped, pairs), ambient: number(run.ambient, 30),
      highest: number(conductor.maxTemperature, 70), base: number(conductor.baseTemperature, 30),
    };
    const carries = independentCarries({ ...laid, alone });
    const celsius = number(run.temperature, independentWarmth(
      onIt.reduce((sum, { amps }) => sum + amps, 0), { ...laid, alone: alone === Infinity ? null : alone }));
    const cold = 2 * number(conductor.resistance) / 1000 / pairs;
    const ohmsPerMetre = cold * (1 + 0.00393 * (celsius - 20));
    const loads = onIt.map(({ load }) => load);
    const [nominal, least] = [settle(loads, voltage, ohmsPerMetre), settle(loads, lowest, ohmsPerMetre)];

    const through = sheet('runs').reduce((sum, other, place) =>
      other === run || (run.way !== undefined && other.way === run.way) ? sum + demandOf(other, place) : sum, 0);
    const available = Math.max(0,
      supplies[at]!.usable! * number(supply.peak, 1) - Math.max(0, supplies[at]!.demand - through));
    const shortCircuit = lowest / (cold * (1 + 0.00393 * 50) * length + number(supply.innerResistance, 0.3));
    const faultCurrent = Math.min(available, shortCircuit);

    const faults: RunFault[] = [];
    if (celsius > laid.highest) faults.push('too warm');
    const isOnWrongRail = sheet('devices').some((device) => device.run === run.run && device.qty !== 0
      && sheet('types').some((type) => type.type === device.type && isMisfit(type, supply)));
    if (isOnWrongRail) faults.push('device voltage');
    if (nominal === null || least === null) faults.push('no working voltage');
    else {
      if (!isOnWrongRail && onIt.some(({ needed }, place) => least.volts[place]! < needed)) faults.push('device voltage');
      const isOneTooMuch = sheet('devices').some((device, place) => device.run === run.run && device.qty !== 0
        && (devices[place]!.unitDraw ?? 0) / 1000 > carries);
      if (nominal.current > carries || isOneTooMuch) faults.push('conductor current');
      if (1 - nominal.endVoltage / voltage > number(run.maxDrop, 0.05)) faults.push('drop');
    }
    const rated = number(way.rated, 0);
    const kind = String(way.kind);
    if (rated > carries || rated * number(way.k2, operatingMultiple(kind, rated)) > 1.45 * carries) {
      faults.push('conductor protection');
    }
    const actsAt = number(way.trip, TRIPS[kind] ?? NaN) * rated;
    if (faultCurrent < actsAt) faults.push('short circuit');
    const limits = [number(way.rated, Infinity), carries];
    const measured = measuredRun(run, {
      nominal: voltage, worked: nominal?.current ?? null, limit: Math.min(...limits, number(supply.rated)),
      most: Math.min(...limits), needed: Math.max(0, ...onIt.map(({ needed }) => needed)),
      lowest: {
        start: lowest, end: least?.endVoltage ?? null,
        margins: onIt.flatMap(({ needed }, place) =>
          least === null || needed === 0 ? [] : [least.volts[place]! - needed]),
      },
      drop: nominal === null ? null : voltage - nominal.endVoltage, rail: supply,
      bears: Math.min(...sheet('devices').map((device) => device.run !== run.run || device.qty === 0 ? Infinity
        : number(find('types', 'type', device.type).maxVoltage, Infinity))),
      highest: voltage + Math.max(
        number(supply.tolerance, 0) * voltage,
        typeof supply.battery === 'number' || number(supply.standbyHours, 0) > 0 ? 1.8 / 12 * voltage : 0),
    });
    if (measured.over) faults.push('measured over');
    if (measured.near) faults.push('measured near');
    return {
      run: String(run.run), current: nominal?.current ?? null, endVoltage: least?.endVoltage ?? null,
      drop: nominal === null ? null : voltage - nominal.endVoltage, faultCurrent,
      shortCircuit, actsAt, carries, faults,
    };
  });
}

/** Multiple of the rating at which a way acts on overload within an hour or so. */
function operatingMultiple(kind: string, rated: number): number {
  if (kind === 'fast' || kind === 'slow') return 2.1;
  if (kind !== 'gG') return 1.45;
  return rated >= 16 ? 1.6 : rated > 4 ? 1.9 : 2.1;
}

function number(cell: InputRow[string], ifEmpty = NaN): number {
  if (typeof cell === 'string' && cell.startsWith('=')) return evaluateArithmetic(cell) ?? NaN;
  return typeof cell === 'number' ? cell : ifEmpty;
}
