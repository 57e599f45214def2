import { readFileSync } from 'node:fs';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { findColumn, isFormula, type CellValue, type Cells, type Content, type SheetName } from '../../src/schedule/index.ts';

type Texts = Readonly<Record<string, string>>;

/** A number of a room, or of several, before its name: `1.01–1.02 Practice rooms`. */
const NUMBERED = /^(\d+\.\d+(?:–\d+\.\d+)? )(.+)$/;

/** The languages in which there is a demo beside the English one. */
export const DEMO_LANGUAGES = ['de', 'fr'] as const;

/**
 * The demo in another language, as the text of its file: the same rows and figures, with names, areas and notes by the
 * table of texts `scripts/demos/LANGUAGE.json`.
 * @param file the English demo.
 * @throws Error naming every text that the table lacks.
 */
export function translateDemo(file: string, language: (typeof DEMO_LANGUAGES)[number]): string {
  const read = readSchedule(file);
  if (!read.ok) throw new Error(read.problems[0]!.message);
  const texts = JSON.parse(readFileSync(new URL(`${language}.json`, import.meta.url), 'utf8')) as Texts;
  const lacking = new Set<string>();
  const say = (text: string): string => {
    const said = sayIn(texts, text);
    if (said === undefined) lacking.add(text);
    return said ?? text;
  };
  const content = translated(read.content, say);
  if (lacking.size > 0) throw new Error(`${language}.json lacks: ${[...lacking].join(' | ')}`);
  // A row a line, so that a change of one is seen as such.
  return `${writeSchedule(content).trim().replaceAll('},{', '},\n{')}\n`;
}

/** A text by the table, whole, without the number of a room, or part by part; tags and codes stay as they are. */
function sayIn(texts: Texts, text: string): string | undefined {
  if (text in texts) return texts[text];
  const [, number, name] = NUMBERED.exec(text) ?? [];
  if (number !== undefined) {
    const said = sayIn(texts, name!);
    return said === undefined ? undefined : number + said;
  }
  const parts = text.split(', ');
  if (parts.length > 1) {
    const said = parts.map((part) => sayIn(texts, part));
    return said.includes(undefined) ? undefined : said.join(', ');
  }
  return /\p{Ll}{2}/u.test(text) ? undefined : text;
}

function translated(content: Content, say: (text: string) => string): Content {
  const sheets = Object.fromEntries(Object.entries(content.sheets).map(([sheet, rows]) =>
    [sheet, rows.map((cells) => translatedRow(sheet as SheetName, cells, say))]));
  const { details, accepted = [], revisions = [] } = content;
  return {
    ...content, sheets,
    details: Object.fromEntries(Object.entries(details).map(([key, text]) => [key, say(text)])),
    accepted: accepted.map((each) => ({ ...each, tag: say(each.tag), reason: say(each.reason) })),
    revisions: revisions.map((each) => ({ ...each, text: say(each.text) })),
  };
}

function translatedRow(sheet: SheetName, cells: Readonly<Cells>, say: (text: string) => string): Cells {
  return Object.fromEntries(Object.entries(cells).map(([key, value]): [string, CellValue] => {
    const kind = findColumn(sheet, key)?.kind;
    if (typeof value !== 'string' || isFormula(value) || (kind !== 'text' && kind !== 'reference')) return [key, value];
    return [key, key === 'aliases' ? aliases(cells, value, say) : say(value)];
  }));
}

/** What a type is called besides: in English, and as before but for its own name. */
function aliases({ type }: Readonly<Cells>, others: string, say: (text: string) => string): string {
  const own = say(String(type));
  return [...new Set([String(type), ...others.split('; ')])]
    .filter((name) => name.toLowerCase() !== own.toLowerCase()).join('; ');
}
