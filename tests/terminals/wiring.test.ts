import { expect, test } from 'vitest';
import { insideWires, layOutTerminals, layoutChanges, stripLines, wiredTerminals } from '../../src/terminals/index.ts';
import { insideSection } from '../../src/report/model/wiring-sections.ts';
import { wiringCsv, wiringList } from '../../src/report/index.ts';
import { scheduleOf } from '../support/schedules.ts';

/** A panel with its own breaker M1 for a supply or for a module with one common side, and a cable with spare cores. */
function wired(more: Parameters<typeof scheduleOf>[0]) {
  const schedule = scheduleOf({
    enclosures: [{ enclosure: 'E' }], feeds: [{ feed: 'M1', rated: 16, enclosure: 'E' }],
    conductors: [{ conductor: 'c', size: 2.5, resistance: 7.41 }], ...more,
  });
  schedule.act('Terminals', layoutChanges(schedule.document, layOutTerminals(schedule.document, schedule.figures)));
  return schedule;
}
const OUTPUT = { kind: 'resistive', power: 460, feed: 'M1' };
const wires = (schedule: ReturnType<typeof wired>) => insideWires(schedule.document, schedule.figures)
  .map(({ from, to, amps }) => [from, to, amps]);
const insides = (schedule: ReturnType<typeof wired>) => wiredTerminals(schedule.document, schedule.figures)
  .filter(({ potential }) => potential === 'M1 L').map(({ inside }) => inside);

test('a breaker goes straight to the one part that it feeds, be it a common side or a first output, and no terminal stands between', () => {
  // 460 W at 230 V are 2 A each.
  const common = wired({
    modules: [{ module: 'K', enclosure: 'E', common: 16 }], outputs: ['Q1', 'Q2'].map((output) => ({ output, module: 'K', ...OUTPUT })),
  });
  expect([wires(common), insides(common)]).toEqual([[['M1:2', 'K:C', 4]], []]);
  const looped = wired({
    modules: [{ module: 'K', enclosure: 'E' }], outputs: ['Q1', 'Q2'].map((output) => ({ output, module: 'K', ...OUTPUT })),
  });
  expect([wires(looped), insides(looped)]).toEqual([[['M1:2', 'Q1:11', 4], ['Q1:11', 'Q2:11', 2]], []]);
});

test('where it feeds several, each has a terminal, and the loop goes on from the first of each', () => {
  const schedule = wired({
    modules: [{ module: 'K', enclosure: 'E', common: 16 }, { module: 'L', enclosure: 'E' }],
    outputs: [{ output: 'Q1', module: 'K', ...OUTPUT }, { output: 'Q2', module: 'L', ...OUTPUT }, { output: 'Q3', module: 'L', ...OUTPUT }],
  });
  expect(insides(schedule)).toEqual(['M1:2', 'K:C', 'Q2:11']);
  expect(wires(schedule)).toEqual([['Q2:11', 'Q3:11', 2]]);
});

test('each link of a loop of supplies and ways carries what all behind it draw; what is not known makes it unknown', () => {
  const schedule = wired({
    supplies: ['L1', 'L2'].map((rail) => ({ rail, rated: 10, enclosure: 'E', feed: 'M1', efficiency: 1, inputPowerFactor: 1 })),
    ways: [{ way: 'F1', rail: 'L1', rated: 4 }, { way: 'F2', rail: 'L1', rated: 4 }],
    runs: [{ run: 'R1', way: 'F1', conductor: 'c', length: 1 }, { run: 'R2', way: 'F2', conductor: 'c', length: 1 }],
    devices: [{ ref: 'D1', qty: 1, unitDraw: 1000, run: 'R1' }, { ref: 'D2', qty: 1, unitDraw: 2300, run: 'R2' }],
  });
  const supplies = 24 * 3.3 / 230;
  expect(wires(schedule)).toEqual([
    ['L1:+', 'F1:1', expect.closeTo(3.3, 9)], ['F1:1', 'F2:1', expect.closeTo(2.3, 9)],
    ['M1:2', 'L1:L', expect.closeTo(supplies, 9)], ['L1:L', 'L2:L', 0],
  ]);
});

test('a fuse at the output stands between the plus of a supply and all that it feeds, also a run without a way', () => {
  const schedule = wired({
    supplies: [{ rail: 'L1', rated: 10, fuse: 10, enclosure: 'E' }], ways: [{ way: 'F1', rail: 'L1', rated: 4 }],
    runs: [{ run: 'R1', way: 'F1', conductor: 'c', length: 1 }, { run: 'R2', rail: 'L1', conductor: 'c', length: 1 }],
    devices: [{ ref: 'D1', qty: 1, unitDraw: 1000, run: 'R1' }, { ref: 'D2', qty: 1, unitDraw: 500, run: 'R2' }],
  });
  expect(wires(schedule)).toEqual([['L1:+', 'L1:F/1', 1.5], ['L1:F/2', 'F1:1', 1]]);
  const terminals = wiredTerminals(schedule.document, schedule.figures)
    .map(({ inside, potential }) => [inside, potential]);
  expect(terminals).toContainEqual(['L1:F/2', 'L1 L+']);
  expect(terminals.filter(([inside]) => inside === 'L1:+')).toEqual([]);
  // Who goes round the fuse is told.
  const at = schedule.rows('terminals').find(({ cells }) => cells.inside === 'L1:F/2')!;
  schedule.act('Inside', [{ op: 'set', sheet: 'terminals', id: at.id, key: 'inside', value: 'L1:+' }]);
  expect(schedule.findings.filter(({ sheet, id }) => sheet === 'terminals' && id === at.id).map(({ message }) => message).join(' '))
    .toContain('L1:+');
});

test('units in parallel share what flows, those that stand in for each other may each carry all, and each has its own N and PE', () => {
  const of = (supply: Record<string, unknown>) => wired({
    supplies: [{ rail: 'L1', rated: 10, units: 3, enclosure: 'E', feed: 'M1', efficiency: 1, inputPowerFactor: 1, ...supply }],
    ways: [{ way: 'F1', rail: 'L1', rated: 10 }], runs: [{ run: 'R1', way: 'F1', conductor: 'c', length: 1 }],
    devices: [{ ref: 'D1', qty: 3, unitDraw: 1000, run: 'R1' }],
  });
  const near = (amps: number) => expect.closeTo(amps, 9) as number;
  const mains = 24 * 3 / 230;
  const parallel = of({});
  expect(wires(parallel)).toEqual([
    ['L1:+', 'L1:2/+', near(2)], ['L1:2/+', 'L1:3/+', near(1)], ['L1:-', 'L1:2/-', near(2)], ['L1:2/-', 'L1:3/-', near(1)],
    ['L1:+', 'F1:1', near(3)],
    ['M1:2', 'L1:L', near(mains)], ['L1:L', 'L1:2/L', near(mains * 2 / 3)], ['L1:2/L', 'L1:3/L', near(mains / 3)],
  ]);
  const landed = wiredTerminals(parallel.document, parallel.figures).map(({ inside }) => inside);
  expect(landed).toEqual(expect.arrayContaining(['L1:N', 'L1:2/N', 'L1:3/N', 'L1:PE', 'L1:2/PE', 'L1:3/PE']));
  expect(wires(of({ redundant: true, seriesDrop: 0.5 }))).toEqual([
    ['L1:-', 'L1:2/-', near(3)], ['L1:2/-', 'L1:3/-', near(3)], ['L1:+', 'F1:1', near(3)],
    ['M1:2', 'L1:L', near(mains)], ['L1:L', 'L1:2/L', near(mains)], ['L1:2/L', 'L1:3/L', near(mains)],
  ]);
  expect(parallel.findings.filter(({ sheet }) => sheet === 'terminals')).toEqual([]);
});

test('the contact of a load of a rail is fed from the plus of its supply, behind the ways, or through the common side of its module', () => {
  const schedule = wired({
    supplies: [{ rail: 'L1', rated: 10, enclosure: 'E' }], ways: [{ way: 'F1', rail: 'L1', rated: 4 }],
    modules: [{ module: 'K', enclosure: 'E' }, { module: 'M', enclosure: 'E', common: 16 }],
    outputs: [['Q1', 'K'], ['Q2', 'M'], ['Q3', 'M']]
      .map(([output, module]) => ({ output: output!, module: module!, kind: 'dc', power: 48, rail: 'L1' })),
  });
  // 48 W at 24 V are 2 A each.
  expect(wires(schedule)).toEqual([['L1:+', 'F1:1', 6], ['F1:1', 'Q1:11', 6], ['Q1:11', 'M:C', 4]]);
});

test('no conductor inside leaves its enclosure: ways of a rail that are mounted elsewhere are looped there by themselves', () => {
  const schedule = wired({
    enclosures: [{ enclosure: 'E' }, { enclosure: 'G' }], supplies: [{ rail: 'L1', rated: 10, enclosure: 'E' }],
    ways: ['F1', 'F2', 'F3', 'F4'].map((way, place) => ({ way, rail: 'L1', rated: 4, enclosure: place % 2 === 0 ? 'E' : 'G' })),
  });
  expect(insideWires(schedule.document, schedule.figures).map(({ enclosure, from, to }) => [enclosure, from, to]))
    .toEqual([['E', 'L1:+', 'F1:1'], ['E', 'F1:1', 'F3:1'], ['G', 'F2:1', 'F4:1']]);
});

test('cables say which cores are used and spare; labels are two for each cable; a designation stands as it is printed', () => {
  const schedule = wired({
    supplies: [{ rail: 'L1', rated: 10, enclosure: 'E' }],
    runs: [{ run: 'R1', rail: 'L1', conductor: 'c', length: 12, cores: 5, to: 'Hall', cable: '5 × 2.5', gland: 'M20' }],
  });
  expect(wiringList(schedule, 'cables').rows).toEqual([
    ['R1', 'run', '5 × 2.5', 5, 2, 3, '+E-X2 +E-X3', 'Hall', 12, 0, 'M20'],
    ['M1', 'feed', '', null, 3, null, '+E-X1', '', null, 0, ''],
  ]);
  const labels = wiringCsv(wiringList(schedule, 'labels'), true).split('\r\n');
  expect(labels).toContain('cable,R1,2');
  expect(labels).toContain('terminal,+E-X2:1,1');
  expect(wiringCsv(wiringList(schedule, 'wiring'))).toContain("'+E-X2:1");
  schedule.act('Rename', [{ op: 'set', sheet: 'runs', id: schedule.rows('runs')[0]!.id, key: 'run', value: '=cmd|1!A' }]);
  expect(wiringCsv(wiringList(schedule, 'labels'), true)).toContain("'=cmd|1!A");
});

test('strips say how many of their terminals are spare', () => {
  const schedule = wired({ supplies: [{ rail: 'L1', enclosure: 'E' }], runs: [{ run: 'R1', rail: 'L1' }] });
  schedule.act('Delete', [{ op: 'remove', sheet: 'runs', at: 0, count: 1 }]);
  schedule.act('Terminals', layoutChanges(schedule.document, layOutTerminals(schedule.document, schedule.figures)));
  expect(stripLines(schedule.document).map(({ strip, terminals, spare }) => [strip, terminals, spare]))
    .toEqual([['+E-X1', 3, 0], ['+E-X2', 1, 1], ['+E-X3', 1, 1]]);
});

test('who wires a panel is told which conductors the list does not hold', () => {
  const said = (supply: Record<string, unknown>, more = {}) => insideSection(wired({
    supplies: [{ rail: 'L1', enclosure: 'E', ...supply }], runs: [{ run: 'R1', rail: 'L1' }], ...more,
  }))!.sentences.slice(1).join(' ');
  const minus = 'Not listed: what joins the minus of supplies, or leads it to earth.';
  expect(said({})).toBe(minus);
  expect(said({ fuse: 20, units: 2, redundant: true }, { modules: [{ module: 'K', enclosure: 'E' }] })).toBe(
    'L1:F/1 and L1:F/2 are the fuse at the output of supply L1. L1:2/+ is the plus of the second unit of supply L1. '
    + 'Not listed: what decouples redundant units, between the plus of each and the fuse or the ways. '
    + `Not listed: what modules and couplers are supplied with. ${minus}`);
});
