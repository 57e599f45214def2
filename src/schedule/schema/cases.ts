import { message } from '../../words/index.ts';
import type { Sheet } from './column.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** The situations of the building in which its loads come together. */
export const cases: Sheet = {
  name: 'cases',
  title: 'Cases',
  rowName: 'case',
  help: 'One row for each situation of the building, such as evening, wind alarm or power return: every limit has to hold in all of them.',
  tag: 'case',
  columns: [
    { role: 'input', key: 'case', title: 'Case', kind: 'text', tag: true, help: 'Name of the case, as factors give it.' },
    {
      role: 'input', key: 'hours', title: 'Hours a day', kind: 'number', unit: 'h', min: 0, max: 24, decimals: 1,
      optional: true, help: 'How long it lasts in a day, for the energy; empty for one that is rare.',
    },
    {
      role: 'input', key: 'standby', title: 'Standby', kind: 'boolean', default: false,
      help: 'The case while the mains fail: batteries have to bridge its demand.',
    },
    {
      role: 'input', key: 'together', title: 'Together', kind: 'boolean', default: false,
      help: 'The case in which most comes together, such as power return: a supply all of whose groups have a factor in it is judged by it, and not by everything connected.',
    },
    {
      role: 'computed', key: 'demand', title: 'Power', kind: 'number', unit: 'W', decimals: 0, whenPartial: '≥',
      help: 'Power that all supplies together give in this case.',
      caseTotal: {
        from: 'supplies', sum: 'power', words: 'sum of power over all supplies in this case', source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'energy', title: 'Energy a day', kind: 'number', unit: 'kWh', decimals: 2, whenPartial: '≥',
      help: 'What all supplies together give in the hours of this case.',
      rule: {
        of: ['demand', 'hours'], by: (watts: number, hours: number) => watts * hours / 1000,
        words: message('{demand} × {hours} ÷ 1000'), source: 'W = P × t',
      },
    },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying, who decided it first.' },
  ],
};
