import type { CellValue, SheetName } from '../schedule/index.ts';

/** What is asked of a schedule to know the panel of a row. */
export interface PanelFigures {
  value(sheet: SheetName, id: number, key: string): CellValue;
  target(sheet: SheetName, id: number, key: string): number;
}

/** Where the enclosure of a row is said: in a cell of its own, or by a row that it names; the first that says one. */
const SAID_BY: Partial<Record<SheetName, readonly (readonly [key: string, sheet?: SheetName])[]>> = {
  enclosures: [['enclosure']], supplies: [['enclosure']], ways: [['enclosure']], branches: [['enclosure']],
  modules: [['enclosure']], feeds: [['enclosure']], terminals: [['enclosure']],
  devices: [['rail', 'supplies'], ['branch', 'branches']],
  runs: [['way', 'ways'], ['rail', 'supplies'], ['branch', 'branches']],
  outputs: [['module', 'modules']],
};

/** Keys by which rows of a sheet say their panel, in the order in which they count. */
export function panelKeys(sheet: SheetName): readonly string[] {
  return (SAID_BY[sheet] ?? []).map(([key]) => key);
}

/** A panel by the tag of its enclosure; `null` for what is in none, `undefined` for all of them together. */
export type PanelChoice = string | null | undefined;

/** The panels of a schedule: tags of its enclosures in their order, then those that only rows mounted in them name. */
export function panelNames(
  schedule: Pick<PanelFigures, 'value'> & { rows(sheet: SheetName): readonly { readonly id: number }[] },
): string[] {
  const mounted = (Object.keys(SAID_BY) as SheetName[]).filter((sheet) => SAID_BY[sheet]![0]![1] === undefined);
  const names = mounted.flatMap((sheet) => schedule.rows(sheet).map(({ id }) => schedule.value(sheet, id, 'enclosure')));
  return [...new Set(names)].filter((name): name is string => typeof name === 'string' && name !== '');
}

/** Whether a row is in sight where one panel is looked at: it belongs to that, or its sheet is a list for all. */
export function isInSight(schedule: PanelFigures, sheet: SheetName, id: number, panel: PanelChoice): boolean {
  return panel === undefined || panelKeys(sheet).length === 0 || panelOf(schedule, sheet, id) === panel;
}

/**
 * The panel that a row belongs to: the tag of the enclosure that it is mounted in, or is fed from.
 * @param by keys that count, in this order; all of the sheet by default
 * @returns `null` where no enclosure is said, and for sheets that are lists
 */
export function panelOf(
  schedule: PanelFigures, sheet: SheetName, id: number, by: readonly string[] = panelKeys(sheet),
): string | null {
  for (const key of by) {
    const through = SAID_BY[sheet]!.find(([name]) => name === key)![1];
    const target = through === undefined ? id : schedule.target(sheet, id, key);
    const panel = target < 0 ? null : schedule.value(through ?? sheet, target, 'enclosure');
    if (typeof panel === 'string' && panel !== '') return panel;
  }
  return null;
}
