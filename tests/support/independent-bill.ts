/**
 * Counts a bill of quantities a second time, from the cells as they are entered; it imports nothing of the product.
 * Tags stand once, and no cell holds a formula; types by the metre are described as «One metre of …», cables as
 * «… cable».
 */
type Cells = Readonly<Record<string, unknown>>;
type Sheets = Readonly<Partial<Record<string, readonly Cells[]>>>;

/** Quantities by panel, kind and what makes rows of that kind alike; what is not known is left out. */
export function billOnPaper(sheets: Sheets, allowance = 0): Map<string, number> {
  const rows = (sheet: string) => sheets[sheet] ?? [];
  const find = (sheet: string, key: string, tag: unknown) =>
    rows(sheet).find((row) => tag !== undefined && row[key] === tag);
  const sums = new Map<string, number>();
  const text = (value: unknown) => typeof value === 'string' || typeof value === 'number' ? String(value) : '-';
  const add = (panel: unknown, kind: string, like: unknown, quantity: unknown) => {
    if (typeof quantity !== 'number') return;
    const key = `${text(panel)} | ${kind} | ${String(like)}`;
    sums.set(key, (sums.get(key) ?? 0) + quantity);
  };
  const railOfRun = (run: Cells | undefined) => run?.rail ?? find('ways', 'way', run?.way)?.rail;
  const panelOfRail = (rail: unknown) => find('supplies', 'rail', rail)?.enclosure;
  const panelOfBranch = (branch: unknown) => find('branches', 'branch', branch)?.enclosure;
  const panelOfWay = (way: Cells | undefined) => way && (way.enclosure ?? panelOfRail(way.rail));

  for (const row of rows('devices')) {
    const rail = row.rail ?? railOfRun(find('runs', 'run', row.run));
    const about = text(find('types', 'type', row.type)?.description);
    const isLong = about.startsWith('One metre');
    const longer = isLong && about.endsWith('cable') ? 1 + allowance : 1;
    const quantity = typeof row.qty === 'number' ? row.qty * longer : undefined;
    add(panelOfRail(rail) ?? panelOfBranch(row.branch), isLong ? 'length' : 'device', row.type ?? 'none', quantity);
  }
  for (const row of rows('supplies')) {
    add(row.enclosure, 'supply', `${text(row.voltage ?? 24)} V ${String(row.rated)} A`, row.units ?? 1);
  }
  for (const row of rows('ways')) add(panelOfWay(row), 'way', `${String(row.kind)} ${String(row.rated)} A`, 1);
  for (const row of rows('modules')) add(row.enclosure, 'module', row.outputs, 1);
  for (const row of rows('enclosures')) add(row.enclosure, 'enclosure', 'one', 1);
  for (const row of rows('runs')) {
    const panel = panelOfWay(find('ways', 'way', row.way)) ?? panelOfRail(railOfRun(row)) ?? panelOfBranch(row.branch);
    if (typeof row.length !== 'number') continue;
    add(panel, 'conductor', row.conductor ?? 'none', row.length * Number(row.pairs ?? 1) * (1 + allowance));
  }
  return sums;
}
