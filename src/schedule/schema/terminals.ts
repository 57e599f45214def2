import type { Sheet, SheetName } from './column.ts';
import { mountedOnColumn } from './mounted.ts';

/** What is carried out when a terminal is wired: another connection asks for another tick. */
const CONNECTION = ['inside', 'potential', 'outside', 'core', 'bridge'] as const;

/** Connections of parts, as laying out names them, with the sheets whose rows have them. */
const CONNECTIONS: Readonly<Record<string, readonly SheetName[]>> = {
  ':1': ['ways', 'feeds'], ':2': ['ways', 'feeds'], ':+': ['supplies', 'branches'], ':-': ['supplies', 'branches'],
  ':F/1': ['supplies'], ':F/2': ['supplies'], ':L': ['supplies'], ':N': ['supplies'], ':PE': ['supplies'], ':C': ['modules'], ':11': ['outputs'], ':14': ['outputs'],
  ':R1': ['branches'], ':R2': ['branches'],
};

/** Marks behind the origin of a potential, with the sheets of what it may come from. */
const MARKS: Readonly<Record<string, readonly SheetName[]>> = {
  ' L+': ['ways', 'supplies', 'outputs'], ' L-': ['supplies'], ' L': ['feeds', 'outputs'], ' N': ['feeds'],
  ' +': ['branches'], ' -': ['branches'], ':1': ['feeds'], ':11': ['outputs'], ':14': ['outputs'],
};

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
      names: ['ways', 'supplies', 'branches', 'outputs', 'feeds'], behind: MARKS,
      help: 'What is electrically one conductor: its origin and its mark, such as F1 L+ behind a way, L1 L- or PE.',
      source: 'marks L, N, PE, L+ and L− of IEC 60445, from memory; the minus typed as a hyphen',
    },
    {
      role: 'input', key: 'inside', title: 'Inside end', kind: 'text',
      names: ['ways', 'supplies', 'branches', 'modules', 'outputs', 'feeds', 'terminals'], behind: CONNECTIONS,
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
    mountedOnColumn('it stands on with its strip', 'that finds'),
    {
      role: 'input', key: 'wired', rare: 'progress', title: 'Wired', kind: 'boolean', help: 'Both its conductors are in.',
      tick: { by: 'by', on: 'on', as: 'wiredAs', of: CONNECTION },
    },
    { role: 'input', key: 'by', rare: 'progress', title: 'Wired by', kind: 'text', help: 'Who wired it.' },
    { role: 'input', key: 'on', rare: 'progress', title: 'Wired on', kind: 'text', help: 'When it was wired.' },
    {
      role: 'input', key: 'wiredAs', rare: 'progress', title: 'Wired as', kind: 'text',
      help: 'What it was to join when it was ticked as wired; filled in with the tick, so that a change since then is found.',
    },
    {
      role: 'input', key: 'checked', rare: 'progress', title: 'Checked', kind: 'boolean',
      help: 'Somebody else has looked at it, pulled at it or rung it through.',
      tick: { by: 'checkedBy', on: 'checkedOn', as: 'checkedAs', of: CONNECTION },
    },
    { role: 'input', key: 'checkedBy', rare: 'progress', title: 'Checked by', kind: 'text', help: 'Who checked it.' },
    { role: 'input', key: 'checkedOn', rare: 'progress', title: 'Checked on', kind: 'text', help: 'When it was checked.' },
    {
      role: 'input', key: 'checkedAs', rare: 'progress', title: 'Checked as', kind: 'text',
      help: 'What it was to join when it was ticked as checked; filled in with the tick, so that a change since then is found.',
    },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    {
      role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true,
      help: 'The worst that is wrong with this terminal.',
    },
  ],
};
