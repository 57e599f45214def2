import { describe, expect, test } from 'vitest';
import {
  drawSymbol, HANGING, HANGING_REACH, SYMBOL_LENGTH, SYMBOL_NAMES, SYMBOL_REACH,
} from '../../src/report/drawings/symbols.ts';
import { shape, type Shape } from '../../src/report/pictures/shape.ts';
import { elements, measure } from './read-picture.ts';

/** The ends of what is drawn, without texts: each point of lines, paths, boxes and circles. */
function points(part: Shape): [number, number][] {
  const at = (x: string, y: string): [number, number] => [measure(part, x), measure(part, y)];
  switch (part.tag) {
    case 'line': return [at('x1', 'y1'), at('x2', 'y2')];
    case 'rect': {
      const [x, y] = at('x', 'y');
      return [[x, y], [x + measure(part, 'width'), y + measure(part, 'height')]];
    }
    case 'circle': {
      const [x, y] = at('cx', 'cy');
      const r = measure(part, 'r');
      return [[x - r, y - r], [x + r, y + r]];
    }
    // The wave of a converter is relative to its first point.
    case 'path': return [...part.attributes.d!.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
    default: return [];
  }
}

describe.each(SYMBOL_NAMES)('%s', (name) => {
  const drawn = points(shape('g')).concat(...drawSymbol(name, 100, 50, '4').flatMap(elements).map(points));

  test('stays within the room that it is given', () => {
    expect(drawn.length).toBeGreaterThan(1);
    for (const [x, y] of drawn) {
      expect(x).toBeGreaterThanOrEqual(100);
      expect(x).toBeLessThanOrEqual(100 + SYMBOL_LENGTH);
      expect(y).toBeGreaterThanOrEqual(50 - SYMBOL_REACH);
      expect(y).toBeLessThanOrEqual(50 + (HANGING.has(name) ? HANGING_REACH : SYMBOL_REACH));
    }
  });

  test('goes on from its conductor to the next', () => {
    const onLine = drawn.filter(([, y]) => y === 50).map(([x]) => x);
    // A load is the end of its conductor; the sign of another sheet is its beginning.
    if (name !== 'elsewhere') expect(Math.min(...onLine)).toBe(100);
    if (name !== 'load') expect(Math.max(...onLine)).toBe(100 + SYMBOL_LENGTH);
  });
});
