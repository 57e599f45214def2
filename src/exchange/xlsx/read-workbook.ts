import type { Unzipped } from 'fflate';
import { tooLarge, unreadable, type Unreadable } from '../problem.ts';

/** Name of the worksheet, not shown, that holds the schedule in a load table. */
export const EMBEDDED_SHEET = 'Schedule data';

const CHARACTERS: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
const NONE = 'The workbook holds no schedule. Open a load table as it was written here, or save a sheet as CSV.';

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
export async function embeddedInWorkbook(bytes: Uint8Array): Promise<{ readonly ok: true; readonly text: string } | Unreadable> {
  const { unzipSync } = await import('fflate');
  let large: Unreadable | undefined;
  let files: Unzipped;
  try {
    files = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        large ??= tooLarge(originalSize);
        return large === undefined && NEEDED.test(name);
      },
    });
  } catch {
    return unreadable('not-a-schedule', '', 'The workbook is damaged and cannot be unpacked. Take another copy of it.');
  }
  if (large !== undefined) return large;
  const part = (path: string) => files[path] === undefined ? '' : new TextDecoder().decode(files[path]);
  const target = sheetPath(part('xl/workbook.xml'), part('xl/_rels/workbook.xml.rels'));
  const sheet = target === undefined ? '' : part(target);
  const shared = elements(part('xl/sharedStrings.xml'), 'si').map(({ inner }) => textIn(inner));
  const text = elements(sheet, 'c').map(({ attributes, inner }) =>
    attribute(attributes, 't') === 's' ? shared[Number(elements(inner, 'v')[0]?.inner)] ?? '' : textIn(inner)).join('');
  return text === '' ? unreadable('not-a-schedule', '', NONE) : { ok: true, text };
}

/** Path of the worksheet with the schedule. */
function sheetPath(workbook: string, relations: string): string | undefined {
  const sheet = elements(workbook, 'sheet').find(({ attributes }) => attribute(attributes, 'name') === EMBEDDED_SHEET);
  const id = sheet && attribute(sheet.attributes, 'r:id');
  const relation = elements(relations, 'Relationship').find(({ attributes }) => attribute(attributes, 'Id') === id);
  const target = relation && attribute(relation.attributes, 'Target');
  return target === undefined ? undefined : target.startsWith('/') ? target.slice(1) : `xl/${target}`;
}

interface Element {
  readonly attributes: string;
  readonly inner: string;
}

function elements(xml: string, name: string): Element[] {
  return [...xml.matchAll(new RegExp(`<(?:\\w+:)?${name}(\\s[^>]*?)?(?:/>|>([^]*?)</(?:\\w+:)?${name}>)`, 'g'))]
    .map(([, attributes = '', inner = '']) => ({ attributes, inner }));
}

function attribute(attributes: string, name: string): string | undefined {
  const found = new RegExp(`\\s${name}="([^"]*)"`).exec(attributes)?.[1];
  return found === undefined ? undefined : plain(found);
}

/** The text of a cell, whole or in several runs. */
function textIn(xml: string): string {
  return elements(xml, 't').map(({ inner }) => plain(inner)).join('');
}

function plain(text: string): string {
  return text.replace(/&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi, (whole, hex?: string, decimal?: string, name?: string) => {
    if (hex !== undefined) return String.fromCodePoint(parseInt(hex, 16));
    return decimal !== undefined ? String.fromCodePoint(Number(decimal)) : CHARACTERS[name!] ?? whole;
  });
}
