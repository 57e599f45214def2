import { exceeds, outputLimit, tripMultiple, type WayKind } from '../../electrical/index.ts';
import { amps, degrees, message, roundedDown, roundedUp, type MessageValues } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { COLLAPSED } from '../collapsed.ts';
import { MISPLACED } from '../misplaced.ts';
import { ON_ITS_FUSE } from '../on-fuse.ts';
import { MIXED_PURPOSES } from '../rail-purposes.ts';
import type { RowReader } from '../row-reader.ts';
import { BEHIND_IT, ELECTRONIC_BEHIND_IT, FED_BY_IT } from '../waiting.ts';
import { inItsCase, WORST_IN } from '../worst-in.ts';
import { devicesOverGiven } from './devices-over-given.ts';
import {
  lacks, livesOnDiversity, missingInput, notChecked, overLimit, overTarget, partialTotal, unknown, waitsFor,
} from './limit-checks.ts';
import { startChecks } from './start-checks.ts';
import { actingFuse, fuseRemedy, supplyRemedy } from './supply-remedy.ts';
import { warmthChecks } from './warmth-checks.ts';

/** Whether its feed has a breaker that its start is held against, where its maker says nothing of it. */
const isStartAsked = (row: RowReader) => row.valueOf('feed', 'curve') !== null && row.value('maxOnB16') === null;

/** Finds an input that is asked for where a supply has a feed. */
function missingWithFeed(rule: string, key: string, said: string, when?: (row: RowReader) => boolean): Check {
  return {
    rule, sheet: 'supplies', key, severity: 'incomplete', inStatus: true, needs: 'feed',
    find: (row) => !lacks(row, key) || when?.(row) === false ? undefined
      : unknown(row, said, { feed: String(row.own('feed')) }),
  };
}

/** What the units that count give before they limit [A]. */
function mostGiven(row: RowReader): number | null {
  const [rated, units, peak] = [row.number('rated'), row.number('units'), row.number('peak')];
  if (rated === null || units === null || peak === null) return null;
  return outputLimit(rated, row.value('redundant') === true ? units - 1 : units, peak);
}

/** Whether nothing may be used of it, which is the cause of all else that is wrong with it. */
const givesNothing = (row: RowReader) => row.number('usable') === 0;

/** What may be used of it and its fuse [A], where a current is beyond both: one cause, and told once. */
function beyondBoth(row: RowReader, key: 'demand' | 'connected'): readonly [number, number] | undefined {
  const [value, usable, fuse] = [row.value(key), row.value('usable'), row.value('fuse')];
  if (typeof value !== 'number' || typeof usable !== 'number' || typeof fuse !== 'number' || usable === 0) return undefined;
  const demand = row.value('demand');
  // Beyond what the demand passes already, everything at once says nothing more.
  const isBeyond = (limit: number) => exceeds(value, limit) && (key === 'demand' || !exceeds(Number(demand), limit));
  return isBeyond(usable) && isBeyond(fuse) ? [usable, fuse] : undefined;
}

/** Which of several sentences is said: the second where a current is beyond the fuse too, which it names. */
const ofBoth = (key: 'demand' | 'connected', one: string, both: string) => ({
  message: (row: RowReader) => beyondBoth(row, key) === undefined ? one : both,
  values: (row: RowReader): MessageValues => {
    const [passed, value] = [beyondBoth(row, key), Number(row.value(key))];
    if (passed === undefined) return {};
    const [usable, fuse] = passed.map((limit) => roundedDown(amps(limit, value)));
    return { usable: usable!, fuse: fuse! };
  },
});

/** What a larger supply puts right: where the fuse is passed too, that is said already. */
const largerSupply = (key: 'demand' | 'connected') => (row: RowReader) =>
  beyondBoth(row, key) === undefined ? supplyRemedy(row) : '';

/** What supplies are held against. */
export const supplyChecks: readonly Check[] = [
  overLimit({
    rule: 'supply-over-usable', sheet: 'supplies', key: 'demand',
    limit: (row) => givesNothing(row) ? null : Math.min(...beyondBoth(row, 'demand') ?? [row.number('usable') ?? NaN]),
    ...ofBoth('demand', message(
      '{name}: demand {value} exceeds the usable {limit} by {excess}. Move devices to another rail, lower the diversity, or fit a larger supply.'
    ), message(
      '{name}: demand {value} exceeds the lower of the usable {usable} and its fuse of {fuse} by {excess}. Move devices to another rail, or lower the diversity; a larger supply needs a larger fuse too.'
    )),
    worst: WORST_IN.demand.supplies, remedy: largerSupply('demand'),
  }),
  {
    rule: 'supply-gives-nothing', sheet: 'supplies', key: 'usable', severity: 'over', inStatus: true,
    find: (row) => {
      if (!givesNothing(row)) return undefined;
      const [top, full, off] = [row.numberOf('enclosure', 'top'), row.number('fullUpTo'), row.number('offAt')];
      // That it switches itself off there is told, and says more.
      if (top !== null && off !== null && !exceeds(off, top)) return undefined;
      return {
        value: 0, limit: null,
        message: row.value('redundant') === true && row.number('units') === 1
          ? row.say('{name} is redundant and has one unit, which is the spare: nothing is left to carry the load. Fit one more unit, or enter how many there are with the spare.')
          : inItsCase(row.say('{name} stands in {top} at the top of its enclosure, gives its full current up to {full}, and so gives nothing there. Use a larger enclosure, move supplies or losses out of it, or cool it.', {
            top: degrees(top ?? NaN), full: roundedDown(degrees(full ?? NaN)),
          }), row, WORST_IN.warmth.supplies),
      };
    },
  },
  ...devicesOverGiven({
    rule: 'supply-devices-over-usable', sheet: 'supplies', by: 'rail', given: 'usable', asked: 'demand',
    message: message(
      '{name} has {most} usable, and single devices of {rows} rows on it draw more than that, up to {draw}: no diversity helps. Put them on a larger supply.'
    ),
  }),
  waitsFor('supply-rows-misplaced', 'supplies', 'demand', message(
    '{name}: what is on it is entered on another rail too, so its demand is not sure.'
  ), (row) => row.fact(MISPLACED.supplies) !== undefined),
  overLimit({
    rule: 'supply-over-fuse', sheet: 'supplies', key: 'demand',
    limit: (row) => beyondBoth(row, 'demand') === undefined ? row.number('fuse') : null,
    message: message(
      '{name}: demand {value} exceeds its fuse of {limit} by {excess}. Share the load over several fused ways, or fit a larger fuse if the conductors carry it.'
    ),
    worst: WORST_IN.demand.supplies, remedy: fuseRemedy,
  }),
  overTarget({
    rule: 'supply-over-target', sheet: 'supplies', current: 'demand', rating: 'usable',
    message: message(
      '{name} is loaded to {loading} of {rating}, above its target of {target} by {excess}: move that much to another rail, or fit a larger supply.'
    ),
    worst: WORST_IN.demand.supplies, remedy: supplyRemedy,
  }),
  livesOnDiversity({
    rule: 'supply-lives-on-diversity-usable', sheet: 'supplies',
    limit: (row) => Math.min(...beyondBoth(row, 'connected') ?? [row.number('usable') ?? NaN]),
    ...ofBoth('connected', message(
      '{name} has {limit} usable, and everything on it at the same time takes {value}: it lives on diversity, and where all of it starts together, as in a wind alarm or at power return, it shuts down. Move devices to another rail, or fit a larger supply.'
    ), message(
      '{name} has {usable} usable and a fuse of {fuse}, and everything on it at the same time takes {value}: it lives on diversity, and where all of it starts together, as in a wind alarm or at power return, it shuts down or the fuse opens. Move devices to another rail; a larger supply needs a larger fuse too.'
    )),
    remedy: largerSupply('connected'),
  }),
  livesOnDiversity({
    rule: 'supply-lives-on-diversity-fuse', sheet: 'supplies',
    limit: (row) => beyondBoth(row, 'connected') === undefined ? row.number('fuse') : null,
    message: message(
      '{name} has a fuse of {limit}, and everything on it at the same time takes {value}: it lives on diversity, and where all of it starts together, as in a wind alarm or at power return, the fuse opens. Share the load over several fused ways, or fit a larger fuse if the conductors carry it.'
    ),
    remedy: fuseRemedy,
  }),
  {
    rule: 'supply-series-drop-missing', sheet: 'supplies', key: 'seriesDrop', severity: 'incomplete', inStatus: true,
    find: (row) => {
      if (row.value('redundant') !== true || !lacks(row, 'seriesDrop')) return undefined;
      const waiting = row.waiting(FED_BY_IT);
      return {
        ...unknown(row, message(
          '{name} is redundant: what decouples its units drops some voltage, and {waiting, plural, =0 {that is not known} one {# run waits for it} other {# runs wait for it}}. Enter the drop, about 0.5 V for a diode; 0 if there is none.'
        ), { waiting }), waiting,
      };
    },
  },
  {
    rule: 'supply-fuse-kind-missing', sheet: 'supplies', key: 'fuseKind', severity: 'incomplete',
    find: (row) => {
      if (row.value('fuseKind') !== null) return undefined;
      const waiting = row.fact(ON_ITS_FUSE) ?? 0;
      return waiting === 0 ? undefined : {
        ...unknown(row, message(
          '{name}: the kind of its fuse is not known, and {waiting, plural, one {# run without a way waits} other {# runs without a way wait}} for it, as when it acts decides what it protects. Enter it.'
        ), { waiting }), waiting,
      };
    },
  },
  {
    rule: 'supply-fuse-never-acts', sheet: 'supplies', key: 'fuse', severity: 'near', inStatus: true,
    find: (row) => {
      const [fuse, most] = [row.number('fuse'), mostGiven(row)];
      if (fuse === null || most === null || givesNothing(row) || !exceeds(fuse, most)) return undefined;
      return {
        value: fuse, limit: most,
        message: row.sentence(() => [
          row.say('{name} has a fuse of {fuse}, and the supply gives {most} at most before it limits: the fuse may never act.', {
            fuse: amps(fuse, most), most: roundedDown(amps(most, fuse)),
          }),
          actingFuse(row, most),
        ].join(' ')),
      };
    },
  },
  {
    rule: 'supply-trips-no-fuse', sheet: 'supplies', key: 'fuse', severity: 'near', inStatus: true,
    find: (row) => {
      const [fuse, usable, peak] = [row.number('fuse'), row.number('usable'), row.number('peak')];
      const [trip, most] = [tripMultiple(row.value('fuseKind') as WayKind | null), mostGiven(row)];
      const waiting = row.fact(ON_ITS_FUSE) ?? 0;
      if (fuse === null || usable === null || peak === null || trip === null || waiting === 0) return undefined;
      const [needed, given] = [fuse * trip, usable * peak];
      // A fuse that never acts at all is told of as that.
      if (givesNothing(row) || !exceeds(needed, given) || (most !== null && exceeds(fuse, most))) return undefined;
      return {
        value: given, limit: needed, waiting,
        message: row.say(
          '{name}: its fuse of {fuse} needs {needed} ({trip} × its rating) to trip instantaneously, and the supply gives {given}: a short circuit on {waiting, plural, one {the run} other {any of the # runs}} without a way that it protects makes all of the rail go dark. Give {waiting, plural, one {it a way} other {each a way}} that acts sooner, such as an electronic one, or fit a supply that gives more for a moment.',
          {
            fuse: amps(fuse), needed: roundedUp(amps(needed, given)), trip, waiting,
            given: roundedDown(amps(given, needed)),
          }
        ),
      };
    },
  },
  {
    rule: 'supply-trips-no-way', sheet: 'supplies', key: 'leastTrip', severity: 'near', inStatus: true,
    find: (row) => {
      const [least, usable, peak] = [row.number('leastTrip'), row.number('usable'), row.number('peak')];
      if (least === null || usable === null || peak === null || !exceeds(least, usable * peak)) return undefined;
      if (givesNothing(row)) return undefined;
      const [most, waiting, electronic] = [usable * peak, row.waiting(BEHIND_IT), row.waiting(ELECTRONIC_BEHIND_IT)];
      const said = row.say(
        '{name}: a short circuit on {waiting, plural, one {its way} other {any of its # ways}} does not trip it: {least} would be needed and the supply gives {most}, so it folds back and all of the rail goes dark.',
        { waiting, least: roundedUp(amps(least, most)), most: roundedDown(amps(most, least)) }
      );
      const remedy = waiting === electronic
        ? row.say('Use ways of a lower setting, or a supply that gives more for a moment.')
        : row.say('Use lower-rated or faster ways, such as electronic ones, or a supply that gives more for a moment.');
      return { value: least, limit: most, waiting, message: `${said} ${remedy}` };
    },
  },
  missingInput(
    'supply-rating-missing', 'supplies', 'rated',
    message('{name} has no rated current, so nothing can be said of its loading. Enter the rating of one unit in A.')
  ),
  partialTotal(
    'supply-demand-partial', 'supplies', 'demand',
    message(
      '{name} carries at least {value}: {missing, plural, one {# row on it is not wholly known. Complete it} other {# rows on it are not wholly known. Complete them}} to know the rest.'
    ),
    amps, COLLAPSED.supplies
  ),
  notChecked(
    'supply-fuse-not-checked', 'supplies', 'fuse',
    message('{name} has no fuse entered: its demand is not checked against one. Enter its rating in A.')
  ),
  missingWithFeed('supply-power-factor-missing', 'inputPowerFactor', message(
    '{name} has no power factor at its input entered, so what it takes from feed {feed} is not known. Enter it, as its data sheet has it at full load.'
  )),
  missingWithFeed('supply-input-inrush-missing', 'inputInrush', message(
    '{name} has no inrush at its input entered, so whether the breaker of feed {feed} stands the start of its supplies is not known. Enter the peak current of one unit, or how many of them a breaker B 16 stands.'
  ), isStartAsked),
  {
    rule: 'supply-input-unknown', sheet: 'supplies', key: 'inputCurrent', severity: 'incomplete', inStatus: true,
    elsewhere: true, needs: 'feed',
    find: (row) => {
      const isStartKnown = row.valueOf('feed', 'curve') === null || row.number('surge') !== null;
      return row.number('inputCurrent') !== null && isStartKnown ? undefined
        : unknown(row, message('{name}: what it takes from its feed is not known. Complete what that follows from.'));
    },
  },
  {
    rule: 'supply-purposes-mixed', sheet: 'supplies', key: 'purpose', severity: 'note',
    find: (row) => {
      const purposes = row.fact(MIXED_PURPOSES);
      if (purposes === undefined) return undefined;
      const names = purposes.map((purpose) => row.words.text(purpose));
      return {
        value: purposes.join(', '), limit: null,
        message: row.say('{name} serves {purposes} together. Common practice is a separate supply for each: move the devices of the other purposes.', {
          purposes: row.say('{names} and {last}', { names: names.slice(0, -1).join(', '), last: names.at(-1)! }),
        }),
      };
    },
  },
  ...warmthChecks,
  ...startChecks,
];
