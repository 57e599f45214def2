import { grouped, tagOf, type ScheduleDocument } from '../schedule/index.ts';
import { Parts, type Figures } from './parts.ts';
import { listTerminals } from './placed-terminals.ts';
import { wantedTerminals, type LeftOut } from './wanted.ts';

/** Cores of a cable that no terminal holds although terminals of their enclosure are laid out. */
export interface LeftWithout {
  /** Their marks, in the order in which they would be laid out. */
  readonly cores: readonly string[];
  /** How many cores the cable has in enclosures whose terminals are laid out. */
  readonly all: number;
}

/**
 * The cables of a sheet that laying out would give terminals, by the id of their row; none in an enclosure without any
 * terminal, which nobody has begun to lay out.
 */
export function leftWithout(document: ScheduleDocument, figures: Figures, sheet: LeftOut['sheet']): Map<number, LeftWithout> {
  const found = new Map<number, LeftWithout>();
  const terminals = listTerminals(document);
  if (terminals.length === 0) return found;
  const laidOut = new Set(terminals.map(({ enclosure }) => enclosure));
  // A cable from one enclosure to another has the same core in both.
  const end = (enclosure: string, tag: string, core: string) => JSON.stringify([enclosure, tag, core]);
  const held = new Set(terminals.map(({ enclosure, outside, core }) => end(enclosure, outside, core)));
  const parts = new Parts(document, figures);
  const cores = grouped(wantedTerminals(parts).wanted
    .filter(({ outside, enclosure }) => outside !== '' && laidOut.has(enclosure)), ({ outside }) => outside);
  for (const row of document.rows(sheet)) {
    const tag = tagOf(sheet, row);
    const asked = tag === '' || parts.find(sheet, tag) !== row.id ? [] : cores.get(tag) ?? [];
    const missing = asked.filter(({ enclosure, core }) => !held.has(end(enclosure, tag, core))).map(({ core }) => core);
    if (missing.length > 0) found.set(row.id, { cores: missing, all: asked.length });
  }
  return found;
}
