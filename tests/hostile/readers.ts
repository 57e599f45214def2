import { decodeText, readCsv, readSchedule } from '../../src/exchange/index.ts';
import { readLoadTable } from '../../src/report/xlsx/read-load-table.ts';
import { readProfile } from '../../src/exchange/profile/index.ts';
import { readTakeoff } from '../../src/exchange/takeoff/index.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { openWorkbook } from '../../src/exchange/workbook/index.ts';

/** What a reader answers: that it read, or in sentences why not. */
interface Answer {
  readonly ok: boolean;
  readonly problems?: readonly { readonly message: string }[];
}

const types: readonly Cells[] = [{ type: 'Lamp' }, { type: 'Sensor', aliases: 'PIR; motion sensor' }];

const profileTable = (text: string) => text.split(/\r\n?|\n/).map((line) => line.split(/[;\t]/));

/** Every reader of a text that comes from outside, by what it reads. */
export const TEXT_READERS: Readonly<Record<string, (text: string) => Answer>> = {
  'a schedule file': (text) => readSchedule(text),
  'a load table in HTML': (text) => readSchedule(`<!doctype html><html><body>${text}</body></html>`),
  'a sheet in CSV': (text) => readCsv(text),
  'device rows in CSV': (text) => readCsv(`Ref,Qty,Unit draw (mA),Note\r\n${text}`, 'devices'),
  'a profile': (text) => readProfile(profileTable(text)),
  'a profile with headings': (text) => readProfile(profileTable(`Group;0–12;12–24\r\n${text}`)),
  'a takeoff': (text) => readTakeoff(text, { types }),
  'a takeoff with headings': (text) => readTakeoff(`Description;Qty;Room\r\n${text}`, { types }),
};

/** Every reader of bytes that come from outside. */
export const BYTE_READERS: Readonly<Record<string, (bytes: Uint8Array<ArrayBuffer>) => Answer | Promise<Answer>>> = {
  'a text in bytes': (bytes) => decodeText(bytes),
  'a workbook with a takeoff': async (bytes) => {
    const workbook = openWorkbook(bytes);
    if (!workbook.ok) return workbook;
    return workbook.sheets.length > 0 ? workbook.read(workbook.sheets[0]!) : { ok: true };
  },
  'a workbook with a load table': async (bytes) => {
    const read = await readLoadTable(bytes);
    return typeof read === 'object' && 'ok' in read ? read : { ok: true };
  },
};

/** Why an answer is none: nothing said, or a figure that is no number in what is said. `undefined` for a good one. */
export function faultOf({ ok, problems }: Answer): string | undefined {
  if (ok) return undefined;
  if (problems === undefined || problems.length === 0) return 'refused without a word';
  const bad = problems.find(({ message }) => message.trim().length < 10 || /\bundefined\b|\[object/.test(
    message.replace(/[“„«][^”“»]*[”“»]/g, '')
  ));
  return bad && `says «${bad.message.slice(0, 200)}»`;
}
