import { STATE_WORDS, type Standing } from '../../findings/index.ts';
import { rounded } from './path.ts';
import { label, shape, type Shape } from './shape.ts';
import type { Words } from '../../words/index.ts';

/** Shapes that differ without their colour, on 12 by 12: warning triangle, diamond, broken ring, tick, dot. */
const PATHS: Readonly<Record<Standing, string>> = {
  over: 'M6 .3 11.9 11.4H.1ZM5.2 4 5.5 7.7H6.5L6.8 4ZM5.2 8.6V10.2H6.8V8.6Z',
  near: 'M6 .8 11.2 6 6 11.2.8 6Z',
  incomplete: 'M6 .8A5.2 5.2 0 0 1 11.1 5H9A3.2 3.2 0 0 0 6 2.8ZM11.1 7A5.2 5.2 0 0 1 6 11.2V9.2A3.2 3.2 0 0 0 9 7ZM4.6 11A5.2 5.2 0 0 1 4.6 1L5 3A3.2 3.2 0 0 0 5 9Z',
  accepted: 'M1 6.6 2.6 5 4.9 7.3 9.6 2.1 11.2 3.6 5 10.4Z',
  ok: 'M6 3.4A2.6 2.6 0 1 1 6 8.6 2.6 2.6 0 1 1 6 3.4z',
};

/** The shape of a status. @param x left edge, and top, of its 12 by 12 units */
export function markShape(status: Standing, x: number, y: number): Shape {
  return shape('path', { class: `mark ${status}`, d: PATHS[status], transform: `translate(${rounded(x)} ${rounded(y)})` });
}

/** A status as shape and word, the shape to the left of the word, which begins at `x`. */
export function statusMark(status: Standing, x: number, y: number, words: Words): Shape[] {
  return [
    markShape(status, x - 17, y - 10.5),
    label(`strong ${status}`, x, y, words.say(STATE_WORDS[status])),
  ];
}
