import { panelOf, type PanelChoice } from '../../engine/index.ts';
import { grouped, isBlank, type SheetName } from '../../schedule/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';

/** Rows of one panel by what they hang on, gathered in one pass over each sheet. */
export class Gathered {
  readonly schedule: LoadSchedule;
  readonly panel: PanelChoice;
  readonly #rows = new Map<SheetName, readonly number[]>();
  readonly #on = new Map<string, ReadonlyMap<number, readonly number[]>>();

  /** @param schedule as it is in the panel, see `panelView`. */
  constructor(schedule: LoadSchedule, panel: PanelChoice) {
    this.schedule = schedule;
    this.panel = panel;
  }

  /** Ids of the rows of the panel in which something is entered, and of ways of other panels that its runs name. */
  rows(sheet: SheetName): readonly number[] {
    let rows = this.#rows.get(sheet);
    if (rows === undefined) {
      const own = this.schedule.rows(sheet).filter((row) => !isBlank(row)).map(({ id }) => id);
      const ways = sheet !== 'ways' ? [] : this.rows('runs')
        .flatMap((id) => ['way', 'secondWay'].map((key) => this.schedule.target('runs', id, key))).filter((id) => id >= 0);
      this.#rows.set(sheet, rows = [...new Set([...own, ...ways])]);
    }
    return rows;
  }

  /** Rows of a sheet that name a row by a key; -1 for those that name none that is there. */
  on(sheet: SheetName, key: string, target: number): readonly number[] {
    const name = `${sheet}.${key}`;
    let groups = this.#on.get(name);
    if (groups === undefined) {
      this.#on.set(name, groups = grouped(this.rows(sheet), (id) => this.schedule.target(sheet, id, key)));
    }
    return groups.get(target) ?? [];
  }

  /** Rows by a tag that they name and that no row bears, or by an empty text where they name none. */
  astray(sheet: SheetName, key: string, ids: readonly number[]): Map<string, number[]> {
    return grouped(ids, (id) => this.text(sheet, id, key));
  }

  text(sheet: SheetName, id: number, key: string): string {
    const value = this.schedule.value(sheet, id, key);
    return typeof value === 'string' ? value : '';
  }

  /** The panel of a row, in words, where another one is drawn; empty for the one that is drawn. */
  otherPanel(sheet: SheetName, id: number): string {
    if (this.panel === undefined) return '';
    const panel = panelOf(this.schedule, sheet, id);
    if (panel === this.panel) return '';
    const { words } = this.schedule;
    return panel === null ? words.say('in no panel') : words.say('in panel {panel}', { panel });
  }
}
