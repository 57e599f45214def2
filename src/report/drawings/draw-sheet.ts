import { line, label, shape, type Shape } from '../pictures/shape.ts';
import { path } from '../pictures/path.ts';
import { STATE_WORDS, type Standing } from '../../findings/index.ts';
import { SCHEMA, tagOf } from '../../schedule/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { markShape } from '../pictures/status-mark.ts';
import { GAP, LINE, type Piece } from './flow-text.ts';
import { isInLine, MARK, RETURN, type Laid } from './lay-out.ts';
import { dot, drawSymbol, SYMBOL_LENGTH } from './symbols.ts';

/** Draws a node and what hangs on it. @param top of all of it [units] */
export function drawNode(laid: Laid, top: number, schedule: LoadSchedule): Shape[] {
  const { node, x, symbolX, childX, isAcross, children, ascent, descent, goesOn } = laid;
  const y = top + ascent;
  const [first] = children;
  let next = isAcross && first !== undefined ? y - first.ascent : y + descent;
  const ends: number[] = [];
  const below = children.flatMap((child) => {
    const shapes = drawNode(child, next, schedule);
    ends.push(next + child.ascent);
    next += child.height;
    return shapes;
  });
  const wire = node.isLoose === true ? 'wire loose' : 'wire';
  const foot = goesOn === undefined ? ends.at(-1) ?? y : next;
  const isBack = childX < laid.end;
  const turn = y + descent - 3;
  const lines = [
    ...x < symbolX ? [line('wire', x, y, symbolX, y)] : [],
    ...first === undefined ? [] : isBack
      ? [shape('path', { class: `${wire} open`, d: path([[laid.end, y], [laid.end + RETURN, y], [laid.end + RETURN, turn], [childX, turn]]) })]
      : [line(wire, laid.end, y, childX, y)],
    ...foot > y ? [line(wire, childX, isBack ? turn : y, childX, foot)] : [],
    ...goesOn === undefined ? [] : [arrow(childX, next)],
    // Where conductors part; at the last one the conductor only turns.
    ...ends.slice(0, goesOn === undefined ? -1 : undefined).map((at) => dot(childX, at)),
  ];
  const title = titleOf(laid, schedule);
  const own = shape(
    'g', { class: node.row === undefined ? 'node' : `node ${node.row.sheet}`, ...attributesOf(laid, schedule) },
    ...title === '' ? [] : [shape('title', {}, title)], ...symbolsOf(laid, y), ...textsOf(laid, y),
  );
  return [...lines, own, ...below];
}

/** The sign that a conductor goes on. */
const arrow = (x: number, y: number): Shape =>
  shape('path', { class: 'part', d: path([[x - 4, y - 6], [x, y], [x + 4, y - 6]]) });

function symbolsOf(laid: Laid, y: number): Shape[] {
  const { node: { symbols }, symbolX, end } = laid;
  if (symbols.every(({ name }) => name === 'none')) return [line('wire', symbolX, y, end, y)];
  return symbols.flatMap(({ name, figure }, index) => drawSymbol(name, symbolX + index * SYMBOL_LENGTH, y, figure));
}

function textsOf(laid: Laid, y: number): Shape[] {
  const { node, textX, above, below } = laid;
  const shift = node.standing === null ? 0 : MARK;
  const first = isInLine(laid) ? y + 4 : y - 5 - (above.length - 1) * LINE;
  return [
    ...node.standing === null || above.length === 0 ? [] : [markShape(node.standing, textX, first - 10.5)],
    ...above.map((pieces, index) => textLine(pieces, textX + shift, first + index * LINE)),
    ...below.map((pieces, index) => textLine(pieces, textX, y + 14 + index * LINE)),
  ];
}

/** Parts of a text in one line, each after a gap. */
function textLine(pieces: readonly Piece[], x: number, y: number): Shape {
  const [first, ...others] = pieces;
  if (others.length === 0) return label(first!.look ?? '', x, y, first!.text);
  return shape('text', { x, y }, ...pieces.map(({ text, look = '' }, index) =>
    shape('tspan', { ...look !== '' && { class: look }, ...index > 0 && { dx: GAP } }, text)));
}

/** The tag of the row that is drawn and how it stands, for who reads the drawing by program. */
function attributesOf({ node: { row, standing } }: Laid, schedule: LoadSchedule): Record<string, string> {
  if (row === undefined) return {};
  return {
    'data-tag': tagOf(row.sheet, schedule.document.row(row.sheet, row.id)!), ...standing !== null && { 'data-status': standing },
  };
}

/** A node in words: what it is, its figures, how it stands. */
export function titleOf({ node }: Laid, schedule: LoadSchedule): string {
  const { words } = schedule;
  const { row, name, about, figures, standing } = node;
  const called = row === undefined ? name : `${words.text(SCHEMA[row.sheet].rowName)} ${name}`;
  const said = [...about, ...figures].map(({ text }) => text).filter((text) => text !== '').join(', ');
  if (called === '') return said;
  return standing === null ? words.say('{title}: {text}', { title: called, text: said })
    : words.say('{name}: {figures}; {status}.', { name: called, figures: said, status: words.say(STATE_WORDS[standing]) });
}

/** What marks mean, for the foot of a sheet. */
export function legendOf(standings: ReadonlySet<Standing>): Standing[] {
  return (['over', 'near', 'incomplete', 'accepted', 'ok'] as const).filter((each) => standings.has(each));
}
