import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { inItsWorstCase } from './demo-in-its-worst-case.ts';
import { recalculateRuns } from '../support/independent-runs.ts';
import { recalculate, type InputRow, type Status } from '../support/independent.ts';
import { readData, rowsOf } from './read-data.ts';

const demo = readData('demo.schedule.json');
const rows = (sheet: string) => rowsOf(demo, sheet);
const worst = inItsWorstCase(demo);
const figures = recalculate(worst);
const tags = (sheet: string, key: string) => new Set(rows(sheet).map((row) => row[key]));

function tagsWith(status: Status, sheet: 'supplies' | 'branches' | 'outputs' | 'feeds', key: string): unknown[] {
  return rows(sheet).filter((_row, index) => figures[sheet][index]!.status === status).map((row) => row[key]);
}

test('is a schedule of the first version with its details', () => {
  expect(demo).toMatchObject({ format: 'elv-load-schedule', version: 2 });
  expect(demo.details.date).toMatch(/^\d{4}-\d{2}-\d{2}$/);
  expect(demo.details.preparedBy).toMatch(/^([A-Z]\. ?)+$/);
});

test.each([
  ['devices', 140], ['supplies', 6], ['branches', 4], ['runs', 20], ['outputs', 24], ['feeds', 5], ['enclosures', 2],
  ['contacts', 2], ['types', 40],
])('has %s, at least %i', (sheet, least) => expect(rows(sheet).length).toBeGreaterThanOrEqual(least));

test('keeps two supplies for each purpose', () => {
  expect(rows('supplies').map((row) => row.purpose).sort()).toEqual(
    ['control', 'control', 'field', 'field', 'lighting', 'lighting']);
});

describe('tags', () => {
  test.each([
    ['devices', 'ref'], ['types', 'type'], ['supplies', 'rail'], ['branches', 'branch'], ['runs', 'run'],
    ['conductors', 'conductor'], ['modules', 'module'], ['outputs', 'output'], ['contacts', 'contact'], ['feeds', 'feed'],
    ['enclosures', 'enclosure'],
  ])('of %s are given and used once', (sheet, key) => {
    const given = rows(sheet).map((row) => row[key]);
    expect(given.every((tag) => typeof tag === 'string' && tag.trim() === tag && tag !== '')).toBe(true);
    expect(new Set(given).size).toBe(given.length);
  });

  test.each<[string, string, string, string, unknown[]]>([
    ['devices', 'type', 'types', 'type', ['Aspirating smoke detector']], // on purpose: not in the list yet
    ['devices', 'rail', 'supplies', 'rail', []],
    ['devices', 'branch', 'branches', 'branch', []],
    ['devices', 'run', 'runs', 'run', []],
    ['supplies', 'enclosure', 'enclosures', 'enclosure', []],
    ['runs', 'rail', 'supplies', 'rail', []],
    ['runs', 'branch', 'branches', 'branch', []],
    ['runs', 'conductor', 'conductors', 'conductor', []],
    ['outputs', 'contact', 'contacts', 'contact', []],
    ['outputs', 'feed', 'feeds', 'feed', []],
    ['outputs', 'module', 'modules', 'module', []],
    ['supplies', 'feed', 'feeds', 'feed', []],
  ])('in %s.%s name a row', (sheet, key, target, tag, missing) => {
    const known = tags(target, tag);
    const named = rows(sheet).map((row) => row[key]).filter((value) => value !== undefined);
    expect(named.filter((value) => !known.has(value))).toEqual(missing);
    expect(new Set(named).size).toBeGreaterThan(1);
  });

  test('of every type, conductor and contact are used', () => {
    const unused = (sheet: string, key: string, user: string) =>
      [...tags(sheet, key)].filter((tag) => !tags(user, key).has(tag));
    expect(unused('types', 'type', 'devices')).toEqual([]);
    expect(unused('conductors', 'conductor', 'runs')).toEqual([]);
    expect(unused('contacts', 'contact', 'outputs')).toEqual([]);
  });

  test('put each device on the rail and the branch of its run', () => {
    const runs = new Map(rows('runs').map((row) => [row.run, row]));
    for (const device of rows('devices').filter((row) => row.run !== undefined)) {
      const run = runs.get(device.run)!;
      expect([device.ref, device.rail]).toEqual([device.ref, run.rail]);
      if (device.branch !== undefined) expect([device.ref, device.branch]).toEqual([device.ref, run.branch]);
      if (device.distance !== undefined) expect(device.distance as number).toBeLessThanOrEqual(run.length as number);
    }
  });
});

test('takes types, contacts and conductors from the defaults as they are', () => {
  expect(rowsOf(readData('device-types.json'), 'types')).toEqual(expect.arrayContaining([...rows('types')]));
  expect(rowsOf(readData('contacts.json'), 'contacts')).toEqual(expect.arrayContaining([...rows('contacts')]));
  expect(rowsOf(readData('conductors.json'), 'conductors')).toEqual(expect.arrayContaining([...rows('conductors')]));
});

/** What the devices of a rail ask for, without what cables cost. */
const demandOfDevices = (rail: string) => figures.devices.reduce((sum, { demand }, index) =>
  rows('devices')[index]!.rail === rail ? sum + (demand ?? 0) : sum, 0);

describe('shows what the schedule is for', () => {
  test('every status of a supply, a branch and an output', () => {
    expect(tagsWith('over', 'supplies', 'rail')).toEqual(['P1']);
    expect(tagsWith('near', 'supplies', 'rail')).toEqual(['L1', 'L2', 'C1']);
    expect(tagsWith('incomplete', 'supplies', 'rail')).toEqual(['P2']);
    expect(tagsWith('ok', 'supplies', 'rail')).toEqual(['C2']);
    expect(figures.branches.map((branch) => branch.status)).toEqual(['ok', 'over', 'near', 'incomplete']);
    expect(tagsWith('over', 'outputs', 'output')).toEqual(['K1.3', 'K1.5', 'K3.3', 'K4.7']);
    expect(tagsWith('near', 'outputs', 'output')).toEqual(['K1.7', 'K3.2']);
    expect(tagsWith('incomplete', 'outputs', 'output')).toEqual(['K4.4', 'K4.5']);
    expect(tagsWith('near', 'feeds', 'feed')).toEqual(['F1']);
    // F4: the kind of lamp of K4.4; F6: what L2-W8 takes, which has no working voltage; F7: a device on P2 is not
    // wholly known.
    expect(tagsWith('incomplete', 'feeds', 'feed')).toEqual(['F2', 'F4', 'F6', 'F7']);
  });

  test('every fault of a run, most runs being well', () => {
    const runs = recalculateRuns(worst);
    const faulty = runs.filter((run) => run.faults.length > 0).map((run) => [run.run, run.faults]);
    expect(faulty).toEqual([
      ['L1-W5', ['drop']],
      ['L2-W2', ['measured near']],
      ['L2-W4', ['device voltage', 'drop']],
      ['L2-W7', ['conductor protection', 'short circuit']],
      ['L2-W8', ['no working voltage']],
      ['P1-W2', ['measured over']],
    ]);
    expect(runs.length - faulty.length).toBeGreaterThanOrEqual(20);
  });

  test('ways that carry what their runs draw, but for one', () => {
    const runs = recalculateRuns(worst);
    const overloaded = rows('ways').filter(({ way, rated }) => rows('runs').reduce((sum, run, index) =>
      run.way === way ? sum + (runs[index]!.current ?? 0) : sum, 0) > (rated as number));
    expect(overloaded.map(({ way }) => way)).toEqual(['L2-F5']);
  });

  test('one typed formula, in a quantity', () => {
    const formulas = Object.entries(demo.sheets).flatMap(([sheet, list]) => (list ?? []).flatMap((row) =>
      Object.entries(row).filter(([, cell]) => String(cell).startsWith('=')).map(([key]) => `${sheet}.${key}`)));
    expect(formulas).toEqual(['devices.qty']);
  });

  test('a diversity only in rows whose note says why, and in no type', () => {
    const diverse = rows('devices').filter((row) => row.diversity !== undefined);
    expect(diverse.map((row) => [row.ref, row.diversity, row.note])).toEqual([
      ['L1-008', 0.6, 'Three of the five at a time at most, by the scenes of the controller'],
      ['L1-009', 0.5, 'Dimmed to half during performances'],
      ['L2-011', 0.7, 'Never above 70 %, set in the dimmer'],
      ['P1-018', 0.25, 'By the sun, two at a time; all together in a wind alarm'],
      ['P2-022', 0.5, 'Two at a time at most, by the controller'],
      ['P2-042', 1, 'Heavy door; the longer coil draws 320 mA and is held all evening'],
    ]);
  });

  test('a field rail that is too small once its blinds and cold actuators count in full', () => {
    // P1, mA: smoke vents 4 × 1000; blinds 8 × 800 = 6400; thermal actuators 18 × 300 = 5400; dampers 4 × 125 = 500;
    // modulating valves 6 × 104.166… = 625; CO2 sensors 13 × 105 = 1365; room panels 11 × 75 = 825; card readers
    // 3 × 90 = 270; door strikes 3 × 250 = 750; holding magnets 4 × 70 = 280; presence detectors 14 × 12 = 168;
    // presence and light sensors 17 × 15 = 255; stations of 8, 4 and 2 keys 3 × 18 + 2 × 12 + 12 × 8 = 174; humidity
    // sensors 4 × 8 = 32; call cords 2 × 6 = 12; water detectors 2 × 15 = 30; window contacts 28 × 3 = 84. In all
    // 21 170 mA.
    // What cables cost comes on top.
    const supply = figures.supplies[rows('supplies').findIndex((row) => row.rail === 'P1')]!;
    expect([demandOfDevices('P1'), supply.usable]).toEqual([closeTo(21.17, EXACT), 20]);
    expect(supply.demand).toBeGreaterThan(21.17);
  });

  test('a row with a draw and a diversity of its own, and one without a type', () => {
    const own = rows('devices').findIndex((row) => row.type !== undefined && row.unitDraw !== undefined);
    expect(figures.devices[own]).toMatchObject({ unitDraw: 320, diversity: 1, demand: 0.32 });
    const untyped = rows('devices').filter((row) => row.type === undefined);
    expect(untyped).toEqual([expect.objectContaining({ unitDraw: 110 })]);
  });

  test('one device on a rail kept for another purpose', () => {
    const purposeOfType = new Map(rows('types').map((row) => [row.type, row.purpose]));
    const purposeOfRail = new Map(rows('supplies').map((row) => [row.rail, row.purpose]));
    const mixed = rows('devices').filter((row) =>
      purposeOfType.has(row.type) && purposeOfType.get(row.type) !== purposeOfRail.get(row.rail));
    expect(mixed.map((row) => [row.ref, row.type])).toEqual([['L2-025', 'Intercom station']]);
  });

  test('one accepted finding: L2, asked for more than its target', () => {
    const schedule = new LoadSchedule(demo);
    const accepted = schedule.findings.filter((finding) => finding.accepted !== undefined);
    expect(accepted.map(({ sheet, tag, rule }) => [sheet, tag, rule]))
      .toEqual([['supplies', 'L2', 'supply-over-target']]);
    // What was accepted is what the independent calculation gives: the finding has not grown worse since.
    const l2 = figures.supplies[rows('supplies').findIndex((row) => row.rail === 'L2')]!;
    expect(l2.loading).toEqual(closeTo(accepted[0]!.accepted!.value as number, EXACT));
  });

  test('what starts together, a supply that switches itself off, a contact on direct current, a dead run: once each', () => {
    const found = new LoadSchedule(demo).findings.filter(({ rule, tag }) => tag === 'K4.7'
      || ['way-over-start', 'supply-over-start', 'supply-over-off', 'run-measured-dead'].includes(rule));
    // Eight blind motors that start with 1.6 A; four coils of 7 W at 24 V, where the contact switches 1 A of such.
    expect(found.map(({ rule, tag, value, limit }) => [rule, tag, value, limit])).toEqual(expect.arrayContaining([
      ['way-over-start', 'P1-F3', 12.8, 8], ['output-over-rating', 'K4.7', closeTo(28 / 24, EXACT), 1],
      ['supply-over-off', 'P1', expect.any(Number), 45], ['run-measured-dead', 'P1-W2', 0.2, 24],
    ]));
    expect(found.length).toBe(4);
  });

  test('measured values of two supplies and three runs, one of them far from what was worked out, one dead', () => {
    const measured = (['supplies', 'runs'] as const)
      .map((sheet) => rows(sheet).filter((row) => row.measuredCurrent !== undefined));
    expect(measured.map((list) => list.length)).toEqual([2, 3]);
    // L2-W2 feeds eight downlights of 7 W: 56 W at about 23.4 V are 2.39 A. Without the two of room 1.04, 42 W are 1.79
    // A: 25 % less, where 10 % may differ.
    const differing = new LoadSchedule(demo).findings.filter(({ rule }) => rule.includes('-measured-'));
    expect(differing.map(({ tag, rule, value }) => [tag, rule, value]))
      .toEqual([['P1-W2', 'run-measured-dead', 0.2], ['L2-W2', 'run-measured-current-differs', 1.79]]);
  });

  test('two issues before the present one', () => {
    const { revisions } = demo as unknown as { revisions: { revision: string; date: string }[] };
    expect(revisions.map(({ revision }) => revision)).toEqual(['A', 'B']);
    const dates = [...revisions.map(({ date }) => date), demo.details.date!];
    expect([...new Set(dates)].sort()).toEqual(dates);
  });

  test('the demand of a small rail, added up by hand', () => {
    // C2: coupler 100 mA (2.4 W ÷ 24 V); input terminals 2 × 35 = 70; output terminal 20; analogue 2 × 40 = 80; relay
    // module 15; coils 6 × 18 = 108; switches 2 × 125 = 250; wireless 45; contactors 2 × 125 = 250; lamps 2 × 15 = 30;
    // room controllers 9 × 125 = 1125. In all 2093 mA of 5 A.
    expect(demandOfDevices('C2')).toEqual(closeTo(2.093, EXACT));
  });
});

test('stays within plausible bounds', () => {
  const between = (row: InputRow, key: string, least: number, most: number) => {
    const value = row[key];
    if (typeof value !== 'number') return;
    expect([key, value >= least && value <= most, row]).toEqual([key, true, row]);
  };
  for (const row of rows('devices')) {
    between(row, 'qty', 1, 40);
    between(row, 'diversity', 0, 1);
    expect(row.area).toEqual(expect.any(String));
  }
  for (const row of rows('supplies')) {
    between(row, 'rated', 1, 40);
    between(row, 'derating', 0.5, 1);
    between(row, 'efficiency', 0.8, 0.97);
  }
  for (const row of rows('runs')) between(row, 'length', 5, 120);
  for (const row of rows('outputs')) {
    between(row, 'power', 0, 2300);
    between(row, 'powerFactor', 0.4, 1);
  }
  for (const row of rows('enclosures')) {
    between(row, 'ambient', 15, 45);
    between(row, 'height', 300, 2200);
  }
});
