/** A row of a list, or a device row that was counted in one: texts as they stand. */
export interface CountedRow {
  readonly ref?: string;
  readonly type: string;
  readonly area?: string;
  readonly qty: number;
}

/**
 * What came, changed, went and stayed between two issues of a list, each of whose rows is named by its ref where all have
 * one, else by type and area, and stands once. Worked out by names alone, without the product.
 */
export function differencesOf(before: readonly CountedRow[], after: readonly CountedRow[]) {
  const hasRefs = [...before, ...after].every(({ ref }) => ref !== undefined);
  const nameOf = ({ ref, type, area }: CountedRow) => hasRefs ? ref! : `${type}|${area ?? ''}`;
  const olds = new Map(before.map((row) => [nameOf(row), row]));
  const news = new Map(after.map((row) => [nameOf(row), row]));
  const stayed = after.filter((row) => olds.has(nameOf(row)));
  const isSame = (row: CountedRow) => {
    const old = olds.get(nameOf(row))!;
    return old.type === row.type && old.area === row.area && old.qty === row.qty;
  };
  return {
    came: after.length - stayed.length,
    changed: stayed.filter((row) => !isSame(row)).length,
    went: before.filter((row) => !news.has(nameOf(row))).length,
    kept: stayed.filter(isSame).length,
  };
}
