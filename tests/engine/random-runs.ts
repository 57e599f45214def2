import fc from 'fast-check';
import type { Tap } from '../../src/electrical/index.ts';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { independentCarries } from '../support/independent-carries.ts';
import { independentLowest, independentWarmth } from '../support/independent-warmth.ts';
import { nodalVoltages } from '../support/nodal-solver.ts';

/**
 * Numbers of two decimals, as people enter them; places closer than a centimetre would strain the matrix, not the
 * rules.
 */
const between = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map((hundredths) => hundredths / 100);
/** A cell that is mostly filled. */
const mostly = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { freq: 8 });

const someType = fc.record({
  load: fc.constantFrom('current', 'power', null), draw: fc.option(between(1, 400)), power: fc.option(
    between(0, 60), { freq: 3 }
  ),
  diversity: fc.option(between(0, 1)), minVoltage: fc.option(between(5, 40)),
});
const someDevice = fc.record({
  type: fc.constantFrom('T0', 'T1', 'T2', 'T3'), qty: mostly(fc.integer({ min: 0, max: 9 })),
  rail: mostly(fc.constantFrom('S0', 'S1')), run: mostly(fc.constantFrom('W0', 'W1', 'W2')),
  distance: fc.option(between(0, 120)), unitDraw: fc.option(between(1, 400), { freq: 2 }),
  diversity: fc.option(between(0, 1), { freq: 2 }),
});
const someSupply = fc.record({
  voltage: fc.option(fc.constantFrom(12, 24, 36, 48)), rated: mostly(between(1, 40)),
  units: fc.option(fc.integer({ min: 1, max: 3 })), peak: fc.option(between(1, 3)),
  tolerance: fc.option(between(0, 0.2)), seriesDrop: mostly(between(0, 1)), redundant: fc.option(fc.boolean()),
  battery: fc.option(between(1, 40)), derating: fc.option(between(0.5, 1)), innerResistance: fc.option(between(0, 1)),
});
const someRun = fc.record({
  rail: mostly(fc.constantFrom('S0', 'S1')), conductor: mostly(fc.constantFrom('C0', 'C1', 'C2')),
  pairs: fc.option(fc.integer({ min: 1, max: 4 })), length: mostly(between(1, 120)),
  ambient: fc.option(between(-20, 80)),
  grouped: fc.option(fc.integer({ min: 1, max: 24 })), temperature: fc.option(between(-20, 90)),
  basis: fc.constantFrom('connected', 'demand', null), maxDrop: fc.option(between(0.02, 0.3)),
});
const someWay = fc.record({
  rated: fc.option(between(0.5, 16)), trip: fc.option(fc.constantFrom(2, 5, 10)),
  k2: fc.option(fc.constantFrom(1.45, 2.1)),
});
const someConductor = fc.record({
  resistance: mostly(between(1, 60)), maxCurrent: mostly(between(1, 20)), maxTemperature: fc.option(between(60, 90)),
  baseTemperature: fc.option(between(20, 45)),
});

const tagged = (key: string, letter: string, rows: readonly object[]): Cells[] =>
  rows.map((row, index) => ({ [key]: `${letter}${index}`, ...row }));

/** A schedule with three runs on two supplies, some of whose cells are empty. */
export const someRunSchedule: fc.Arbitrary<Content> = fc.record({
  types: fc.array(someType, { minLength: 4, maxLength: 4 }), supplies: fc.array(
    someSupply, { minLength: 2, maxLength: 2 }
  ),
  conductors: fc.array(
    someConductor, { minLength: 3, maxLength: 3 }
  ), runs: fc.array(someRun, { minLength: 3, maxLength: 3 }),
  ways: fc.array(fc.option(someWay), { minLength: 3, maxLength: 3 }),
  devices: fc.array(someDevice, { minLength: 3, maxLength: 25, size: 'max' }),
}).map(({ types, supplies, conductors, runs, ways, devices }) => ({
  details: {},
  sheets: {
    types: tagged('type', 'T', types), supplies: tagged('rail', 'S', supplies), conductors: tagged(
      'conductor', 'C', conductors
    ),
    runs: tagged('run', 'W', runs.map((run, at) => ways[at] === null ? run : { ...run, way: `F${at}` })),
    ways: ways.flatMap((way, at) => way === null ? [] : [{ way: `F${at}`, rail: runs[at]!.rail, ...way }]), devices: tagged('ref', 'D', devices),
  },
}));

/** The voltages and the current of a run that works. */
export interface WorkingRun {
  readonly supplyVolts: number;
  readonly current: number;
  readonly endVoltage: number;
  /** Voltage of each device row on it, in order; `null` where its current is unknown. */
  readonly volts: readonly (number | null)[];
}

/** What a run comes to. */
export interface IndependentRun {
  /** From the nominal voltage: `undefined` where nothing can be said of it, `null` where no voltage works. */
  readonly run: WorkingRun | null | undefined;
  /** The same from the lowest voltage of its supply. */
  readonly lowest: WorkingRun | null | undefined;
  /** Device rows whose current is unknown. */
  readonly missing: number;
  /** Whether its drop lacks something: such rows, or the warmth that they would add. */
  readonly isPartial: boolean;
  readonly minVoltage: number | null;
  /** What it draws more than its devices at their nominal voltage, diversified [A]. */
  readonly extra: number | null;
  readonly temperature: number;
  readonly carries: number | null;
  readonly taps: readonly (Tap | null)[];
  /** What each device row has above its need [V]. */
  readonly margins: readonly (number | null)[];
  readonly faultCurrent: number | null;
}

const given = (cells: Cells | undefined, key: string, otherwise: number | null = null): number | null =>
  typeof cells?.[key] === 'number' ? cells[key] : otherwise;

const find = ({ sheets }: Content, sheet: 'types' | 'supplies' | 'conductors' | 'runs', key: string, tag: unknown) =>
  sheets[sheet]!.find((row) => row[key] === tag);

/** A device row with its type and the tag and voltage of its rail; one without a rail takes over that of its run. */
function deviceOf(content: Content, row: Cells) {
  const type = find(content, 'types', 'type', row.type);
  const rail = row.rail ?? find(content, 'runs', 'run', row.run)?.rail;
  const supply = find(content, 'supplies', 'rail', rail);
  const railVolts = supply === undefined ? null : given(supply, 'voltage', 24);
  const power = given(type, 'power');
  const typical = given(type, 'draw') ?? (power === null || railVolts === null ? null : power / railVolts * 1000);
  const draw = given(row, 'unitDraw') ?? typical;
  const [qty, diversity] = [given(row, 'qty'), given(row, 'diversity') ?? given(type, 'diversity', 1)!];
  const connected = qty === null || draw === null ? null : qty * draw / 1000;
  return {
    row, type, rail, railVolts, power, typical, draw, qty, diversity, connected,
    demand: connected === null ? null : connected * diversity,
  };
}

type DeviceRow = ReturnType<typeof deviceOf>;

function tapOf(device: DeviceRow, supplyVolts: number, length: number, onDemand: boolean): Tap | null {
  const { row, type, railVolts, power, typical, draw, qty, diversity } = device;
  if (qty === null || draw === null) return null;
  const count = qty * (onDemand ? diversity : 1);
  const distanceMetres = given(row, 'distance') ?? length;
  if (type?.load !== 'power') return { distanceMetres, amps: count * draw / 1000 };
  // A draw of the row itself, or of a type without a power, is the one at nominal voltage; one that is the type's says
  // nothing new.
  const isOwn = power === null || typical === null || Math.abs(draw - typical) > 1e-9 * Math.max(1, typical);
  return { distanceMetres, watts: count * (isOwn ? draw / 1000 * (railVolts ?? supplyVolts) : power) };
}

/** Voltages and current from a voltage at the start; `null` where there are none. */
function solved(supplyVolts: number, loop: number, taps: readonly (Tap | null)[]): WorkingRun | null {
  const known = taps.filter((tap) => tap !== null);
  const volts = nodalVoltages(supplyVolts, loop, known);
  if (volts === null) return null;
  const each = [...volts];
  return {
    supplyVolts, endVoltage: Math.min(supplyVolts, ...volts),
    current: known.reduce((sum, { amps = 0, watts = 0 }, tap) => sum + amps + watts / volts[tap]!, 0),
    volts: taps.map((tap) => tap === null ? null : each.shift()!),
  };
}

type Circuit = Omit<IndependentRun, 'faultCurrent'>;

/** A run without its short circuit, by nodal analysis. */
function circuitOf(content: Content, run: Cells): Circuit {
  const supply = find(content, 'supplies', 'rail', run.rail);
  const conductor = find(content, 'conductors', 'conductor', run.conductor);
  const supplyVolts = supply === undefined ? null : given(supply, 'voltage', 24);
  const lowestVolts = independentLowest(
    supplyVolts, given(supply, 'tolerance', 0), given(supply, 'seriesDrop'), supply?.redundant === true,
    given(supply, 'battery') !== null);
  const length = given(run, 'length');
  const pairs = given(run, 'pairs', 1)!;
  const devices = content.sheets.devices!.filter((row) => row.run === run.run).map((row) => deviceOf(content, row));
  const needs = devices.map(({ qty, type }) => qty === 0 ? null : given(type, 'minVoltage'));
  const minVoltage = needs.reduce((most, each) => each === null || (most !== null && most > each) ? most : each, null);
  const onDemand = run.basis === 'demand';
  const laid = {
    alone: given(conductor, 'maxCurrent'), pairs, grouped: given(run, 'grouped', pairs)!,
    ambient: given(run, 'ambient', 30)!,
    highest: given(conductor, 'maxTemperature', 70)!, base: given(conductor, 'baseTemperature', 30)!,
  };
  const carries = laid.alone === null ? null : independentCarries({ ...laid, alone: laid.alone });
  const nominal = devices.reduce((sum, device) => sum + ((onDemand ? device.demand : device.connected) ?? 0), 0);
  const temperature = given(run, 'temperature') ?? independentWarmth(nominal, laid, conductor !== undefined);
  const isSteady = devices.every(({ type }) => type?.load !== 'power');
  const isDoubtful = devices.some(({ connected }) => connected === null);
  const unknown: Circuit = {
    run: undefined, lowest: undefined, missing: 0, isPartial: isDoubtful && given(run, 'temperature') === null, minVoltage, extra: isSteady ? 0 : null, temperature, carries, taps: [],
    margins: devices.map(() => null),
  };
  if (supplyVolts === null || length === null) return unknown;
  const taps = devices.map((device) => tapOf(device, supplyVolts, length, onDemand));
  const missing = taps.filter((tap) => tap === null).length;
  const resistance = given(conductor, 'resistance');
  if (resistance === null) return { ...unknown, missing, isPartial: isDoubtful, taps };
  const loop = 2 * resistance / 1000 * (1 + 0.00393 * (temperature - 20)) / pairs;
  const together = solved(supplyVolts, loop, devices.map((device) => tapOf(device, supplyVolts, length, true)));
  const asked = devices.reduce((sum, { demand }) => sum + (demand ?? 0), 0);
  const extra = isSteady ? 0 : together === null ? null : Math.max(0, together.current - asked);
  const whole = solved(supplyVolts, loop, taps);
  const lowest = whole === null ? null : lowestVolts === null ? undefined : solved(lowestVolts, loop, taps);
  return {
    run: whole, lowest, missing, isPartial: isDoubtful, minVoltage, extra, temperature, carries, taps,
    margins: needs.map((need, place) => {
      const volts = lowest?.volts[place] ?? null;
      return need === null || volts === null ? null : volts - need;
    }),
  };
}

/** What the supply of a run has left for a short circuit on it [A]; `null` where that is not known. */
function availableTo(content: Content, run: Cells): number | null {
  const supply = find(content, 'supplies', 'rail', run.rail);
  const rated = given(supply, 'rated');
  if (rated === null) return null;
  const counting = given(supply, 'units', 1)! - (supply!.redundant === true ? 1 : 0);
  const most = rated * counting * given(supply, 'derating', 1)! * given(supply, 'peak', 1)!;
  const others = content.sheets.devices!.map((row) => deviceOf(content, row));
  const devices = (of: readonly DeviceRow[]) => of.reduce((sum, { demand }) => sum + (demand ?? 0), 0);
  const elsewhere = devices(others.filter(({ rail }) => rail === run.rail))
    - devices(others.filter(({ row }) => row.run === run.run))
    + content.sheets.runs!.filter((other) => other.rail === run.rail && other.run !== run.run)
      .reduce((sum, other) => sum + (circuitOf(content, other).extra ?? 0), 0);
  return Math.max(0, most - Math.max(0, elsewhere));
}

/** Works a run out from the cells of its schedule, by nodal analysis; it shares nothing with the software. */
export function independentRun(content: Content, run: Cells): IndependentRun {
  const circuit = circuitOf(content, run);
  const supply = find(content, 'supplies', 'rail', run.rail);
  const volts = independentLowest(
    supply === undefined ? null : given(supply, 'voltage', 24), given(supply, 'tolerance', 0), given(supply, 'seriesDrop'),
    supply?.redundant === true, given(supply, 'battery') !== null);
  const resistance = given(find(content, 'conductors', 'conductor', run.conductor), 'resistance');
  const [length, available] = [given(run, 'length'), availableTo(content, run)];
  if (volts === null || resistance === null || length === null || available === null) {
    return { ...circuit, faultCurrent: null };
  }
  const loop = 2 * resistance / 1000 * (1 + 0.00393 * 50) / given(run, 'pairs', 1)! * length;
  return { ...circuit, faultCurrent: Math.min(volts / (loop + given(supply, 'innerResistance', 0.3)!), available) };
}
