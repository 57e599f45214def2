export { layOutTerminals, layoutChanges, type Layout, type LayoutPart, type TerminalEdit } from './lay-out.ts';
export { STRIP_KINDS, type LeftOut, type StripKind } from './wanted.ts';
