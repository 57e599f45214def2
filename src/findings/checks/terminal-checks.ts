import { exceeds } from '../../electrical/index.ts';
import {
  inputColumns, isTickedOtherwise, recordOf, SCHEMA, ticksOf, type Cells, type KeyedTick, type SheetName,
} from '../../schedule/index.ts';
import {
  bridgeCurrents, leftWithout, terminalFaults, type BridgeCurrent, type LeftOut, type LeftWithout, type TerminalFaults,
} from '../../terminals/index.ts';
import { amps, message, roundedDown, roundedUp, squareMillimetres, type MessageValues } from '../../words/index.ts';
import type { Check, Found } from '../check.ts';
import type { Gathering } from '../facts.ts';
import type { RowReader } from '../row-reader.ts';
import type { Severity } from '../finding.ts';
import { unknown } from './limit-checks.ts';
import { railAbsent } from './rail-checks.ts';
import { widthMissing } from './width-checks.ts';

/** What of other sheets says what terminals lead to. */
const LED_TO: readonly (readonly [SheetName, string])[] = [
  ['supplies', 'rail'], ['supplies', 'voltage'], ['supplies', 'enclosure'], ['supplies', 'feed'], ['ways', 'way'],
  ['ways', 'rail'], ['branches', 'branch'], ['modules', 'module'], ['outputs', 'output'], ['outputs', 'voltage'],
  ['outputs', 'kind'], ['outputs', 'module'], ['outputs', 'feed'], ['outputs', 'rail'], ['feeds', 'feed'],
  ['feeds', 'voltage'], ['runs', 'run'], ['runs', 'rail'], ['runs', 'way'], ['runs', 'secondWay'], ['runs', 'pairs'],
  ['runs', 'branch'], ['ways', 'enclosure'], ['branches', 'enclosure'], ['modules', 'enclosure'], ['modules', 'common'],
  ['feeds', 'enclosure'],
];
const OWN = inputColumns('terminals').map(({ key }) => ['terminals', key] as const);

const FAULTS: Gathering<TerminalFaults> = { sheet: 'terminals', reads: [...OWN, ...LED_TO], gather: terminalFaults };

const CURRENTS: Gathering<BridgeCurrent> = {
  sheet: 'terminals',
  reads: [
    ...OWN, ...LED_TO, ['runs', 'current'], ['outputs', 'current'], ['supplies', 'inputCurrent'],
    ['modules', 'current'],
  ],
  gather: bridgeCurrents,
};

/** What is said of a terminal, with its values. */
interface Said {
  readonly said: string;
  readonly values?: MessageValues;
}

/** A check that finds what is gathered about terminals beside others. */
function beside(
  rule: string, key: string, severity: Severity,
  find: (faults: TerminalFaults, row: RowReader) => Said | undefined,
): Check {
  return {
    rule, sheet: 'terminals', key, severity, inStatus: true,
    find: (row): Found | undefined => {
      const faults = row.fact(FAULTS);
      const found = faults === undefined ? undefined : find(faults, row);
      return found === undefined ? undefined : {
        value: row.own(key), limit: null, message: row.sentence(() => row.say<string>(found.said, { ...found.values })),
      };
    },
  };
}

const WIRED = message('{name} was ticked as wired when it was to join {before}, and it is to join {now} by now. See what is wired, and tick it anew.');
const CHECKED = message('{name} was ticked as checked when it was to join {before}, and it is to join {now} by now. Check it again, and tick it anew.');
const WIRED_SPARE = message('{name} is spare by now and was ticked as wired when it was to join {before}. Take its conductors out, then take the tick back.');
const CHECKED_SPARE = message('{name} is spare by now and was ticked as checked when it was to join {before}. See that it is free, then take the tick back.');

/** A tick that was made for another connection than the terminal has now counts for nothing. */
function tickedOtherwise(rule: string, tick: KeyedTick, said: string, spare: string): Check {
  return {
    rule, sheet: 'terminals', key: tick.key, severity: 'incomplete', inStatus: true, needs: tick.key,
    find: (row) => {
      const cells: Cells = Object.fromEntries([tick.key, tick.as, ...tick.of].map((key) => [key, row.own(key)]));
      if (!isTickedOtherwise(tick, cells)) return undefined;
      const isSpare = tick.of.every((key) => cells[key] === null);
      const values = { before: String(cells[tick.as]), now: recordOf(tick, cells) };
      return { value: true, limit: null, message: row.say<string>(isSpare ? spare : said, values) };
    },
  };
}

const [WIRED_TICK, CHECKED_TICK] = ticksOf('terminals') as [KeyedTick, KeyedTick];

/** A cable that is on no terminal where others of its panel are: whoever wires by the list would not find it. */
function withoutTerminals(sheet: LeftOut['sheet']): Check {
  const gathering: Gathering<LeftWithout> = {
    sheet, reads: [['terminals', 'outside'], ['terminals', 'core'], ['terminals', 'enclosure'], ...LED_TO],
    gather: (document, book) => leftWithout(document, book, sheet),
  };
  return {
    // Its own limits do not wait for it.
    rule: `${sheet}-without-terminals`, sheet, key: SCHEMA[sheet].tag, severity: 'note',
    find: (row): Found | undefined => {
      const left = row.fact(gathering);
      if (left === undefined) return undefined;
      const { cores, all } = left;
      return {
        value: cores.length, limit: null,
        message: row.sentence(() => row.say(
          '{name}: {missing, plural, one {# of its cores is} other {# of its cores are}} on no terminal ({cores}), and others of the panel are laid out: the wiring list does not have {missing, plural, one {it} other {them}}. Lay the terminals out; none is renumbered.',
          { missing: cores.length, cores: cores.length === all ? row.say('all of them') : list(cores) },
        )),
      };
    },
  };
}

/** Designations in a sentence, the first of them where there are many. */
const list = (texts: readonly string[]): string =>
  texts.length <= MOST_NAMED ? texts.join(', ') : `${texts.slice(0, MOST_NAMED).join(', ')}, …`;
const MOST_NAMED = 4;

/** What terminals are held against. */
export const terminalChecks: readonly Check[] = [
  beside('terminal-bridge-shorts', 'bridge', 'over', ({ shorts }, row) => shorts && {
    said: message('{name} is bridged with another potential, {others}: that shorts a supply, or brings mains into extra-low voltage. Take it out of the bridge {bridge}, or correct its potential.'),
    values: { others: list(shorts), bridge: String(row.own('bridge')) },
  }),
  beside('terminal-core-twice', 'core', 'over', ({ sameCore }, row) => sameCore && {
    said: message('{name} holds the core {core} of {cable}, which {others} holds too: one core has one end here. Correct one of them.'),
    values: { core: String(row.own('core')), cable: String(row.own('outside')), others: list(sameCore) },
  }),
  {
    rule: 'terminal-too-small', sheet: 'terminals', key: 'size', severity: 'over', inStatus: true, needs: 'size',
    find: (row) => {
      const [size, most] = [row.number('size'), row.number('maxSize')];
      if (size === null || most === null || !exceeds(size, most)) return undefined;
      return {
        value: size, limit: most,
        message: row.say('{name} takes conductors up to {most} and is to take one of {size}. Take a larger terminal.', {
          size: squareMillimetres(size, most), most: roundedDown(squareMillimetres(most, size)),
        }),
      };
    },
  },
  {
    rule: 'terminal-bridge-over', sheet: 'terminals', key: 'bridge', severity: 'over', inStatus: true, needs: 'bridge',
    find: (row) => {
      const current = row.fact(CURRENTS);
      if (current === undefined || !exceeds(current.amps, current.limit)) return undefined;
      return {
        value: current.amps, limit: current.limit,
        message: row.sentence(() => row.say('{name}: its bridge carries up to {value} where it is fed, and terminals of this size carry {limit}: {excess} too much. Take larger terminals, or feed the bridge at several places.', {
          value: amps(current.amps, current.limit), limit: roundedDown(amps(current.limit)),
          excess: roundedUp(amps(current.amps - current.limit, 0)),
        })),
      };
    },
  },
  {
    // What is not known of a run or an output is told there.
    rule: 'terminal-bridge-partial', sheet: 'terminals', key: 'bridge', severity: 'incomplete', inStatus: true,
    elsewhere: true, needs: 'bridge',
    find: (row) => (row.fact(CURRENTS)?.unknown ?? 0) === 0 ? undefined : unknown(row, message(
      '{name}: the current of what hangs on its bridge is not wholly known, and whether the bridge carries it waits for that.'
    )),
  },
  beside('terminal-apart', 'potential', 'near', ({ apartFrom }, row) => apartFrom === undefined ? undefined : {
    said: message('{name} has the potential {potential} like {other}, and is neither bridged nor wired with it. Enter its bridge, or where its inside conductor goes.'),
    values: { potential: String(row.own('potential')), other: apartFrom },
  }),
  beside('terminal-unfed', 'inside', 'near', ({ unfed }, row) => unfed && {
    said: message('{name}: nothing inside is wired to the potential {potential}, so its cables lead nowhere. Enter where its inside conductor goes.'),
    values: { potential: String(row.own('potential')) },
  }),
  beside('terminal-bridge-strips', 'bridge', 'near', ({ strips }, row) => strips && {
    said: message('{name}: its bridge {bridge} would have to span the strips {strips}. Bridge each strip by itself and join them with a conductor.'),
    values: { bridge: String(row.own('bridge')), strips: list(strips) },
  }),
  beside('terminal-crowded', 'inside', 'near', ({ crowded }) => crowded && {
    said: message('{name}: {conductors, plural, one {# conductor comes} other {# conductors come}} to {place}, where one is to be. Use a bridge, or another terminal.'),
    values: { ...crowded },
  }),
  beside('terminal-otherwise', 'potential', 'over', ({ otherwise }, row) => otherwise && {
    said: message('{name} has the potential {potential} and holds {end}, which has {meant} by the schedule: wired so, the two would be joined. Lay the terminals out anew, or correct what it holds.'),
    values: { ...otherwise, potential: String(row.own('potential')) },
  }),
  beside('terminal-beside', 'partition', 'near', ({ beside: other }) => other === undefined ? undefined : {
    said: message('{name} stands beside {other}, one on mains and one on extra-low voltage, without a partition between them (IEC 60364-4-41). Put a partition plate there, or keep their strips apart.'),
    values: { other },
  }),
  beside('terminal-inside-lost', 'inside', 'incomplete', ({ lost }, row) => lost !== 'inside' ? undefined : {
    said: message('{name}: no part or terminal is called {tag}, so where its inside conductor goes is not known. Correct it, or lay the terminals out anew.'),
    values: { tag: String(row.own('inside')) },
  }),
  beside('terminal-outside-lost', 'outside', 'incomplete', ({ lost }, row) => lost !== 'outside' ? undefined : {
    said: message('{name}: there is no run, output, branch or feed {tag}, so its cable is not known. Correct it, or lay the terminals out anew, which makes it spare.'),
    values: { tag: String(row.own('outside')) },
  }),
  ...(['inside', 'outside'] as const).map((end) =>
    beside(`terminal-${end}-doubtful`, end, 'incomplete', ({ doubtful }, row) => doubtful !== end ? undefined : {
      said: message('{name}: {tag} is the tag of rows on several sheets, and which is meant is not known. Give them different tags.'),
      values: { tag: String(row.own(end)) },
    })),
  {
    rule: 'terminal-potential-missing', sheet: 'terminals', key: 'potential', severity: 'incomplete', inStatus: true,
    find: (row) => row.own('potential') !== null || (row.own('inside') === null && row.own('outside') === null) ? undefined
      : unknown(row, message('{name} is wired and its potential is not entered, so what it may be bridged with is not known. Enter it, such as L1 L-.')),
  },
  {
    rule: 'terminal-strip-missing', sheet: 'terminals', key: 'strip', severity: 'incomplete', inStatus: true,
    find: (row) => row.own('strip') !== null || (row.own('inside') === null && row.own('outside') === null) ? undefined
      : unknown(row, message('{name} stands on no strip, so what it stands beside and what it may be bridged with is not known. Enter its strip.')),
  },
  {
    rule: 'terminal-core-missing', sheet: 'terminals', key: 'core', severity: 'incomplete', inStatus: true, needs: 'outside',
    find: (row) => row.own('outside') === null || row.own('core') !== null ? undefined
      : unknown(row, message('{name}: which core of {cable} it takes is not entered. Enter its number, colour or mark.'), { cable: String(row.own('outside')) }),
  },
  tickedOtherwise('terminal-wired-otherwise', WIRED_TICK, WIRED, WIRED_SPARE),
  tickedOtherwise('terminal-checked-otherwise', CHECKED_TICK, CHECKED, CHECKED_SPARE),
  {
    rule: 'terminal-checked-unwired', sheet: 'terminals', key: 'checked', severity: 'near', inStatus: true, needs: 'checked',
    find: (row) => row.own('checked') !== true || row.own('wired') === true ? undefined : {
      value: true, limit: null,
      message: row.say('{name} is ticked as checked and not as wired. See whether it is wired, then tick that too, or take the tick back.'),
    },
  },
  ...(['feeds', 'outputs', 'runs', 'branches'] as const).map(withoutTerminals),
  railAbsent('terminal-rail-absent', 'terminals'),
  widthMissing('terminal-width-missing', 'terminals', message(
    '{name}: its width is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm.'
  )),
];
