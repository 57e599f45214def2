import { headingKey } from './draft-lines.ts';
import { findHeading, headingScore } from './find-heading.ts';
import type { TakeoffRecord } from './records.ts';
import type { RememberedColumns } from './remembered-columns.ts';
import { bandsBetweenBlanks, bandsOfHeadings, withinBand, type Band } from './side-by-side.ts';

/** One of the lists on a sheet, with its lines. */
export interface Section {
  readonly records: readonly TakeoffRecord[];
  /** Its columns, where others stand beside it. */
  readonly band?: Band;
}

/** Two fields, both by exact words: a line that is no heading hardly has them. */
const LEAST_SCORE = 2.001;

/** The lists on a sheet, beside and below one another. */
export function sectionsOf(records: readonly TakeoffRecord[], remembered: RememberedColumns): Section[] {
  return inBands({ records }, bandsBetweenBlanks(records, remembered), remembered).flatMap(({ records: own, band }) =>
    belowOneAnother(own, remembered).flatMap((section): Section[] => {
      if (band !== undefined) return [{ records: section, band }];
      const headings = section[findHeading(section, remembered)]?.fields ?? [];
      const width = section.reduce((most, { fields }) => Math.max(most, fields.length), 0);
      return inBands({ records: section }, bandsOfHeadings(headings, width), remembered);
    }));
}

function inBands(section: Section, bands: readonly Band[], remembered: RememberedColumns): Section[] {
  if (bands.length === 0) return [section];
  const headingLine = section.records[findHeading(section.records, remembered)]?.line ?? 0;
  return bands.map((band, place) => ({ band, records: withinBand(section.records, band, place === 0, headingLine) }));
}

/** Lists that stand below one another on a sheet, each with headings of its own. */
function belowOneAnother(records: readonly TakeoffRecord[], remembered: RememberedColumns): TakeoffRecord[][] {
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
