import { plainWords } from './plain-words.ts';

/** What the name of a list says beside what is listed. */
export interface ListIssue {
  /** The name without words of an issue and marks of a copy. */
  readonly bare: string;
  /** It is called a copy, or what was before. */
  readonly isAside: boolean;
  /** It is called an issue of something, or a copy. */
  readonly isIssue: boolean;
}

/** Marks that programs and persons put on copies of a file or a sheet; common practice, no source. */
const NUMBER = /\s*\((\d{1,2})\)\s*$/u;
const COPY = /\b(?:copy(?: of| \d{1,2})?|kopie(?: von| \d{1,2})?|copie(?: de| \d{1,2})?|backup|sicherung)\b/gu;
/** Words of what was before, in English, German and French; common practice, no source. */
const OLD = /\b(?:old|previous|superseded|alt|alte|alter|bisher|vorher|ancien|ancienne|precedent)\b/gu;
/** Words of an issue and what counts it, years and days; common practice, no source. */
const ISSUE = new RegExp(`\\b(?:${[
  '(?:rev|revision|index|indice|version|stand|issue|ausgabe)(?: (?:[a-z]|\\d[\\d.]*))?', '(?:rev|v)\\d[\\d.]*', 'rev[a-z]',
  'new', 'neu', 'neue', 'nouveau', 'nouvelle', 'final', 'draft', 'entwurf', 'updated', 'aktuell', 'current',
  '(?:19|20)\\d{2}(?: ?\\d{2} ?\\d{2})?', '\\d{1,2}\\.\\d{1,2}\\.(?:\\d{2}){1,2}',
].join('|')})\\b`, 'gu');

/** What the name of a file or a sheet says of the issue of its list: «EG alt», «list rev B.xlsx», «EG (2)». */
export function listIssue(name: string): ListIssue {
  const stem = name.replace(NUMBER, ' copy ').replace(/\.[a-z]{2,4}\d?(?=\s|$)/iu, ' ').replace(NUMBER, ' copy ');
  const text = plainWords(stem.replace(/_/g, ' ')).join(' ');
  const without = text.replace(COPY, ' ').replace(OLD, ' ');
  const tidy = (some: string) => some.replace(/\s+/g, ' ').trim();
  const bare = tidy(without.replace(ISSUE, ' '));
  return { bare, isAside: tidy(without) !== text, isIssue: bare !== text };
}
