import fc from 'fast-check';
import type { Tap } from '../../src/electrical/index.ts';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { independentCarries } from '../support/independent-carries.ts';
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
});
const someRun = fc.record({
  rail: mostly(fc.constantFrom('S0', 'S1')), conductor: mostly(fc.constantFrom('C0', 'C1', 'C2')),
  pairs: fc.option(fc.integer({ min: 1, max: 4 })), length: mostly(between(1, 120)),
  ambient: fc.option(between(-20, 80)),
  grouped: fc.option(fc.integer({ min: 1, max: 24 })), temperature: fc.option(between(-20, 90)),
  basis: fc.constantFrom('connected', 'demand', null), protection: fc.option(between(0.5, 16)),
  trip: fc.option(fc.constantFrom(2, 5, 10)), maxDrop: fc.option(between(0.02, 0.3)),
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
  devices: fc.array(someDevice, { minLength: 3, maxLength: 25, size: 'max' }),
}).map(({ types, supplies, conductors, runs, devices }) => ({
  details: {},
  sheets: {
    types: tagged('type', 'T', types), supplies: tagged('rail', 'S', supplies), conductors: tagged(
      'conductor', 'C', conductors
    ),
    runs: tagged('run', 'W', runs), devices: tagged('ref', 'D', devices),
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
  /** `undefined` where nothing can be said of it, `null` where there is no working voltage. */
  readonly run: WorkingRun | null | undefined;
  /** Device rows whose current is unknown. */
  readonly missing: number;
  readonly minVoltage: number | null;
  readonly faultCurrent: number | null;
  readonly carries: number | null;
  readonly taps: readonly (Tap | null)[];
}

const given = (cells: Cells | undefined, key: string, otherwise: number | null = null): number | null =>
  typeof cells?.[key] === 'number' ? cells[key] : otherwise;

/** What the cable of a run carries where it lies; `null` where its conductor does not say. */
function carriesOf(conductor: Cells | undefined, run: Cells): number | null {
  const alone = given(conductor, 'maxCurrent');
  const pairs = given(run, 'pairs', 1)!;
  return alone === null ? null : independentCarries({
    alone, pairs, grouped: given(run, 'grouped', pairs)!, ambient: given(run, 'ambient', 30)!,
    highest: given(conductor, 'maxTemperature', 70)!, base: given(conductor, 'baseTemperature', 30)!,
  });
}

/**
 * Works a run out from the cells of its schedule, by nodal analysis; it shares nothing with the software.
 */
export function independentRun({ sheets }: Content, run: Cells): IndependentRun {
  const find = (sheet: 'types' | 'supplies' | 'conductors', key: string, tag: unknown) =>
    sheets[sheet]!.find((row) => row[key] === tag);
  const supply = find('supplies', 'rail', run.rail);
  const supplyVolts = supply === undefined ? null : given(supply, 'voltage', 24);
  const length = given(run, 'length');
  const devices = sheets.devices!.filter((row) => row.run === run.run);
  const needs = devices.filter(({ qty }) => qty !== 0)
    .map((row) => given(find('types', 'type', row.type), 'minVoltage'))
    .filter((volts) => volts !== null);
  const minVoltage = needs.length === 0 ? null : Math.max(...needs);
  const carries = carriesOf(find('conductors', 'conductor', run.conductor), run);
  if (supplyVolts === null || length === null) {
    return { run: undefined, missing: 0, minVoltage, faultCurrent: null, carries, taps: [] };
  }

  const taps = devices.map((row): Tap | null => {
    const type = find('types', 'type', row.type);
    // A row without a rail of its own takes over that of its run.
    const rail = find('supplies', 'rail', row.rail ?? run.rail);
    const railVolts = rail === undefined ? null : given(rail, 'voltage', 24);
    const power = given(type, 'power');
    const typical = given(type, 'draw') ?? (power === null || railVolts === null ? null : power / railVolts * 1000);
    const draw = given(row, 'unitDraw') ?? typical;
    const qty = given(row, 'qty');
    if (qty === null || draw === null) return null;
    const count = qty * (run.basis === 'demand' ? given(row, 'diversity') ?? given(type, 'diversity', 1)! : 1);
    const distanceMetres = given(row, 'distance') ?? length;
    if (type?.load !== 'power') return { distanceMetres, amps: count * draw / 1000 };
    // A draw of the row itself, or of a type without a power, is the one at nominal voltage; one that is the type's
    // says nothing new.
    const isOwn = power === null || typical === null || Math.abs(draw - typical) > 1e-9 * Math.max(1, typical);
    return { distanceMetres, watts: count * (isOwn ? draw / 1000 * (railVolts ?? supplyVolts) : power) };
  });
  const known = taps.filter((tap) => tap !== null);
  const missing = taps.length - known.length;
  const resistance = given(find('conductors', 'conductor', run.conductor), 'resistance');
  if (resistance === null) return { run: undefined, missing, minVoltage, faultCurrent: null, carries, taps };
  const loop = 2 * resistance / 1000 * (1 + 0.00393 * (given(run, 'temperature', 20)! - 20)) / given(run, 'pairs', 1)!;
  const rated = given(supply, 'rated');
  const faultCurrent = rated === null ? null
    : Math.min(supplyVolts / (loop * length), rated * given(supply, 'units', 1)! * given(supply, 'peak', 1.2)!);
  const volts = nodalVoltages(supplyVolts, loop, known);
  if (volts === null) return { run: null, missing, minVoltage, faultCurrent, carries, taps };
  const each = [...volts];
  return {
    missing, minVoltage, faultCurrent, carries, taps,
    run: {
      supplyVolts, endVoltage: Math.min(supplyVolts, ...volts),
      current: known.reduce((sum, { amps = 0, watts = 0 }, tap) => sum + amps + watts / volts[tap]!, 0),
      volts: taps.map((tap) => tap === null ? null : each.shift()!),
    },
  };
}
