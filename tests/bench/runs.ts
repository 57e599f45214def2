import { loopResistancePerMetre, solveRun, type Tap } from '../../src/electrical/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { setCells, type Content } from '../../src/schedule/index.ts';
import { plainTable } from './table.ts';

/*
 * Times of the volt drop of runs: the solver alone, and everything that the schedule works out for its runs (drop at
 * every device, short circuit, longest run, smallest conductor of nine, statuses, findings). Half of the devices draw a
 * constant power. Printed for orientation; nothing is asserted.
 */

const REPEATS = 15;
const METRES = 80;
const RESISTANCES = [36, 24.5, 18.1, 12.1, 7.41, 4.61, 3.08, 1.83, 1.15];

/** Median time of a piece of work [ms]; the first runs, which warm it up, do not count. */
function median(work: () => void, repeats = REPEATS): number {
  const times = Array.from({ length: repeats + 3 }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).slice(3).sort((one, other) => one - other);
  return times[Math.floor(times.length / 2)]!;
}

/** Devices along a run, half of them of constant power, that draw 2 A in all. */
function taps(count: number): Tap[] {
  return Array.from({ length: count }, (_, index) => ({
    distanceMetres: METRES * ((index * 7919) % count + 1) / count, ...(
      index % 2 === 0 ? { amps: 2 / count } : { watts: 48 / count }
    ),
  }));
}

function scheduleOf(runs: number, each: number): Content {
  return {
    details: {},
    sheets: {
      types: [
        { type: 'current', draw: 2000 / each }, { type: 'power', power: 48 / each, load: 'power', minVoltage: 20 },
      ],
      supplies: [{ rail: 'A', rated: 40 }],
      conductors: RESISTANCES.map((resistance, index) => (
        { conductor: `C${index}`, resistance, maxCurrent: 4 * (index + 1) }
      )),
      runs: Array.from({ length: runs }, (_, index) =>
        ({ run: `W${index}`, rail: 'A', conductor: `C${4 + index % 5}`, length: METRES, way: 'F1' })),
      ways: [{ way: 'F1', rail: 'A', kind: 'fast', rated: 4 }],
      devices: Array.from({ length: runs * each }, (_, index) => ({
        ref: `D${index}`, type: index % 2 === 0
          ? 'current' : 'power', qty: 1, rail: 'A', run: `W${Math.floor(index / each)}`,
        distance: METRES * ((index * 7919) % each + 1) / each,
      })),
    },
  };
}

/** Milliseconds to change the length of the first run back and forth, all figures following. */
function edit(schedule: LoadSchedule, key: string, values: readonly [number, number]): number {
  const { id } = schedule.rows('runs')[0]!;
  let turn = 0;
  return median(() => {
    turn += 1;
    schedule.act('Edit', setCells(schedule.document, [{ sheet: 'runs', id, key, value: values[turn % 2]! }]));
  });
}

const loopOhmPerMetre = loopResistancePerMetre(7.41, 20, 1)!;
const run = (count: number) => ({ supplyVolts: 24, loopOhmPerMetre, taps: taps(count) });
const lines: string[][] = [];

const [one, many] = [run(1000), Array.from({ length: 1000 }, () => run(20))];
lines.push(['solver, 1 run of 1,000 taps', median(() => { solveRun(one); }).toFixed(2)]);
lines.push(['solver, 1,000 runs of 20 taps', median(() => { for (const each of many) solveRun(each); }).toFixed(2)]);

for (const [runs, each] of [[1, 1000], [1000, 20]] as const) {
  const content = scheduleOf(runs, each);
  const name = `${runs.toLocaleString('en')} run${runs === 1 ? '' : 's'} of ${each.toLocaleString('en')} devices`;
  lines.push([
    `schedule, first figures, ${name}`, median(() => { new LoadSchedule(content).dispose(); }, 5).toFixed(1),
  ]);
  const schedule = new LoadSchedule(content);
  lines.push([`schedule, edit of a length, ${name}`, edit(schedule, 'length', [70, 75]).toFixed(2)]);
  const { id } = schedule.rows('supplies')[0]!;
  let turn = 0;
  lines.push([`schedule, edit of the voltage of all, ${name}`, median(() => {
    turn += 1;
    schedule.act(
      'Edit', setCells(schedule.document, [{ sheet: 'supplies', id, key: 'voltage', value: turn % 2 === 0 ? 24 : 25 }])
    );
  }, 5).toFixed(1)]);
  schedule.dispose();
}
console.log(plainTable(['median', 'ms'], lines));
