import { columnOf, ScheduleDocument, toContent, toSnapshot, type Content } from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import { embeddedSchedule, isHtml } from '../html/index.ts';
import { unreadable, type Unreadable } from '../problem.ts';
import { FORMAT } from './format.ts';
import { locate } from './locate.ts';
import { migrate, VERSION } from './migrations.ts';
import { parseJson } from './parse-json.ts';
import { readAccepted } from './read-accepted.ts';
import { readDetails } from './read-details.ts';
import { readLists } from './read-lists.ts';
import { readRevisions } from './read-revisions.ts';
import { placedInRow, readSheets } from './read-sheets.ts';
import { readVariants } from './read-variants.ts';
import { Reading } from './reading.ts';
import { readView } from './read-view.ts';
import { isHarmful } from './unknown-keys.ts';
import type { RawObject } from './version-1.ts';

/** A schedule that was read; `notes` says in sentences what a person should know about how. */
export interface ReadSchedule {
  readonly ok: true;
  readonly content: Content;
  /** Version of the format in which it was written. */
  readonly version: number;
  readonly notes: readonly string[];
}

const KNOWN = new Set(['format', 'version', 'details', 'sheets', 'accepted', 'revisions', 'view', 'lists', 'variants']);

/**
 * Reads a schedule file. All or nothing: the whole content, or every problem with line, column and what to do.
 * Computed keys are ignored, unknown ones kept. In columns of numbers a text such as `8.4 W` or `12,5` is understood
 * and one that begins with `=` is a formula, which names cells by key and row.
 * @param text JSON as of the published schema, or a load table in HTML, which carries it; at most 64 MB.
 * @param words the language of what is said, and of values beside English ones.
 */
export function readSchedule(text: string, words: Words = ENGLISH): ReadSchedule | Unreadable {
  const json = isHtml(text) ? embeddedSchedule(text) : text;
  if (json === undefined) {
    return unreadable(
      'not-a-schedule', '',
      words.say('The page holds no schedule. Open a schedule file, or a load table in HTML as it was written here.')
    );
  }
  const parsed = parseJson(json, words);
  if (!parsed.ok) return parsed;
  const file = openFile(parsed.value, words);
  if ('ok' in file) return { ...file, problems: locate(parsed.text, file.problems) };
  const reading = new Reading(words);
  const read = readContent(file.raw, reading);
  const content = reading.list.total === 0 ? withRowsChecked(read, reading) : read;
  if (reading.list.total > 0) {
    return { ok: false, problems: locate(parsed.text, reading.list.problems), total: reading.list.total };
  }
  return { ok: true, content, version: file.version, notes: reading.notes };
}

function openFile(
  value: unknown, words: Words,
): { readonly raw: RawObject; readonly version: number } | Unreadable {
  if (typeof value !== 'object' || value === null || (value as RawObject).format !== FORMAT) {
    return unreadable('not-a-schedule', '',
      words.say(
        'The file is JSON but not a schedule: its "format" must be "{format}". Open a schedule file.',
        { format: FORMAT }
      ),
      { expected: FORMAT });
  }
  const raw = value as RawObject;
  const version = raw.version;
  if (version === undefined) {
    return unreadable('version-missing', '',
      words.say(
        'The file does not say its version. If it was written by hand, add "version": {version}.', { version: VERSION }
      ),
      { expected: String(VERSION) });
  }
  if (typeof version === 'number' && Number.isInteger(version) && version >= 1 && version <= VERSION) {
    return { raw: migrate(raw, version), version };
  }
  const newer = typeof version === 'number' && version > VERSION;
  const found = JSON.stringify(version);
  return unreadable('version-unknown', '/version', newer
    ? words.say(
      'The file has the version {found}; versions 1 to {version} can be read here. Open it with newer software.',
      { found, version: VERSION }
    )
    : words.say(
      'The file has the version {found}; versions 1 to {version} can be read here. Write "version": {version}.',
      { found, version: VERSION }
    ),
  { received: found, expected: String(VERSION) });
}

function readContent(raw: RawObject, reading: Reading): Content {
  const details = readDetails(raw.details, reading);
  const sheets = readSheets(raw.sheets, reading);
  const unknown = Object.entries(raw).filter(([key]) => !KNOWN.has(key) && !isHarmful(key));
  for (const [key] of unknown) {
    reading.kept.add(reading.words.say('The file has the unknown key “{key}”; it is kept and written back.', { key }));
  }
  return {
    details: details.known,
    sheets: sheets.known,
    accepted: readAccepted(raw.accepted, reading),
    revisions: readRevisions(raw.revisions, reading),
    view: readView(raw.view, reading),
    lists: readLists(raw.lists, reading),
    variants: readVariants(raw.variants, reading),
    unknown: { file: Object.fromEntries(unknown), details: details.unknown, sheets: sheets.unknown },
  };
}

/**
 * Reads formulas and acceptances once all rows are there, as they may be about any of them.
 * @returns the content as it would be written, so that the same schedule has the same digest however it was put down.
 */
function withRowsChecked(content: Content, { list, words, kept }: Reading): Content {
  const { snapshot, problems } = toSnapshot(content, words);
  for (const { rule, tag, sheet } of snapshot.unattached) {
    kept.add(words.say(
      'The acceptance of {rule} is meant for a row “{tag}” of the sheet “{sheet}” that is not there; it is kept and written back.',
      { rule, tag, sheet }));
  }
  for (const { sheet, row, key, text, problem } of problems) {
    list.add('formula-unreadable', `/sheets/${sheet}/${row - 1}/${key}`,
      placedInRow(sheet, row, columnOf(sheet, key), problem, words), { received: text });
  }
  return toContent(new ScheduleDocument(snapshot));
}
