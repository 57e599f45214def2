import type { LoadSchedule, ScheduleEvent } from '../../src/load-schedule.ts';
import type { SheetName } from '../../src/schedule/index.ts';
import { numberAt, signed, valueText } from '../look/index.ts';

/** The figure that the gauges of a sheet show. */
const FIGURES = {
  supplies: 'loading', ways: 'loading', branches: 'used', runs: 'endVoltage', modules: 'current', outputs: 'loading',
  feeds: 'loading', enclosures: 'top',
} as const satisfies Partial<Record<SheetName, string>>;
type Gauged = keyof typeof FIGURES;
const SHEETS = Object.keys(FIGURES) as Gauged[];

/** A figure as it is shown, with the sign of one that lacks something; the number is `null` where it is not known. */
interface Figure {
  readonly value: number | null;
  readonly text: string;
}

/** What an action did to the figure of a gauge. */
export interface FigureMove {
  readonly sheet: SheetName;
  readonly id: number;
  readonly before: Figure;
  readonly after: Figure;
}

/** A number with the sign of what it lacks. */
type Known = readonly [value: number | null, sign: string];

/** The figures of all gauges as they are, to tell what the next action does to them. */
export class FigureTrace {
  readonly #schedule: LoadSchedule;
  readonly #figures: Readonly<Record<Gauged, Map<number, Known>>>;

  constructor(schedule: LoadSchedule) {
    this.#schedule = schedule;
    this.#figures = Object.fromEntries(SHEETS.map((sheet) =>
      [sheet, new Map(schedule.rows(sheet).map(({ id }) => [id, this.#known(sheet, id)]))])) as never;
  }

  /** What an action did to the gauges: only rows that it concerned are looked at. */
  follow({ touched }: ScheduleEvent): FigureMove[] {
    return SHEETS.flatMap((sheet) => [...touched.rows.get(sheet)?.keys() ?? []].flatMap((id) => {
      const figures = this.#figures[sheet];
      const was = figures.get(id);
      if (this.#schedule.document.row(sheet, id) === undefined) {
        figures.delete(id);
        return [];
      }
      const is = this.#known(sheet, id);
      figures.set(id, is);
      // What came had no figure before.
      if (was === undefined) return [];
      const [before, after] = [this.#figure(sheet, was), this.#figure(sheet, is)];
      return before.text === after.text ? [] : [{ sheet, id, before, after }];
    }));
  }

  #known(sheet: Gauged, id: number): Known {
    const key = FIGURES[sheet];
    return [numberAt(this.#schedule, { sheet, id, key }), this.#schedule.partialSign(sheet, id, key)];
  }

  #figure(sheet: Gauged, [value, sign]: Known): Figure {
    return { value, text: signed(sign, valueText(sheet, FIGURES[sheet], value, this.#schedule.words), value) };
  }
}
