import { looksLikeArea } from './area-words.ts';
import { namesTotal } from './total-words.ts';

const [BULLET, NUMBER, SIGN] = [String.raw`^(?:[-–—•*·]\s+)?`, String.raw`(\d{1,6})`, '[x×*]'];
const PIECES = String.raw`(?:nos?|nr|stk|stck|stück|stueck|pcs?|pieces|pièces|ea|off)\b\.?`;
/** The end of a name, which no comma parts from its quantity. */
const NAME = String.raw`(.*\p{L}.*?(?<![\s,;:=–—-]))`;
const FRONT = new RegExp(String.raw`${BULLET}${NUMBER}\s*(?:${SIGN}|${PIECES})\s*(\p{L}.*)$`, 'iu');
const BEHIND = new RegExp(String.raw`${BULLET}${NAME}\s*[([]?\s*(?:(?<![\p{L}\d])${SIGN}\s*${NUMBER}|(?<!\d)${NUMBER}\s*(?:${SIGN}|${PIECES}))\s*[)\]]?$`, 'iu');
/** «2 x 4-gang button», «4 Router», «PIR: 4»: the number may be part of a name, and is for a person to confirm. */
const [FRONT_DOUBT, BEHIND_DOUBT] = [
  new RegExp(String.raw`${BULLET}${NUMBER}(?:\s+${SIGN})?\s+(.*\p{L}{2}.*)$`, 'iu'), new RegExp(String.raw`${BULLET}${NAME}\s*(?:[:=]|\s[–—-])\s*${NUMBER}(?:\s*${PIECES})?$`, 'iu'),
];
const TIMES = new RegExp(String.raw`${BULLET}${NUMBER}\s+${SIGN}\s`, 'iu');
const TOTAL = new RegExp(String.raw`${NAME}[\s:=–—-]+${NUMBER}(?:\s*${PIECES})?$`, 'iu');
const ROOM = new RegExp(String.raw`^([^:\d][^:]{0,60}):\s+(?=(?:${NUMBER}\s*(?:${SIGN}|${PIECES})))`, 'iu');
/** How many lines show that a text is one, and how long one of these may be [characters]. */
const [SAMPLE, LONGEST] = [500, 300];
/** Between commas, a number alone or nothing stands in tables only. */
const TABLE = /(?:^|,)\s*(?:\d[\d.]*\s*)?,|,\s*(?:\d[\d.]*\s*)?$/u;
/** A second quantity in a line. */
const AGAIN = [
  new RegExp(String.raw`(?<![\d\p{L}])${NUMBER}\s*${SIGN}\s*\p{L}{2}`, 'giu'), new RegExp(String.raw`\p{L}{2}[\s(]+${SIGN}\s*${NUMBER}(?!\d)(?!\s*\p{L})`, 'giu'),
];
/** «Roof: 1 weather station», «Kitchen - 2 contacts»: the number may be part of a name here too. */
const PLACE = new RegExp(String.raw`^([^:\d][^:]{0,60}?)(?::|\s[–—-])\s+${NUMBER}\s+(\p{L}{2}.*)$`, 'u');

/**
 * Lines of free text, each of which counts one device, as «4 x PIR», «PIR x 4» and «Hall: 4 x PIR», with rooms between
 * them: what they name, how many, and the room where it stands in front.
 * @returns the fields of each line; `undefined` where the lines are no such text.
 */
export function freeText(lines: readonly string[]): string[][] | undefined {
  const filled = lines.filter((text) => text.trim() !== '').slice(0, SAMPLE);
  const items = filled.filter((text) =>
    text.length <= LONGEST && (FRONT.test(withoutRoom(text).text) || BEHIND.test(text.trim())));
  const isTable = filled.filter((text) => TABLE.test(text)).length >= items.length;
  if (isTable || 3 * items.length < filled.length) return undefined;
  const fields = lines.map((text) => text.length > LONGEST ? [text, text, ''] : fieldsOf(text.trim()));
  return fields.some(([, , room]) => room !== '') ? fields : fields.map((each) => each.slice(0, 2));
}

function fieldsOf(line: string): string[] {
  const { room, text } = withoutRoom(line);
  // Several devices in one line can only be counted by a person.
  if (AGAIN.some((each) => (text.match(each) ?? []).length > 1)) return [text, text, room];
  const [front, behind, total] = [FRONT.exec(text), BEHIND.exec(text), TOTAL.exec(text)];
  if (total !== null && namesTotal(total[1]!)) return [total[1]!, total[2]!, ''];
  if (front !== null) return [front[2]!.trim(), front[1]!, room];
  if (behind !== null) return [behind[1]!.trim(), (behind[2] ?? behind[3])!, room];
  const [before, after] = [FRONT_DOUBT.exec(text), BEHIND_DOUBT.exec(text)];
  if (before !== null && (TIMES.test(text) || !looksLikeArea(text))) return [before[2]!.trim(), `${before[1]!} ?`, room];
  if (after !== null && !looksLikeArea(after[1]!)) return [after[1]!.trim(), `${after[2]!} ?`, room];
  const [, place, qty, name] = PLACE.exec(text) ?? [];
  if (name !== undefined) return [name.trim(), `${qty!} ?`, place!.trim()];
  return [text.replace(/\s*:$/, ''), '', ''];
}

function withoutRoom(line: string): { readonly room: string; readonly text: string } {
  const room = ROOM.exec(line.trim())?.[1] ?? '';
  return { room, text: room === '' ? line.trim() : line.trim().slice(room.length + 1).trim() };
}
