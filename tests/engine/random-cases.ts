import fc from 'fast-check';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import {
  insertRows, moveRows, removeRows, renameTag, setCells, type Cells, type CellValue, type Content, type SheetName,
} from '../../src/schedule/index.ts';

export const GROUPS = ['lights', 'blinds', 'pumps'] as const;
const CASES = ['evening', 'wind', 'night'] as const;

const someGroup = fc.constantFrom<CellValue>(null, ...GROUPS, ...GROUPS);
const someShare = fc.constantFrom(0, 0.2, 0.25, 0.5, 0.9, 1);
const someFactor = fc.record({
  case: fc.constantFrom(...CASES), group: fc.constantFrom(...GROUPS), factor: someShare,
  of: fc.constantFrom(null, null, 'demand'),
});
const someCase = fc.record({
  hours: fc.constantFrom(null, 2, 8), standby: fc.constantFrom(null, true), together: fc.constantFrom(null, true),
});
const someDevice = fc.record({
  type: fc.constantFrom('steady', 'power'), qty: fc.constantFrom(0, 1, 3, 6), group: someGroup,
  run: fc.constantFrom('W1', 'W2', 'W3'), diversity: fc.constantFrom(null, 0.2, 0.5), distance: fc.constantFrom(null, 8, 30),
});
const someOutput = fc.record({
  kind: fc.constantFrom('resistive', 'dc'), power: fc.constantFrom(20, 60), group: someGroup,
  to: fc.constantFrom('feed', 'rail'),
});

/** A factor for every group in every case. */
const ALL = CASES.flatMap((of) => GROUPS.map((group) => ({ case: of, group, factor: 0.4 })));

/** No two factors of one group in one case. */
const apart = (factors: readonly Cells[]): Cells[] => factors.filter(({ case: of, group }, at) =>
  factors.findIndex((each) => each.case === of && each.group === group) === at);

/** Two supplies in a warm enclosure and on a feed, with ways, runs and outputs of which all is known, and cases. */
export const someCasesContent: fc.Arbitrary<Content> = fc.record({
  groups: fc.tuple(someGroup, someGroup), cases: fc.array(someCase, { maxLength: 3 }),
  factors: fc.array(someFactor, { maxLength: 12 }), isAll: fc.boolean(), otherLoss: fc.constantFrom(0, 36, 60),
  devices: fc.array(someDevice, { minLength: 1, maxLength: 7 }), outputs: fc.array(someOutput, { maxLength: 3 }),
  basis: fc.constantFrom('connected', 'demand'), feedDiversity: fc.constantFrom(null, 0.6),
  second: fc.constantFrom<CellValue>(null, null, 'F2'), rated: fc.constantFrom(3, 6, 15), way: fc.constantFrom(1, 3, 8),
  feed: fc.constantFrom(0.4, 6, 25),
}).map(({
  groups, cases, factors, isAll, otherLoss, devices, outputs, basis, feedDiversity, second, rated, way, feed,
}): Content => ({
  details: {},
  sheets: {
    types: [
      { type: 'steady', draw: 120, load: 'current', minVoltage: 19, maxVoltage: 30, nodes: 0, group: groups[0] },
      {
        type: 'power', power: 7, load: 'power', minVoltage: 19, maxVoltage: 30, nodes: 0, diversity: 0.7,
        group: groups[1],
      },
    ],
    supplies: ['P', 'Q'].map((rail): Cells => ({
      rail, rated, efficiency: 0.85, enclosure: 'E', fullUpTo: 30, lessPerKelvin: 0.03, feed: 'M',
      inputPowerFactor: 0.6, inputInrush: 30, ...rail === 'P' ? { standbyHours: 4, battery: 17, fuse: 4, fuseKind: 'gG' } : {},
    })),
    enclosures: [{
      enclosure: 'E', height: 400, width: 300, depth: 150, mounting: 'wall', otherLoss, ambient: 25, maxInside: 55,
    }],
    ways: [
      { way: 'F1', rail: 'P', kind: 'electronic', rated: way }, { way: 'F2', rail: 'P', kind: 'B', rated: 2 },
      { way: 'F3', rail: 'Q', kind: 'electronic', rated: 2 },
    ],
    conductors: [
      { conductor: 'c', resistance: 19.2, maxCurrent: 9 }, { conductor: 'thick', resistance: 7.41, maxCurrent: 17 },
    ],
    runs: [
      {
        run: 'W1', way: 'F1', conductor: 'c', length: 30, basis, secondWay: second,
        ...second === null ? {} : { secondLength: 12 },
      },
      { run: 'W2', way: 'F1', conductor: 'c', length: 40, basis: 'demand' },
      { run: 'W3', rail: 'Q', conductor: 'thick', length: 30, basis, ...basis === 'demand' ? { way: 'F3' } : {} },
    ],
    devices: devices.map((device, at) => ({ ref: `D${at}`, ...device })),
    contacts: [{ contact: 'K', resistive: 5, dc: 5 }],
    outputs: outputs.map(({ to, ...output }, at): Cells => ({
      output: `Q${at}`, contact: 'K', ...output,
      ...to === 'feed' && output.kind === 'resistive' ? { feed: 'M' } : { kind: 'dc', rail: 'Q' },
    })),
    feeds: [{ feed: 'M', rated: feed, curve: 'C', diversity: feedDiversity }],
    cases: cases.map((each, at) => ({ case: CASES[at]!, ...each })),
    factors: apart([...factors, ...isAll ? ALL : []]),
  },
}));

type Act = (schedule: LoadSchedule) => void;
const row = (schedule: LoadSchedule, sheet: SheetName, at: number) => {
  const rows = schedule.rows(sheet);
  return rows.length === 0 ? undefined : rows[at % rows.length]!;
};

const set = (sheet: SheetName, key: string, values: fc.Arbitrary<CellValue>): fc.Arbitrary<Act> =>
  fc.tuple(fc.nat(20), values).map(([at, value]): Act => (schedule) => {
    const of = row(schedule, sheet, at);
    if (of !== undefined) schedule.act('edit', setCells(schedule.document, [{ sheet, id: of.id, key, value }]));
  });

const insert = (sheet: SheetName, cells: fc.Arbitrary<Cells>): fc.Arbitrary<Act> =>
  fc.tuple(fc.nat(20), cells).map(([at, each]): Act => (schedule) => {
    schedule.act('insert', insertRows(schedule.document, sheet, at % (schedule.rows(sheet).length + 1), [each]));
  });

const remove = (sheet: SheetName): fc.Arbitrary<Act> => fc.nat(20).map((at): Act => (schedule) => {
  const of = row(schedule, sheet, at);
  if (of !== undefined) schedule.act('delete', removeRows(schedule.document, sheet, [of.id]));
});

const somePlaces = fc.tuple(fc.nat(20), fc.nat(20));
const move = (sheet: SheetName): fc.Arbitrary<Act> => somePlaces.map(([at, to]): Act => (schedule) => {
  const of = row(schedule, sheet, at);
  if (of !== undefined) {
    schedule.act('move', moveRows(schedule.document, sheet, [of.id], to % schedule.rows(sheet).length));
  }
});

const rename = fc.tuple(fc.nat(20), fc.constantFrom(...CASES, 'cleaning')).map(([at, tag]): Act => (schedule) => {
  const of = row(schedule, 'cases', at);
  if (of !== undefined) schedule.act('rename', renameTag(schedule.document, 'cases', of.id, tag));
});

/** Something that a person does about cases, or that they concern. */
export const someCasesAction: fc.Arbitrary<Act> = fc.oneof(
  set('factors', 'factor', fc.oneof(someShare, fc.constantFrom<CellValue>(null, '=1/4', '=1/0', 2))),
  set('factors', 'group', fc.constantFrom<CellValue>(null, ...GROUPS)),
  set('factors', 'case', fc.constantFrom(...CASES, 'nowhere')),
  set('factors', 'of', fc.constantFrom('connected', 'demand')),
  set('cases', 'standby', fc.boolean()), set('cases', 'together', fc.boolean()),
  set('cases', 'hours', fc.constantFrom(null, 3)),
  set('types', 'group', someGroup), set('devices', 'group', someGroup), set('outputs', 'group', someGroup),
  set('devices', 'qty', fc.constantFrom(0, 1, 5)), set('devices', 'diversity', fc.constantFrom(null, 0.1, 0.8)),
  set('devices', 'run', fc.constantFrom<CellValue>('W1', 'W2', 'W3', null)),
  set('types', 'type', fc.constantFrom('steady', 'power')),
  insert('factors', someFactor), insert('cases', someCase.map((each) => ({ ...each, case: 'cleaning' }))),
  insert('cases', fc.constant({})),
  insert('devices', someDevice), remove('factors'), remove('cases'), remove('devices'), remove('runs'),
  move('cases'), move('factors'), move('devices'), rename,
  fc.constant<Act>((schedule) => { schedule.undo(); }), fc.constant<Act>((schedule) => { schedule.redo(); }),
);
