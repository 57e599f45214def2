/** Some of a list, chosen by chance that the seed decides, in their order. */
export function sampleOf<Item>(all: readonly Item[], count: number, seed: number): Item[] {
  const random = generator(seed);
  return all.map((item, place) => ({ item, place, by: random() })).sort((a, b) => a.by - b.by).slice(0, count)
    .sort((a, b) => a.place - b.place).map(({ item }) => item);
}

/** Numbers from 0 to 1 (mulberry32). */
function generator(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}
