import { grouped } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import { looksLikeArea } from './area-words.ts';
import { askedLines } from './asked-lines.ts';
import type { TakeoffDecisions } from './decisions.ts';
import type { LineDraft } from './line.ts';
import { listIssue } from './list-issue.ts';
import type { OpenPart } from './part.ts';
import { plainKey } from './plain-words.ts';
import { listName } from './source-text.ts';
import type { TakeoffTable } from './source.ts';

/**
 * From which part of the rows on lists of one name, and of any names, are taken for the same; common practice, no
 * source.
 */
const [SAME_NAME, ANY_NAME, LEAST_ROWS] = [0.5, 0.8, 3];

/** What is listed in a table: places with types, apart from the name of its sheet, and those that name a room. */
interface Listed {
  readonly table: TakeoffTable;
  readonly name: string;
  readonly rows: ReadonlySet<string>;
  readonly inRooms: ReadonlySet<string>;
}

/** Tables that hold the same once more, by what is said of their lines. */
interface Repeats {
  readonly asked: ReadonlyMap<TakeoffTable, string>;
  readonly notes: readonly string[];
}

/**
 * Lists that stand in a takeoff twice would count twice: two issues of one list, a copy, or a list of which most rows
 * stand in another one. Their lines are asked about; where two names tell places apart, what they have in common is
 * said alone, since storeys may well be alike.
 */
export function askOfRepeats(
  drafts: readonly (readonly LineDraft[])[], parts: readonly OpenPart[], decisions: TakeoffDecisions, words: Words,
): { readonly drafts: LineDraft[][]; readonly notes: readonly string[] } {
  const { asked, notes } = repeatsAmong(listedIn(drafts, parts), words);
  return { notes, drafts: drafts.map((lines, place) => {
    const why = asked.get(parts[place]!.table);
    return why === undefined ? [...lines] : askedLines(lines, why, decisions);
  }) };
}

function listedIn(drafts: readonly (readonly LineDraft[])[], parts: readonly OpenPart[]): Listed[] {
  return [...grouped(drafts.keys(), (place) => parts[place]!.table)].map(([table, places]) => {
    const [rows, inRooms] = [new Set<string>(), new Set<string>()];
    for (const place of places) {
      const { sheetArea } = parts[place]!;
      for (const { names, cells: { area, ref }, qty, isTotal } of drafts[place]!) {
        if (names.length === 0 || isTotal || (qty ?? 0) === 0) continue;
        const own = typeof area === 'string' && area.startsWith(`${sheetArea}, `) ? area.slice(sheetArea!.length + 2) : area;
        const room = own === sheetArea ? '' : plainKey(own);
        const key = JSON.stringify([plainKey(ref), room, plainKey(names.join(' '))]);
        rows.add(key);
        if (room !== '') inRooms.add(key);
      }
    }
    return { table, name: listName(table), rows, inRooms };
  }).filter(({ rows }) => rows.size > 0);
}

function repeatsAmong(lists: readonly Listed[], words: Words): Repeats {
  const asked = new Map<TakeoffTable, string>();
  const notes: string[] = [];
  for (const [place, list] of lists.entries()) {
    for (const before of lists.slice(0, place)) {
      const [issue, earlier] = [issueOf(list.table), issueOf(before.table)];
      const isOneName = issue.bare === earlier.bare && (issue.isIssue || earlier.isIssue);
      const names = { list: list.name, other: before.name };
      if (isOneName && shareOf(list.rows, before.rows) >= SAME_NAME) {
        const why = words.say('“{list}” and “{other}” are called like two issues of one list. Take the lines of the one that counts, and leave the others out.', names);
        const aside = [list, before].filter(({ table }) => issueOf(table).isAside);
        for (const { table } of aside.length === 1 ? aside : [list, before]) asked.set(table, why);
      } else if (list.inRooms.size >= LEAST_ROWS && shareOf(list.inRooms, before.inRooms) >= ANY_NAME) {
        if (tellApart(list.table, before.table)) notes.push(words.say('“{list}” and “{other}” have most rows in common, and both count.', names));
        else asked.set(list.table, words.say('“{list}” has most rows in common with “{other}”. Take its lines only if they count besides.', names));
      }
    }
  }
  return { asked, notes };
}

/** How much of the shorter list stands in the other one, 0 to 1. */
function shareOf(one: ReadonlySet<string>, other: ReadonlySet<string>): number {
  const [shorter, longer] = one.size < other.size ? [one, other] : [other, one];
  return shorter.size === 0 ? 0 : [...shorter].filter((row) => longer.has(row)).length / shorter.size;
}

/** Whether the names of two lists are those of two places: «L0» and «L1», «Flat 1» and «Flat 2». */
function tellApart(one: TakeoffTable, other: TakeoffTable): boolean {
  const names = [one, other].map(({ file = '', sheet }) => sheet ?? listIssue(file).bare);
  const [first, second] = names.map((name) => plainKey(name));
  const series = [first, second].map((name) => name!.replace(/\b\p{L}\b|[\p{N}.]+/gu, '').trim());
  return first !== second && (names.every(looksLikeArea) || (series[0] !== '' && series[0] === series[1]));
}

/** A table as an issue of something: by its sheet and by its file. */
function issueOf({ file = '', sheet = '' }: TakeoffTable): ReturnType<typeof listIssue> {
  const said = [file, sheet].map(listIssue);
  return {
    bare: said.map(({ bare }) => bare).join(' › '), isAside: said.some(({ isAside }) => isAside), isIssue: said.some(({ isIssue }) => isIssue),
  };
}
