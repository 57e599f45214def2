import { label, line, shape, type Shape } from '../pictures/shape.ts';
import { path } from '../pictures/path.ts';

/**
 * Symbols of IEC 60617, lying: the conductor comes from the left. Numbers are those of the parts of 1996, from memory.
 */
export type SymbolName = keyof typeof DRAWN;

/** Length of a symbol along the conductor [units]. */
export const SYMBOL_LENGTH = 30;
/** How far most symbols reach above and below the conductor, and how far those that hang on it reach below [units]. */
export const SYMBOL_REACH = 14;
export const HANGING_REACH = 25;
/** Symbols that hang on the conductor. */
export const HANGING: ReadonlySet<SymbolName> = new Set(['battery', 'earth', 'terminator']);

type Draw = (x: number, y: number, figure: string) => Shape[];

/** A conductor along the whole length of the symbol, or along a part of it. */
const wire = (x: number, y: number, from = 0, to = SYMBOL_LENGTH): Shape => line('wire', x + from, y, x + to, y);
const box = (x: number, y: number, width: number, height: number, look = 'part'): Shape =>
  shape('rect', { class: look, x, y: y - height / 2, width, height });
const stroke = (points: readonly (readonly [number, number])[], look = 'part'): Shape =>
  shape('path', { class: look, d: path(points) });
/** A contact that is open, its blade hinged on the side of the load. */
const blade = (x: number, y: number): Shape[] =>
  [wire(x, y, 0, 8), wire(x, y, 24), stroke([[x + 24, y], [x + 7, y - 9]])];

/** A dot where conductors meet (03-02-01, from memory). */
export const dot = (x: number, y: number): Shape => shape('circle', { class: 'dot', cx: x, cy: y, r: 2.25 });

const DRAWN = {
  /** A conductor on its way, with a stroke and how many conductors there are (03-01-02, from memory). */
  conductor: (x, y, figure) => [wire(x, y), stroke([[x + 9, y + 6], [x + 17, y - 6]]), label('count', x + 19, y + 13, figure)],
  /** A conductor without anything in it. */
  none: (x, y) => [wire(x, y)],
  /** Circuit breaker: a make contact with a cross at its fixed side (07-13-05, from memory). */
  breaker: (x, y) => [
    ...blade(x, y), stroke([[x + 5, y - 3], [x + 11, y + 3]]), stroke([[x + 5, y + 3], [x + 11, y - 3]]),
  ],
  /** Fuse: the conductor goes through its body (07-21-01, from memory). */
  fuse: (x, y) => [box(x + 4, y, 22, 10), wire(x, y)],
  /** Electronic protection: a protective device that acts on current, I > (measuring relay, 07-17, from memory). */
  electronic: (x, y) => [
    wire(x, y, 0, 3), wire(x, y, 27), box(x + 3, y, 24, 20),
    stroke([[x + 10, y - 5], [x + 10, y + 5]]), stroke([[x + 14, y - 4], [x + 21, y], [x + 14, y + 4]]),
  ],
  /** A protection of which the kind is not known: no symbol of the standard. */
  unknown: (x, y) => [wire(x, y, 0, 4), wire(x, y, 26), box(x + 4, y, 22, 16, 'part missing'), label('sign', x + 15, y + 4.5, '?', 'middle')],
  /** Converter from alternating to direct current (rectifier, 06-14-03, from memory). */
  converter: (x, y) => [
    wire(x, y, 0, 2), wire(x, y, 28), box(x + 2, y, 26, 26), stroke([[x + 2, y + 13], [x + 28, y - 13]], 'part thin'),
    shape('path', { class: 'part thin', d: `M${x + 5} ${y - 5}q2.5 -5 5 0t5 0` }),
    stroke([[x + 16, y + 5], [x + 25, y + 5]], 'part thin'),
    shape('path', { class: 'part thin dashed', d: path([[x + 16, y + 9], [x + 25, y + 9]]) }),
  ],
  /** Make contact of a relay (07-02-01, from memory). */
  contact: (x, y) => blade(x, y),
  /** Operating device of a relay, for its module (07-15-01, from memory). */
  coil: (x, y) => [wire(x, y, 0, 7), wire(x, y, 23), box(x + 7, y, 16, 22)],
  /** What is fed, without saying what it is: an object (02-01-01, from memory). */
  load: (x, y) => [wire(x, y, 0, 8), box(x + 8, y, 14, 14)],
  /** A terminal (03-02-02, from memory). */
  terminal: (x, y) => [wire(x, y, 0, 12), wire(x, y, 18), shape('circle', { class: 'part', cx: x + 15, cy: y, r: 3 })],
  /** A connection to a bus: an object with a port on it (02-01-01, from memory). */
  port: (x, y) => [wire(x, y, 0, 4), wire(x, y, 26), box(x + 4, y, 22, 18), stroke([[x + 9, y], [x + 21, y]], 'part bus')],
  /** Battery at a conductor, the long stroke its positive side (06-15-01, from memory). */
  battery: (x, y) => [
    wire(x, y), dot(x + 15, y), line('wire', x + 15, y, x + 15, y + 13), line('part', x + 7, y + 13, x + 23, y + 13),
    line('part thick', x + 11, y + 17, x + 19, y + 17), line('wire', x + 15, y + 17, x + 15, y + 23),
  ],
  /** Protective earth, three strokes in a circle (02-15-03, from memory), beside the conductor and not in it. */
  earth: (x, y) => [
    wire(x, y), shape('circle', { class: 'part thin', cx: x + 15, cy: y + 15, r: 9 }), line('part thin', x + 15, y + 6, x + 15, y + 14),
    ...[[6, 14], [4, 17], [2, 20]].map(([half, below]) => line('part thin', x + 15 - half!, y + below!, x + 15 + half!, y + below!)),
  ],
  /** Terminating resistor at the end of a bus (04-01-01, from memory); with a figure one that is not known of. */
  terminator: (x, y, figure) => {
    const look = figure === '' ? 'part' : 'part missing';
    return [
      wire(x, y), dot(x + 15, y), line('wire', x + 15, y, x + 15, y + 5),
      shape('rect', { class: look, x: x + 11, y: y + 5, width: 8, height: 17 }), label('sign', x + 2, y + 17, figure),
    ];
  },
  /** The sign that a part of the drawing stands on another sheet. */
  elsewhere: (x, y) => [wire(x, y, 6), stroke([[x + 1, y - 5], [x + 8, y], [x + 1, y + 5]])],
} satisfies Readonly<Record<string, Draw>>;

export const SYMBOL_NAMES = Object.keys(DRAWN) as readonly SymbolName[];

/** A symbol whose conductor enters at a place. */
export function drawSymbol(name: SymbolName, x: number, y: number, figure = ''): Shape[] {
  return DRAWN[name](x, y, figure);
}
