import type { Sheet } from './column.ts';

/** What a factor is a share of. */
export const FACTOR_BASES = ['connected', 'demand'] as const;

/** What is on in each case, by groups of loads. */
export const factors: Sheet = {
  name: 'factors',
  title: 'Factors',
  rowName: 'factor',
  help: 'One row for each group of loads in a case: the share of it that is on. A group without one keeps the diversity of its rows.',
  tag: 'group',
  named: ['case', 'group'],
  columns: [
    {
      role: 'input', key: 'case', title: 'Case', kind: 'reference', to: 'cases', help: 'Case in which the factor holds.',
    },
    {
      role: 'input', key: 'group', title: 'Load group', kind: 'text',
      help: 'Group of loads, as types, device rows and outputs give it.',
    },
    {
      role: 'input', key: 'factor', title: 'Factor', kind: 'ratio', min: 0, max: 1,
      help: 'Share of the group that is on in this case, 0 to 1 (0 % to 100 %).',
    },
    {
      role: 'input', key: 'of', title: 'Share of', kind: 'choice', choices: FACTOR_BASES, default: 'connected',
      help: 'Connected: of all that is connected. Demand: of what the diversity of each row leaves, as a second level of it.',
      source: 'factors between groups beside those within them, as in textbooks of power supply',
    },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying, who decided it first.' },
  ],
};
