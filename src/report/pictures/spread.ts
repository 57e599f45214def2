/**
 * Moves places apart so that labels there do not overlap, each as little as the order and the ends allow.
 *
 * @param wanted places in ascending order
 * @param apart least distance of two of them
 * @param from least place allowed
 * @param to greatest place allowed, `(wanted.length − 1) × apart` above `from` or more
 * @returns places in the same order
 */
export function spread(wanted: readonly number[], apart: number, from: number, to: number): number[] {
  // Taking `apart` away for each label before leaves a question without distances: the closest ascending places.
  const blocks: { sum: number; count: number }[] = [];
  wanted.forEach((place, index) => {
    blocks.push({ sum: place - index * apart, count: 1 });
    while (blocks.length > 1 && mean(blocks.at(-1)!) < mean(blocks.at(-2)!)) {
      const { sum, count } = blocks.pop()!;
      const before = blocks.at(-1)!;
      before.sum += sum;
      before.count += count;
    }
  });
  const most = to - (wanted.length - 1) * apart;
  return blocks.flatMap((block) => new Array<number>(block.count).fill(Math.min(Math.max(mean(block), from), most)))
    .map((place, index) => place + index * apart);
}

const mean = ({ sum, count }: { sum: number; count: number }): number => sum / count;
