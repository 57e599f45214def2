import { headroom } from '../../electrical/index.ts';
import { boughtColumns } from './bought.ts';
import type { Sheet } from './column.ts';
import { mountedOnColumn } from './mounted.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** The relay modules, whose outputs share one common and one housing. */
export const modules: Sheet = {
  name: 'modules',
  title: 'Modules',
  rowName: 'relay module',
  help: 'One row for each relay module: how many outputs it has, and what its common side carries.',
  tag: 'module',
  columns: [
    {
      role: 'input', key: 'module', title: 'Module', kind: 'text', tag: true,
      help: 'Tag of the module, as outputs give it.',
    },
    {
      role: 'input', key: 'enclosure', rare: 'mounting',
      title: 'Enclosure', kind: 'reference', to: 'enclosures', optional: true,
      help: 'Where the module is mounted.',
    },
    {
      role: 'input', key: 'common', title: 'Common', kind: 'number', unit: 'A', safeSide: 'down', above: 0,
      decimals: 2, optional: true, help: 'Current that all its outputs together may carry.',
    },
    {
      role: 'input', key: 'outputs', title: 'Outputs', kind: 'integer', min: 1, optional: true,
      help: 'How many outputs it has.',
    },
    {
      role: 'computed', key: 'current', title: 'Current', kind: 'number', unit: 'A', decimals: 2, whenPartial: '≥',
      help: 'Current of all its outputs at the same time.',
      total: {
        of: [{ from: 'outputs', by: 'module', sum: 'current' }],
        words: 'sum of current over the relay outputs that name it', source: ARITHMETIC,
      },
    },
    {
      role: 'computed', key: 'headroom', title: 'Headroom', kind: 'number', unit: 'A', safeSide: 'down', decimals: 2,
      whenPartial: '≤', help: 'What is left up to what its common side carries.',
      rule: { of: ['common', 'current'], by: headroom, words: '{common} − {current}', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'used', title: 'Used', kind: 'number', decimals: 0, help: 'Outputs that name it.',
      total: { of: [{ from: 'outputs', by: 'module' }], words: 'number of relay outputs that name it', source: ARITHMETIC },
    },
    {
      role: 'computed', key: 'free', title: 'Free', kind: 'number', safeSide: 'down', decimals: 0,
      help: 'Outputs that are not taken yet.',
      rule: { of: ['outputs', 'used'], by: headroom, words: '{outputs} − {used}', source: ARITHMETIC },
    },
    {
      role: 'input', key: 'width', rare: 'mounting',
      title: 'Width', kind: 'number', unit: 'mm', safeSide: 'up', above: 0, decimals: 1, optional: true,
      help: 'Width on the mounting rail.',
    },
    mountedOnColumn('it stands on', 'it finds'),
    ...boughtColumns('module'),
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that the limits of this module say.',
    },
  ],
};
