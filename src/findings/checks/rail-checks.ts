import { exceeds } from '../../electrical/index.ts';
import { MOUNTED_SHEETS, panelRails, type Outcome } from '../../mounting/index.ts';
import { inputColumns, type SheetName } from '../../schedule/index.ts';
import { message, millimetres, roundedDown, roundedUp } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { Gathering } from '../facts.ts';
import type { RowReader } from '../row-reader.ts';
import { excessIn, overLimit, unknown } from './limit-checks.ts';

/** How the parts of an enclosure stand on its mounting rails. */
interface RailsFact {
  readonly outcome: Outcome;
  readonly anew?: Outcome;
  /** Width of all parts with end brackets [mm]. */
  readonly used: number;
  /** Number of parts that find no rail, and of those that were given one that is not there. */
  readonly left: number;
  readonly absent: number;
  /** The widest of the parts that find none, with its width [mm]. */
  readonly widest?: { readonly tag: string; readonly width: number };
  /** The rail that is given most beyond its length. */
  readonly over?: { readonly rail: number; readonly used: number };
}

const RAILS: Gathering<RailsFact> = {
  sheet: 'enclosures',
  reads: [
    ['enclosures', 'enclosure'], ['enclosures', 'rails'], ['enclosures', 'railLength'],
    ...MOUNTED_SHEETS.flatMap((sheet) => ['enclosure', 'width', 'mountedOn'].map((key) => [sheet, key] as const)),
    ['supplies', 'rail'], ['supplies', 'units'], ['supplies', 'voltage'], ['ways', 'way'], ['ways', 'rail'], ['branches', 'branch'],
    ['modules', 'module'], ['outputs', 'output'], ['outputs', 'module'], ['outputs', 'voltage'], ['outputs', 'kind'], ['feeds', 'feed'],
    ['feeds', 'voltage'], ['runs', 'run'], ['runs', 'rail'], ['runs', 'way'],
    ...inputColumns('terminals').map(({ key }) => ['terminals', key] as const),
  ],
  gather: (document, book) => new Map(panelRails(document, book).map(({ id, outcome, anew, used, rails, unplaced }) => {
    const [worst] = rails.filter(({ isOver }) => isOver).sort((one, other) => other.used - one.used);
    const [widest] = [...unplaced].sort((one, other) => other.width - one.width);
    const fact: RailsFact = {
      outcome, used, left: unplaced.filter(({ mountedOn }) => mountedOn === undefined).length,
      absent: unplaced.filter(({ mountedOn }) => mountedOn !== undefined).length,
      ...anew === undefined ? {} : { anew },
      ...widest === undefined ? {} : { widest: { tag: widest.tag, width: widest.width } },
      ...worst === undefined ? {} : { over: { rail: worst.number, used: worst.used } },
    };
    return [id, fact];
  })),
};

/** Length of all mounting rails [mm]; `null` where it is not asked for or not known. */
export function wholeLength(row: RowReader): number | null {
  const [rails, length] = [row.number('rails'), row.number('railLength')];
  return rails === null || length === null ? null : rails * length;
}

/** What is known of its rails where they are asked for, and in sum hold what is to stand on them. */
function holdsInSum(row: RowReader): { readonly fact: RailsFact; readonly whole: number } | undefined {
  const [used, whole] = [row.number('usedWidth'), wholeLength(row)];
  if (used === null || whole === null || exceeds(used, whole)) return undefined;
  const fact = row.fact(RAILS);
  return fact === undefined ? undefined : { fact, whole };
}

/** Whether parts can be put whole on the mounting rails of an enclosure; sums are held apart. */
export const railChecks: readonly Check[] = [
  overLimit({
    rule: 'enclosure-rail-over', sheet: 'enclosures', key: 'railLength',
    value: (row) => row.number('railLength') === null ? null : row.fact(RAILS)?.over?.used ?? null,
    limit: (row) => row.number('railLength'), write: excessIn(millimetres),
    message: message(
      '{name}: mounting rail {rail} is given {value} of parts with end brackets and partitions, and is {limit} long: {excess} too much. Give some of them another rail, or empty their mounting rail so that they find one.'
    ),
    values: (row) => ({ rail: row.fact(RAILS)!.over!.rail }),
  }),
  {
    rule: 'enclosure-rails-over', sheet: 'enclosures', key: 'rails', severity: 'over', inStatus: true, needs: 'railLength',
    find: (row) => {
      const held = holdsInSum(row);
      if (held?.fact.outcome !== 'none') return undefined;
      const { fact: { used, left, anew, widest }, whole } = held;
      const length = row.number('railLength')!;
      if (widest !== undefined && exceeds(widest.width, length)) {
        return {
          value: widest.width, limit: length,
          message: row.say('{name}: {part} takes {width} of a mounting rail with its end brackets, and none is longer than {length}. Use longer rails, or move it to another enclosure.', {
            part: widest.tag === '' ? row.say('a part without a tag') : widest.tag,
            width: millimetres(widest.width, length), length: roundedDown(millimetres(length, widest.width)),
          }),
        };
      }
      const values = { used: millimetres(used), whole: roundedDown(millimetres(whole)), left };
      return {
        value: used, limit: whole,
        message: anew === 'fits' ? row.say('{name}: {left, plural, one {# part finds} other {# parts find}} no mounting rail while others stand where they were put by hand; {used} of parts with end brackets stand on {whole} of rails once all are placed anew. Let them be placed anew, or empty the mounting rail of some.', values)
          : row.say('{name}: {left, plural, one {# part finds} other {# parts find}} no mounting rail: {used} of parts with end brackets are to stand on {whole} of rails, and no arrangement puts each part whole on one. Use longer rails or one more, or move parts out of it.', values),
      };
    },
  },
  {
    rule: 'enclosure-rail-absent', sheet: 'enclosures', key: 'rails', severity: 'over', inStatus: true, elsewhere: true,
    needs: 'railLength',
    find: (row) => wholeLength(row) === null || (row.fact(RAILS)?.absent ?? 0) === 0 ? undefined
      : unknown(row, message('{name}: parts are given mounting rails that it has not.')),
  },
  {
    rule: 'enclosure-rails-near', sheet: 'enclosures', key: 'reserve', severity: 'near', inStatus: true, needs: 'railLength',
    find: (row) => {
      const held = holdsInSum(row);
      const [free, reserve] = [row.number('freeWidth'), row.number('reserve')];
      if (held === undefined || free === null || reserve === null || held.fact.outcome === 'none') return undefined;
      const { fact: { used }, whole } = held;
      const limit = whole * (1 - reserve);
      // Where parts alone are into the reserve, that is told by their sum.
      if (exceeds(0, free) || !exceeds(used, limit)) return undefined;
      return {
        value: used, limit,
        message: row.say('{name} holds {used} of parts with end brackets on {whole} of mounting rails, {into} into its reserve. Use a larger enclosure, or give up part of the reserve.', {
          used: millimetres(used), whole: roundedDown(millimetres(whole)),
          into: roundedUp(millimetres(used - limit, 0)),
        }),
      };
    },
  },
  {
    rule: 'enclosure-rails-unknown', sheet: 'enclosures', key: 'rails', severity: 'incomplete', inStatus: true, needs: 'railLength',
    find: (row) => holdsInSum(row)?.fact.outcome !== 'unknown' ? undefined : unknown(row, message(
      '{name}: no arrangement of its parts on its mounting rails was found, and none is proven, as the search was cut short. Put parts on rails by hand, or use one more rail.'
    )),
  },
];

/**
 * A check that the mounting rail which a part is given is there. It counts in the status of the enclosure: nothing is
 * wrong with the part itself.
 */
export function railAbsent(rule: string, sheet: SheetName): Check {
  const check = overLimit({
    rule, sheet, key: 'mountedOn', limit: (row) => row.numberOf('enclosure', 'rails'),
    write: (value, limit) => ({ rail: value, limit }),
    message: message('{name} is given mounting rail {rail}, and its enclosure has {limit, plural, one {# rail} other {# rails}}. Correct the number, or empty it so that it finds one.'),
  });
  const { inStatus: _inStatus, ...told } = check;
  return { ...told, needs: 'mountedOn' };
}
