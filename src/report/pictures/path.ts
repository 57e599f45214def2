/** A path of straight lines through points. */
export function path(points: readonly (readonly [x: number, y: number])[]): string {
  return points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${rounded(x)} ${rounded(y)}`).join('');
}

/** A place in a picture to a hundredth of a unit, which is 2.5 µm on paper; more digits only make files large. */
export const rounded = (value: number): number => Number(value.toFixed(2));
