export { LAYOUT_PARTS, layOutTerminals, layoutChanges, type Layout, type LayoutPart, type TerminalEdit } from './lay-out.ts';
export { STRIP_KINDS, type LeftOut, type StripKind } from './wanted.ts';
export { bridgeCurrents, type BridgeCurrent } from './bridge-currents.ts';
export { bandsOfPotentials, terminalFaults, type TerminalFaults } from './terminal-faults.ts';
export { Parts, type Figures } from './parts.ts';
export { inStripOrder, listTerminals, type ListedTerminal } from './placed-terminals.ts';
export { voltageBand } from './voltage-band.ts';
export {
  cableSchedule, insideWires, stripLines, wiredTerminals, type CableLine, type InsideWire, type StripLine,
  type WiredTerminal,
} from './wiring.ts';
export {
  holdsNothing, isDisturbed, isLeft, noteAt, progressOf, tickedBy, tickedFor, tickState, tickTerminal, TICK_NAMES,
  type Progress, type TickName, type TickState,
} from './progress.ts';
export { leftWithout, type LeftWithout } from './left-without.ts';
export { BUS_ENDS, busEnds, type BusEnds } from './bus-ends.ts';
