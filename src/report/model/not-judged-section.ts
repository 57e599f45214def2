import { message, type Words } from '../../words/index.ts';
import { textCell, textColumns } from './cells.ts';
import type { ReportSection } from './report.ts';

/** What no check of a schedule looks at, and where it is dealt with. Titles of standards from memory. */
const NOT_JUDGED: readonly (readonly [what: string, where: string])[] = [
  [
    message('Fault loop impedance and disconnection times of mains feeds'),
    message('Design of the installation; measured at verification. IEC 60364-4-41, IEC 60364-6'),
  ],
  [
    message('Residual-current protection of mains feeds, its type and its selectivity'),
    message('Design of the installation. IEC 60364-4-41, IEC 60364-5-53'),
  ],
  [
    message('Short-circuit rating of the panel and of its mains parts'),
    message('Verification of the assembly against the fault current where it is connected. IEC 61439-1'),
  ],
  [
    message('Surge protection of mains, bus and field cables'),
    message('Assessment of the risk for the building. IEC 60364-4-44, IEC 60364-5-53'),
  ],
  [
    message('Earthing point of PELV circuits, and separation of SELV and PELV from mains'),
    message('Design of the panel; one marked point for each supply. IEC 60364-4-41'),
  ],
  [
    message('Cables from relay outputs to their loads, on mains and on direct current'),
    message('Design of the installation: current, protection and drop. IEC 60364-4-43, IEC 60364-5-52'),
  ],
  [
    message('Runs with two ways while one of them is open'),
    message('Told as a note where a device then lacks voltage. Whether the other way holds, and that the open one is noticed: design of the panel, common practice, no source.'),
  ],
  [
    message('Supplies and loads on 24 V AC'),
    message('Not counted here: transformer, power factor and inrush are calculated on their own.'),
  ],
];

/**
 * Says what the verdicts do not cover, so that nobody takes them for more.
 * @param isBrief leaves out where it is dealt with.
 */
export function notJudgedSection(words: Words, isBrief = false): ReportSection {
  const section = { name: 'not-judged', title: words.say('Not judged here') };
  if (isBrief) {
    const subjects = NOT_JUDGED.map(([what]) => words.within(what)).join('; ');
    return { ...section, sentences: [words.say('No figure and no status of this document says anything of: {subjects}.', { subjects })], tables: [] };
  }
  return {
    ...section,
    sentences: [words.say('No figure and no status of this document says anything of the following.')],
    tables: [{
      columns: textColumns(words.say('Subject'), words.say('Where it is dealt with')),
      rows: NOT_JUDGED.map((line) => ({ cells: line.map((text) => textCell(words.say(text))) })),
    }],
  };
}
