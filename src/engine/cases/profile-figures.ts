import {
  averagePower, coincidenceFactor, diversityFactor, loadFactor, peakPeriod, profileEnergy,
} from '../../electrical/index.ts';

/** Hours that the cases of a day have to come to, and days that are alike in a year. */
export const HOURS_OF_DAY = 24;
const DAYS_OF_YEAR = 365;
/** Hours that differ by no more are the same: what adding tenths and thirds of hours makes. */
const ROUNDING_HOURS = 1e-6;

/** What a consumer, or several together, draws in each case. */
export interface Profile {
  /** [W], in the order of the cases; `null` where it is not known. */
  readonly powers: readonly (number | null)[];
  /** Some of what it draws is not known, so that it is at least this. */
  readonly isPartial: boolean;
}

/** What a profile comes to over a day; what is not known is `null`. */
export interface ProfileFigures {
  /** [W] */
  readonly maximum: number | null;
  /** Place of the first case in which it has its maximum. */
  readonly peak: number | null;
  /** [W] */
  readonly average: number | null;
  /** Average over maximum; not known of what is partial, which may be more or less. */
  readonly loadFactor: number | null;
  /** Energy of a day and of 365 days that are alike [kWh]. */
  readonly day: number | null;
  readonly year: number | null;
  readonly isPartial: boolean;
}

/** How the maxima of several profiles come together; what is not known, or partial, is `null`. */
export interface TogetherFigures {
  /** Sum of the maxima over the maximum of the sum, 1 or more. */
  readonly diversity: number | null;
  /** Its reciprocal, at most 1. */
  readonly coincidence: number | null;
}

/** How the hours of cases fill a day. */
export interface DayHours {
  /** What those that have hours come to [h]. */
  readonly total: number;
  /** Whether that is a day. */
  readonly isDay: boolean;
}

/** How the hours of cases fill a day. @param hours of each case [h]; `null` and 0 for one that is rare. */
export function dayHours(hours: readonly (number | null)[]): DayHours {
  const total = hours.reduce<number>((sum, each) => sum + (each ?? 0), 0);
  return { total, isDay: Math.abs(total - HOURS_OF_DAY) <= ROUNDING_HOURS };
}

/** The powers of the cases that have hours, with these; `null` where one of them is not known. */
function counted(powers: Profile['powers'], hours: readonly (number | null)[]): [powers: number[], hours: number[]] | null {
  const places = powers.map((_power, place) => place).filter((place) => (hours[place] ?? 0) > 0);
  return places.some((place) => powers[place] === null) ? null
    : [places.map((place) => powers[place]!), places.map((place) => hours[place]!)];
}

/**
 * What a profile comes to over a day. Cases without hours are no part of it.
 * @param hours of each case [h], 24 in all
 */
export function profileFigures({ powers, isPartial }: Profile, hours: readonly (number | null)[]): ProfileFigures {
  const known = counted(powers, hours);
  if (known === null) {
    return { maximum: null, peak: null, average: null, loadFactor: null, day: null, year: null, isPartial };
  }
  const energy = profileEnergy(...known);
  const maximum = Math.max(0, ...known[0]);
  const place = peakPeriod(powers.map((power, at) => (hours[at] ?? 0) > 0 ? power! : 0));
  return {
    maximum, peak: place, average: averagePower(energy, HOURS_OF_DAY),
    loadFactor: isPartial ? null : loadFactor(energy, maximum, HOURS_OF_DAY),
    day: energy / 1000, year: energy / 1000 * DAYS_OF_YEAR, isPartial,
  };
}

/** What several profiles draw together in each case. */
export function sumOfProfiles(profiles: readonly Profile[], count: number): Profile {
  return {
    powers: Array.from({ length: count }, (_none, place) => {
      const known = profiles.map(({ powers }) => powers[place] ?? null).filter((power) => power !== null);
      return known.length < profiles.length ? null : known.reduce((sum, power) => sum + power, 0);
    }),
    isPartial: profiles.some(({ isPartial }) => isPartial),
  };
}

/** How the maxima of several profiles come together over a day. @param hours of each case [h], 24 in all */
export function togetherFigures(profiles: readonly Profile[], hours: readonly (number | null)[]): TogetherFigures {
  const all = profileFigures(sumOfProfiles(profiles, hours.length), hours);
  if (all.maximum === null || all.isPartial) return { diversity: null, coincidence: null };
  const maxima = profiles.map((each) => profileFigures(each, hours).maximum!);
  return { diversity: diversityFactor(maxima, all.maximum), coincidence: coincidenceFactor(maxima, all.maximum) };
}
