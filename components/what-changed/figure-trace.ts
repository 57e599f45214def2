import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import type { SheetName } from '../../src/schedule/index.ts';
import { numberAt } from '../look/index.ts';

/** The figure that the gauges of a sheet show. */
const FIGURES = {
  supplies: 'loading', ways: 'loading', branches: 'used', runs: 'endVoltage', modules: 'current', outputs: 'loading',
  feeds: 'loading', enclosures: 'top',
} as const satisfies Partial<Record<SheetName, string>>;
type Gauged = keyof typeof FIGURES;
const SHEETS = Object.keys(FIGURES) as Gauged[];

/** What an action did to the figure of a gauge; `null` for one that is not known. */
export interface FigureMove {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
  readonly before: number | null;
  readonly after: number | null;
}

/** The figures of all gauges as they are, to tell what the next action does to them. */
export class FigureTrace {
  readonly #schedule: LoadSchedule;
  readonly #figures: Readonly<Record<Gauged, Map<number, number | null>>>;

  constructor(schedule: LoadSchedule) {
    this.#schedule = schedule;
    this.#figures = Object.fromEntries(SHEETS.map((sheet) =>
      [sheet, new Map(schedule.rows(sheet).map(({ id }) => [id, this.#figure(sheet, id)]))])) as never;
  }

  /** What an action did to the gauges: only rows that it concerned are looked at. */
  follow({ touched }: ScheduleEvent): FigureMove[] {
    return SHEETS.flatMap((sheet) => [...touched.rows.get(sheet)?.keys() ?? []].flatMap((id) => {
      const figures = this.#figures[sheet];
      const [isKnown, before, after] = [figures.has(id), figures.get(id) ?? null, this.#figure(sheet, id)];
      const isThere = this.#schedule.document.row(sheet, id) !== undefined;
      if (isThere) figures.set(id, after);
      else figures.delete(id);
      // What came had no figure before, and what went has none.
      return !isKnown || !isThere || before === after ? [] : [{ sheet, id, key: FIGURES[sheet], before, after }];
    }));
  }

  #figure(sheet: Gauged, id: number): number | null {
    return this.#schedule.document.row(sheet, id) === undefined ? null
      : numberAt(this.#schedule, { sheet, id, key: FIGURES[sheet] });
  }
}
