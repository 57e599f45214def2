import type { Handover, View } from '../../schedule/index.ts';
import type { Reading } from './reading.ts';
import { isHarmful } from './unknown-keys.ts';

const isText = (value: unknown): value is string => typeof value === 'string';
const isWidth = (value: unknown): value is number => typeof value === 'number' && value > 0 && Number.isFinite(value);

/** Reads how a schedule is looked at; `undefined` where a file says nothing of it. Keys that are not known are kept. */
export function readView(value: unknown, reading: Reading): View | undefined {
  if (value === undefined) return undefined;
  const { words } = reading;
  const named = (text: string) => words.say('“{text}”', { text });
  const entries = (of: unknown, path: string, name: string) =>
    Object.entries(reading.object(of, path, named(name))).filter(([key]) => !isHarmful(key));
  const texts = (of: unknown, path: string, name: string) => reading.array(of, path, named(name)).filter(isText);
  const { rare, hidden, frozen, wide, loadTable, ...others } = Object.fromEntries(entries(value, '/view', 'view'));
  return {
    ...others,
    rare: texts(rare, '/view/rare', 'rare'),
    hidden: Object.fromEntries(entries(hidden, '/view/hidden', 'hidden')
      .map(([sheet, keys]) => [sheet, texts(keys, `/view/hidden/${sheet}`, sheet)])),
    frozen: Object.fromEntries(entries(frozen, '/view/frozen', 'frozen')
      .filter((entry): entry is [string, string] => isText(entry[1]))),
    wide: Object.fromEntries(entries(wide, '/view/wide', 'wide').map(([sheet, widths]) =>
      [sheet, Object.fromEntries(entries(widths, `/view/wide/${sheet}`, sheet)
        .filter((entry): entry is [string, number] => isWidth(entry[1])))])),
    ...(loadTable === undefined ? {} : { loadTable: readHandover(entries(loadTable, '/view/loadTable', 'loadTable'), texts) }),
  };
}

/** What of the load table is handed over. */
function readHandover(
  given: readonly [string, unknown][], texts: (of: unknown, path: string, name: string) => string[],
): Handover {
  const { form, without, allPictures, ...others } = Object.fromEntries(given);
  return {
    ...others,
    ...(isText(form) ? { form } : {}),
    ...(without === undefined ? {} : { without: texts(without, '/view/loadTable/without', 'without') }),
    ...(allPictures === true ? { allPictures } : {}),
  };
}
