import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { grouped, insertRows, removeRows, renameTag, setCells, tagOf, withTicks, type Cells, type CellValue } from '../../src/schedule/index.ts';
import { insideWires, layOutTerminals, layoutChanges } from '../../src/terminals/index.ts';
import { idAt, scheduleOf } from '../support/schedules.ts';
import { edit, someEdit, somePanel } from './random-wired-panel.ts';

/** Lays terminals out as a person does who takes all of it. */
function layOut(schedule: LoadSchedule, options?: { useSpares: boolean }) {
  const layout = layOutTerminals(schedule.document, schedule.figures, options);
  schedule.act('Terminals', layoutChanges(schedule.document, layout));
  return layout;
}

const cells = (schedule: LoadSchedule): readonly Cells[] => schedule.rows('terminals').map((row) => row.cells);
const text = (value: CellValue | undefined): string => value === null || value === undefined ? '' : String(value);
const byCore = (schedule: LoadSchedule, outside: string) =>
  Object.fromEntries(cells(schedule).filter((each) => each.outside === outside)
    .map(({ core, terminal }) => [text(core), terminal]));

const demoContent = () => {
  const read = readSchedule(readFileSync(new URL('../../data/demo.schedule.json', import.meta.url), 'utf8'));
  if (!read.ok) throw new Error('The demo cannot be read.');
  return read.content;
};

/** The demo before its terminals are laid out. */
const demo = () => {
  const content = demoContent();
  return new LoadSchedule({ ...content, sheets: { ...content.sheets, terminals: [] } });
};

/** Where the plus of a rail is taken: behind its fuse, where there is one. */
const plusOf = (schedule: LoadSchedule, rail: string): string => {
  const supply = schedule.rows('supplies').find((row) => tagOf('supplies', row) === rail);
  return typeof supply?.cells.fuse === 'number' ? `${rail}:F/2` : `${rail}:+`;
};

/** The cores that a schedule has, each with the connection that it must lead to inside: said here anew, row by row. */
function coresOf(schedule: LoadSchedule): Map<string, string> {
  const cores = new Map<string, string>();
  const value = (sheet: 'runs' | 'outputs', id: number, key: string) => text(schedule.value(sheet, id, key));
  const seen = new Set<string>();
  const feeds = new Set(schedule.rows('feeds').map((row) => tagOf('feeds', row)));
  for (const { id } of schedule.rows('runs')) {
    const [run, rail, branch] = ['run', 'rail', 'branch'].map((key) => value('runs', id, key)) as [string, string, string];
    if (run === '' || rail === '' || seen.has(`run ${run}`)) continue;
    seen.add(`run ${run}`);
    const pairs = Number(schedule.value('runs', id, 'pairs'));
    for (const [before, way] of [['', value('runs', id, 'way')], ['2:', value('runs', id, 'secondWay')]] as const) {
      if (before !== '' && way === '') continue;
      for (let pair = 1; pair <= pairs; pair += 1) {
        cores.set(`${run} ${before}${2 * pair - 1}`, way === '' ? plusOf(schedule, rail) : `${way}:2`);
        cores.set(`${run} ${before}${2 * pair}`, `${rail}:-`);
      }
    }
    if (branch === '') continue;
    cores.set(`${run} ${2 * pairs + 1}`, `${branch}:+`);
    cores.set(`${run} ${2 * pairs + 2}`, `${branch}:-`);
  }
  for (const { id } of schedule.rows('outputs')) {
    const [output, feed, rail] = ['output', 'feed', 'rail'].map((key) => value('outputs', id, key)) as [string, string, string];
    if (output === '' || seen.has(`output ${output}`)) continue;
    seen.add(`output ${output}`);
    if (rail !== '') {
      cores.set(`${output} 1`, `${output}:14`);
      cores.set(`${output} 2`, `${rail}:-`);
    } else if (feed !== '') {
      cores.set(`${output} L`, `${output}:14`);
      // A feed that is not listed has no cable: a finding says so where it is named.
      cores.set(`${output} N`, feeds.has(feed) ? `cable ${feed} N` : 'anywhere');
      cores.set(`${output} PE`, 'earth');
    } else {
      cores.set(`${output} 1`, `${output}:11`);
      cores.set(`${output} 2`, `${output}:14`);
    }
  }
  return cores;
}

/** All that a terminal reaches by bridges, and by a core from one enclosure to the other, walked step by step. */
function reached(from: Cells, all: readonly Cells[]): Cells[] {
  const found = [from];
  for (const each of found) {
    for (const other of all) {
      const isBridged = text(each.bridge) !== '' && each.bridge === other.bridge && each.strip === other.strip;
      const isSameCore = text(each.outside) !== '' && each.outside === other.outside && each.core === other.core;
      if ((isBridged || isSameCore) && !found.includes(other)) found.push(other);
    }
  }
  return found;
}

/** Walks every core from its terminal to what it must lead to, and from there back to it. */
function expectEveryCoreOnce(schedule: LoadSchedule): void {
  const all = cells(schedule);
  const outside = (each: Cells) => `${text(each.outside)} ${text(each.core)}`;
  for (const [core, leadsTo] of coresOf(schedule)) {
    const ends = all.filter((each) => outside(each) === core);
    expect(ends.map(outside), core).toEqual([core]);
    const way = reached(ends[0]!, all);
    const target = (each: Cells) => leadsTo === 'earth' ? each.potential === 'PE'
      : leadsTo.startsWith('cable ') ? new RegExp(`^${leadsTo.slice(6).replace(' ', ' (?:\\d+:)?')}$`).test(outside(each)) : each.inside === leadsTo;
    const isApart = isMountedElsewhere(schedule, leadsTo, ends[0]!);
    if (isApart || leadsTo === 'anywhere') continue;
    const arrived = way.filter(target);
    expect(arrived.length, `${core} leads to ${leadsTo}`).toBeGreaterThan(0);
    expect(reached(arrived[0]!, all), `${leadsTo} leads back to ${core}`).toContain(ends[0]);
    // Whatever is reached has one potential.
    expect(new Set(way.map(({ potential }) => potential)).size, core).toBe(1);
  }
}

/** Whatever hangs together has one potential, and all terminals of a potential in one panel hang together. */
function expectPotentialsOfUnion(schedule: LoadSchedule): void {
  const all = cells(schedule);
  const wires = insideWires(schedule.document, schedule.figures);
  const joins: [string, string][] = wires.map(({ from, to }) => [`at ${from}`, `at ${to}`]);
  for (const [place, { bridge, strip, inside, outside, core }] of all.entries()) {
    const name = `terminal ${place}`;
    if (text(bridge) !== '') joins.push([name, `bridge ${text(strip)} ${text(bridge)}`]);
    if (text(inside) !== '') joins.push([name, `at ${text(inside)}`]);
    if (text(outside) !== '') joins.push([name, `core ${text(outside)} ${text(core)}`]);
  }
  const beside = new Map<string, string[]>();
  for (const [one, other] of joins) {
    beside.set(one, [...beside.get(one) ?? [], other]);
    beside.set(other, [...beside.get(other) ?? [], one]);
  }
  const netOf = new Map<string, number>();
  for (const [net, start] of [...beside.keys(), ...all.map((_each, place) => `terminal ${place}`)].entries()) {
    const waiting = netOf.has(start) ? [] : [start];
    for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
      if (netOf.has(at)) continue;
      netOf.set(at, net);
      waiting.push(...beside.get(at) ?? []);
    }
  }
  const ends = [
    ...all.map(({ potential, enclosure }, place) =>
      ({ net: netOf.get(`terminal ${place}`)!, potential: text(potential), enclosure: text(enclosure) })),
    ...wires.map(({ from, potential, enclosure }) => ({ net: netOf.get(`at ${from}`)!, potential, enclosure })),
  ].filter(({ potential }) => potential !== '');
  const potentialsOf = grouped(ends, ({ net }) => net);
  // Two sources on one common side of a module are a fault of the schedule, which is found as one.
  const shorted = new Set(schedule.findings.filter(({ rule }) => rule === 'module-common-shared').map(({ tag }) => netOf.get(`at ${tag}:C`)));
  for (const [net, those] of potentialsOf) {
    const potentials = new Set(those.map(({ potential }) => potential));
    if (shorted.has(net)) expect(potentials.size).toBeGreaterThan(1);
    else expect([...potentials], JSON.stringify(those)).toHaveLength(1);
  }
  const terminalsOf = grouped(ends.slice(0, ends.length - wires.length), ({ potential, enclosure }) => `${potential} in ${enclosure}`);
  for (const [where, those] of terminalsOf) expect(new Set(those.map(({ net }) => net)).size, where).toBe(1);
}

/** A rail whose supply stands in another enclosure, to which the schedule knows no cable. */
function isMountedElsewhere(schedule: LoadSchedule, leadsTo: string, end: Cells): boolean {
  const supply = schedule.rows('supplies').find((row) => [':-', ':+', ':F/2'].some((end) => leadsTo === `${tagOf('supplies', row)}${end}`));
  if (supply === undefined) return false;
  const enclosure = text(supply.cells.enclosure);
  return enclosure !== '' && enclosure !== text(end.enclosure);
}

describe('laying terminals out', () => {
  test('both panels of the demo: every core once, from inside to outside and back, and nothing else wrong', () => {
    const schedule = demo();
    const { came, leftOut } = layOut(schedule);
    expect(leftOut).toEqual([]);
    expect(came.length).toBeGreaterThan(200);
    expectEveryCoreOnce(schedule);
    expect(schedule.findings.filter(({ sheet }) => sheet === 'terminals')).toEqual([]);
  });

  test('the demo holds its terminals as they are laid out', () => {
    const [held, laidOut] = [new LoadSchedule(demoContent()), demo()];
    layOut(laidOut);
    expect(cells(held)).toEqual(cells(laidOut));
    expectEveryCoreOnce(held);
    expect(layOutTerminals(held.document, held.figures))
      .toMatchObject({ came: [], changed: [], gone: [], reused: [], leftOut: [] });
  });

  test('rows of mains, plus, minus and bus stand on strips of their own', () => {
    const schedule = demo();
    layOut(schedule);
    const kinds = (strip: string) => new Set(cells(schedule).filter((each) => text(each.strip).endsWith(strip))
      .map(({ potential }) => text(potential).replace(/^\S+ ?/, '')));
    expect(kinds('X2')).toEqual(new Set(['L+']));
    expect(kinds('X3')).toEqual(new Set(['L-']));
    expect(kinds('X4')).toEqual(new Set(['+', '-']));
  });

  test('laying out again changes nothing', () => {
    const schedule = demo();
    layOut(schedule);
    expect(layOutTerminals(schedule.document, schedule.figures))
      .toMatchObject({ came: [], changed: [], gone: [], reused: [] });
  });

  test('a common side that two feeds come to, by mistake, has a terminal on each, and laying out again changes nothing', () => {
    const schedule = demo();
    const id = schedule.rows('outputs').find((row) => tagOf('outputs', row) === 'K3.2')!.id;
    schedule.act('Entry', setCells(schedule.document, [{ sheet: 'outputs', id, key: 'feed', value: 'F5' }]));
    layOut(schedule);
    expect(cells(schedule).filter(({ inside }) => inside === 'K3:C').map(({ potential }) => potential)).toEqual(['F3 L', 'F5 L']);
    expect(layOutTerminals(schedule.document, schedule.figures))
      .toMatchObject({ came: [], changed: [], gone: [], reused: [] });
  });

  test('where the coupler of a branch moves to another panel, its conductors leave the terminals of the old one', () => {
    const schedule = demo();
    layOut(schedule);
    const id = schedule.rows('branches').find((row) => tagOf('branches', row) === 'B2')!.id;
    schedule.act('Entry', setCells(schedule.document, [{ sheet: 'branches', id, key: 'enclosure', value: 'KP-2' }]));
    layOut(schedule);
    expect(cells(schedule).filter(({ inside }) => inside === 'B2:+' || inside === 'B2:-').map(({ enclosure, inside }) => [enclosure, inside]))
      .toEqual([['KP-2', 'B2:+'], ['KP-2', 'B2:-']]);
    expect(schedule.findings.filter(({ sheet }) => sheet === 'terminals')).toEqual([]);
    expectEveryCoreOnce(schedule);
    expect(layOutTerminals(schedule.document, schedule.figures))
      .toMatchObject({ came: [], changed: [], gone: [], reused: [] });
  });

  test('what a change left behind in the terminals is found until they are laid out anew', () => {
    const schedule = demo();
    layOut(schedule);
    const set = (sheet: 'outputs' | 'ways', tag: string, cell: Cells) => {
      const id = schedule.rows(sheet).find((row) => tagOf(sheet, row) === tag)!.id;
      const [[key, value]] = Object.entries(cell) as [[string, CellValue]];
      schedule.act('Entry', setCells(schedule.document, [{ sheet, id, key, value }]));
    };
    const found = () => schedule.findings.filter(({ rule }) => rule === 'terminal-otherwise').map(({ message }) => message);
    set('outputs', 'K1.1', { feed: 'F5' });
    expect(found()).toEqual([
      'Terminal +KP-1-X1:2 has the potential F1 L and holds K1.1:11, which has F5 L by the schedule: wired so, the two would be joined. Lay the terminals out anew, or correct what it holds.',
      'Terminal +KP-1-X1:4 has the potential F1 N and holds K1.1 N, which has F5 N by the schedule: wired so, the two would be joined. Lay the terminals out anew, or correct what it holds.',
    ]);
    layOut(schedule);
    expect(found()).toEqual([]);
  });

  test('any panel: every core once', () => {
    fc.assert(fc.property(somePanel, (content) => {
      const schedule = new LoadSchedule(content);
      layOut(schedule);
      expectEveryCoreOnce(schedule);
      const names = cells(schedule).map(({ terminal }) => terminal);
      expect(new Set(names).size).toBe(names.length);
    }), { numRuns: 60 });
  });

  test('potentials are those of an independent union of bridges, cores and conductors inside', () => {
    const held = demo();
    layOut(held);
    expectPotentialsOfUnion(held);
    fc.assert(fc.property(somePanel, (content) => {
      const schedule = new LoadSchedule(content);
      layOut(schedule);
      expectPotentialsOfUnion(schedule);
    }), { numRuns: 60 });
  });

  test('no number changes over 300 edits, each followed by a layout; what stands stays where it stands', () => {
    let edits = 0;
    fc.assert(fc.property(somePanel, fc.array(someEdit, { minLength: 10, maxLength: 10 }), (content, steps) => {
      const schedule = new LoadSchedule(content);
      layOut(schedule);
      for (const step of steps) {
        edits += 1;
        edit(schedule, step);
        const before = schedule.rows('terminals').map(({ id, cells: { terminal, strip } }) => [id, terminal, strip]);
        layOut(schedule);
        const after = new Set(schedule.rows('terminals').map(({ id, cells: { terminal, strip } }) => JSON.stringify([id, terminal, strip])));
        expect(before.filter((each) => !after.has(JSON.stringify(each)))).toEqual([]);
        expectEveryCoreOnce(schedule);
        expect(layOutTerminals(schedule.document, schedule.figures)).toMatchObject({ came: [], changed: [], gone: [] });
      }
    }), { numRuns: 30 });
    expect(edits).toBeGreaterThanOrEqual(300);
  });
});

test('what was ticked keeps its tick over edits and layouts, and is told just where it joins something else', () => {
  const connection = (row: Cells) => JSON.stringify(['potential', 'inside', 'outside', 'core', 'bridge'].map((key) => row[key] ?? null));
  let [told, silent] = [0, 0];
  const someEdits = fc.array(someEdit, { minLength: 4, maxLength: 4 });
  fc.assert(fc.property(somePanel, someEdits, fc.boolean(), (content, steps, useSpares) => {
    const schedule = new LoadSchedule(content);
    layOut(schedule);
    schedule.act('Ticks', withTicks(schedule.document, schedule.rows('terminals').flatMap(({ id }) =>
      setCells(schedule.document, [{ sheet: 'terminals', id, key: 'wired', value: true }]))));
    const ticked = new Map(schedule.rows('terminals').map((row) => [row.id, connection(row.cells)]));
    for (const step of steps.filter(({ how }) => how !== 'rename')) {
      edit(schedule, step);
      layOut(schedule, { useSpares });
    }
    for (const [id, before] of ticked) {
      const { cells: now } = schedule.document.row('terminals', id)!;
      expect(now.wired).toBe(true);
      const isTold = schedule.findingsOf('terminals', id).some(({ rule }) => rule === 'terminal-wired-otherwise');
      expect(isTold, `${before} ${connection(now)}`).toBe(connection(now) !== before);
      if (isTold) told += 1;
      else silent += 1;
    }
  }), { numRuns: 60 });
  expect(Math.min(told, silent)).toBeGreaterThan(50);
});

describe('what changes after a layout', () => {
  const panel = () => scheduleOf({
    enclosures: [{ enclosure: 'KP-1' }],
    supplies: [{ rail: 'L1', rated: 10, enclosure: 'KP-1' }],
    ways: [{ way: 'F1', rail: 'L1', rated: 4 }, { way: 'F2', rail: 'L1', rated: 4 }],
    conductors: [{ conductor: 'c', size: 1.5 }, { conductor: 'thick', size: 6 }],
    runs: [{ run: 'R1', way: 'F1', conductor: 'c' }, { run: 'R2', way: 'F1', conductor: 'c' }],
  });

  test('a run that goes leaves spare terminals, which are taken again only when a person says so', () => {
    const schedule = panel();
    layOut(schedule);
    expect(byCore(schedule, 'R1')).toEqual({ 1: '+KP-1-X2:1', 2: '+KP-1-X3:1' });
    schedule.act('Delete', removeRows(schedule.document, 'runs', [idAt(schedule, 'runs')]));
    const { gone, changed } = layOut(schedule);
    expect(gone).toHaveLength(2);
    // What is left of the potential is wired in the place of the one that was.
    expect(changed.map(({ cells: each }) => each)).toEqual([{ inside: 'F1:2' }, { inside: 'L1:-' }]);
    expect(cells(schedule)[0]).toEqual({ terminal: '+KP-1-X2:1', strip: '+KP-1-X2', enclosure: 'KP-1', maxSize: 2.5, width: 5.2 });
    schedule.act('Add', insertRows(schedule.document, 'runs', 1, [{ run: 'R3', way: 'F2', conductor: 'c' }]));
    layOut(schedule);
    expect(byCore(schedule, 'R3')).toEqual({ 1: '+KP-1-X2:3', 2: '+KP-1-X3:3' });
    schedule.act('Add', insertRows(schedule.document, 'runs', 2, [{ run: 'R4', way: 'F2', conductor: 'c' }]));
    expect(layOut(schedule, { useSpares: true }).reused).toHaveLength(2);
    expect(byCore(schedule, 'R4')).toEqual({ 1: '+KP-1-X2:1', 2: '+KP-1-X3:1' });
  });

  test('a spare terminal that is too small for the new conductor is left', () => {
    const schedule = panel();
    layOut(schedule);
    schedule.act('Delete', removeRows(schedule.document, 'runs', [idAt(schedule, 'runs')]));
    layOut(schedule);
    schedule.act('Add', insertRows(schedule.document, 'runs', 1, [{ run: 'R3', way: 'F2', conductor: 'thick' }]));
    expect(layOut(schedule, { useSpares: true }).reused).toEqual([]);
  });

  test('a run on another way keeps its numbers; its potential and its inside conductor follow', () => {
    const schedule = panel();
    layOut(schedule);
    const id = idAt(schedule, 'runs', 1);
    schedule.act('Move', setCells(schedule.document, [{ sheet: 'runs', id, key: 'way', value: 'F2' }]));
    layOut(schedule);
    expect(cells(schedule)[1]).toMatchObject({ terminal: '+KP-1-X2:2', potential: 'F2 L+', inside: 'F2:2', outside: 'R2' });
    expect(cells(schedule)[1]!.bridge ?? null).toBeNull();
  });

  test('a fuse that comes or goes at the output of a supply moves the conductor of its plus, on the same terminal', () => {
    const schedule = scheduleOf({ supplies: [{ rail: 'L1' }], runs: [{ run: 'R1', rail: 'L1' }, { run: 'R2', rail: 'L1' }] });
    layOut(schedule);
    const wiredTo = () => cells(schedule).filter(({ potential }) => potential === 'L1 L+').map(({ terminal, inside }) => [terminal, inside ?? '']);
    const before = wiredTo();
    expect(before).toEqual([['-X2:1', 'L1:+'], ['-X2:2', '']]);
    const set = (value: CellValue) => {
      schedule.act('Fuse', setCells(schedule.document, [{ sheet: 'supplies', id: idAt(schedule, 'supplies', 0), key: 'fuse', value }]));
      return layOut(schedule);
    };
    expect(set(16)).toMatchObject({ came: [], gone: [], changed: [{ cells: { inside: 'L1:F/2' } }] });
    expect(wiredTo()).toEqual([['-X2:1', 'L1:F/2'], ['-X2:2', '']]);
    set(null);
    expect(wiredTo()).toEqual(before);
  });

  test('new tags are followed by what names them, and nothing comes or goes', () => {
    const schedule = panel();
    layOut(schedule);
    schedule.act('Rename', renameTag(schedule.document, 'ways', idAt(schedule, 'ways'), 'F7'));
    schedule.act('Rename', renameTag(schedule.document, 'runs', idAt(schedule, 'runs'), 'R9'));
    const layout = layOut(schedule);
    expect([layout.came, layout.gone]).toEqual([[], []]);
    expect(cells(schedule)[0]).toMatchObject({ inside: 'F7:2', outside: 'R9', potential: 'F7 L+' });
  });

  test('what a person entered stays: another strip, a number, a bridge taken out, a cable of another list', () => {
    const schedule = panel();
    layOut(schedule);
    const set = (at: number, of: Cells) => setCells(schedule.document, Object.entries(of)
      .map(([key, value]) => ({ sheet: 'terminals' as const, id: idAt(schedule, 'terminals', at), key, value })));
    schedule.act('Edit', [...set(0, { terminal: '+KP-1-X20:7', strip: '+KP-1-X20', inside: 'F1' }), ...set(1, { bridge: null, inside: 'F1:4' })]);
    schedule.act('Add', insertRows(schedule.document, 'terminals', 0, [{ terminal: '+KP-1-X9:1', strip: '+KP-1-X9', note: 'for later' }]));
    const before = cells(schedule);
    layOut(schedule);
    expect(cells(schedule)).toEqual(before);
    schedule.act('Add', insertRows(schedule.document, 'runs', 2, [{ run: 'R3', way: 'F1', conductor: 'c' }]));
    layOut(schedule);
    expect(byCore(schedule, 'R3')[1]).toBe('+KP-1-X20:8');
  });

  test('a row without a tag, with one that stands twice, without a rail: each is named and left out', () => {
    const schedule = scheduleOf({
      supplies: [{ rail: 'L1' }], runs: [{ rail: 'L1' }, { run: 'R1', rail: 'L1' }, { run: 'R1', rail: 'L1' }, { run: 'R2' }],
    });
    expect(layOut(schedule).leftOut.map(({ id, why }) => [schedule.document.position('runs', id), why]))
      .toEqual([[0, 'untagged'], [2, 'doubled'], [3, 'railless']]);
  });
});
