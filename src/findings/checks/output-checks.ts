import { exceeds, isDirect, roomForMore } from '../../electrical/index.ts';
import type { SheetName } from '../../schedule/index.ts';
import { message, volts } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';
import { countNamed, excessIn, lacks, missingInput, notChecked, overLimit, overTarget, unknown, unknownTo } from './limit-checks.ts';

/** A load is taken to be made for a voltage that differs from its own by no more than this; as IEC 60038 has it. */
const TOLERANCE = 0.1;

const isOnDirect = (row: RowReader) => isDirect(row.value('kind') as string | null);

/** A spare output is entered with a power of 0. */
const isSpare = (row: RowReader) => row.number('power') === 0 && row.own('ratedCurrent') === null;

/** Highest voltage that the contact switches of this kind of load; `null` where that is not known. */
const mostVolts = (row: RowReader) => row.numberOf('contact', isOnDirect(row) ? 'maxDcVoltage' : 'maxVoltage');

/**
 * The most that its contact switches [V]: of direct current what its rail may give, a charged battery included, and not
 * the voltage that the load is made for.
 */
const switched = (row: RowReader) => isOnDirect(row) && row.own('rail') !== null
  ? row.numberOf('rail', 'highest') : row.number('voltage');

/** The input without which the current, or whether the contact is made for the voltage, is not known. */
function missingForCurrent(row: RowReader): string | undefined {
  if (lacks(row, 'ratedCurrent')) {
    if (lacks(row, 'power')) return 'power';
    if (isSpare(row)) return undefined;
    const factor = row.value('kind') !== 'motor' ? undefined : ['powerFactor', 'efficiency'].find((key) => lacks(row, key));
    if (factor !== undefined) return factor;
  }
  return isOnDirect(row) && row.own('rail') === null && lacks(row, 'voltage') ? 'voltage' : undefined;
}

/** How many rows wait for its current: its feed or rail, and its module where that has a limit. */
const waitingFor = (row: RowReader) => row.number('current') !== null ? 0
  : countNamed(row, 'feed', 'rail') + (row.valueOf('module', 'common') === null ? 0 : 1);

function currentUnknown(rule: string, key: string, said: string): Check {
  return {
    rule, sheet: 'outputs', key, severity: 'incomplete', inStatus: true,
    find: (row) => missingForCurrent(row) === key ? unknownTo(waitingFor(row), row, said) : undefined,
  };
}

/** Finds a load whose voltage is not that of the rail or the feed behind its contact. */
function voltageDiffers(key: 'rail' | 'feed', of: SheetName, said: string): Check {
  return {
    rule: `output-voltage-not-of-${key}`, sheet: 'outputs', key: 'voltage', severity: 'over', inStatus: true, needs: key,
    find: (row) => {
      if (key === 'feed' && (row.own('rail') !== null || isOnDirect(row))) return undefined;
      const [value, limit] = [row.number('voltage'), row.numberOf(key, 'voltage')];
      if (value === null || limit === null || !exceeds(Math.abs(value - limit), TOLERANCE * limit)) return undefined;
      const values = { value: volts(value), limit: volts(limit), tag: String(row.own(key)), sheet: row.titleOf(of) };
      return { value, limit, message: row.say(said, values) };
    },
  };
}

/** How many of several loads one contact bears, by its target and its inrush; empty where not known, or none. */
function loadsThatStay(row: RowReader): string {
  const [qty, current, rating, target] = ['qty', 'current', 'rating', 'target'].map((key) => row.number(key));
  if (!qty || !current || !rating || !target) return '';
  const [inrush, most] = [row.value('inrush'), row.valueOf('contact', 'inrush')];
  const [byCurrent, byInrush] = [roomForMore(rating * target, 0, current / qty), typeof inrush === 'number'
    && typeof most === 'number' ? roomForMore(most, 0, inrush) : null];
  const count = Math.min(byCurrent ?? Infinity, byInrush ?? Infinity);
  return count < 1 || count >= qty ? '' : row.say('It bears {count} of its {qty} loads.', { count, qty });
}

/** What relay outputs are held against. */
export const outputChecks: readonly Check[] = [
  overLimit({
    rule: 'output-over-rating', sheet: 'outputs', key: 'current', limit: (row) => row.number('rating'),
    message: message(
      '{name} switches {value} with a contact rated {limit} for {kind, select, resistive {resistive} lamp {lamp} motor {motor} coil {coil} dc {DC} other {DC coil}} loads: {excess} too much. Share the load over more outputs, use a higher-rated contact, or let it switch a contactor.'
    ),
    values: (row) => ({ kind: String(row.value('kind')) }),
    remedy: loadsThatStay,
  }),
  overLimit({
    // With no diversity its feed is over as well, and that is told there.
    rule: 'output-over-feed', sheet: 'outputs', key: 'current',
    limit: (row) => row.own('rail') !== null || (row.numberOf('feed', 'diversity') ?? 1) === 1 ? null
      : row.numberOf('feed', 'rated'),
    message: message(
      '{name} takes {value} by itself, and its feed is rated {limit}: {excess} too much, whatever the diversity. Put it on a larger feed, or share the load over more outputs and feeds.'
    ),
  }),
  overLimit({
    rule: 'output-over-inrush', sheet: 'outputs', key: 'inrushTotal', limit: (row) => row.numberOf('contact', 'inrush'),
    message: message(
      '{name}: its inrush is {value} and the making capacity of its contact {limit}: {excess} too much. Share the load over more outputs, or limit the inrush.'
    ),
    remedy: loadsThatStay,
  }),
  overLimit({
    rule: 'output-over-voltage', sheet: 'outputs', key: 'voltage', value: switched,
    limit: (row) => row.value('kind') === null ? null : mostVolts(row),
    message: message(
      '{name} switches {value} and its contact may switch {limit} of such a load: {excess} too much. Use a contact for that voltage, or let it switch a contactor.'
    ),
    write: excessIn(volts),
  }),
  voltageDiffers('rail', 'supplies', message(
    '{name} switches a load of {value} and rail {tag} gives {limit}, more than 10 % apart. Choose a rail of its voltage, or correct the voltage.'
  )),
  voltageDiffers('feed', 'feeds', message(
    '{name} switches a load of {value} and feed {tag} gives {limit}, more than 10 % apart. Choose a feed of its voltage, the rail of a load on direct current, or correct the voltage.'
  )),
  {
    rule: 'output-dc-on-feed', sheet: 'outputs', key: 'feed', severity: 'over', inStatus: true, needs: 'feed',
    find: (row) => !isOnDirect(row) ? undefined : {
      value: row.own('feed'), limit: null,
      message: row.say(
        '{name} switches a load on direct current and feed {feed} gives alternating current. Choose its rail in place of the feed, or correct the kind.',
        { feed: String(row.own('feed')) }
      ),
    },
  },
  {
    rule: 'output-ac-on-rail', sheet: 'outputs', key: 'kind', severity: 'incomplete', inStatus: true, needs: 'rail',
    find: (row) => row.value('kind') === null || isOnDirect(row) ? undefined : {
      value: null, limit: null,
      message: row.say(
        '{name}: rail {rail} gives direct current, and a contact has other ratings for it, so whether it bears the load is not known. Choose DC or DC coil as its kind, or its feed in place of the rail.',
        { rail: String(row.own('rail')) }
      ),
    },
  },
  overTarget({
    rule: 'output-over-target', sheet: 'outputs', current: 'current', rating: 'rating',
    message: message(
      '{name} is loaded to {loading} of {rating}, above its target of {target} by {excess}: share the load over more outputs, or use a higher-rated contact.'
    ),
    remedy: loadsThatStay,
  }),
  missingInput(
    'output-contact-missing', 'outputs', 'contact',
    message('{name} has no contact entered, so its rating is not known. Choose one of the contacts.')
  ),
  missingInput(
    'output-kind-missing', 'outputs', 'kind',
    message(
      '{name} has no kind of load entered, and a contact is rated for each{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Choose resistive, lamp, motor, coil, DC or DC coil.'
    ), undefined, waitingFor
  ),
  currentUnknown('output-power-missing', 'power', message(
    '{name} has no power entered, so its current is not known{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Enter the power of one load in W; 0 for a spare output.'
  )),
  currentUnknown('output-power-factor-missing', 'powerFactor', message(
    '{name} switches a motor, and its current is not known without its power factor and its efficiency{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Enter both, or its rated current from the plate.'
  )),
  currentUnknown('output-efficiency-missing', 'efficiency', message(
    '{name} switches a motor, and its current is not known without its efficiency{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Enter it, 1 where its plate says what it takes in, or its rated current from the plate.'
  )),
  currentUnknown('output-voltage-missing', 'voltage', message(
    '{name} switches a load on direct current of unknown voltage{waiting, plural, =0 {} one {, and # row waits for it} other {, and # rows wait for it}}. Choose the rail that feeds it, or enter its voltage in V.'
  )),
  {
    rule: 'output-inrush-missing', sheet: 'outputs', key: 'inrush', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const kind = row.value('kind');
      if (row.own('inrush') !== null || isSpare(row) || (kind !== 'lamp' && kind !== 'motor')) return undefined;
      return unknown(row, message(
        '{name} has no inrush entered, and {kind, select, lamp {lamps take} other {motors take}} many times their current at switching on: whether the making capacity of the contact covers that is not known. Enter the peak current of one load in A.'
      ), { kind });
    },
  },
  {
    rule: 'output-limit-unknown', sheet: 'outputs', key: 'rating', severity: 'incomplete', inStatus: true, elsewhere: true,
    find: (row) => {
      if (row.own('contact') === null || row.own('kind') === null) return undefined;
      const isMade = row.own('inrush') === null || row.number('inrushHeadroom') !== null;
      if (row.number('rating') !== null && mostVolts(row) !== null && isMade) return undefined;
      return unknown(row, message(
        '{name}: what the contact {contact} bears of this load is not wholly known. Complete it on the sheet {sheet}.'
      ), { contact: String(row.own('contact')), sheet: row.titleOf('contacts') });
    },
  },
  {
    rule: 'output-current-unknown', sheet: 'outputs', key: 'current', severity: 'incomplete', inStatus: true,
    elsewhere: true,
    find: (row) => {
      if (missingForCurrent(row) !== undefined || row.value('kind') === null || isSpare(row)) return undefined;
      return row.number('current') !== null && switched(row) !== null ? undefined
        : unknown(row, message('{name}: its current or its voltage is not known. Complete what they follow from.'));
    },
  },
  notChecked(
    'output-feed-not-checked', 'outputs', 'feed',
    message('{name} has no feed entered: its current counts in none. Choose the feed behind the contact, or the rail.'),
    (row) => !isSpare(row) && row.own('rail') === null
  ),
];
