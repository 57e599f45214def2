import type { Sheet } from './column.ts';

/** The terminals of the strips, one conductor a side. */
export const terminals: Sheet = {
  name: 'terminals',
  title: 'Terminals',
  rowName: 'terminal',
  help: 'One row for each terminal: which conductor it joins inside with which core outside, and what it is bridged with.',
  tag: 'terminal',
  columns: [
    {
      role: 'input', key: 'terminal', title: 'Terminal', kind: 'text', tag: true,
      help: 'Full designation, such as +KP-1-X2:14: enclosure, strip and, behind the colon, its number.',
      source: 'IEC 81346-1 (aspects + and −), IEC 61666 (the colon before a terminal), from memory',
    },
    {
      role: 'input', key: 'strip', title: 'Strip', kind: 'text',
      help: 'Row of terminals that it stands in, as designated on the drawing.',
    },
    {
      role: 'input', key: 'enclosure', title: 'Enclosure', kind: 'reference', to: 'enclosures', optional: true,
      help: 'Where the strip is mounted.',
    },
    {
      role: 'input', key: 'potential', title: 'Potential', kind: 'text',
      help: 'What is electrically one conductor: its origin and its mark, such as F1 L+ behind a way, L1 L- or PE.',
      source: 'marks L, N, PE, L+ and L− of IEC 60445, from memory; the minus typed as a hyphen',
    },
    {
      role: 'input', key: 'inside', title: 'Inside end', kind: 'text',
      names: ['ways', 'supplies', 'branches', 'modules', 'outputs', 'feeds', 'terminals'],
      help: 'Tag of the part that its inside conductor goes to, with the connection behind a colon; empty: only its bridge.',
    },
    {
      role: 'input', key: 'outside', title: 'Outside end', kind: 'text', names: ['runs', 'outputs', 'branches', 'feeds'],
      help: 'Tag of the cable that its outside conductor belongs to: that of its run, output, branch or feed; empty: spare, or without one.',
    },
    {
      role: 'input', key: 'core', title: 'Core', kind: 'text',
      help: 'Core of the cable: its number, colour or mark. “2:1” is core 1 at the other end of a run that is fed at both.',
    },
    {
      role: 'input', key: 'size', title: 'Conductor size', kind: 'number', unit: 'mm²', above: 0, decimals: 2,
      optional: true, help: 'Cross-section of the core.',
    },
    {
      role: 'input', key: 'maxSize', title: 'Terminal size', kind: 'number', unit: 'mm²', safeSide: 'down', above: 0,
      decimals: 2, optional: true, help: 'Largest conductor that the terminal is rated for.',
    },
    {
      role: 'input', key: 'bridge', title: 'Bridge', kind: 'text',
      help: 'Terminals with the same text here are bridged with each other.',
    },
    {
      role: 'input', key: 'partition', rare: 'mounting', title: 'Partition', kind: 'boolean',
      help: 'A partition plate stands behind it, between it and the next one of its strip.',
    },
    {
      role: 'input', key: 'width', rare: 'mounting', title: 'Width', kind: 'number', unit: 'mm', safeSide: 'up', above: 0,
      decimals: 1, optional: true, help: 'Width that it takes of a mounting rail.',
    },
    {
      role: 'input', key: 'mountedOn', rare: 'mounting', title: 'Mounting rail', kind: 'integer', min: 1, optional: true,
      help: 'Number of the mounting rail that it stands on with its strip, from the top; empty: wherever that finds room.',
    },
    {
      role: 'input', key: 'wired', rare: 'progress', title: 'Wired', kind: 'boolean', help: 'Both its conductors are in.',
    },
    {
      role: 'input', key: 'checked', rare: 'progress', title: 'Checked', kind: 'boolean',
      help: 'Somebody else has looked at it, pulled at it or rung it through.',
    },
    {
      role: 'input', key: 'by', rare: 'progress', title: 'Wired by', kind: 'text', help: 'Who wired or checked it.',
    },
    {
      role: 'input', key: 'on', rare: 'progress', title: 'Wired on', kind: 'text', help: 'When it was wired or checked.',
    },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that is wrong with this terminal.',
    },
  ],
};
