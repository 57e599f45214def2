import type { Words } from '../../words/index.ts';
import type { Unreadable } from '../problem.ts';
import { looksLikeArea } from './area-words.ts';
import { proposeColumns } from './columns.ts';
import { headingKey } from './draft-lines.ts';
import { findHeading, headingsBelow, headingScore } from './find-heading.ts';
import { isLegend, Legend } from './legend.ts';
import { LineCells } from './line-cells.ts';
import type { TypeIndex } from './names/type-index.ts';
import type { OpenPart } from './part.ts';
import { recordsOf, type TakeoffRecord } from './records.ts';
import type { RememberedColumns } from './remembered-columns.ts';
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
  const sections: { readonly table: TakeoffTable; readonly records: readonly TakeoffRecord[] }[] = [];
  const knownOf = (table: TakeoffTable) => ({ ...columns, ...table.columns });
  for (const table of tables) {
    const remembered = knownOf(table);
    const read = recordsOf(table.cells, remembered, words);
    // An empty sheet beside others has nothing to say.
    if (!read.ok && !(tables.length > 1 && read.problems[0]?.code === 'csv-empty')) return read;
    if (read.ok) sections.push(...sectionsOf(read.records, remembered).map((records) => ({ table, records })));
  }
  if (sections.length === 0) return recordsOf([], columns, words) as Unreadable;
  const open = ({ table, records }: (typeof sections)[number]): OpenPart => {
    const remembered = knownOf(table);
    const place = findHeading(records, remembered);
    const above = records[place]?.fields ?? [];
    const second = place < 0 ? undefined : headingsBelow(above, records[place + 1]?.fields);
    const last = second === undefined ? place : place + 1;
    const proposed = proposeColumns(second ?? above, records.slice(last + 1), remembered, isKnown);
    const isCounted = proposed.some(({ field }) => field === 'qty');
    const kind = place >= 0 && isLegend(proposed) ? 'legend' : isCounted || sections.length === 1 ? 'list' : 'none';
    const { sheet } = table;
    const isArea = sheet !== undefined && (looksLikeArea(sheet) || (tables.length > 1 && !isPlainName(sheet)));
    return {
      table, records, kind, columns: proposed, headingLine: records[place]?.line, lastHeading: records[last]?.line,
      firstLine: records[0]!.line,
      sheetArea: isArea ? sheet : undefined,
    };
  };
  const notes = sections.map(open).filter(({ kind }) => kind === 'legend')
    .flatMap((part) => explain(part, legend, decimal, words));
  // What codes mean tells rooms from types.
  return { ok: true, legend, notes, parts: sections.map(open) };
}

/** Two fields, both by exact words: a line that is no heading hardly has them. */
const LEAST_SCORE = 2.001;

/** Lists that stand below one another on a sheet, each with headings of its own. */
function sectionsOf(records: readonly TakeoffRecord[], remembered: RememberedColumns): TakeoffRecord[][] {
  const first = findHeading(records, remembered);
  const key = first < 0 ? '' : headingKey(records[first]!.fields);
  const sections: TakeoffRecord[][] = [[]];
  for (const [place, record] of records.entries()) {
    const isOther = first >= 0 && place > first && headingKey(record.fields) !== key
      && headingScore(record.fields, remembered) > LEAST_SCORE;
    if (isOther) sections.push([]);
    sections.at(-1)!.push(record);
  }
  return sections;
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
