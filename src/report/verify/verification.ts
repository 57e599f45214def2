import { SHEET_NAMES, type SheetName } from '../../schedule/index.ts';
import { message, type Words } from '../../words/index.ts';
import { FORMS, SECTION_NAMES, type Form, type ReportScope, type SectionName } from '../model/index.ts';
import { PAPERS, type Paper } from '../paper.ts';

/** What comparing a document with the schedule that it carries comes to. */
export interface Verification {
  /** A sentence for each place where they do not agree. */
  readonly differs: readonly string[];
  /** Why all of it, or a part, was not compared, a sentence each. */
  readonly unverified: readonly string[];
}

/** What cannot be compared, and why. */
export const UNVERIFIED = {
  carriesNone: message('The file carries no schedule that can be read, so that what it shows was not compared.'),
  unsaid: message('The file does not say how it was made, as older ones do not, so that what it shows was not compared.'),
  unfetched: message('A part of the software could not be fetched, so that what the file shows was not compared.'),
  since: message('The changes since an older schedule were not compared, since the file does not carry that one.'),
  otherVersion: message('The page was made by another version of the software, so that its markup, which can hide something, was not compared.'),
} as const;

/** Nothing was compared, for a reason. */
export const notCompared = (reason: keyof typeof UNVERIFIED, words: Words): Verification =>
  ({ differs: [], unverified: [words.say(UNVERIFIED[reason])] });

/** Says that a place shows another text than the one that is due. */
export function otherText(place: string, shown: string, due: string, words: Words): string {
  return words.say('{place}: “{shown}” is shown, and “{due}” follows from the schedule that the file carries.', { place, shown, due });
}

/** Says that the digits of the digest are those of another schedule. */
export const otherDigest = (words: Words): string => words.say(
  'The SHA-256 that is shown is not that of the schedule that the file carries: one of the two was changed after it was made.'
);

/**
 * How a document was made, as it says itself, and the paper that a page asks for.
 * @returns `undefined` where somebody typed over it.
 */
export function readScope(json: string): (ReportScope & { readonly page?: Paper }) | undefined {
  let given: unknown;
  try {
    given = JSON.parse(json);
  } catch {
    return undefined;
  }
  const { generated, sheet, panel, since, paper, page, form, without, allPictures } =
    (given ?? {}) as Readonly<Record<string, unknown>>;
  const isSection = (name: unknown) => SECTION_NAMES.includes(name as SectionName);
  const isKnown = typeof generated === 'string' && typeof since === 'boolean'
    && (sheet === undefined || SHEET_NAMES.includes(sheet as SheetName))
    && (form === undefined || FORMS.includes(form as Form)) && (allPictures === undefined || allPictures === true)
    && (without === undefined || (Array.isArray(without) && without.every(isSection)))
    && (panel === undefined || panel === null || typeof panel === 'string')
    && [paper, page].every((each) => each === undefined || PAPERS.includes(each as Paper));
  return isKnown ? given as ReportScope & { page?: Paper } : undefined;
}
