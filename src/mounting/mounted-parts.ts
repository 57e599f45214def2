import { grouped, isBlank, SCHEMA, type ScheduleDocument } from '../schedule/index.ts';
import {
  bandsOfPotentials, inStripOrder, listTerminals, Parts, voltageBand, type Figures, type ListedTerminal,
} from '../terminals/index.ts';

/** Sheets of which each row stands on mounting rails, in the order of their purpose from the top; strips come last. */
const ROW_SHEETS = ['feeds', 'supplies', 'ways', 'branches', 'modules'] as const;
type RowSheet = (typeof ROW_SHEETS)[number];

/** All sheets of what stands on mounting rails. */
export const MOUNTED_SHEETS = [...ROW_SHEETS, 'terminals'] as const;
export type MountedSheet = (typeof MOUNTED_SHEETS)[number];

/** Mains or extra-low voltage; a part that has both, or of which neither is known, has none. */
export type Band = 'mains' | 'elv';

/**
 * Width of an end bracket [mm], with the cover plate of the terminal beside it: one at each end of a strip. Common
 * practice, no source; usual ones take 6 to 10 mm.
 */
export const END_BRACKET = 10;

/** Width of a partition plate [mm], between terminals or mains and extra-low voltage. Common practice, no source. */
export const PARTITION = 3;

/** One thing that stands on a mounting rail as a whole. */
export interface MountedPart {
  readonly sheet: MountedSheet;
  /** Its row; of a piece of a strip those of its terminals, in their order. */
  readonly ids: readonly number[];
  /** Its tag, or the designation of its strip; empty where it has none. */
  readonly tag: string;
  /** Width that it takes of a rail [mm], with end brackets and partition plates. */
  readonly width: number;
  /** What of it is end brackets and partition plates [mm]. */
  readonly extra: number;
  readonly band: Band | undefined;
  /** Number of the rail that a person gave it, from 1. */
  readonly mountedOn: number | undefined;
  /** Which of several alike, or which piece of a strip, it is. */
  readonly piece?: { readonly number: number; readonly of: number };
}

/** What is mounted in an enclosure. */
export interface Mounted {
  readonly parts: readonly MountedPart[];
  /** Rows whose width is not known: they are in no part. */
  readonly lacking: number;
}

/** Number of the rail that a person gave a row. */
type ByHand = (sheet: MountedSheet, id: number) => number | undefined;

/** The parts that an enclosure holds, made for mounting rails of one length. */
export class MountedParts {
  readonly #parts: Parts;
  readonly #strips: ReadonlyMap<string, readonly (readonly ListedTerminal[])[]>;
  readonly #bands: ReadonlyMap<string, Band>;
  readonly #rows: ReadonlyMap<string, readonly { readonly sheet: RowSheet; readonly id: number }[]>;
  /** Outputs by the module that they name. */
  readonly #outputs: ReadonlyMap<string, readonly number[]>;

  constructor(document: ScheduleDocument, figures: Figures) {
    const parts = this.#parts = new Parts(document, figures);
    const terminals = listTerminals(document);
    this.#bands = bandsOfPotentials(parts, terminals);
    this.#strips = new Map([...grouped(terminals, ({ enclosure }) => enclosure)]
      .map(([enclosure, those]) => [enclosure, [...grouped(those, ({ strip }) => strip).values()].map(inStripOrder)]));
    const rows = ROW_SHEETS.flatMap((sheet) =>
      document.rows(sheet).filter((row) => !isBlank(row)).map(({ id }) => ({ sheet, id })));
    this.#rows = grouped(rows, ({ sheet, id }) => parts.text(sheet, id, 'enclosure'));
    this.#outputs = grouped(parts.rows('outputs'), (id) => parts.text('outputs', id, 'module'));
  }

  /**
   * The parts of an enclosure, in order of their purpose.
   * @param length of a mounting rail [mm]: a strip that is longer is divided between terminals.
   * @param options.anew nothing stands by hand.
   */
  in(enclosure: string, length: number, { anew = false }: { readonly anew?: boolean } = {}): Mounted {
    const byHand = (sheet: MountedSheet, id: number) => anew ? undefined : this.#mountedOn(sheet, id);
    const rows = (this.#rows.get(enclosure) ?? []).map(({ sheet, id }) => this.#ofRow(sheet, id, byHand));
    const strips = (this.#strips.get(enclosure) ?? []).map((strip) => this.#ofStrip(strip, length, byHand));
    const isElv = ({ parts: [part] }: Mounted) => part?.band === 'elv' ? 1 : 0;
    // Strips of mains first, as feeds come before what they feed.
    const all = [...rows, ...strips.sort((one, other) => isElv(one) - isElv(other))];
    return {
      parts: all.flatMap(({ parts }) => parts), lacking: all.reduce((sum, { lacking }) => sum + lacking, 0),
    };
  }

  #ofRow(sheet: RowSheet, id: number, byHand: ByHand): Mounted {
    const width = this.#parts.number(sheet, id, 'width');
    const units = sheet === 'supplies' ? this.#parts.number(sheet, id, 'units') : 1;
    if (width === null || units === null) return { parts: [], lacking: 1 };
    // A channel in the housing of another way stands nowhere by itself.
    if (width === 0) return { parts: [], lacking: 0 };
    const part: MountedPart = {
      sheet, ids: [id], tag: this.#parts.text(sheet, id, SCHEMA[sheet].tag), width, extra: 0,
      band: this.#bandOf(sheet, id), mountedOn: byHand(sheet, id),
    };
    return {
      parts: units === 1 ? [part]
        : Array.from({ length: units }, (_unit, place) => ({ ...part, piece: { number: place + 1, of: units } })),
      lacking: 0,
    };
  }

  #ofStrip(strip: readonly ListedTerminal[], length: number, byHand: ByHand): Mounted {
    const pieces: { width: number; plates: number; rail: number | undefined; ids: number[] }[] = [];
    let lacking = 0;
    for (const { row: { id }, hasPartition } of strip) {
      const width = this.#parts.number('terminals', id, 'width');
      if (width === null) {
        lacking += 1;
        continue;
      }
      const rail = byHand('terminals', id);
      const plates = hasPartition ? PARTITION : 0;
      const last = pieces.at(-1);
      // A terminal that says nothing stands with the one before it.
      const isWithLast = last !== undefined && (rail === undefined || last.rail === undefined || rail === last.rail);
      const fits = last !== undefined
        && (last.rail ?? rail) === undefined ? last.width + width + plates + 2 * END_BRACKET <= length : true;
      if (isWithLast && fits) {
        last.width += width + plates;
        last.plates += plates;
        last.rail ??= rail;
        last.ids.push(id);
      } else pieces.push({ width: width + plates, plates, rail, ids: [id] });
    }
    const bands = new Set(strip.map(({ potential }) => this.#bands.get(potential)));
    return {
      lacking,
      parts: pieces.map(({ width, plates, rail, ids }, place): MountedPart => ({
        sheet: 'terminals', ids, tag: strip[0]!.strip === '' ? strip[0]!.terminal : strip[0]!.strip,
        width: width + 2 * END_BRACKET, extra: plates + 2 * END_BRACKET,
        // A strip with both is one of mains: what stands beside it is to be parted from that.
        band: bands.has('mains') ? 'mains' : bands.has('elv') ? 'elv' : undefined, mountedOn: rail,
        ...pieces.length === 1 ? {} : { piece: { number: place + 1, of: pieces.length } },
      })),
    };
  }

  #mountedOn(sheet: MountedSheet, id: number): number | undefined {
    const rail = this.#parts.number(sheet, id, 'mountedOn');
    return rail === null || rail < 1 ? undefined : rail;
  }

  #bandOf(sheet: RowSheet, id: number): Band | undefined {
    const parts = this.#parts;
    switch (sheet) {
      // Its input is mains and its output extra-low voltage, parted within its housing.
      case 'supplies': return undefined;
      case 'feeds': return voltageBand(parts.number(sheet, id, 'voltage'), '') ?? 'mains';
      case 'ways': case 'branches': return 'elv';
      case 'modules': {
        const tag = parts.text(sheet, id, 'module');
        const bands = (tag === '' ? [] : this.#outputs.get(tag) ?? []).map((output) =>
          voltageBand(parts.number('outputs', output, 'voltage'), parts.text('outputs', output, 'kind')));
        // A contact of which nothing is known may switch mains.
        return bands.length > 0 && bands.every((band) => band === 'elv') ? 'elv' : 'mains';
      }
    }
  }
}
