import { findColumn, type CellValue, type Cells } from '../../schedule/index.ts';
import { message, type Words } from '../../words/index.ts';
import type { Takeoff } from './read-takeoff.ts';

/** What the lines of a takeoff say of a new type. */
export interface TypeFacts {
  /** Cells of the sheet of types, in which all lines that say something agree. */
  readonly cells: Cells;
  /** Keys of what the lines say differently, and which stays unknown. */
  readonly disagreeing: readonly string[];
}

/** What a new type says of itself until somebody completes it. */
const WITHOUT_FIGURES = message('From a takeoff. Enter its draw or its power, and say where the figure comes from.');
const WITH_FIGURES = message('From a takeoff, with the figures of its list. Check them against the data sheet.');

/** What a takeoff says of each new type, by its tag: figures that stand in its lines, none that are guessed. */
export function factsOfNew({ names, lines }: Takeoff): Map<string, TypeFacts> {
  const said = new Map<string, Map<string, Set<CellValue>>>();
  for (const { state, type } of names) if (state === 'new' && type !== null) said.set(type, new Map());
  for (const { type, outcome, facts } of lines) {
    const ofType = outcome === 'left-out' ? undefined : said.get(type ?? '');
    for (const [key, value] of Object.entries(ofType === undefined ? {} : facts)) {
      if (findColumn('types', key)?.role !== 'input' || value === null) continue;
      ofType!.set(key, (ofType!.get(key) ?? new Set()).add(value));
    }
  }
  return new Map([...said].map(([type, facts]) => [type, {
    cells: Object.fromEntries([...facts].filter(([, values]) => values.size === 1).map(([key, [value]]) => [key, value!])),
    disagreeing: [...facts].filter(([, values]) => values.size > 1).map(([key]) => key),
  }]));
}

/** Rows for the new types of a takeoff that devices are of. */
export function newTypes(takeoff: Takeoff, words: Words): Cells[] {
  const used = new Set(takeoff.rows.map(({ type }) => type));
  const descriptions = new Map(takeoff.names.map(({ type, texts }) => [type, texts[1]] as const).reverse());
  return [...factsOfNew(takeoff)].filter(([type]) => used.has(type)).map(([type, { cells }]) => {
    const description = descriptions.get(type);
    const note = words.say(Object.keys(cells).length === 0 ? WITHOUT_FIGURES : WITH_FIGURES);
    return { type, ...(description === undefined ? {} : { description }), ...cells, note };
  });
}
