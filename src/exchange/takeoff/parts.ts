import type { Words } from '../../words/index.ts';
import type { Unreadable } from '../problem.ts';
import { looksLikeArea } from './area-words.ts';
import { proposeColumns } from './columns.ts';
import { findHeadings } from './find-heading.ts';
import { isLegend, Legend } from './legend.ts';
import { LineCells } from './line-cells.ts';
import type { TypeIndex } from './names/type-index.ts';
import type { OpenPart } from './part.ts';
import { recordsOf } from './records.ts';
import { sectionsOf, type Section } from './sections.ts';
import type { TakeoffTable } from './source.ts';
import type { TakeoffOptions } from './takeoff-options.ts';

interface Parts {
  readonly ok: true;
  readonly parts: readonly OpenPart[];
  readonly legend: Legend;
  readonly notes: readonly string[];
}

/** Takes tables apart into lists and legends, and finds out what the columns of each hold. */
export function readParts(
  tables: readonly TakeoffTable[], { columns = {}, decimal }: TakeoffOptions, index: TypeIndex, words: Words,
): Parts | Unreadable {
  const legend = new Legend();
  const isKnown = (name: string) => legend.find(name) !== undefined || index.match([name]).by !== 'none';
  const sections: (Section & { readonly table: TakeoffTable })[] = [];
  const notes: string[] = [];
  const knownOf = (table: TakeoffTable) => ({ ...columns, ...table.columns });
  for (const table of tables) {
    const remembered = knownOf(table);
    const read = recordsOf(table.cells, remembered, words);
    // An empty sheet beside others has nothing to say.
    if (!read.ok && !(tables.length > 1 && read.problems[0]?.code === 'csv-empty')) return read;
    if (!read.ok) continue;
    const own = sectionsOf(read.records, remembered);
    sections.push(...own.map((section) => ({ ...section, table })));
    const beside = own.filter(({ band }) => band !== undefined).length;
    if (beside > 0) notes.push(on(table, words.say('{count} lists stand side by side. Each is read by itself.', { count: beside }), words));
  }
  if (sections.length === 0) return recordsOf([], columns, words) as Unreadable;
  const open = ({ table, records, band }: (typeof sections)[number]): OpenPart => {
    const remembered = knownOf(table);
    const { first: place, last, texts } = findHeadings(records, remembered);
    const proposed = proposeColumns(texts, records.slice(last + 1), remembered, isKnown)
      .filter(({ index: place }) => band?.columns.includes(place) ?? true);
    const isCounted = proposed.some(({ field }) => field === 'qty');
    const kind = place >= 0 && isLegend(proposed) ? 'legend' : isCounted || sections.length === 1 ? 'list' : 'none';
    const { sheet } = table;
    const isArea = sheet !== undefined && (looksLikeArea(sheet) || (tables.length > 1 && !isPlainName(sheet)));
    return {
      table, records, kind, columns: proposed, headingLine: records[place]?.line, lastHeading: records[last]?.line,
      firstLine: records[0]!.line,
      sheetArea: isArea ? sheet : undefined, ...(band === undefined ? {} : { band }),
    };
  };
  notes.push(...sections.map(open).filter(({ kind }) => kind === 'legend')
    .flatMap((part) => explain(part, legend, decimal, words)));
  // What codes mean tells rooms from types.
  return { ok: true, legend, notes, parts: sections.map(open) };
}

/** A note with the sheet that it is about. */
export function on({ sheet }: TakeoffTable, note: string, words: Words): string {
  return sheet === undefined ? note : words.say('Sheet “{sheet}”: {note}', { sheet, note });
}

/** Takes what a legend says of its codes. @returns notes on codes that are explained in two ways. */
function explain({ records, columns, headingLine }: OpenPart, legend: Legend, decimal: TakeoffOptions['decimal'], words: Words): string[] {
  const cells = new LineCells(columns, undefined, words);
  return records.filter(({ line }) => line > headingLine!).flatMap(({ fields }) => {
    const code = cells.cell(fields, 'type');
    if (code === '') return [];
    const isOther = legend.add(code, { description: cells.cell(fields, 'description'), facts: cells.facts(fields, decimal) });
    return isOther ? [words.say('“{code}” is explained in two ways, of which none is taken.', { code })] : [];
  });
}

/** Whether a sheet has the name that programs give to a new one. */
function isPlainName(sheet: string): boolean {
  return /^(?:sheet|tabelle|feuille?|blatt|table)?\s*\d*$/i.test(sheet.trim());
}
