import type { Change, Content, ScheduleDocument, Variant } from '../../schedule/index.ts';

type Kept = Pick<ScheduleDocument, 'variants'>;

/** The variant of a name. */
export function variantOf({ variants }: Kept, name: string): Variant | undefined {
  return variants.find((each) => each.name === name);
}

/**
 * Changes that keep a variant: in the place of one that was kept before, or behind the others.
 * @param former the name under which it was kept before, where that is another.
 */
export function keepVariant({ variants }: Kept, variant: Variant, former = variant.name): Change[] {
  const at = variants.findIndex(({ name }) => name === former);
  return [at < 0 ? { op: 'variants', at: variants.length, count: 0, variants: [variant] }
    : { op: 'variants', at, count: 1, variants: [variant] }];
}

/** Changes that let go of a variant; none where there is none of that name. */
export function dropVariant({ variants }: Kept, name: string): Change[] {
  const at = variants.findIndex((each) => each.name === name);
  return at < 0 ? [] : [{ op: 'variants', at, count: 1, variants: [] }];
}

/** The content without a variant, as when it was taken over. */
export function withoutVariant(content: Content, name: string): Content {
  return { ...content, variants: (content.variants ?? []).filter((each) => each.name !== name) };
}

/** The first of numbered names that no variant has. @param numbered makes the name of a number. */
export function freeName({ variants }: Kept, numbered: (number: number) => string): string {
  let number = variants.length + 1;
  while (variants.some(({ name }) => name === numbered(number))) number += 1;
  return numbered(number);
}
