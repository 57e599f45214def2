import { panelOf } from '../../engine/index.ts';
import { tagOf } from '../../schedule/index.ts';
import { runSteps, stopAt } from '../packing/index.ts';
import { OFFICE_LISTS } from './office-lists.ts';
import { sizeBranches } from './size-branches.ts';
import { sizeFeeds } from './size-feeds.ts';
import { sizeRelays } from './size-relays.ts';
import { sizeSupplies } from './size-supplies.ts';
import { sizeWidth } from './size-width.ts';
import type { Sized, SizedSchedule, SizingOptions, SizingRow, SizingRules } from './sizing.ts';

/**
 * What a job needs, panel by panel: supplies by purpose with their ways and mains feeds, bus branches, relay modules,
 * mounting rail.
 * What cannot be counted, because an input is missing, has lines of its own.
 *
 * @returns lines by panel, in this order; none for an empty schedule
 * @throws RangeError when a list to choose from is empty
 *
 * Limits: supplies are derated, redundant and loaded as the last rail for their purpose is; feeds of relay outputs and
 * what cables make devices draw more are not counted. A count for pricing, not a design.
 */
export async function sizePanel(schedule: SizedSchedule, options: SizingOptions = {}): Promise<readonly SizingRow[]> {
  return (await sizeJob(schedule, options)).rows;
}

/** The same, with what rows can be made of. */
export async function sizeJob(schedule: SizedSchedule, options: SizingOptions = {}): Promise<Sized> {
  const { lists = OFFICE_LISTS, wholeRows = false, extension = 0, equalUnits = false, unplaced = false } = options;
  if (lists.ratings.length === 0 || lists.ways.length === 0) {
    throw new RangeError('A list of ratings or ways to choose from is empty.');
  }
  const panel = options.panel ?? onlyPanel(schedule);
  const rules: SizingRules = {
    lists, wholeRows, extension, equalUnits, unplaced, target: options.target,
    stop: stopAt(options.signal, options.milliseconds ?? 1_500),
    panelOf: (sheet, id) => panelOf(schedule, sheet, id) ?? panel,
  };
  const supplies = await runSteps(sizeSupplies(schedule, rules));
  const { rows: feedRows, feeds } = await runSteps(sizeFeeds(schedule, supplies.bins, rules));
  const branches = await runSteps(sizeBranches(schedule, rules));
  const relays = await runSteps(sizeRelays(schedule, rules));
  const bins = [...supplies.bins, ...branches.bins];
  const rows = [
    ...supplies.rows, ...feedRows, ...branches.rows, ...relays.rows,
    ...sizeWidth(schedule, bins, [...feeds, ...relays.modules], rules),
  ];
  const panels = [...new Set(rows.map((row) => row.panel))].sort((a, b) => place(schedule, a) - place(schedule, b));
  return {
    bins, feeds, modules: relays.modules,
    rows: panels.flatMap((name) => rows.filter((row) => row.panel === name)),
  };
}

/** The panel of a schedule that has one. */
function onlyPanel(schedule: SizedSchedule): string | null {
  const [first, ...others] = schedule.rows('enclosures').map((row) => tagOf('enclosures', row)).filter((tag) => tag !== '');
  return others.length === 0 ? first ?? null : null;
}

/** Place of a panel among the enclosures; those that are not there come behind, and none comes last. */
function place(schedule: SizedSchedule, panel: string | null): number {
  if (panel === null) return Infinity;
  const found = schedule.rows('enclosures').findIndex((row) => tagOf('enclosures', row) === panel);
  return found < 0 ? Number.MAX_SAFE_INTEGER : found;
}
