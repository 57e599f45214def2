import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveRun, type Run, type RunSolution, type Tap } from '../../src/electrical/index.ts';
import { closeTo } from '../support/close-to.ts';
import { nodalVoltages } from '../support/nodal-solver.ts';

/** Between two ways of solving the same run. */
const AGREED = { absolute: 1e-9, relative: 1e-9 };
/** How much a drop may fall by rounding where it must not fall. */
const ROUNDING = 1e-10;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** A figure as a person would type it, in thousandths. */
const typed = (min: number, max: number) =>
  fc.integer({ min: min * 1000, max: max * 1000 }).map((count) => count / 1000);

/** To the decimetre, as far as the nodal matrix stays well conditioned. */
const anyDistance = fc.integer({ min: 0, max: 1200 }).map((decimetres) => decimetres / 10);
const sharedDistance = fc.integer({ min: 0, max: 12 }).map((hop) => hop * 10);

const anyTap: fc.Arbitrary<Tap> = fc.oneof(
  fc.record({ distanceMetres: anyDistance, amps: typed(0, 0.6) }),
  fc.record({ distanceMetres: anyDistance, watts: typed(0, 12) }),
  fc.record({ distanceMetres: sharedDistance, amps: typed(0, 0.6), watts: typed(0, 12) }),
);

const anyRun: fc.Arbitrary<Run> = fc.record({
  supplyVolts: fc.constantFrom(12, 24, 48),
  loopOhmPerMetre: typed(0.002, 0.09),
  taps: fc.array(anyTap, { minLength: 1, maxLength: 20 }),
});

const drop = (solution: RunSolution) => (solution.working ? solution.dropVolts : Infinity);
const changed = (run: Run, place: number, change: Partial<Tap>): Run =>
  ({ ...run, taps: run.taps.map((tap, index) => (index === place ? { ...tap, ...change } : tap)) });

describe('an independent nodal solver finds the same', () => {
  // A fixed seed, so that the count of runs of each kind below holds; property runs elsewhere vary.
  const runs = fc.sample(anyRun, { numRuns: 600, seed: 20_240_229 });
  const solutions = runs.map((run) => ({
    run, solution: solveRun(run), nodal: nodalVoltages(run.supplyVolts, run.loopOhmPerMetre, run.taps),
  }));
  const working = solutions.filter(({ solution }) => solution.working);

  test('on more than 200 runs that work and more than 50 that collapse, constant power among both', () => {
    const powered = working.filter(({ run }) => run.taps.some(({ watts }) => watts !== undefined && watts > 0));
    expect(powered.length).toBeGreaterThan(200);
    expect(solutions.length - working.length).toBeGreaterThan(50);
  });

  test('which of them work', () => {
    const disagreed = solutions.filter(({ solution, nodal }) => solution.working !== (nodal !== null));
    expect(disagreed).toEqual([]);
  });

  test('every voltage, to 1e-9', () => {
    for (const { solution, nodal } of working) {
      expect(solution).toMatchObject({ working: true, tapVolts: (nodal ?? []).map((volts) => closeTo(volts, AGREED)) });
    }
  });

  test('the current that the taps draw at these voltages is the current at the start, and the end the lowest voltage',
    () => {
    for (const { run, solution } of working) {
      if (!solution.working) continue;
      const drawn = run.taps.map(({ amps = 0, watts = 0 }, place) => amps + watts / (solution.tapVolts[place] ?? NaN));
      expect(solution.currentAmps).toEqual(closeTo(drawn.reduce((sum, each) => sum + each, 0), AGREED));
      expect(solution.endVolts).toEqual(closeTo(Math.min(...solution.tapVolts), AGREED));
      expect(solution.dropVolts).toEqual(closeTo(run.supplyVolts - solution.endVolts, AGREED));
    }
  });
});

describe('the drop grows', () => {
  const place = fc.nat({ max: 19 });
  const more = between(0, 2);

  test('with the current of any tap', () => {
    fc.assert(fc.property(anyRun, place, more, (run, at, amps) => {
      const index = at % run.taps.length;
      const heavier = changed(run, index, { amps: (run.taps[index]?.amps ?? 0) + amps });
      expect(drop(solveRun(heavier))).toBeGreaterThanOrEqual(drop(solveRun(run)) - ROUNDING);
    }));
  });

  test('with the power of any tap', () => {
    fc.assert(fc.property(anyRun, place, more, (run, at, watts) => {
      const index = at % run.taps.length;
      const heavier = changed(run, index, { watts: (run.taps[index]?.watts ?? 0) + 10 * watts });
      expect(drop(solveRun(heavier))).toBeGreaterThanOrEqual(drop(solveRun(run)) - ROUNDING);
    }));
  });

  test('with the distance of any tap', () => {
    fc.assert(fc.property(anyRun, place, more, (run, at, factor) => {
      const index = at % run.taps.length;
      const farther = changed(run, index, { distanceMetres: (run.taps[index]?.distanceMetres ?? 0) * (1 + factor) });
      expect(drop(solveRun(farther))).toBeGreaterThanOrEqual(drop(solveRun(run)) - ROUNDING);
    }));
  });

  test('with the resistance, and the same as with all distances', () => {
    fc.assert(fc.property(anyRun, more, (run, factor) => {
      const thinner = solveRun({ ...run, loopOhmPerMetre: run.loopOhmPerMetre * (1 + factor) });
      const taps = run.taps.map((tap) => ({ ...tap, distanceMetres: tap.distanceMetres * (1 + factor) }));
      expect(drop(thinner)).toBeGreaterThanOrEqual(drop(solveRun(run)) - ROUNDING);
      const longer = solveRun({ ...run, taps });
      expect(longer.working).toBe(thinner.working);
      if (longer.working && thinner.working) expect(longer.dropVolts).toEqual(closeTo(thinner.dropVolts, AGREED));
    }));
  });
});

describe('what changes nothing', () => {
  test('the order of the taps', () => {
    fc.assert(fc.property(anyRun, fc.func(fc.nat()), (run, key) => {
      const order = run.taps.map((_, index) => index).sort((one, other) => key(one) - key(other));
      const shuffled = solveRun({ ...run, taps: order.map((index) => run.taps[index]!) });
      const straight = solveRun(run);
      expect(shuffled.working).toBe(straight.working);
      if (!shuffled.working || !straight.working) return;
      order.forEach((index, at) => {
        expect(shuffled.tapVolts[at]).toEqual(closeTo(straight.tapVolts[index] ?? NaN, AGREED));
      });
    }));
  });

  test('splitting a tap in two', () => {
    fc.assert(fc.property(anyRun, fc.nat({ max: 19 }), between(0, 1), (run, at, share) => {
      const index = at % run.taps.length;
      const { distanceMetres, amps = 0, watts = 0 } = run.taps[index]!;
      const parts = [share, 1 - share].map((part) => ({ distanceMetres, amps: amps * part, watts: watts * part }));
      const split = solveRun({ ...run, taps: [...run.taps.filter((_, place) => place !== index), ...parts] });
      const whole = solveRun(run);
      expect(split.working).toBe(whole.working);
      if (!split.working || !whole.working) return;
      expect(split.endVolts).toEqual(closeTo(whole.endVolts, AGREED));
      expect(split.tapVolts.at(-1)).toEqual(closeTo(whole.tapVolts[index] ?? NaN, AGREED));
    }));
  });

  test('a tap that draws nothing, wherever it is', () => {
    fc.assert(fc.property(anyRun, between(0, 500), (run, distanceMetres) => {
      const probed = solveRun({ ...run, taps: [...run.taps, { distanceMetres }] });
      expect(drop(probed)).toEqual(drop(solveRun(run)) === Infinity ? Infinity : closeTo(drop(solveRun(run)), AGREED));
    }));
  });
});

describe('runs at the edge', () => {
  test('without taps nothing drops', () => {
    expect(solveRun({ supplyVolts: 24, loopOhmPerMetre: 0.05, taps: [] }))
      .toEqual({ working: true, secondAmps: 0, dropVolts: 0, endVolts: 24, tapVolts: [], currentAmps: 0 });
  });

  test('taps at the supply see its voltage whatever they draw', () => {
    const taps = [{ distanceMetres: 0, watts: 1e5 }, { distanceMetres: 0, amps: 100 }, { distanceMetres: 50, amps: 1 }];
    const solution = solveRun({ supplyVolts: 24, loopOhmPerMetre: 0.02, taps });
    expect(solution).toMatchObject({ working: true, tapVolts: [24, 24, 23].map((volts) => closeTo(volts, AGREED)) });
  });

  test('constant currents that would pull the end to 0 V or below do not work', () => {
    const run = (amps: number) =>
      solveRun({ supplyVolts: 24, loopOhmPerMetre: 0.1, taps: [{ distanceMetres: 100, amps }] });
    expect(run(2.39).working).toBe(true);
    expect(run(2.4).working).toBe(false);
    expect(run(30).working).toBe(false);
  });

  test('the collapse is found to nine digits on a run of many taps too', () => {
    const taps = (factor: number): Tap[] => Array.from({ length: 30 }, (_, index) =>
      ({ distanceMetres: 3 * (index + 1), watts: factor * (1 + (index % 3)), amps: 0.002 * index }));
    const works = (factor: number) => solveRun({ supplyVolts: 24, loopOhmPerMetre: 0.03, taps: taps(factor) }).working;
    const nodalWorks = (factor: number) => nodalVoltages(24, 0.03, taps(factor)) !== null;
    let [low, high] = [0, 100];
    while (high - low > 1e-12) {
      const middle = (low + high) / 2;
      [low, high] = works(middle) ? [middle, high] : [low, middle];
    }
    expect(works(low * (1 - 1e-9))).toBe(true);
    expect(works(low * (1 + 1e-9))).toBe(false);
    expect(nodalWorks(low * (1 - 1e-9))).toBe(true);
    expect(nodalWorks(low * (1 + 1e-9))).toBe(false);
  });
});
