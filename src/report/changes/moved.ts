/**
 * Which of some rows were moved: the fewest that have to be taken out so that the others stand in their old order.
 * @param places the old places of the rows, in their new order.
 * @returns indices into `places`.
 */
export function movedAmong(places: readonly number[]): Set<number> {
  // The longest ascending part by patience: `ends[length]` is the index at which a part of that length ends lowest.
  const ends: number[] = [];
  const previous: number[] = [];
  places.forEach((place, index) => {
    let [low, high] = [0, ends.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (places[ends[middle]!]! < place) low = middle + 1;
      else high = middle;
    }
    previous[index] = low === 0 ? -1 : ends[low - 1]!;
    ends[low] = index;
  });
  const moved = new Set(places.keys());
  for (let index = ends.at(-1) ?? -1; index >= 0; index = previous[index]!) moved.delete(index);
  return moved;
}
