import type { Cells } from '../../src/schedule/index.ts';
import type { Workload } from './workload.ts';

/** Sheets of the workload with those that come with runs and cases. */
export type CaseWorkload = Workload & Readonly<Partial<Record<'runs' | 'conductors' | 'cases' | 'factors', readonly Cells[]>>>;

/** Load groups, each of which has every case's factor: two types belong to each. */
const GROUPS = 12;
/** Devices along a run stand a metre apart. */
const METRES = 20;
/** A device on a run draws so much less that a cable of 20 m bears twenty of them. */
const LESS_ON_RUNS = 0.1;

/** The same with so many cases, each with a factor for every group. */
export function withCases(sheets: CaseWorkload, count: number): CaseWorkload {
  if (count === 0) return sheets;
  const name = (at: number) => `case ${at + 1}`;
  return {
    ...sheets, types: sheets.types.map((row, at) => ({ ...row, group: `group ${at % GROUPS}` })),
    cases: Array.from({ length: count }, (_, at): Cells => ({ case: name(at), hours: 24 / count })),
    factors: Array.from({ length: count * GROUPS }, (_, at): Cells => {
      const [of, group] = [Math.floor(at / GROUPS), at % GROUPS];
      return { case: name(of), group: `group ${group}`, factor: (of * 7 + group * 5) % 11 / 10 };
    }),
  };
}

/** The same with its devices on so many runs at basis demand; every fourth type draws a constant power. */
export function withRuns(sheets: CaseWorkload, count: number): CaseWorkload {
  if (count === 0) return sheets;
  const rails = sheets.supplies.length;
  const eachRail = count / rails;
  return {
    ...sheets,
    types: sheets.types.map(({ draw, power, ...row }): Cells => ({
      ...row, minVoltage: 18, load: power === undefined ? 'current' : 'power',
      ...power === undefined ? { draw: (draw as number) * LESS_ON_RUNS } : { power: (power as number) * LESS_ON_RUNS },
    })),
    conductors: [12.1, 7.41, 4.61, 3.08, 1.83].map((resistance, at): Cells =>
      ({ conductor: `C${at}`, resistance, maxCurrent: 10 + 6 * at })),
    runs: Array.from({ length: count }, (_, at): Cells => ({
      run: `W${at}`, rail: sheets.supplies[at % rails]!.rail!, conductor: `C${at % 5}`, length: METRES, basis: 'demand',
    })),
    devices: sheets.devices.map(({ unitDraw, ...row }, at): Cells => ({
      ...row, ...unitDraw === undefined ? {} : { unitDraw: (unitDraw as number) * LESS_ON_RUNS },
      run: `W${at % rails + rails * (Math.floor(at / rails) % eachRail)}`, distance: 1 + at % METRES,
    })),
  };
}
