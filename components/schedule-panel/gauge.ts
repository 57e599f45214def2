import type { Standing } from '../../src/findings/finding.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, type SheetName } from '../../src/schedule/index.ts';
import { figureText, numberAt, rowName, type Mark } from '../look/index.ts';
import type { Words } from '../../src/words/index.ts';

/** How full something is: a bar, the sentence that says the same, and the cell to go to. */
export interface Gauge {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
  readonly tag: string;
  readonly about: string;
  /** Share of what may be used; `null` when unknown. */
  readonly loading: number | null;
  readonly target: number | null;
  readonly status: Mark;
  readonly sentence: string;
}

/** One row as the makers of gauges read it. */
export interface GaugeRow {
  readonly schedule: LoadSchedule;
  readonly sheet: SheetName;
  readonly id: number;
  readonly words: Words;
  number(key: string): number | null;
  /** Figure with its unit, as a sentence gives it. */
  text(key: string): string;
  /** Text of a cell; empty when it has none. */
  word(key: string): string;
}

/** What the maker of a sheet's gauges says of a row, beside what all have. */
export type GaugeFigures = Pick<Gauge, 'key' | 'about' | 'loading' | 'target' | 'sentence'>;

export function gaugeRow(schedule: LoadSchedule, sheet: SheetName, id: number): GaugeRow {
  return {
    schedule, sheet, id, words: schedule.words,
    number: (key) => numberAt(schedule, { sheet, id, key }),
    text: (key) => figureText(schedule, { sheet, id, key }),
    word: (key) => {
      const value = schedule.value(sheet, id, key);
      return typeof value === 'string' ? value : '';
    },
  };
}

export function statusOf(schedule: LoadSchedule, sheet: SheetName, id: number): Standing {
  return schedule.standing(sheet, id) ?? 'incomplete';
}

export function gaugeOf(row: GaugeRow, figures: GaugeFigures): Gauge {
  const { schedule, sheet, id } = row;
  const status = statusOf(schedule, sheet, id);
  return {
    sheet, id, tag: rowName(schedule, row), status, ...figures, sentence: withReason(row, figures, status),
  };
}

/** The sentence with what makes the status, where that is not what the bar shows. */
function withReason(
  { schedule, sheet, id, words }: GaugeRow, { loading, target, sentence }: GaugeFigures, status: Mark,
): string {
  const limit = status === 'over' ? 1 : status === 'near' ? target ?? 1 : null;
  if (limit === null || (loading !== null && loading > limit)) return sentence;
  const worst = schedule.findingsOf(sheet, id).find(({ severity }) => severity === status);
  // What is found at another row, as at the supply of a way, has no finding here.
  const key = worst === undefined ? schedule.statusBasis(sheet, id).deciding[0]?.key
    : worst.rule === 'supply-over-fuse' ? 'fuse' : worst.key;
  return key === undefined ? sentence
    : words.say('{sentence}; see “{column}”', { sentence, column: words.text(columnOf(sheet, key).title) });
}
