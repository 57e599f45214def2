import { ENGLISH, message, type Words } from '../../words/index.ts';
import { unreadable, type Unreadable } from '../problem.ts';
import { sheetsOf } from './workbook-sheets.ts';
import { attribute, elements, textIn } from './xml-elements.ts';

/** Name of the worksheet, not shown, that holds the schedule in a load table. */
export const EMBEDDED_SHEET = 'Schedule data';

const NONE = message('The workbook holds no schedule. Open a load table as it was written here, save a sheet as CSV, or read a list of counts with Takeoff.');

/** The parts of a workbook that are read. */
const NEEDED = /^xl\/(?:workbook\.xml|_rels\/workbook\.xml\.rels|sharedStrings\.xml|worksheets\/[^/]+\.xml)$/;

/** Whether bytes are those of a workbook, which is a package of files. */
export function isWorkbook(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b;
}

/**
 * Takes the schedule, as JSON, out of a load table in a workbook. It is that of the issue; what was changed in the workbook
 * since is not in it.
 */
export async function embeddedInWorkbook(
  bytes: Uint8Array, words: Words = ENGLISH,
): Promise<{ readonly ok: true; readonly text: string } | Unreadable> {
  const { isRefused, Package } = await import('../workbook/index.ts');
  const files = new Package(bytes, words).unpack((path) => NEEDED.test(path));
  if (isRefused(files)) return files;
  const part = (path: string) => files[path] === undefined ? '' : new TextDecoder().decode(files[path]);
  const target = sheetsOf(part('xl/workbook.xml'), part('xl/_rels/workbook.xml.rels'))
    .find(({ name }) => name === EMBEDDED_SHEET)?.path;
  const sheet = target === undefined ? '' : part(target);
  const shared = elements(part('xl/sharedStrings.xml'), 'si').map(({ inner }) => textIn(inner));
  const text = elements(sheet, 'c').map(({ attributes, inner }) =>
    attribute(attributes, 't') === 's' ? shared[Number(elements(inner, 'v')[0]?.inner)] ?? '' : textIn(inner)).join('');
  return text === '' ? unreadable('not-a-schedule', '', words.say(NONE)) : { ok: true, text };
}
