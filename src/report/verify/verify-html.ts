import { embeddedSchedule, EMBEDDED_ID, readSchedule } from '../../exchange/index.ts';
import { LoadSchedule } from '../../load-schedule.ts';
import { loadWords, type Words } from '../../words/index.ts';
import { buildReport } from '../model/index.ts';
import { loadTableHtml } from '../load-table-html.ts';
import { SOFTWARE } from '../software.ts';
import { linesThatDiffer } from './match-lines.ts';
import { readAs, shownLines, type PageLine } from './shown-lines.ts';
import { notCompared, otherDigest, otherText, readScope, UNVERIFIED, type Verification } from './verification.ts';

/** Section that tells what has changed since a schedule which the page does not carry. */
const SINCE = 'changes';

/**
 * Makes a load table in HTML anew of the schedule that it carries and compares the two: title block, digest, figures,
 * sentences and pictures, and at last the markup, which can hide or add something.
 * @param words the language of what is said.
 */
export async function verifyHtml(page: string, words: Words): Promise<Verification> {
  const text = embeddedSchedule(page);
  const read = text === undefined ? undefined : readSchedule(text, words);
  if (read?.ok !== true) return notCompared('carriesNone', words);
  const [, made] = new RegExp(`<template id="${EMBEDDED_ID}" data-scope="([^"]*)"`).exec(page) ?? [];
  const scope = made === undefined ? undefined : readScope(readAs(made));
  if (scope === undefined) return notCompared('unsaid', words);
  let schedule: LoadSchedule | undefined;
  try {
    schedule = new LoadSchedule(read.content, { words: await loadWords(languageIn(page)) });
    if (!await schedule.formulasReady()) return notCompared('unfetched', words);
    const { page: paper, since, ...options } = scope;
    const report = buildReport(schedule, options);
    const differs = compared(page, loadTableHtml(report, { paper, schedule: text! }), report.issue.digest, words);
    const isOther = differs.length === 0 && !page.includes(SOFTWARE);
    const unverified = [...since ? [UNVERIFIED.since] : [], ...isOther ? [UNVERIFIED.otherVersion] : []];
    return { differs, unverified: unverified.map((each) => words.say(each)) };
  } finally {
    schedule?.dispose();
  }
}

const languageIn = (page: string): string => /<html lang="([^"]*)"/.exec(page)?.[1] ?? 'en';

function compared(page: string, anew: string, digest: string, words: Words): string[] {
  const isOurs = ({ part }: PageLine) => !part.startsWith(`${SINCE} `);
  const pairs = linesThatDiffer(shownLines(page).filter(isOurs), shownLines(anew).filter(isOurs));
  const found = pairs.flatMap(({ shown, due }) => {
    const place = (due ?? shown)!.place.join(', ');
    if (shown === undefined) return [words.say('{place}: “{due}” follows from the schedule and is not shown.', { place, due: textOf(due!) })];
    if (due === undefined) return [words.say('{place}: “{shown}” is shown and does not follow from the schedule.', { place, shown: textOf(shown) })];
    if ([...due.texts.values()].includes(digest)) return [otherDigest(words)];
    if (due.part.endsWith(' figure')) return [words.say('{place}: the picture is not the one that follows from the schedule.', { place })];
    return [...new Set([...due.texts.keys(), ...shown.texts.keys()])].flatMap((column) => {
      const [is, should] = [shown.texts.get(column) ?? '', due.texts.get(column) ?? ''];
      const at = [place, due.columns[column] ?? ''].filter((each) => each !== '').join(', ');
      return is === should ? [] : [otherText(at, is, should, words)];
    });
  });
  // Another version may write the same with other markup.
  if (found.length > 0 || !page.includes(SOFTWARE) || markup(page) === markup(anew)) return found;
  return [words.say('The markup of the page is not as it was written: something may be hidden, or added.')];
}

const textOf = ({ texts }: PageLine): string => [...texts.values()].filter((text) => text !== '').join(' | ');

/** The markup of a page without what is not compared, however its lines are broken and its signs are written. */
function markup(page: string): string {
  return readAs(page.replace(new RegExp(`<section id="${SINCE}"[\\s\\S]*?</section>`), '')
    .replace(new RegExp(`<li><a href="#${SINCE}">[\\s\\S]*?</li>`), '').replace(/ data-scope="[^"]*"/, ''));
}
