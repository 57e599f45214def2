import { discriminates, exceeds, leastTripMultiple, type ProtectionDevice, type WayKind } from '../../electrical/index.ts';
import { amps, message, roundedDown, roundedUp } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { COLLAPSED } from '../collapsed.ts';
import { MISPLACED } from '../misplaced.ts';
import type { RowReader } from '../row-reader.ts';
import { START_UPS } from '../start-up.ts';
import { UNSURE } from '../unsure-types.ts';
import { inItsCase, WORST_IN } from '../worst-in.ts';
import {
  isTogetherKnown, livesOnDiversity, missingInput, overLimit, overTarget, partialTotal, unknown, waitsFor,
} from './limit-checks.ts';
import { startRemedy } from './start-checks.ts';
import { wayRemedy } from './way-remedy.ts';
import { railAbsent } from './rail-checks.ts';
import { widthMissing } from './width-checks.ts';

/** What makes the way act at once [A]; `null` when that is not known. */
function needed(row: RowReader): number | null {
  const [rated, trip] = [row.number('rated'), row.number('trip')];
  return rated === null || trip === null ? null : rated * trip;
}

/** Whether the supply trips none of its ways, however little else hangs on it: that is told once, there. */
function isSupplyTooWeak(row: RowReader): boolean {
  const [least, usable] = [row.numberOf('rail', 'leastTrip'), row.numberOf('rail', 'usable')];
  const peak = row.numberOf('rail', 'peak');
  return least !== null && usable !== null && peak !== null && exceeds(least, usable * peak);
}

/** Whether the current that the supply has left for a short circuit makes the way act. */
function mayNotAct(row: RowReader): { available: number; limit: number } | undefined {
  const [available, limit] = [row.number('available'), needed(row)];
  return available === null || limit === null || !exceeds(limit, available) ? undefined : { available, limit };
}

/**
 * The fuse or breaker of the supply with what it is asked: `null` where no rule shows that it stays whole; and whether
 * that hangs on how much the supply has for a short circuit.
 */
function besideFuse(
  row: RowReader,
): { fuse: ProtectionDevice; way: ProtectionDevice; shown: boolean | null; byFault: boolean } | undefined {
  const [fuse, fuseKind] = [row.numberOf('rail', 'fuse'), row.valueOf('rail', 'fuseKind')];
  const [rated, kind] = [row.number('rated'), row.value('kind')];
  if (fuse === null || fuseKind === null || rated === null || kind === null) return undefined;
  const upstream = { kind: fuseKind as WayKind, ratedAmps: fuse };
  const way = { kind: kind as WayKind, ratedAmps: rated };
  // The more there is for a short circuit, the sooner the breaker of the supply acts too.
  const shown = discriminates(upstream, way, row.most('available'));
  return { fuse: upstream, way, shown, byFault: discriminates(upstream, way, 0) !== shown };
}

const START_REMEDIES = {
  later: message('Let {largest} start later than the others, share its runs over more ways, or set it higher if their cables carry it.'),
  oneByOne: message('Let its devices start one after the other, share its runs over more ways, or set it higher if their cables carry it.'),
  none: message('Set it to {start} or more if its cables carry it; no order of starting helps.'),
};

/** What ways are held against. */
export const wayChecks: readonly Check[] = [
  overLimit({
    rule: 'way-over-rated', sheet: 'ways', key: 'demand', limit: (row) => row.number('rated'),
    message: message(
      '{name}: demand {value} exceeds the rating {limit} by {excess}. Move runs to another way, or fit a larger one if their cables carry it.'
    ),
    worst: WORST_IN.demand.ways, remedy: wayRemedy,
  }),
  overLimit({
    // Where all of it together is too much, that says it.
    rule: 'way-device-over-rated', sheet: 'ways', key: 'largest',
    limit: (row) => exceeds(row.number('demand') ?? 0, row.number('rated') ?? Infinity) ? null : row.number('rated'),
    message: message(
      '{name} feeds one device of {value} and is rated {limit}: {excess} too much, whatever the diversity. Put that device on a larger way.'
    ),
  }),
  overTarget({
    rule: 'way-over-target', sheet: 'ways', current: 'demand', rating: 'rated',
    message: message(
      '{name} is loaded to {loading} of {rating}, above its target of {target} by {excess}: move runs to another way, or fit a larger one if their cables carry it.'
    ),
    worst: WORST_IN.demand.ways, remedy: wayRemedy,
  }),
  livesOnDiversity({
    rule: 'way-lives-on-diversity', sheet: 'ways', limit: (row) => row.number('rated'),
    message: message(
      '{name} is rated {limit}, and everything on it at the same time takes {value}: it lives on diversity, and where all of it starts together, as at power return or in a wind alarm, it opens. Share its runs over more ways, or fit a larger one if their cables carry it.'
    ),
    remedy: wayRemedy,
  }),
  {
    rule: 'way-over-start', sheet: 'ways', key: 'start', severity: 'near', inStatus: true,
    find: (row) => {
      const [value, limit, connected] = [row.number('start'), row.number('rated'), row.number('connected')];
      if (value === null || limit === null || connected === null || row.value('kind') !== 'electronic') return undefined;
      if (!exceeds(value, limit) || exceeds(row.number('demand') ?? 0, limit)) return undefined;
      // That it lives on diversity says as much. Where cases say what comes together, they say nothing of a start.
      if (exceeds(connected, limit) && !(isTogetherKnown(row) && exceeds(value, connected))) return undefined;
      const start = row.fact(START_UPS.ways);
      return {
        value, limit, message: row.sentence(() => [
          row.say(
            '{name} is rated {limit}, and its devices ask for {value} when all of them start at the same time, as after a failure of the mains: an electronic way switches off above its rating and may not come up.',
            { value: amps(value, limit), limit: roundedDown(amps(limit, value)) }
          ), ...start === undefined ? [] : [startRemedy(row, start, limit, START_REMEDIES)],
        ].join(' ')),
      };
    },
  },
  {
    rule: 'way-may-not-act', sheet: 'ways', key: 'available', severity: 'near', inStatus: true,
    find: (row) => {
      const found = isSupplyTooWeak(row) ? undefined : mayNotAct(row);
      if (found === undefined) return undefined;
      const { available, limit } = found;
      const values = {
        available: roundedDown(amps(available, limit)), limit: roundedUp(amps(limit, available)), trip: row.number('trip')!,
      };
      return {
        value: available, limit,
        message: inItsCase(available === 0 ? row.say(
          '{name} needs {limit} to trip instantaneously, {trip} × its rating, and the other loads of the supply leave nothing for a short circuit on it: no way of any kind would act, and all of the rail goes dark. Move loads to another rail, or fit a supply that gives more.', values
        ) : row.say(
          '{name} needs {limit} to trip instantaneously, {trip} × its rating, and beside its other loads the supply has {available} for a short circuit on it: it may never act, and all of the rail goes dark. Use a lower-rated or faster way, move loads to another rail, or fit a supply that gives more.',
          values
        ), row, WORST_IN.available.ways),
      };
    },
  },
  {
    rule: 'way-supply-too-weak', sheet: 'ways', key: 'available', severity: 'near', inStatus: true, elsewhere: true,
    find: (row) => {
      const found = isSupplyTooWeak(row) ? mayNotAct(row) : undefined;
      return found && {
        value: found.available, limit: found.limit,
        message: row.say('{name}: a short circuit on it does not trip it, as its supply trips none of its ways.'),
      };
    },
  },
  {
    rule: 'way-not-discriminating', sheet: 'ways', key: 'rated', severity: 'near', inStatus: true,
    find: (row) => {
      const found = besideFuse(row);
      if (found?.shown !== false) return undefined;
      const { fuse, way, byFault } = found;
      return {
        value: way.ratedAmps, limit: fuse.ratedAmps,
        message: inItsCase(row.say(
          '{name}, {kind} {rated}, does not discriminate against the fuse of its supply, {fuseKind} {fuse}: a short circuit on it may open both, and all of the rail goes dark. Use a lower-rated way, or a larger fuse if what it protects carries it.',
          {
            kind: row.words.text(way.kind), rated: amps(way.ratedAmps), fuseKind: row.words.text(fuse.kind),
            fuse: amps(fuse.ratedAmps),
          }
        ), row, byFault ? WORST_IN.mostAvailable : undefined),
      };
    },
  },
  {
    rule: 'way-trip-below-kind', sheet: 'ways', key: 'trip', severity: 'near', inStatus: true, needs: 'trip',
    find: (row) => {
      const [kind, trip] = [row.value('kind') as WayKind | null, row.number('trip')];
      const least = kind === null ? null : leastTripMultiple(kind);
      if (kind === null || trip === null || least === null || !exceeds(least, trip)) return undefined;
      return {
        value: trip, limit: least,
        message: row.say('{name}: its trip multiple is entered as {trip}, and no breaker {kind} trips instantaneously below {least} on direct current: what is too little for it counts as enough. Correct it, or empty it for that of its kind.', {
          trip, kind: row.words.text(kind), least,
        }),
      };
    },
  },
  {
    rule: 'way-discrimination-not-shown', sheet: 'ways', key: 'rated', severity: 'note',
    find: (row) => {
      const found = besideFuse(row);
      if (found?.shown !== null) return undefined;
      return unknown(row, message(
        '{name}: whether {kind} behind {fuseKind} leaves the fuse of the supply whole is shown by no common rule. See the tables of their makers.'
      ), { kind: row.words.text(found.way.kind), fuseKind: row.words.text(found.fuse.kind) });
    },
  },
  {
    // One of its own kind would not do, and another may not either.
    rule: 'way-fuse-kind-unknown', sheet: 'ways', key: 'rated', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const [fuse, kind, rated] = [row.numberOf('rail', 'fuse'), row.value('kind') as WayKind | null, row.number('rated')];
      if (fuse === null || kind === null || rated === null || row.valueOf('rail', 'fuseKind') !== null) return undefined;
      if (discriminates({ kind, ratedAmps: fuse }, { kind, ratedAmps: rated }, null) !== false) return undefined;
      return {
        value: rated, limit: fuse,
        message: row.say('{name}, {kind} {rated}, stands behind a fuse of {fuse} of which the kind is not known: a short circuit on it may open both, and all of the rail goes dark. Enter the kind of that fuse, or use a lower-rated way.', {
          kind: row.words.text(kind), rated: amps(rated), fuse: amps(fuse),
        }),
      };
    },
  },
  waitsFor('way-fuse-unknown', 'ways', 'rated', message(
    '{name}: the fuse of its supply is not known, so whether that stays whole is not checked.'
  ), (row) => row.isUnreadable('rail', 'fuse')),
  waitsFor('way-start-unknown', 'ways', 'start', message(
    '{name}: what some of its devices draw when they start is not known, so whether it comes up is not checked.'
  ), (row) => row.value('kind') === 'electronic' && row.fact(UNSURE.inrush) !== undefined),
  missingInput(
    'way-rail-missing', 'ways', 'rail',
    message('{name} has no rail, so what it is fed from is not known. Choose the rail behind it.')
  ),
  missingInput(
    'way-rating-missing', 'ways', 'rated',
    message('{name} has no rating, so nothing can be said of its loading. Enter it in A.')
  ),
  {
    rule: 'way-kind-missing', sheet: 'ways', key: 'kind', severity: 'incomplete', inStatus: true,
    find: (row) => row.value('kind') !== null || (row.number('trip') !== null && row.number('k2') !== null) ? undefined
      : unknown(row, message(
        '{name} has no kind, so when it acts is not known. Choose it, or enter both its trip multiple and its operating multiple.'
      )),
  },
  {
    rule: 'way-available-unknown', sheet: 'ways', key: 'available', severity: 'incomplete', inStatus: true,
    elsewhere: true,
    find: (row) => row.value('rail') === null || row.number('available') !== null ? undefined
      : unknown(row, message(
        '{name}: what its supply has for a short circuit on it is not known. Complete the supply on the sheet {sheet}.'
      ), { sheet: row.titleOf('supplies') }),
  },
  partialTotal(
    'way-demand-partial', 'ways', 'demand',
    message(
      '{name} carries at least {value}: {missing, plural, one {# run on it is not wholly known. Complete it} other {# runs on it are not wholly known. Complete them}} to know the rest.'
    ),
    amps, COLLAPSED.ways
  ),
  waitsFor('way-rows-misplaced', 'ways', 'demand', message(
    '{name}: what is on it is entered on another rail too, so its demand is not sure.'
  ), (row) => row.fact(MISPLACED.ways) !== undefined),
  railAbsent('way-rail-absent', 'ways'),
  widthMissing('way-width-missing', 'ways', message(
    '{name}: its width is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm, 0 for a channel in the housing of another.'
  )),
];
