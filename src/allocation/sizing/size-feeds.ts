import { inputCurrent, inrushLimit, startSurge, type BreakerCurve } from '../../electrical/index.ts';
import { numberOf, textOf } from '../../engine/index.ts';
import type { Cells } from '../../schedule/index.ts';
import { classesOf, leastBins, withRounding, type Steps } from '../packing/index.ts';
import type { SizedBin, SizedFeed, SizedSchedule, SizingRow, SizingRules } from './sizing.ts';

/** The breaker of a feed where no row says another; common practice, no source. */
const BREAKER = { rated: 16, curve: 'B' } as const;
/** Its figures where nothing is entered; the defaults of the sheet. */
const DEFAULTS = { voltage: 230, target: 0.8, pulseFactor: 1 };
/** Up to here a feed is none of mains [V]: extra-low voltage, IEC 60364-4-41, 414.1.1 (number from memory). */
const EXTRA_LOW = 50;
/**
 * What counts of a supply of which neither it nor the rail that it is made like says so: an allowance on the safe side,
 * common practice, no source.
 */
const ALLOWED = { efficiency: 0.85, inputPowerFactor: 0.5, maxOnB16: 3 };
/** Cells of a feed that are true of that one alone: its diversity is that of what hangs on it. */
const OWN_KEYS: readonly string[] = ['feed', 'note', 'enclosure', 'diversity'];

/** The feed that those of a sizing are made like. */
interface Breaker extends Readonly<typeof DEFAULTS> {
  readonly rated: number;
  readonly curve: BreakerCurve;
  readonly cells: Cells;
}

/** The last feed of a supply, else of anything, whose breaker is known; else a usual one. */
function breakerLike(schedule: SizedSchedule): Breaker {
  const known = schedule.rows('feeds').filter(({ id }) =>
    (numberOf(schedule, 'feeds', id, 'rated') ?? 0) > 0 && textOf(schedule, 'feeds', id, 'curve') !== null
    && (numberOf(schedule, 'feeds', id, 'voltage') ?? 0) > EXTRA_LOW);
  const feeding = new Set(schedule.rows('supplies').map(({ id }) => schedule.target('supplies', id, 'feed')));
  const like = known.findLast(({ id }) => feeding.has(id)) ?? known.at(-1);
  if (like === undefined) return { ...BREAKER, ...DEFAULTS, cells: BREAKER };
  const own = (key: keyof typeof DEFAULTS) => numberOf(schedule, 'feeds', like.id, key) ?? DEFAULTS[key];
  return {
    rated: numberOf(schedule, 'feeds', like.id, 'rated')!,
    curve: textOf(schedule, 'feeds', like.id, 'curve') as BreakerCurve,
    voltage: own('voltage'), target: own('target'), pulseFactor: own('pulseFactor'),
    cells: Object.fromEntries(Object.entries(like.cells).filter(([key]) => !OWN_KEYS.includes(key))),
  };
}

/** What a supply takes up of a breaker, 1 being all of it: of its current at full load, or of its start. */
function shareOf(
  schedule: SizedSchedule, { like, cells }: SizedBin, breaker: Breaker,
): { readonly share: number; readonly isAllowed: boolean } {
  const own = (key: string): number | null => {
    const cell = cells[key];
    return typeof cell === 'number' ? cell : cell === null || like === null ? null : numberOf(schedule, 'supplies', like, key);
  };
  const { rated, curve, voltage, target, pulseFactor } = breaker;
  const [efficiency, powerFactor, inrush] = [own('efficiency'), own('inputPowerFactor'), own('inputInrush')];
  const units = own('units') ?? 1;
  const most = own('maxOnB16') ?? (inrush === null ? ALLOWED.maxOnB16 : null);
  // Of redundant units one is a spare: the others carry the load, and all of them start.
  const running = inputCurrent(
    own('voltage') ?? 24, own('rated')!, efficiency ?? ALLOWED.efficiency, voltage,
    powerFactor ?? ALLOWED.inputPowerFactor
  ) ?? Infinity;
  const surge = startSurge(
    units, inrush === null ? null : units * inrush, running, most, rated, curve, pulseFactor
  ) ?? Infinity;
  return {
    share: Math.max(running / (rated * target), (running + surge) / inrushLimit(rated, curve, pulseFactor)),
    isAllowed: efficiency === null || powerFactor === null || (inrush === null && own('maxOnB16') === null),
  };
}

/**
 * The mains feeds that sized supplies need, by panel: each breaker carries its supplies at full load up to its target
 * and stands the start of all of them at power return. They are like the last feed of the schedule whose breaker is
 * known.
 *
 * @param supplies those of a sizing
 */
export function* sizeFeeds(
  schedule: SizedSchedule, supplies: readonly SizedBin[], { stop }: SizingRules,
): Steps<{ rows: SizingRow[]; feeds: SizedFeed[] }> {
  const { words } = schedule;
  const breaker = breakerLike(schedule);
  const named = { voltage: breaker.voltage, curve: breaker.curve, rated: breaker.rated };
  const more = withRounding(1);
  const rows: SizingRow[] = [];
  const feeds: SizedFeed[] = [];
  for (const panel of new Set(supplies.map((each) => each.panel))) {
    const loads = supplies.flatMap((bin, supply) =>
      bin.panel === panel ? [{ supply, ...shareOf(schedule, bin, breaker) }] : []);
    const fitting = loads.filter(({ share }) => share <= more);
    const classes = classesOf(fitting.map(({ share }) => [share, 1]));
    const { fills } = (yield* leastBins(classes, { base: [], spare: [], more }, stop))!;
    const waiting = classes.sizes.map((size) => fitting.filter(({ share }) => share === size));
    feeds.push(...fills.map((fill): SizedFeed => ({
      panel, cells: { ...breaker.cells, ...(panel === null ? {} : { enclosure: panel }) },
      supplies: fill.flatMap((count, place) => waiting[place]!.splice(0, count).map(({ supply }) => supply)),
    })));
    const allowed = fitting.filter(({ isAllowed }) => isAllowed).length;
    if (fills.length > 0) {
      rows.push({
        panel, item: words.say('Mains feed {voltage} V, {curve} {rated}', named), quantity: fills.length,
        why: [
          words.say('The fewest found for {supplies, plural, one {one supply} other {# supplies}}: each breaker carries what is on it at full load up to its target of {target} %, and stands the start of all of that at power return.', {
            supplies: fitting.length, target: Math.round(breaker.target * 1000) / 10,
          }),
          ...allowed === 0 ? [] : [words.say('Of {supplies, plural, one {one of them} other {# of them}} the efficiency, the power factor or the start at the input is not known: {efficiency} %, {factor} and {most} units on a breaker B 16 are allowed for.', {
            supplies: allowed, efficiency: ALLOWED.efficiency * 100, factor: ALLOWED.inputPowerFactor,
            most: ALLOWED.maxOnB16,
          })],
          words.say('Feeds of relay outputs are not counted.'),
        ].join(' '),
      });
    }
    if (loads.length > fitting.length) {
      rows.push({
        panel, item: words.say('Mains feed {voltage} V, larger than {curve} {rated}', named),
        quantity: loads.length - fitting.length,
        why: words.say('Each of these supplies alone takes more at full load, or at its start, than such a breaker carries up to its target, or stands.'),
      });
    }
  }
  return { rows, feeds };
}
