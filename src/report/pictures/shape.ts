import { rounded } from './path.ts';

/** One element of a picture. A picture is a tree of them, so that it can be written as text or built on a page. */
export interface Shape {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Shape | string)[];
}

/** Name of the language of the elements. */
export const SVG = 'http://www.w3.org/2000/svg';

type Attributes = Readonly<Record<string, string | number>>;

const written = (value: string | number): string => typeof value === 'number' ? String(rounded(value)) : value;

/** An element with its attributes and what it holds. */
export function shape(tag: string, attributes: Attributes = {}, ...children: readonly (Shape | string)[]): Shape {
  const texts = Object.entries(attributes).map(([name, value]) => [name, written(value)]);
  return { tag, attributes: Object.fromEntries(texts) as Record<string, string>, children };
}

/** A straight line. */
export function line(className: string, x1: number, y1: number, x2: number, y2: number): Shape {
  return shape('line', { class: className, x1, y1, x2, y2 });
}

/** A text whose base line begins, ends or has its middle at a place. */
export function label(
  className: string, x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end' = 'start',
): Shape {
  return shape('text', { class: className, x, y, 'text-anchor': anchor }, text);
}
