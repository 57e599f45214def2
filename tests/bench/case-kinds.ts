import type { CellValue, SheetName } from '../../src/schedule/index.ts';

/** What one process measures of a schedule with cases, or of the same without any. */
export interface CaseTask {
  readonly rows: number;
  readonly runs: number;
  readonly cases: number;
  readonly calls: number;
}

/** An edit that is timed: a value for each call, another each time. */
export interface CaseEdit {
  readonly kind: string;
  readonly sheet: SheetName;
  readonly key: string;
  readonly value: (call: number) => CellValue;
}

/** Edits that a schedule without cases knows too. */
export const CASE_EDITS: readonly CaseEdit[] = [
  { kind: 'diversity edit', sheet: 'devices', key: 'diversity', value: (call) => 0.123 + call / 1000 },
  { kind: 'quantity edit', sheet: 'devices', key: 'qty', value: (call) => 11 + call },
  { kind: 'type draw edit', sheet: 'types', key: 'draw', value: (call) => 20 + call },
  { kind: 'supply rating edit', sheet: 'supplies', key: 'rated', value: (call) => 77 + call },
];
/** An edit in a variant: quantities that none of the edits before has given. */
export const TRIED_EDIT: CaseEdit = { kind: 'quantity edit', sheet: 'devices', key: 'qty', value: (call) => 51 + call };
export const FACTOR_EDIT: CaseEdit = { kind: 'factor edit', sheet: 'factors', key: 'factor', value: (call) => 0.123 + call / 1000 };

export const OPENING = 'until figures are known';
export const VARIANT = ['begin a variant', 'edit in it', 'compare it', 'take it over'] as const;
