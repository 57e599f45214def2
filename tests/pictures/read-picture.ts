import type { Shape } from '../../src/report/pictures/index.ts';

/** Every element of a picture, outermost first. */
export function elements(picture: Shape): Shape[] {
  return [picture, ...picture.children.flatMap((child) => typeof child === 'string' ? [] : elements(child))];
}

/** The elements that bear a class. */
export function withClass(picture: Shape, name: string): Shape[] {
  return elements(picture).filter(({ attributes }) => (attributes.class ?? '').split(' ').includes(name));
}

/** All text within an element. */
export function textIn(shape: Shape): string {
  return shape.children.map((child) => typeof child === 'string' ? child : textIn(child)).join('');
}

/** An attribute as a number. */
export const measure = (shape: Shape, name: string): number => Number(shape.attributes[name]);

/**
 * Reads lengths off an axis as a person with a ruler does: from the places of two ticks and the figures beside them.
 * @returns value at a place
 */
export function ruler(ticks: readonly Shape[], axis: 'x' | 'y'): (place: number) => number {
  const [first, last] = [ticks[0]!, ticks.at(-1)!];
  const figure = (tick: Shape) => Number(textIn(tick).replace('−', '-').replace(',', '.'));
  const perUnit = (figure(last) - figure(first)) / (measure(last, axis) - measure(first, axis));
  // A figure beside the vertical axis stands 4 units below its tick.
  const shift = axis === 'y' ? 4 : 0;
  return (place) => figure(first) + (place + shift - measure(first, axis)) * perUnit;
}
