import { inputCurrent } from '../../electrical/index.ts';
import type { ScheduleDocument } from '../../schedule/index.ts';
import type { Workbook } from '../workbook.ts';
import { countedIn, type GroupedSheet, type GroupFactor } from './case-table.ts';
import type { LoadedSheet } from './case-loadings.ts';

/** What one row of loads asks of a supply, way, run or feed in a case [A]. */
export interface LoadPart {
  readonly sheet: GroupedSheet;
  readonly id: number;
  readonly group: string;
  /** All of it at the same time. */
  readonly connected: number;
  /** What its own diversity leaves. */
  readonly own: number;
  /** What it counts in the case; NaN where that is not known. */
  readonly amps: number;
}

/** What one group of loads asks of it [A]. */
export interface GroupPart {
  /** Empty for loads of no group. */
  readonly group: string;
  /** What the case gives it; without it each row counts by its own diversity. */
  readonly factor: GroupFactor | undefined;
  readonly connected: number;
  readonly own: number;
  readonly amps: number;
  readonly loads: readonly LoadPart[];
}

/** What is asked of a row in a case, by groups, those that ask most first. */
export interface Contributions {
  readonly groups: readonly GroupPart[];
  /** What runs take beyond their devices, because the cable drops their voltage [A]. */
  readonly extra: number;
  /** Rows of loads of which the current is not known. */
  readonly unknown: number;
}

/** Amperes of a row of loads by which it counts: those of a device row on a run with two ways in part. */
type Loads = [sheet: GroupedSheet, id: number, times: number][];

/**
 * What is asked of a supply, way, run or feed in a case, so that the parts add up to its demand (of a run at basis
 * demand: to its current).
 *
 * What a run with two ways takes through one of them is put down to its devices in proportion, and so is the extra of
 * such a run; a feed’s own diversity and the efficiency of supplies are in each part.
 * @param place place of the case among the cases, -1 for the diversity of rows alone.
 */
export function contributionsTo(
  document: ScheduleDocument, book: Workbook, sheet: LoadedSheet, id: number, place: number,
): Contributions {
  const { loads, extra } = loadsOn(document, book, sheet, id, place);
  const { cases } = book;
  const byGroup = new Map<string, LoadPart[]>();
  let unknown = 0;
  for (const [of, row, times] of loads) {
    const part = partOf(book, of, row, times, place);
    if (!Number.isFinite(part.amps)) unknown += 1;
    const others = byGroup.get(part.group);
    if (others === undefined) byGroup.set(part.group, [part]);
    else others.push(part);
  }
  const sum = (parts: readonly LoadPart[], key: 'connected' | 'own' | 'amps') =>
    parts.reduce((all, part) => all + (Number.isFinite(part[key]) ? part[key] : 0), 0);
  const groups = [...byGroup].map(([group, parts]): GroupPart => ({
    group, factor: place < 0 ? undefined : cases.factor(place, cases.groups.indexOf(group)),
    connected: sum(parts, 'connected'), own: sum(parts, 'own'), amps: sum(parts, 'amps'), loads: parts,
  }));
  return { groups: groups.sort((one, other) => other.amps - one.amps), extra, unknown };
}

function partOf(book: Workbook, sheet: GroupedSheet, id: number, times: number, place: number): LoadPart {
  const { cases } = book;
  const group = cases.groupOf(sheet)[id]!;
  const factor = place < 0 ? undefined : cases.factor(place, group);
  const connected = book.number(sheet, id, sheet === 'devices' ? 'connected' : 'current') * times;
  const own = book.number(sheet, id, 'demand') * times;
  return {
    sheet, id, group: cases.groups[group]!, connected, own,
    amps: countedIn(factor, connected, own),
  };
}

function loadsOn(
  document: ScheduleDocument, book: Workbook, sheet: LoadedSheet, id: number, place: number,
): { readonly loads: Loads; readonly extra: number } {
  const naming = (of: GroupedSheet, by: string, times = 1): Loads => {
    const targets = book.targets(of, by);
    return document.rows(of).flatMap((row): Loads => targets[row.id] === id ? [[of, row.id, times]] : []);
  };
  const figure = (of: LoadedSheet, row: number, key: string) => book.inCase(of, row, key, place) ?? 0;
  switch (sheet) {
    case 'supplies': {
      const extra = book.members('runs', 'rail', id).reduce((all, run) => all + figure('runs', run, 'extra'), 0);
      return { loads: [...naming('devices', 'rail'), ...naming('outputs', 'rail')], extra };
    }
    case 'ways': return loadsThrough(document, book, id, figure);
    case 'feeds': {
      const [drawn, demand] = [figure('feeds', id, 'drawn'), figure('feeds', id, 'demand')];
      const diversity = drawn === 0 ? 1 : demand / drawn;
      const behind = book.members('supplies', 'feed', id).map((supply) => {
        const volts = (key: string) => book.number('supplies', supply, key);
        const perAmpere = (inputCurrent(
          volts('voltage'), 1, volts('efficiency'), book.number('feeds', id, 'voltage'), volts('inputPowerFactor')
        ) ?? NaN) * diversity;
        const { loads, extra } = loadsOn(document, book, 'supplies', supply, place);
        return {
          loads: loads.map(([of, row, times]): Loads[number] => [of, row, times * perAmpere]), extra: extra * perAmpere,
        };
      });
      return {
        loads: [...naming('outputs', 'feed', diversity), ...behind.flatMap(({ loads }) => loads)],
        extra: behind.reduce((all, { extra }) => all + (Number.isFinite(extra) ? extra : 0), 0),
      };
    }
    default: {
      const loads = naming('devices', 'run');
      const current = book.inCase('runs', id, 'current', place);
      return { loads, extra: current === null ? 0 : current - figure('runs', id, 'demand') };
    }
  }
}

/** What the runs of a way take through it; of one with two ways the share that comes through this one. */
function loadsThrough(
  document: ScheduleDocument, book: Workbook, way: number,
  figure: (of: LoadedSheet, row: number, key: string) => number,
): { readonly loads: Loads; readonly extra: number } {
  const [first, second] = [book.targets('runs', 'way'), book.targets('runs', 'secondWay')];
  const times = new Map<number, number>();
  let extra = 0;
  for (const { id, cells } of document.rows('runs')) {
    const isFirst = first[id] === way;
    if (!isFirst && second[id] !== way) continue;
    const isOne = (cells.secondWay ?? null) === null;
    const all = figure('runs', id, 'demand') + figure('runs', id, 'extra');
    const through = isOne ? all : (isFirst ? figure('runs', id, 'firstDemand') : 0)
      + (second[id] === way ? figure('runs', id, 'secondDemand') : 0);
    const share = all === 0 ? 0 : through / all;
    times.set(id, share);
    extra += figure('runs', id, 'extra') * share;
  }
  const runs = book.targets('devices', 'run');
  const loads = document.rows('devices').flatMap(({ id }): Loads => {
    const share = times.get(runs[id]!);
    return share === undefined ? [] : [['devices', id, share]];
  });
  return { loads, extra };
}
