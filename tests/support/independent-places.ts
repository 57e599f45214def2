import { exceeds, isGiven, number, type Cell, type InputRow } from './known-number.ts';

/** Rows of the sheets that say where something hangs. */
export interface PlacedSheets {
  readonly supplies: readonly InputRow[];
  readonly ways: readonly InputRow[];
  readonly runs: readonly InputRow[];
  readonly devices: readonly InputRow[];
}

/**
 * The runs, ways and supplies on which something is entered that is entered on another rail too, or beyond the end of
 * its run: what they are asked for is not sure. Nothing of the product is imported; of rows that share a tag the first
 * is meant.
 */
export function misplacedOn({ supplies, ways, runs, devices }: PlacedSheets): ReadonlySet<InputRow> {
  const first = (rows: readonly InputRow[], key: string, tag: Cell) =>
    isGiven(tag) ? rows.find((row) => row[key] === tag) : undefined;
  const wayOf = (run: InputRow) => first(ways, 'way', run.way);
  const railOfRun = (run: InputRow) => isGiven(run.rail) ? run.rail : wayOf(run)?.rail;
  const supplyOf = (rail: Cell) => first(supplies, 'rail', rail);
  const found = new Set<InputRow>();
  const doubt = (row: InputRow | undefined) => { if (row !== undefined) found.add(row); };
  for (const run of runs) {
    const [own, ofWay] = [supplyOf(railOfRun(run)), supplyOf(wayOf(run)?.rail)];
    if (ofWay === undefined || own === ofWay) continue;
    doubt(wayOf(run));
    doubt(ofWay);
  }
  for (const device of devices) {
    const run = first(runs, 'run', device.run);
    if (run === undefined) continue;
    if (exceeds(number(device, 'distance'), number(run, 'length'))) doubt(run);
    const [own, ofRun] = [supplyOf(isGiven(device.rail) ? device.rail : railOfRun(run)), supplyOf(railOfRun(run))];
    if (ofRun === undefined || own === ofRun) continue;
    doubt(run);
    doubt(wayOf(run));
    doubt(ofRun);
  }
  return found;
}
