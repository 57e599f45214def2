import { contributionsTo, countedIn, type Profile } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { filledRows } from './sheet-section.ts';

/** The profile of a supply, or of a group of loads. */
export interface NamedProfile extends Profile {
  /** Tag or group; empty for loads of no group. */
  readonly name: string;
}

/** What supplies draw in the cases, and what of it each group of loads does. */
export interface CaseProfiles {
  readonly supplies: readonly NamedProfile[];
  readonly groups: readonly NamedProfile[];
  /** What runs draw beyond their devices, because the cable drops their voltage; `undefined` for nothing. */
  readonly extra: Profile | undefined;
}

/**
 * The profiles of all supplies over the cases, by the power that they give, and of the groups of loads on them. In each
 * case groups and what runs draw more add up to what the supplies give. Loads on no rail are no part of it.
 */
export function caseProfiles(schedule: LoadSchedule): CaseProfiles {
  const { cases } = schedule;
  const places = cases.cases.map((_case, place) => place);
  const rails = filledRows(schedule, 'supplies');
  const groups = new Map<string, { readonly powers: number[]; isPartial: boolean }>();
  const extra = { powers: places.map(() => 0), isPartial: false };
  const supplies = rails.map(({ id, cells }): NamedProfile => {
    const powers = places.map((place) => schedule.inCase('supplies', id, 'power', place));
    const isPartial = schedule.isPartial('supplies', id, 'power');
    const volts = schedule.value('supplies', id, 'voltage');
    const loads = contributionsTo(schedule.document, schedule.figures, 'supplies', id, -1).groups.map((part) => {
      const factors = places.map((place) => cases.factor(place, cases.groups.indexOf(part.group)));
      return { ...part, factors, counted: factors.map((factor) => known(countedIn(factor, part.connected, part.own))) };
    });
    for (const { group, factors, counted, loads: rows } of loads) {
      const profile = groups.get(group) ?? { powers: places.map(() => 0), isPartial: false };
      groups.set(group, profile);
      places.forEach((place) => { profile.powers[place]! += counted[place]! * Number(volts ?? 0); });
      profile.isPartial ||= volts === null || schedule.figures.isShared('supplies', id)
        || factors.some((factor) => Number.isNaN(factor?.share))
        || rows.some(({ sheet, id: row, amps }) => Number.isNaN(amps) || schedule.isPartial(sheet, row, 'demand'));
    }
    places.forEach((place) => {
      const given = loads.reduce((sum, { counted }) => sum + counted[place]!, 0);
      const more = (schedule.inCase('supplies', id, 'demand', place) ?? 0) - given;
      if (more > ROUNDING * given) extra.powers[place]! += more * Number(volts ?? 0);
    });
    extra.isPartial ||= schedule.members('runs', 'rail', id).some((run) => schedule.isPartial('runs', run, 'extra')
      || places.some((place) => schedule.inCase('runs', run, 'extra', place) === null));
    return { name: typeof cells.rail === 'string' ? cells.rail : '', powers, isPartial };
  });
  const named = [...groups].map(([name, profile]): NamedProfile => ({ name, ...profile }));
  const order = (name: string) => name === '' ? Infinity : cases.groups.indexOf(name);
  return {
    supplies, groups: named.sort((one, other) => order(one.name) - order(other.name)),
    extra: extra.isPartial || extra.powers.some((power) => power > 0) ? extra : undefined,
  };
}

/** What is left of a difference of sums that are the same. */
const ROUNDING = 1e-9;

/** What is not known adds nothing, and makes a profile partial. */
const known = (amps: number): number => Number.isNaN(amps) ? 0 : amps;
