import type { PanelChoice } from '../../engine/index.ts';

/** What an item of a bill is: a device, or what a sheet of the schedule lists. */
export type BillKind = 'device' | 'supply' | 'way' | 'module' | 'enclosure' | 'conductor';

/** One line of a bill of quantities. */
export interface BillItem {
  /**
   * What it is, the same in every bill and language, by which bills are compared: kind, then name or ratings, as
   * `supply/24/5`. Items that differ in panel, part number or price alone have the same.
   */
  readonly key: string;
  /** Tag of the enclosure that it belongs to; `null` where none is said, and in a bill of all panels. */
  readonly panel: string | null;
  readonly kind: BillKind;
  /** What it is, in words: the name of a type or a conductor, the ratings of anything else. */
  readonly item: string;
  /** How many, or how many metres, as far as that is known; `null` where nothing of it is. */
  readonly quantity: number | null;
  readonly unit: 'pcs' | 'm';
  readonly partNumber: string | null;
  /** Price of one, or of a metre; `null` where none is entered. */
  readonly price: number | null;
  /** Quantity × price; `null` where one of them is not known. */
  readonly amount: number | null;
  /** Rows whose quantity is not known and is not in it. */
  readonly unknownRows: number;
  /** How the quantity comes about, in some sentences. */
  readonly why: string;
}

/** What amounts come to. */
export interface BillSum {
  /** As of an item. */
  readonly panel: string | null;
  /** Sum of the amounts that are known. */
  readonly amount: number;
  /** Items without an amount, which are not in it. */
  readonly without: number;
}

/** A bill of quantities. */
export interface Bill {
  /** By panel, in the order of the enclosures; what is in none comes last. */
  readonly items: readonly BillItem[];
  /** The same of all panels together. */
  readonly inAll: readonly BillItem[];
  /** Sums by panel, and that of all with the panel `null` at the end. */
  readonly sums: readonly BillSum[];
}

/** Share that cables are longer than on drawings unless said otherwise; common practice, no source. */
export const ALLOWANCE = 0.1;

/** What a bill is made by. */
export interface BillOptions {
  /** Share that cables are longer than on drawings, for what is cut off and led around, 0 or more; see `ALLOWANCE`. */
  readonly allowance?: number;
  /** Only this panel; `null` for what is in none. */
  readonly panel?: PanelChoice;
}
