import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Row, SheetName } from '../../src/schedule/index.ts';
import { figureText, numberAt, rowName, valueText, type Mark } from '../look/index.ts';

/** How full something is: a bar, the sentence that says the same, and the cell to go to. */
export interface Gauge {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
  readonly tag: string;
  readonly about: string;
  readonly loading: number | null;
  readonly target: number | null;
  readonly status: Mark;
  readonly sentence: string;
}

/** Which cells of a sheet a gauge is made of. */
interface Recipe {
  readonly about?: string;
  readonly amount: string;
  readonly most: string;
  readonly loading: string;
  readonly target: (schedule: LoadSchedule, id: number) => number | null;
  readonly tail: (schedule: LoadSchedule, id: number, locale: string) => string;
}

function targetTail(sheet: SheetName): Recipe['tail'] {
  return (schedule, id, locale) => `target ${figureText(schedule, { sheet, id, key: 'target' }, locale)}`;
}

const RECIPES = {
  supplies: {
    about: 'purpose', amount: 'demand', most: 'usable', loading: 'loading',
    target: (schedule, id) => numberAt(schedule, { sheet: 'supplies', id, key: 'target' }), tail: targetTail('supplies'),
  },
  branches: {
    amount: 'points', most: 'limit', loading: 'used',
    target: (schedule, id) => 1 - (numberAt(schedule, { sheet: 'branches', id, key: 'reserve' }) ?? 0),
    tail: (schedule, id, locale) => {
      const number = (key: string) => numberAt(schedule, { sheet: 'branches', id, key }) ?? 0;
      const beyond = number('points') - number('limit');
      if (beyond > 0) return `${valueText('branches', 'points', beyond, locale)} too many`;
      if (number('free') < 0) return `${valueText('branches', 'free', -number('free'), locale)} into the reserve`;
      return `${figureText(schedule, { sheet: 'branches', id, key: 'free' }, locale)} free`;
    },
  },
  outputs: {
    about: 'load', amount: 'current', most: 'rating', loading: 'loading',
    target: (schedule, id) => numberAt(schedule, { sheet: 'outputs', id, key: 'target' }),
    tail: (schedule, id, locale) => {
      const left = numberAt(schedule, { sheet: 'outputs', id, key: 'headroom' });
      if (left !== null && left < 0) return `${valueText('outputs', 'headroom', -left, locale)} too much`;
      return `${figureText(schedule, { sheet: 'outputs', id, key: 'headroom' }, locale)} left`;
    },
  },
  feeds: {
    amount: 'demand', most: 'rated', loading: 'loading',
    target: (schedule, id) => numberAt(schedule, { sheet: 'feeds', id, key: 'target' }), tail: targetTail('feeds'),
  },
} as const satisfies Partial<Record<SheetName, Recipe>>;

export type GaugeSheet = keyof typeof RECIPES;

function gaugeOf(schedule: LoadSchedule, sheet: GaugeSheet, row: Row, locale: string): Gauge {
  const { amount, most, loading, target, tail, ...rest }: Recipe = RECIPES[sheet];
  const { id } = row;
  const text = (key: string) => figureText(schedule, { sheet, id, key }, locale);
  const share = numberAt(schedule, { sheet, id, key: loading });
  const about = rest.about === undefined ? null : schedule.value(sheet, id, rest.about);
  const unit = sheet === 'branches' ? ' points' : '';
  return {
    sheet, id, key: loading, loading: share, target: target(schedule, id),
    tag: rowName(schedule, { sheet, id }),
    about: typeof about === 'string' ? about : '',
    status: (schedule.value(sheet, id, 'status') as Mark | null) ?? 'incomplete',
    sentence: share === null
      ? `${text(amount)} of ${text(most)}${unit}`
      : `${text(amount)} of ${text(most)}${unit}, ${text(loading)}, ${tail(schedule, id, locale)}`,
  };
}

/** The gauges of all rows of a sheet that are not blank, in order. */
export function gauges(schedule: LoadSchedule, sheet: GaugeSheet, locale: string): Gauge[] {
  return schedule.rows(sheet).filter(({ id }) => schedule.value(sheet, id, 'status') !== null)
    .map((row) => gaugeOf(schedule, sheet, row, locale));
}

/** The gauges of the outputs that have the least left before their rating, the tightest first. */
export function tightestOutputs(schedule: LoadSchedule, most: number, locale: string): Gauge[] {
  return schedule.rows('outputs')
    .map((row) => ({ row, left: numberAt(schedule, { sheet: 'outputs', id: row.id, key: 'headroom' }) }))
    .filter((each): each is { row: Row; left: number } => each.left !== null)
    .sort((a, b) => a.left - b.left)
    .slice(0, most)
    .map(({ row }) => gaugeOf(schedule, 'outputs', row, locale));
}
