import type { LoadedSheet } from '../../src/engine/index.ts';

/** A supply, way, feed or run in one of the cases, -1 for the diversity of rows alone. */
export interface CasePlace {
  readonly sheet: LoadedSheet;
  readonly id: number;
  readonly place: number;
}
