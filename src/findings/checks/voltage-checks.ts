import { exceeds } from '../../electrical/index.ts';
import { message, roundedDown, roundedUp, volts, type MessageValues } from '../../words/index.ts';
import type { Check, Found } from '../check.ts';
import { isOther, MISFIT, type Misfit, type MisfitRows, type MisfitType } from '../misfit.ts';
import { where, type Only } from '../only.ts';
import type { RowReader } from '../row-reader.ts';
import { UNSURE } from '../unsure-types.ts';
import { waitsFor } from './limit-checks.ts';

/** What a type bears, with the rows of it. */
const BEARS: Readonly<Record<Misfit, string>> = {
  over: message('{type} stands {volts} ({rows})'),
  under: message('{type} needs {volts} ({rows})'),
  other: message('{type} is made for {volts} ({rows})'),
};

function typeText({ type, is, volts: bound, refs, rows }: MisfitType, { words }: RowReader): string {
  const values = { refs: refs.join(', '), more: rows - refs.length };
  return words.say<string>(BEARS[is], {
    type, volts: is === 'over' ? roundedDown(volts(bound)) : is === 'under' ? roundedUp(volts(bound)) : volts(bound),
    rows: refs.length === 0 ? words.say('{more, plural, one {# row} other {# rows}}', values)
      : words.say('{refs}{more, plural, =0 {} one { and # more row} other { and # more rows}}', values),
  });
}

/** The types that a rail does not suit, with their rows: «A stands 28 V (D1, D2 and 3 more rows); B …» */
function listText({ types, moreTypes }: MisfitRows, row: RowReader): string {
  const { words } = row;
  const more = moreTypes === 0 ? []
    : [words.say('{moreTypes, plural, one {# more type} other {# more types}}', { moreTypes })];
  return [...types.map((type) => typeText(type, row)), ...more]
    .reduce((one, other) => words.say('{one}; {other}', { one, other }));
}

/** What a rail has, and the least and most that it may give [V]; `null` is not known. */
interface Rail {
  readonly nominal: number;
  readonly lowest: number | null;
  readonly highest: number | null;
}

/** Whether already the nominal voltage of the rail is none for some of them, however well it is held. */
const isNominalWrong = ({ types }: MisfitRows, { nominal }: Rail) => types.some(({ is, volts: bound }) =>
  is === 'other' || (is === 'over' ? exceeds(nominal, bound) : exceeds(bound, nominal)));

function railText({ nominal, lowest, highest }: Rail, { words }: RowReader): MessageValues[string] {
  const rail = volts(nominal);
  if (highest === null || (lowest === nominal && highest === nominal)) return rail;
  return lowest === null ? words.say('{rail}, up to {highest}', { rail, highest: volts(highest) })
    : words.say('{rail}, from {lowest} to {highest}', { rail, lowest: volts(lowest), highest: volts(highest) });
}

/** The figure of the rail that is wrong for the first of the rows, and what it is held against. */
const worst = ({ is, volts: limit }: MisfitRows, { nominal, lowest, highest }: Rail): Pick<Found, 'value' | 'limit'> =>
  ({ value: { over: highest, under: lowest, other: nominal }[is], limit });

/** One finding for all of the rows: what is said where the nominal voltage is wrong, or only how closely it is held. */
function toldTogether(
  row: RowReader, found: MisfitRows, rail: Rail, said: Readonly<Record<'nominal' | 'held', string>>, values: MessageValues,
): Found {
  const { rows } = found;
  return {
    ...worst(found, rail), waiting: rows,
    message: row.sentence(() => row.say<string>(isNominalWrong(found, rail) ? said.nominal : said.held,
      { ...values, rows, given: railText(rail, row), list: listText(found, row) })),
  };
}

/** Rows for which one of the figures of the rail is wrong; the only one of them, or the first, tells of it. */
function atDevice(is: Misfit, only: Only, alone: (row: RowReader, bound: number) => Found): Check {
  return {
    rule: `device-${is}-voltage`, sheet: 'devices', key: 'rail', severity: 'over', only,
    find: (row) => {
      const found = row.fact(MISFIT.devices);
      if (found?.is !== is) return undefined;
      if (found.rows === 1) return alone(row, found.volts);
      const rail: Rail = {
        nominal: row.numberOf('rail', 'voltage')!, lowest: row.numberOf('rail', 'lowest'),
        highest: row.numberOf('rail', 'highest'),
      };
      return toldTogether(row, found, rail, {
        nominal: message('{name} is one of {rows} rows on rail {tag} that are not made for its {given}: {list}. Put them on a rail of their voltage, or correct the voltages of their types.'),
        held: message('{name} is one of {rows} rows on rail {tag} that are not made for its {given}: {list}. Put them on a rail that holds its voltage closer, or use types that bear it.'),
      }, { tag: String(row.value('rail')) });
    },
  };
}

/** A check that only counts in the status of what feeds devices that do not bear the voltage of their rail. */
const elsewhere = (rule: string, sheet: 'supplies' | 'runs', key: string): Check => ({
  rule, sheet, key, severity: 'over', inStatus: true, elsewhere: true,
  find: (row) => row.fact<unknown>(sheet === 'runs' ? MISFIT.runs : MISFIT.supplies) === undefined ? undefined : {
    value: null, limit: null, message: row.say('{name}: devices on it do not bear the voltage of its rail.'),
  },
});

/** A check that waits for types of which a voltage cannot be read, as is told there. */
const waitsForVoltages = (rule: string, sheet: 'supplies' | 'runs', key: string): Check => waitsFor(rule, sheet, key, message(
  '{name}: which voltage some of its devices bear is not known, so whether they have it is not checked.'
), (row) => row.fact(UNSURE.voltage[sheet]) !== undefined);

/** What device rows, and the rails and runs that feed them, are held against in voltage. */
export const voltageChecks: readonly Check[] = [
  atDevice('over', where(['rail.highest', 'type.maxVoltage'], exceeds), (row, most) => {
    const highest = row.numberOf('rail', 'highest')!;
    return {
      value: highest, limit: most,
      message: row.say('{name} stands {most} at the most, and rail {rail} may give {highest}: {excess} too much. Put it on a rail of its voltage, or use a type that stands it.', {
        most: roundedDown(volts(most, highest)), rail: String(row.value('rail')), highest: volts(highest, most),
        excess: roundedUp(volts(highest - most, 0)),
      }),
    };
  }),
  atDevice('under', where(['type.minVoltage', 'rail.lowest'], exceeds), (row, least) => {
    const lowest = row.numberOf('rail', 'lowest')!;
    return {
      value: lowest, limit: least,
      message: row.say('{name} needs {least} at the least, and rail {rail} may give {lowest}: {lack} too little, without any cable. Put it on a rail that holds its voltage, or use a type that needs less.', {
        least: roundedUp(volts(least, lowest)), rail: String(row.value('rail')), lowest: volts(lowest, least),
        lack: roundedUp(volts(least - lowest, 0)),
      }),
    };
  }),
  atDevice('other', where(['type.voltage', 'rail.voltage'], isOther), (row, own) => {
    const rail = row.numberOf('rail', 'voltage')!;
    return {
      value: own, limit: rail,
      message: row.say('{name} is made for {own} and rail {rail} has {given}. Put it on a rail of its voltage, or correct the voltage of its type; where it works on both, enter its minimum and maximum voltage there.', {
        own: volts(own), rail: String(row.value('rail')), given: volts(rail),
      }),
    };
  }),
  {
    rule: 'supply-wrong-voltage', sheet: 'supplies', key: 'voltage', severity: 'over', inStatus: true,
    find: (row) => {
      const found = row.fact(MISFIT.supplies);
      if (found?.isRail !== true) return undefined;
      const rail: Rail = {
        nominal: row.number('voltage')!, lowest: row.number('lowest'), highest: row.number('highest'),
      };
      return toldTogether(row, found, rail, {
        nominal: message('{name} has {given}, and {rows} of the {of} device rows on it are not made for that: {list}. Correct its voltage, or put them on a rail of theirs; where types work on it, enter their voltages.'),
        held: message('{name} has {given}, and {rows} of the {of} device rows on it are not made for that: {list}. Use a supply that holds its voltage closer, or types that bear it.'),
      }, { of: found.of });
    },
  },
  waitsForVoltages('supply-devices-voltage-unknown', 'supplies', 'voltage'),
  waitsForVoltages('run-devices-voltage-unknown', 'runs', 'rail'),
  elsewhere('supply-devices-wrong-voltage', 'supplies', 'voltage'),
  elsewhere('run-devices-wrong-voltage', 'runs', 'rail'),
];
