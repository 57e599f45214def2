import { flowText, GAP } from './flow-text.ts';
import { quiet } from './drawn-node.ts';
import { heighten, RETURN, type Laid } from './lay-out.ts';
import { SYMBOL_LENGTH } from './symbols.ts';
import type { Words } from '../../words/index.ts';

/** Shares what is drawn out over sheets of a height [units]; what goes on says so on both. */
export function splitSheets(roots: readonly Laid[], height: number, words: Words): Laid[][] {
  const sheets: Laid[][] = [[]];
  let room = height;
  const waiting = [...roots].reverse();
  for (let laid = waiting.pop(); laid !== undefined; laid = waiting.pop()) {
    const sheet = sheets.at(-1)!;
    if (laid.height <= room) {
      sheet.push(laid);
      room -= laid.height;
      continue;
    }
    const isFresh = sheet.length === 0;
    const parts = split(laid, room, sheets.length, isFresh, words);
    if (parts === undefined) {
      if (isFresh) sheet.push(laid);
      else waiting.push(laid);
    } else {
      sheet.push(parts.here);
      waiting.push(parts.rest);
    }
    if (parts !== undefined || !isFresh || waiting.length > 0) sheets.push([]);
    room = height;
  }
  return sheets.filter((sheet, index) => sheet.length > 0 || index === 0);
}

interface Parts {
  readonly here: Laid;
  readonly rest: Laid;
}

/**
 * Parts a node between its children.
 * @param sheet number of the sheet that the first part stands on
 * @param must takes the first child, or a part of it, even where there is no room
 */
function split(laid: Laid, room: number, sheet: number, must: boolean, words: Words): Parts | undefined {
  const { children, isAcross, ascent, descent } = laid;
  const [first] = children;
  if (first === undefined) return undefined;
  let left = room - (isAcross ? ascent - first.ascent : ascent + descent);
  const here: Laid[] = [];
  let rest: Laid[] = [];
  for (const [index, child] of children.entries()) {
    if (child.height <= left) {
      here.push(child);
      left -= child.height;
      continue;
    }
    const isForced = must && index === 0;
    const parts = split(child, left, sheet, isForced, words);
    if (parts !== undefined) here.push(parts.here);
    else if (isForced) here.push(child);
    const from = parts === undefined && !isForced ? index : index + 1;
    rest = [...parts === undefined ? [] : [parts.rest], ...children.slice(from)];
    break;
  }
  if (here.length === 0 || rest.length === 0) return undefined;
  return { here: heighten({ ...laid, children: here, goesOn: sheet + 1 }), rest: continued(laid, rest, sheet, words) };
}

/** What stands for a node on the sheet on which the rest of its children is. */
function continued(laid: Laid, children: readonly Laid[], sheet: number, words: Words): Laid {
  const { node, room, childX, isAcross, symbolX } = laid;
  const name = [{ text: node.name, look: 'strong' }, quiet(words.say('from sheet {sheet}', { sheet }))];
  const { row: _row, ...rest } = node;
  const end = symbolX + SYMBOL_LENGTH;
  return heighten({
    ...laid, end, textX: (isAcross ? end : Math.max(end + RETURN, childX)) + GAP,
    above: flowText(name, room), below: [], children,
    node: { ...rest, symbols: [{ name: 'elsewhere' }], about: [], figures: [], standing: null }, comesFrom: sheet,
  });
}
