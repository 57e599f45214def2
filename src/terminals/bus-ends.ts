import { grouped, tagOf, type ScheduleDocument } from '../schedule/index.ts';
import { listTerminals, type ListedTerminal } from './placed-terminals.ts';

/**
 * A line has two ends, each with a terminating resistor, and none elsewhere: TIA-485-A, which drives two of 120 Ω, and
 * ISO 11898-2; from memory.
 */
export const BUS_ENDS = 2;

/** What terminals show of the terminators of a branch; terminals are named by designation. */
export interface BusEnds {
  /** Terminators on terminals. */
  readonly terminators: number;
  /** Terminals of those that have one end alone on terminals. */
  readonly half: readonly string[];
  /** Terminals of a terminator where the line goes on, and the cables by which it does. */
  readonly midway?: { readonly terminals: readonly string[]; readonly cables: readonly string[] };
}

/** What terminals show of the terminators of each branch, by the id of its row; none where no terminal has one. */
export function busEnds(document: ScheduleDocument): Map<number, BusEnds> {
  const found = new Map<number, BusEnds>();
  const terminals = listTerminals(document);
  const ofResistors = grouped(terminals.filter(({ inside }) => /:R[12]$/.test(inside)), ({ inside }) => inside.slice(0, -3));
  const onCables = grouped(terminals.filter(({ outside, potential }) => outside !== '' && / [+-]$/.test(potential)),
    ({ potential }) => potential.slice(0, -2));
  for (const row of document.rows('branches')) {
    const branch = tagOf('branches', row);
    if (branch === '') continue;
    const ends = [...grouped(ofResistors.get(branch) ?? [], ({ enclosure }) => enclosure)];
    if (ends.length === 0) continue;
    const inCables = onCables.get(branch) ?? [];
    const cablesIn = (enclosure: string) =>
      [...new Set(inCables.filter((each) => each.enclosure === enclosure).map(({ outside }) => outside))];
    // At an end of the line one cable goes on from the terminator; two go by it.
    const passed = ends.map(([enclosure, those]) => ({ terminals: names(those), cables: cablesIn(enclosure) }))
      .find(({ cables }) => cables.length > 1);
    const count = (those: readonly ListedTerminal[], end: string) =>
      those.filter(({ inside }) => inside === `${branch}:${end}`).length;
    found.set(row.id, {
      terminators: ends.reduce((sum, [, those]) => sum + Math.max(count(those, 'R1'), count(those, 'R2')), 0),
      half: ends.flatMap(([, those]) => count(those, 'R1') === count(those, 'R2') ? [] : names(those)),
      ...passed === undefined ? {} : { midway: passed },
    });
  }
  return found;
}

const names = (terminals: readonly ListedTerminal[]): string[] => terminals.map(({ terminal }) => terminal);
