import { SVG, type Shape } from '../../src/report/pictures/index.ts';

/**
 * Builds a picture on a page, element by element: no text is parsed, so that a page which forbids that (Trusted Types,
 * a strict Content-Security-Policy) shows it too.
 */
export function buildShape({ tag, attributes, children }: Shape): SVGElement {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) if (name !== 'xmlns') element.setAttribute(name, value);
  element.append(...children.map((child) => typeof child === 'string' ? child : buildShape(child)));
  return element;
}
