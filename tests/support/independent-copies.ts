/**
 * Which rows belong to a supply and are duplicated with it, worked out a second time from the cells alone. Imports
 * nothing of the product.
 */
type Cells = Readonly<Record<string, unknown>>;
type Sheets = Readonly<Partial<Record<string, readonly Cells[]>>>;

const SHEETS = ['supplies', 'ways', 'branches', 'runs', 'devices', 'modules', 'outputs'] as const;
const TAGS = {
  supplies: 'rail', ways: 'way', branches: 'branch', runs: 'run', devices: 'ref', modules: 'module', outputs: 'output',
} as const;

const rowsOf = (sheets: Sheets, sheet: string) => sheets[sheet] ?? [];
const named = (sheets: Sheets, sheet: keyof typeof TAGS, tag: unknown) =>
  tag === undefined ? undefined : rowsOf(sheets, sheet).find((row) => row[TAGS[sheet]] === tag);

function railOfRun(sheets: Sheets, run: Cells | undefined): unknown {
  return run?.rail ?? named(sheets, 'ways', run?.way)?.rail;
}

/** Every thing that a device row or an output hangs on: `supplies L1`. */
function holdersOf(sheets: Sheets, sheet: 'devices' | 'outputs', row: Cells): Set<string> {
  const holders = new Set<string>();
  const add = (holder: keyof typeof TAGS, tag: unknown) => { if (named(sheets, holder, tag)) holders.add(`${holder} ${String(tag)}`); };
  if (sheet === 'outputs') {
    add('modules', row.module);
    add('supplies', row.rail);
    return holders;
  }
  const run = named(sheets, 'runs', row.run);
  add('supplies', row.rail ?? railOfRun(sheets, run));
  add('supplies', railOfRun(sheets, run));
  add('runs', row.run);
  add('ways', run?.way);
  add('branches', row.branch);
  return holders;
}

/** Places of the rows, by sheet, that a supply takes along. */
export function belongingToSupply(sheets: Sheets, rail: string): Record<string, number[]> {
  const loads = (['devices', 'outputs'] as const).flatMap((sheet) => rowsOf(sheets, sheet).map((row, place) =>
    ({ sheet, place, holders: holdersOf(sheets, sheet, row) })));
  const inside = loads.filter(({ holders }) => holders.has(`supplies ${rail}`));
  const isWhole = (name: string) => {
    const all = loads.filter(({ holders }) => holders.has(name));
    return { any: all.length > 0, whole: all.every((load) => inside.includes(load)) };
  };
  const kept = new Set<string>([`supplies ${rail}`]);
  for (const sheet of ['supplies', 'branches', 'modules', 'ways', 'runs'] as const) {
    for (const row of rowsOf(sheets, sheet)) {
      const name = `${sheet} ${String(row[TAGS[sheet]])}`;
      const { any, whole } = isWhole(name);
      const names = sheet === 'ways' ? [`supplies ${String(row.rail)}`]
        : [`supplies ${String(railOfRun(sheets, row))}`, `branches ${String(row.branch)}`, `ways ${String(row.way)}`];
      const isSpare = !any && (sheet === 'ways' || sheet === 'runs') && names.some((each) => kept.has(each));
      if ((any && whole) || isSpare) kept.add(name);
    }
  }
  return Object.fromEntries(SHEETS.map((sheet) => [sheet, rowsOf(sheets, sheet).flatMap((row, place) => {
    const isIn = sheet === 'devices' || sheet === 'outputs'
      ? inside.some((load) => load.sheet === sheet && load.place === place)
      : kept.has(`${sheet} ${String(row[TAGS[sheet]])}`);
    return isIn ? [place] : [];
  })]));
}
