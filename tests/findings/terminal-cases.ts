import type { Cells } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

/** A rail with two ways and a run, a feed with two outputs of 16 A, two parts of one tag, and terminals. */
const panel = (terminals: readonly Cells[], more: Readonly<Record<string, readonly Cells[]>> = {}) => ({
  supplies: [{ rail: 'L1', rated: 40 }],
  ways: [{ way: 'F1', rail: 'L1', rated: 10 }, { way: 'F2', rail: 'L1', rated: 10 }], runs: [{ run: 'R1', way: 'F1' }],
  feeds: [{ feed: 'M1', rated: 16 }],
  outputs: ['Q1', 'Q2'].map((output) => ({ output, feed: 'M1', kind: 'resistive', power: 3680 })),
  modules: [{ module: 'D' }], branches: [{ branch: 'D' }], ...more, terminals,
});
const at = (number: number, cells: Cells): Cells => ({ terminal: `X1:${number}`, strip: 'X1', ...cells });
const plus = (cells: Cells = {}): Cells => ({ potential: 'F1 L+', inside: 'F1:2', ...cells });
/** The neutrals of a feed and of its outputs, bridged. */
const neutrals = (maxSize: number) => ['M1', 'Q1', 'Q2'].map((outside, place) =>
  at(place + 1, { potential: 'M1 N', outside, core: 'N', bridge: 'n', maxSize }));

export const TERMINAL_CASES: readonly FindingCase[] = [
  {
    rule: 'terminal-bridge-shorts', sheet: 'terminals', key: 'bridge', severity: 'over', value: 'a', limit: null,
    inStatus: true, sheets: panel([at(1, plus({ bridge: 'a' })), at(2, { potential: 'L1 L-', inside: 'L1:-', bridge: 'a' })]),
    message: 'Terminal X1:1 is bridged with another potential, L1 L-: that shorts a supply, or brings mains into extra-low voltage. Take it out of the bridge a, or correct its potential.',
    silent: [panel([at(1, plus({ bridge: 'a' })), at(2, { potential: 'L1 L-', inside: 'L1:-', bridge: 'b' })])],
  },
  {
    rule: 'terminal-core-twice', sheet: 'terminals', key: 'core', severity: 'over', value: '1', limit: null,
    inStatus: true, sheets: panel([at(1, plus({ outside: 'R1', core: '1', bridge: 'a' })), at(2, { potential: 'F1 L+', outside: 'R1', core: '1', bridge: 'a' })]),
    message: 'Terminal X1:1 holds the core 1 of R1, which X1:2 holds too: one core has one end here. Correct one of them.',
    silent: [panel([at(1, plus({ outside: 'R1', core: '1', bridge: 'a' })), at(2, { potential: 'F1 L+', outside: 'R1', core: '3', bridge: 'a' })])],
  },
  {
    rule: 'terminal-too-small', sheet: 'terminals', key: 'size', severity: 'over', value: 4, limit: 2.5,
    inStatus: true, sheets: panel([at(1, plus({ size: 4, maxSize: 2.5 }))]),
    message: 'Terminal X1:1 takes conductors up to 2.5 mm² and is to take one of 4 mm². Take a larger terminal.',
    silent: [panel([at(1, plus({ size: 4, maxSize: 4 }))]), panel([at(1, plus({ size: 4 }))])],
  },
  {
    rule: 'terminal-bridge-over', sheet: 'terminals', key: 'bridge', severity: 'over', value: 32, limit: 24,
    inStatus: true, sheets: panel(neutrals(2.5)),
    message: 'Terminal X1:1: its bridge carries up to 32.00 A where it is fed, and terminals of this size carry 24.00 A: 8.00 A too much. Take larger terminals, or feed the bridge at several places.',
    silent: [panel(neutrals(4))],
  },
  {
    rule: 'terminal-apart', sheet: 'terminals', key: 'potential', severity: 'near', value: 'F1 L+', limit: null,
    inStatus: true, sheets: panel([at(1, { potential: 'F1 L+', outside: 'R1', core: '1' }), at(2, plus())]),
    message: 'Terminal X1:1 has the potential F1 L+ like X1:2, and is neither bridged nor wired with it. Enter its bridge, or where its inside conductor goes.',
    silent: [panel([at(1, { potential: 'F1 L+', outside: 'R1', core: '1', bridge: 'a' }), at(2, plus({ bridge: 'a' }))])],
  },
  {
    rule: 'terminal-unfed', sheet: 'terminals', key: 'inside', severity: 'near', value: null, limit: null,
    inStatus: true, sheets: panel([at(1, { potential: 'F1 L+', outside: 'R1', core: '1' })]),
    message: 'Terminal X1:1: nothing inside is wired to the potential F1 L+, so its cables lead nowhere. Enter where its inside conductor goes.',
    silent: [panel([at(1, plus({ outside: 'R1', core: '1' }))])],
  },
  {
    rule: 'terminal-bridge-strips', sheet: 'terminals', key: 'bridge', severity: 'near', value: 'a', limit: null,
    inStatus: true, sheets: panel([at(1, plus({ bridge: 'a' })), { terminal: 'X2:1', strip: 'X2', potential: 'F1 L+', inside: 'F1', bridge: 'a' }]),
    message: 'Terminal X1:1: its bridge a would have to span the strips X1, X2. Bridge each strip by itself and join them with a conductor.',
    silent: [panel([at(1, plus({ bridge: 'a' })), at(2, { potential: 'F1 L+', bridge: 'a' })])],
  },
  {
    rule: 'terminal-crowded', sheet: 'terminals', key: 'inside', severity: 'near', value: 'F1:2', limit: null,
    inStatus: true, sheets: panel([at(1, plus()), at(2, plus())]),
    message: 'Terminal X1:1: 2 conductors come to F1:2, where one is to be. Use a bridge, or another terminal.',
    silent: [panel([at(1, plus()), at(2, { potential: 'F2 L+', inside: 'F2:2' })])],
  },
  {
    rule: 'terminal-otherwise', sheet: 'terminals', key: 'potential', severity: 'over', value: 'L1 L-', limit: null,
    inStatus: true, sheets: panel([at(1, { potential: 'L1 L-', inside: 'L1:+' })]),
    message: 'Terminal X1:1 has the potential L1 L- and holds L1:+, which has L1 L+ by the schedule: wired so, the two would be joined. Lay the terminals out anew, or correct what it holds.',
    silent: [
      panel([at(1, { potential: 'L1 L-', inside: 'L1:-' })]), panel([at(1, { potential: '0 V', inside: 'L1:-' })]),
      panel([at(1, plus({ outside: 'R1', core: '1' }))]),
    ],
  },
  {
    rule: 'terminal-beside', sheet: 'terminals', key: 'partition', severity: 'near', value: null, limit: null,
    inStatus: true, sheets: panel([at(1, plus()), at(2, { potential: 'Q1 L', inside: 'Q1:14' })]),
    message: 'Terminal X1:1 stands beside X1:2, one on mains and one on extra-low voltage, without a partition between them (IEC 60364-4-41). Put a partition plate there, or keep their strips apart.',
    silent: [panel([at(1, plus({ partition: true })), at(2, { potential: 'Q1 L', inside: 'Q1:14' })]), panel([at(1, plus()), at(2, { potential: 'PE', inside: 'Q1:PE' })])],
  },
  {
    rule: 'terminal-inside-lost', sheet: 'terminals', key: 'inside', severity: 'incomplete', value: 'F9:2', limit: null,
    inStatus: true, sheets: panel([at(1, { potential: 'F9 L+', inside: 'F9:2' })]),
    message: 'Terminal X1:1: no part or terminal is called F9:2, so where its inside conductor goes is not known. Correct it, or lay the terminals out anew.',
    silent: [panel([at(1, plus())])],
  },
  {
    rule: 'terminal-outside-lost', sheet: 'terminals', key: 'outside', severity: 'incomplete', value: 'R9', limit: null,
    inStatus: true, sheets: panel([at(1, plus({ outside: 'R9', core: '1' }))]),
    message: 'Terminal X1:1: there is no run, output, branch or feed R9, so its cable is not known. Correct it, or lay the terminals out anew, which makes it spare.',
    silent: [panel([at(1, plus({ outside: 'R1', core: '1' }))])],
  },
  {
    rule: 'terminal-inside-doubtful', sheet: 'terminals', key: 'inside', severity: 'incomplete', value: 'D', limit: null,
    inStatus: true, sheets: panel([at(1, { potential: 'D L', inside: 'D' })]),
    message: 'Terminal X1:1: D is the tag of rows on several sheets, and which is meant is not known. Give them different tags.',
    // A common side is one of a module, whatever else is called D.
    silent: [panel([at(1, plus())]), panel([at(1, { potential: 'D L', inside: 'D:C' })])],
  },
  {
    rule: 'terminal-outside-doubtful', sheet: 'terminals', key: 'outside', severity: 'incomplete', value: 'R1', limit: null,
    inStatus: true, sheets: panel([at(1, plus({ outside: 'R1', core: '1' }))], { branches: [{ branch: 'R1' }] }),
    message: 'Terminal X1:1: R1 is the tag of rows on several sheets, and which is meant is not known. Give them different tags.',
    silent: [panel([at(1, plus({ outside: 'M1', core: 'L' }))], { branches: [{ branch: 'R1' }] })],
  },
  {
    rule: 'terminal-potential-missing', sheet: 'terminals', key: 'potential', severity: 'incomplete', value: null, limit: null,
    inStatus: true, sheets: panel([at(1, { inside: 'F1:2' })]),
    message: 'Terminal X1:1 is wired and its potential is not entered, so what it may be bridged with is not known. Enter it, such as L1 L-.',
    silent: [panel([at(1, plus())]), panel([at(1, {})])],
  },
  {
    rule: 'terminal-strip-missing', sheet: 'terminals', key: 'strip', severity: 'incomplete', value: null, limit: null,
    inStatus: true, sheets: panel([{ ...at(1, plus()), strip: null }]),
    message: 'Terminal X1:1 stands on no strip, so what it stands beside and what it may be bridged with is not known. Enter its strip.',
    silent: [panel([at(1, plus())]), panel([{ terminal: 'X1:1' }])],
  },
  {
    rule: 'terminal-core-missing', sheet: 'terminals', key: 'core', severity: 'incomplete', value: null, limit: null,
    inStatus: true, sheets: panel([at(1, plus({ outside: 'R1' }))]),
    message: 'Terminal X1:1: which core of R1 it takes is not entered. Enter its number, colour or mark.',
    silent: [panel([at(1, plus({ outside: 'R1', core: '1' }))])],
  },
  {
    rule: 'terminal-wired-otherwise', sheet: 'terminals', key: 'wired', severity: 'incomplete', value: true, limit: null,
    inStatus: true, sheets: panel([at(1, plus({ outside: 'R1', core: '3', wired: true, wiredAs: 'F1:2 · F1 L+ · R1 · 1 · –' }))]),
    message: 'Terminal X1:1 was ticked as wired when it was to join F1:2 · F1 L+ · R1 · 1 · –, and it is to join F1:2 · F1 L+ · R1 · 3 · – by now. See what is wired, and tick it anew.',
    silent: [
      panel([at(1, plus({ outside: 'R1', core: '3', wired: true, wiredAs: 'F1:2 · F1 L+ · R1 · 3 · –' }))]),
      panel([at(1, plus({ outside: 'R1', core: '3', wired: false, wiredAs: 'F1:2 · F1 L+ · R1 · 1 · –' }))]),
      panel([at(1, plus({ outside: 'R1', core: '3', wired: true }))]),
    ],
  },
  {
    rule: 'terminal-checked-otherwise', sheet: 'terminals', key: 'checked', severity: 'incomplete', value: true, limit: null,
    inStatus: true, sheets: panel([at(1, plus({ wired: true, checked: true, checkedAs: 'F2:2 · F2 L+ · – · – · –' }))]),
    message: 'Terminal X1:1 was ticked as checked when it was to join F2:2 · F2 L+ · – · – · –, and it is to join F1:2 · F1 L+ · – · – · – by now. Check it again, and tick it anew.',
    silent: [panel([at(1, plus({ wired: true, checked: true, checkedAs: 'F1:2 · F1 L+ · – · – · –' }))])],
  },
  {
    rule: 'terminal-checked-unwired', sheet: 'terminals', key: 'checked', severity: 'near', value: true, limit: null,
    inStatus: true, sheets: panel([at(1, plus({ checked: true }))]),
    message: 'Terminal X1:1 is ticked as checked and not as wired. See whether it is wired, then tick that too, or take the tick back.',
    silent: [panel([at(1, plus({ checked: true, wired: true }))]), panel([at(1, plus({ checked: false }))])],
  },
  {
    rule: 'terminal-width-missing', sheet: 'terminals', key: 'width', severity: 'incomplete', value: null, limit: null,
    inStatus: false, sheets: panel([at(1, { enclosure: 'E' })], { enclosures: [{ enclosure: 'E', rails: 1, railLength: 400 }] }),
    message: 'Terminal X1:1: its width is not known, and whether the parts in its enclosure fit waits for it. Enter it in mm.',
    silent: [panel([at(1, { enclosure: 'E', width: 5.2 })], { enclosures: [{ enclosure: 'E', rails: 1, railLength: 400 }] }), panel([at(1, {})], { enclosures: [{ enclosure: 'E', rails: 1, railLength: 400 }] })],
  },
  {
    rule: 'runs-without-terminals', sheet: 'runs', key: 'run', severity: 'note', value: 2, limit: null,
    inStatus: false, sheets: panel([at(1, plus())], { runs: [{ run: 'R1', rail: 'L1', way: 'F1' }] }),
    message: 'Run R1: 2 of its cores are on no terminal (all of them), and others of the panel are laid out: the wiring list does not have them. Lay the terminals out; none is renumbered.',
    silent: [
      panel([], { runs: [{ run: 'R1', rail: 'L1', way: 'F1' }] }),
      panel([at(1, plus({ outside: 'R1', core: '1' })), at(2, { potential: 'L1 L-', inside: 'L1:-', outside: 'R1', core: '2' })], { runs: [{ run: 'R1', rail: 'L1', way: 'F1' }] }),
      // Nobody has begun to lay out the panel that it begins in.
      panel([at(1, plus({ enclosure: 'P2' }))], { runs: [{ run: 'R1', rail: 'L1', way: 'F1' }] }),
    ],
  },
  {
    rule: 'outputs-without-terminals', sheet: 'outputs', key: 'output', severity: 'note', value: 2, limit: null,
    inStatus: false, sheets: panel([at(1, { potential: 'Q1 L', inside: 'Q1:14', outside: 'Q1', core: 'L' })], { outputs: [{ output: 'Q1', feed: 'M1', kind: 'resistive', power: 100 }] }),
    message: 'Output Q1: 2 of its cores are on no terminal (N, PE), and others of the panel are laid out: the wiring list does not have them. Lay the terminals out; none is renumbered.',
    silent: [panel([], { outputs: [{ output: 'Q1', feed: 'M1', kind: 'resistive', power: 100 }] })],
  },
  {
    rule: 'feeds-without-terminals', sheet: 'feeds', key: 'feed', severity: 'note', value: 3, limit: null,
    inStatus: false, sheets: panel([at(1, plus())], { feeds: [{ feed: 'M1', rated: 16 }], outputs: [{ output: 'Q1', feed: 'M1', kind: 'resistive', power: 100 }] }),
    message: 'Feed M1: 3 of its cores are on no terminal (all of them), and others of the panel are laid out: the wiring list does not have them. Lay the terminals out; none is renumbered.',
    silent: [panel([])],
  },
  {
    rule: 'branches-without-terminals', sheet: 'branches', key: 'branch', severity: 'note', value: 2, limit: null,
    inStatus: false, sheets: panel([at(1, plus())], { branches: [{ branch: 'B1', limit: 10 }] }),
    message: 'Branch B1: 2 of its cores are on no terminal (all of them), and others of the panel are laid out: the wiring list does not have them. Lay the terminals out; none is renumbered.',
    silent: [panel([], { branches: [{ branch: 'B1', limit: 10 }] })],
  },
];
