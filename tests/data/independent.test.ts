import { describe, expect, test } from 'vitest';
import { evaluateArithmetic } from '../support/arithmetic.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { recalculateRuns } from '../support/independent-runs.ts';
import { recalculate, type Figures, type InputRow } from '../support/independent.ts';

// Expected figures were worked by hand from the rules of the document; the arithmetic stands beside each.

type Expected = Readonly<Record<string, unknown>>;

const near = (value: number) => closeTo(value, EXACT);

describe('plain arithmetic in a cell', () => {
  test.each([
    ['=3*4', 12],
    ['= 2 + 3 * 4', 14],
    ['=(2+3)*4', 20],
    ['=10-4-3', 3],
    ['=24/4/2', 3],
    ['=-2*-3', 6],
    ['=.5+1.25', 1.75],
    ['=1/0', null],
    ['=5*(1/(2-2))', null],
  ])('%s is %s', (formula, value) => expect(evaluateArithmetic(formula)).toBe(value));

  test.each(['=', '=A1*2', '=3*', '=(2', '=2)', '=2 3', '=1.2.3', '=SUM(1)'])('%s is refused', (formula) => {
    expect(() => evaluateArithmetic(formula)).toThrow(SyntaxError);
  });
});

const TYPES: InputRow[] = [
  { type: 'strip', draw: 400, diversity: 0.5, nodes: 0 },
  { type: 'panel', power: 12, nodes: 2 },
  { type: 'blank' },
];

function devicesOn(supply: InputRow, ...devices: InputRow[]): Figures {
  return recalculate({ sheets: { types: TYPES, supplies: [supply], devices, branches: [{ branch: 'B1' }] } });
}

describe('device rows', () => {
  const supply = { rail: 'L1', voltage: 48, rated: 10 };
  test.each<[string, InputRow, Expected]>([
    ['take draw, diversity and nodes of the type', { type: 'strip', qty: 5, rail: 'L1' },
      // 5 × 400 mA = 2 A, × 0.5 = 1 A, of 10 A
      { unitDraw: 400, diversity: 0.5, connected: 2, demand: 1, share: near(0.1), nodes: 0 }],
    ['work the draw out from the power and the rail', { type: 'panel', qty: 4, rail: 'L1' },
      // 12 W ÷ 48 V = 250 mA, × 4 = 1 A; 4 × 2 places
      { unitDraw: near(250), diversity: 1, connected: near(1), demand: near(1), share: near(0.1), nodes: 8 }],
    ['prefer their own draw and diversity', { type: 'strip', qty: 2, rail: 'L1', unitDraw: 300, diversity: 0.25 },
      { unitDraw: 300, diversity: 0.25, connected: 0.6, demand: 0.15, share: near(0.015) }],
    ['understand a typed formula', { type: 'strip', qty: '=3*4', rail: 'L1' }, { connected: 4.8, demand: 2.4 }],
    ['need no type when they have a draw', { qty: 3, rail: 'L1', unitDraw: 100 },
      { connected: near(0.3), diversity: 1, demand: near(0.3), nodes: null }],
    ['have no draw from a power without a rail', { type: 'panel', qty: 4 },
      { unitDraw: null, connected: null, nodes: 8 }],
    ['keep a current without a rail', { type: 'strip', qty: 5 }, { connected: 2, demand: 1, share: null }],
    ['know nothing of a type that is not listed', { type: 'other', qty: 4, rail: 'L1' },
      { unitDraw: null, diversity: 1, connected: null, demand: null, share: null, nodes: null }],
    [
      'count an unknown number of nodes where their type does not say', { type: 'blank', qty: 4, rail: 'L1' },
      { nodes: null },
    ],
    ['know nothing without a quantity', { type: 'strip', rail: 'L1' },
      { unitDraw: 400, connected: null, nodes: null }],
    ['do not fall back when what was typed has no result', { type: 'strip', qty: 2, rail: 'L1', unitDraw: '=1/0' },
      { unitDraw: null, connected: null }],
    ['do not take part of a device from a formula', { type: 'strip', qty: '=5/2', rail: 'L1' }, { connected: null }],
    ['do not take a diversity above 1 from a formula', { type: 'strip', qty: 2, rail: 'L1', diversity: '=3/2' },
      { connected: 0.8, diversity: null, demand: null }],
    ['know nothing beyond what a number can hold', { qty: 1e300, unitDraw: 1e300, rail: 'L1' }, { connected: null }],
    ['may count zero devices', { type: 'strip', qty: 0, rail: 'L1' }, { connected: 0, demand: 0, share: 0, nodes: 0 }],
  ])('%s', (_name, device, expected) => {
    expect(devicesOn(supply, device).devices[0]).toMatchObject(expected);
  });
});

describe('supplies', () => {
  const strips = (qty: number) => ({ type: 'strip', qty, rail: 'L1' });
  const unknown = { type: 'blank', qty: 1, rail: 'L1' };
  test.each<[string, InputRow, InputRow[], Expected]>([
    ['are not above it at their target exactly, but near as everything at the same time is 8 A', { rated: 5 }, [strips(20)],
      // 20 × 0.4 = 8 A, × 0.5 = 4 A of 5 A; limit 5 × 0.8 ÷ 8
      { usable: 5, connected: 8, demand: 4, loading: 0.8, spare: 0, limitDiversity: 0.5, status: 'near' }],
    ['are near above it', { rated: 4.9 }, [strips(20)], { spare: near(-0.08), status: 'near' }],
    ['are not above a target of 1 at the rating', { rated: 4, target: 1 }, [strips(20)], { loading: 1, status: 'near' }],
    ['are over above the rating', { rated: 3.9 }, [strips(20)], { status: 'over' }],
    ['are over above the fuse', { rated: 10, fuse: 3.9 }, [strips(20)], { fuseLoading: near(4 / 3.9), status: 'over' }],
    ['count a redundant unit out and derate', { rated: 10, units: 3, redundant: true, seriesDrop: 0, derating: 0.9 }, [strips(20)],
      // 10 × 2 × 0.9
      { usable: 18, loading: near(4 / 18), status: 'ok' }],
    ['have nothing left when the only unit is redundant', { rated: 10, redundant: true }, [strips(20)],
      { usable: 0, loading: null, limitDiversity: 0, status: 'over' }],
    ['lose what the efficiency says', { rated: 10, efficiency: 0.8 }, [strips(20)],
      // 24 V × 4 A × (1 ÷ 0.8 − 1) = 24 W
      { loss: near(24), status: 'ok' }],
    ['total 0 without devices', { rated: 10 }, [],
      {
        connected: 0, demand: 0, loading: 0, spare: 8, limitDiversity: null, status: 'ok',
        partial: { connected: false, demand: false },
      }],
    ['total 0 and are partial when nothing is known', { rated: 10 }, [unknown],
      { connected: 0, demand: 0, status: 'incomplete', partial: { connected: true, demand: true } }],
    ['add what is known', { rated: 10 }, [strips(5), unknown], { demand: 1, status: 'incomplete' }],
    ['may be over by what is known', { rated: 3.9 }, [strips(20), unknown], { status: 'over' }],
    ['know the connected load of a row whose diversity has no result', { rated: 10 }, [
      { ...strips(5), diversity: '=1/0' }],
      { connected: 2, demand: 0, status: 'incomplete', partial: { connected: false, demand: true } }],
    ['are incomplete without a rating', {}, [strips(5)],
      { usable: null, demand: 1, loading: null, spare: null, status: 'incomplete' }],
    ['do not count rows of no rail, or of another', { rated: 10 },
      [{ type: 'strip', qty: 5 }, { type: 'strip', qty: 5, rail: 'L9' }],
      { demand: 0, status: 'ok', partial: { connected: false, demand: false } }],
    ['forgive the rounding of a sum', { rated: 0.3, target: 1 },
      [100, 200].map((unitDraw) => ({ rail: 'L1', qty: 1, unitDraw })),
      // 0.1 + 0.2 is 0.30000000000000004 in binary
      { status: 'ok' }],
  ])('%s', (_name, supply, devices, expected) => {
    expect(devicesOn({ rail: 'L1', ...supply }, ...devices).supplies[0]).toMatchObject(expected);
  });

  test('of two that share a tag, the first one carries the devices', () => {
    const supplies = [{ rail: 'L1' }, { rail: 'L1' }];
    const twins = recalculate({ sheets: { types: TYPES, supplies, devices: [strips(5)] } });
    expect(twins.supplies.map((supply) => supply.demand)).toEqual([1, 0]);
  });
});

describe('enclosures, and supplies in their warmth', () => {
  // 9 A of 24 V at 80 %: 216 × (1 ÷ 0.8 − 1) = 54 W, with 46 W of other devices 100 W. 1 × 0.5 × 0.4 m against a wall:
  // 1.4 × 0.2 + (0.9 + 0.5) × 0.5 + 2 × 0.9 × 0.4 = 0.28 + 0.7 + 0.72 = 1.7 m²; 100 ÷ (4 × 1.7) = 14.70588 K.
  const enclosure = {
    enclosure: 'E', height: 1000, width: 500, depth: 400, mounting: 'wall', transfer: 4, otherLoss: 46, ambient: 20,
    topFactor: 1, maxInside: 45,
  };
  const supply = { rail: 'L1', rated: 10, efficiency: 0.8, enclosure: 'E', fullUpTo: 30, lessPerKelvin: 0.05 };
  const figures = (own: InputRow = {}, its: InputRow = {}, ...more: InputRow[]) => recalculate({ sheets: {
    enclosures: [{ ...enclosure, ...own }], supplies: [{ ...supply, ...its }], devices: [
      { rail: 'L1', qty: 90, unitDraw: 100 }, ...more
    ],
  } });
  const RISE = 100 / 6.8;

  test.each<[string, InputRow, Expected]>([
    ['add losses, weigh faces and warm up', {},
      {
        supplyLoss: near(54), loss: near(100), area: near(1.7), rise: near(RISE), inside: near(20 + RISE), status: 'ok',
        partial: { supplyLoss: false, usedWidth: true },
      }],
    // 0.7 × 0.2 + (0.9 + 0.5) × 0.5 + 2 × 0.5 × 0.4 = 1.24
    ['covered all round', { mounting: 'row-middle-wall-covered' }, { area: near(1.24) }],
    // 1.4 × 0.2 + 2 × 0.9 × 0.5 + (0.9 + 0.5) × 0.4 = 1.74
    ['at the end of a row, free', { mounting: 'row-end-free' }, { area: near(1.74) }],
    ['take 5.5 W/(m²K) where nothing is entered', { transfer: null }, { rise: near(100 / (5.5 * 1.7)) }],
    ['are near from 5 K below what they may get', { maxInside: 25 + RISE }, { status: 'near' }],
    ['are within limits below that', { maxInside: 25.001 + RISE }, { status: 'ok' }],
    ['are near at it', { maxInside: 20 + RISE }, { status: 'near' }],
    ['are over above it', { maxInside: 19.9 + RISE }, { status: 'over' }],
    ['are incomplete without one', { maxInside: null }, { status: 'incomplete' }],
    ['are warmer at the top', { topFactor: null }, { inside: near(20 + RISE), top: near(20 + 1.3 * RISE) }],
    ['against a wall where nothing is entered', { mounting: null }, { area: near(1.7) }],
    ['of a mounting that is not known neither', { mounting: 'toString' }, { area: null, status: 'incomplete' }],
    ['with 20 W of other losses where nothing is entered', { otherLoss: null }, { supplyLoss: near(54), loss: near(74) }],
    ['in 30 °C where nothing is entered', { ambient: null }, { inside: near(30 + RISE) }],
    ['of no known height have no surface', { height: null }, { loss: near(100), area: null, inside: null, status: 'incomplete' }],
  ])('%s', (_name, own, expected) => expect(figures(own).enclosures[0]).toMatchObject(expected));

  test('are partial by a supply of unknown efficiency, and by one of partial demand', () => {
    expect(figures({}, { efficiency: null }).enclosures[0])
      .toMatchObject(
        { supplyLoss: 0, inside: near(20 + 46 / 6.8), status: 'incomplete', partial: { supplyLoss: true } }
      );
    expect(figures({}, {}, { rail: 'L1', qty: 1 }).enclosures[0])
      .toMatchObject({ supplyLoss: near(54), status: 'incomplete', partial: { supplyLoss: true } });
  });

  test.each<[string, InputRow, InputRow, Expected]>([
    // 10 × (1 − 0.05 × (34.70588 − 30))
    [
      'less above its temperature', {}, {},
      { usable: near(10 - 0.5 * (RISE - 10)), loading: near(9 / (10 - 0.5 * (RISE - 10))), status: 'over' },
    ],
    ['all up to it', { ambient: 30 - RISE }, {}, { usable: 10, status: 'near' }],
    ['nothing, and never less, far above it', { ambient: 60 }, {}, { usable: 0, loading: null, status: 'over' }],
    ['what is unknown where its enclosure is', { height: null }, {}, { usable: null, status: 'incomplete' }],
    [
      'what is unknown where its enclosure is not listed', {}, { enclosure: 'F' },
      { usable: null, status: 'incomplete' },
    ],
    ['what is unknown where it stands in none', {}, { enclosure: null }, { usable: null, status: 'incomplete' }],
    ['what is unknown without what it loses', {}, { lessPerKelvin: null }, { usable: null, status: 'incomplete' }],
    ['all of it where no temperature is given', { height: null }, { fullUpTo: null }, { usable: 10 }],
    ['both deratings', {}, { derating: 0.9 }, { usable: near(9 * (1 - 0.05 * (RISE - 10))) }],
  ])('a supply gives %s', (_name, own, its, expected) => expect(figures(own, its).supplies[0]).toMatchObject(expected));
});

describe('branches', () => {
  const panels = (qty: number) => ({ type: 'panel', qty, branch: 'B1' });
  test.each<[string, InputRow, InputRow[], Expected]>([
    ['are ok when just full', {}, [panels(25)], { nodes: 50, free: 0, used: 1, status: 'ok' }],
    ['are over beyond the limit', {}, [panels(26)], { nodes: 52, free: -2, used: 1.04, status: 'over' }],
    ['round what the reserve leaves down', { limit: 50, reserve: 0.25 }, [panels(18)],
      // 50 × 0.75 = 37.5, so 37, less 36
      { free: 1, status: 'ok' }],
    ['do not lose a place to rounding', { limit: 90, reserve: 0.3 }, [panels(31)],
      // 90 × 0.7 is 62.99999999999999 in binary
      { free: 1, status: 'ok' }],
    ['are near within the reserve', { limit: 50, reserve: 0.25 }, [panels(19)], { free: -1, status: 'near' }],
    ['are partial when a row takes unknown places', {}, [panels(2), { branch: 'B1', qty: 1, unitDraw: 10 }],
      { nodes: 4, status: 'incomplete', partial: { nodes: true } }],
    ['are partial when a type does not say its nodes', {}, [panels(2), { type: 'blank', branch: 'B1', qty: 1 }],
      { nodes: 4, free: 46, status: 'incomplete', partial: { nodes: true } }],
    ['are incomplete without a limit', { limit: null }, [panels(2)],
      { nodes: 4, free: null, used: null, status: 'incomplete', partial: { nodes: false } }],
  ])('%s', (_name, branch, devices, expected) => {
    const runs = [{ run: 'W1', branch: 'B1' }, { run: 'W2', branch: 'B1' }, { run: 'W3' }];
    const branches = [{ branch: 'B1', limit: 50, ...branch }];
    const figures = recalculate({ sheets: { types: TYPES, branches, devices, runs } });
    expect(figures.branches[0]).toMatchObject({ cables: 2, ...expected });
  });
});

describe('outputs and feeds', () => {
  const contacts = [{ contact: 'small', resistive: 5, lamp: 1, motor: 2, inrush: 30 }];
  test.each<[string, InputRow, Expected]>([
    ['take the rating of the kind', { contact: 'small', kind: 'resistive', power: 920 },
      // 920 W ÷ 230 V = 4 A of 5 A
      { current: 4, rating: 5, loading: 0.8, headroom: 1, inrushTotal: null, inrushHeadroom: null, status: 'ok' }],
    ['divide by the power factor', { contact: 'small', kind: 'motor', power: 230, powerFactor: 0.5, efficiency: 1 },
      { current: 2, rating: 2, loading: 1, headroom: 0, status: 'near' }],
    ['are over above the rating', { contact: 'small', kind: 'lamp', qty: 3, power: 115, powerFactor: 1 },
      { current: 1.5, headroom: -0.5, status: 'over' }],
    ['are over above the making capacity', { contact: 'small', kind: 'lamp', qty: 4, power: 23, powerFactor: 1, inrush: 8 },
      { current: 0.4, inrushTotal: 32, inrushHeadroom: -2, status: 'over' }],
    ['are incomplete when the contact has no rating for the kind', { contact: 'small', kind: 'coil', power: 23 },
      { current: 0.1, rating: null, loading: null, status: 'incomplete' }],
    ['are incomplete without a kind', { contact: 'small', power: 23 }, { rating: null, status: 'incomplete' }],
    ['are incomplete without a power', { contact: 'small', kind: 'lamp' },
      { current: null, rating: 1, status: 'incomplete' }],
    ['may be over by the inrush alone', { contact: 'small', kind: 'lamp', inrush: 31 },
      { current: null, status: 'over' }],
    ['of an unlisted contact are incomplete', { contact: 'large', kind: 'lamp', power: 23 },
      { rating: null, status: 'incomplete' }],
    ['that are spare are ok', { contact: 'small', kind: 'resistive', power: 0 },
      { current: 0, loading: 0, headroom: 5, status: 'ok' }],
  ])('outputs %s', (_name, output, expected) => {
    expect(recalculate({ sheets: { contacts, outputs: [output] } }).outputs[0]).toMatchObject(expected);
  });

  test.each<[string, InputRow, (number | null)[], Expected]>([
    ['are ok at the target exactly', { rated: 10 }, [1840],
      { connected: 8, demand: 8, loading: 0.8, spare: 0, status: 'ok' }],
    ['apply their diversity', { rated: 10, diversity: 0.5 }, [1840, 1840], { connected: 16, demand: 8, status: 'ok' }],
    ['are near above the target', { rated: 10 }, [2070], { demand: 9, spare: -1, status: 'near' }],
    ['are over above the rating', { rated: 10 }, [2530], { demand: 11, status: 'over' }],
    ['are partial when an output is unknown', { rated: 10 }, [230, null],
      { connected: 1, status: 'incomplete', partial: { connected: true } }],
    ['are incomplete without a rating', {}, [230], { connected: 1, loading: null, spare: null, status: 'incomplete' }],
  ])('feeds %s', (_name, feed, powers, expected) => {
    const outputs = powers.map((power) => ({ feed: 'F1', kind: 'resistive', power }));
    expect(recalculate({ sheets: { outputs, feeds: [{ feed: 'F1', ...feed }] } }).feeds[0]).toMatchObject(expected);
  });
});

describe('runs', () => {
  // Eight constant-power loads of 1.196 W, 10 m apart, 0.432901 ohm of loop for each 10 m, 24 V. Inputs from a
  // published example; the answer is derived, and two solvers agreed on it: 23.20107 V at the end, 0.408316 A.
  test('come to the working voltage of constant-power devices', () => {
    const [run] = recalculateRuns({ sheets: {
      types: [{ type: 'node', power: 1.196, load: 'power' }],
      supplies: [{ rail: 'P1', rated: 5 }],
      conductors: [{ conductor: 'wire', resistance: 0.432901 / 20 * 1000 }],
      runs: [{ run: 'W1', rail: 'P1', conductor: 'wire', length: 80, temperature: 20 }],
      devices: [10, 20, 30, 40, 50, 60, 70, 80].map((distance) => (
        { type: 'node', qty: 1, rail: 'P1', run: 'W1', distance })),
    } });
    expect(run!.endVoltage).toEqual(closeTo(23.20107, { absolute: 5e-6, relative: 0 }));
    expect(run!.current).toEqual(closeTo(0.408316, { absolute: 5e-7, relative: 0 }));
  });

  // One load at the end of a loop of 1 ohm works up to 24² ÷ 4 = 144 W: closed form.
  test.each([
    [24, 22.954451], [143.9, 12.316], [144.1, null],
  ])('with %s W at the end settle at %s V', (power, volts) => {
    const [run] = recalculateRuns({ sheets: {
      types: [{ type: 'node', power, load: 'power' }], supplies: [{ rail: 'P1', rated: 20 }],
      conductors: [{ conductor: 'wire', resistance: 10 }],
      runs: [{ run: 'W1', rail: 'P1', conductor: 'wire', length: 50, temperature: 20 }],
      devices: [{ type: 'node', qty: 1, rail: 'P1', run: 'W1' }],
    } });
    if (volts === null) expect(run).toMatchObject({ endVoltage: null, faults: ['no working voltage'] });
    else expect(run!.endVoltage).toEqual(closeTo(volts, { absolute: 5e-4, relative: 0 }));
  });
});

test('ten thousand rows add up', () => {
  const devices = Array.from({ length: 10_000 }, (_, index) => ({
    ref: `D${index}`, type: 'strip', qty: 1 + index % 7, rail: `L${index % 40}`, branch: `B${index % 90}`,
  }));
  const supplies = Array.from({ length: 40 }, (_, index) => ({ rail: `L${index}`, rated: 20 }));
  const figures = recalculate({ sheets: { types: TYPES, devices, supplies } });
  const pieces = devices.reduce((sum, device) => sum + device.qty, 0);
  const total = figures.supplies.reduce((sum, supply) => sum + supply.connected, 0);
  expect(total).toEqual(closeTo(pieces * 0.4, { absolute: 1e-9, relative: 1e-12 }));
});
