import { STANDINGS } from '../../src/findings/finding.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { SheetName } from '../../src/schedule/index.ts';
import { numberAt, type Mark } from '../look/index.ts';
import { enclosureGauge } from './enclosure-gauge.ts';
import { gaugeOf, gaugeRow, statusOf, type Gauge, type GaugeFigures, type GaugeRow } from './gauge.ts';
import { branchGauge, demandGauge, moduleGauge, outputGauge } from './load-gauges.ts';
import { runGauge } from './run-gauge.ts';
import { message } from '../../src/words/index.ts';

/** One kind of gauge, as a section of the panel. */
export interface GaugeSection {
  readonly sheet: SheetName;
  readonly title: string;
  /** What it says without rows. */
  readonly none: string;
  /** The button that lists every row. */
  readonly all: string;
  /** How many are listed until all are asked for. */
  readonly most: number;
  /** The worst first even where all are listed. */
  readonly sorted: boolean;
  readonly figures: (row: GaugeRow) => GaugeFigures;
  /** What orders rows of one status, the least first. */
  readonly left: string;
}

export const SECTIONS: readonly GaugeSection[] = [
  {
    sheet: 'supplies', title: message('Supplies'), none: message('No supplies yet.'), all: message('All {n} supplies'),
    most: 12, sorted: false, figures: demandGauge('usable', 'purpose'), left: 'spare',
  },
  {
    sheet: 'ways', title: message('Ways'), none: message('No ways yet.'), all: message('All {n} ways'),
    most: 5, sorted: true, figures: demandGauge('rated'), left: 'available',
  },
  {
    sheet: 'branches', title: message('Bus branches'), none: message('No bus branches yet.'),
    all: message('All {n} branches'),
    most: 12, sorted: false, figures: branchGauge, left: 'free',
  },
  {
    sheet: 'runs', title: message('Runs'), none: message('No runs yet.'), all: message('All {n} runs'),
    most: 5, sorted: true, figures: runGauge, left: 'endVoltage',
  },
  {
    sheet: 'modules', title: message('Modules'), none: message('No modules yet.'), all: message('All {n} modules'),
    most: 5, sorted: true, figures: moduleGauge, left: 'headroom',
  },
  {
    sheet: 'outputs', title: message('Outputs'), none: message('No outputs yet.'), all: message('All {n} outputs'),
    most: 5, sorted: true, figures: outputGauge, left: 'headroom',
  },
  {
    sheet: 'feeds', title: message('Feeds'), none: message('No feeds yet.'), all: message('All {n} feeds'),
    most: 12, sorted: false, figures: demandGauge('rated'), left: 'spare',
  },
  {
    sheet: 'enclosures', title: message('Enclosures'), none: message('No enclosures yet.'),
    all: message('All {n} enclosures'),
    most: 5, sorted: true, figures: enclosureGauge, left: 'top',
  },
];

/** The rows of a section, and how many there are of each status; sentences are only made for those that are listed. */
export interface SectionRows {
  readonly ids: readonly number[];
  readonly counts: ReadonlyMap<Mark, number>;
}

/** Rows that are not blank: in the order of their sheet, or the worst first where not all are listed. */
export function sectionRows(
  schedule: LoadSchedule, { sheet, most, sorted, left }: GaugeSection, all: boolean,
): SectionRows {
  const rows = schedule.rows(sheet).filter(({ id }) => schedule.standing(sheet, id) !== null)
    .map(({ id }) => ({ id, status: statusOf(schedule, sheet, id) }));
  const counts = new Map(STANDINGS.map((mark) => [mark, rows.filter(({ status }) => status === mark).length]));
  if (sorted || (!all && rows.length > most)) {
    const sign = left === 'top' ? -1 : 1;
    const keyed = rows.map(({ id, status }) => (
      { id, rank: STANDINGS.indexOf(status), left: numberAt(schedule, { sheet, id, key: left }) ?? Infinity }));
    keyed.sort(
      (one, other) => one.rank - other.rank || sign * (one.left < other.left ? -1 : one.left > other.left ? 1 : 0),
    );
    return { ids: (all ? keyed : keyed.slice(0, most)).map(({ id }) => id), counts };
  }
  return { ids: rows.map(({ id }) => id), counts };
}

/** The gauge of a row. */
export function sectionGauge(schedule: LoadSchedule, { sheet, figures }: GaugeSection, id: number): Gauge {
  const row = gaugeRow(schedule, sheet, id);
  return gaugeOf(row, figures(row));
}
