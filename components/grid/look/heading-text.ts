import { formatCell, SCHEMA, type CellValue } from '../../../src/schedule/index.ts';
import { figureText, MARK_WORDS, numberAt, valueText, type Mark } from '../../look/index.ts';
import { counted } from '../actions/plan.ts';
import type { GridModel } from '../grid-model.ts';
import type { HeadingLine } from '../lines/index.ts';

/** What a heading says of its group. */
export interface GroupFigures {
  readonly title: string;
  readonly purpose: string;
  /** «7.90 A of 10.00 A, 79 %, target 80 %» */
  readonly sentence: string;
  readonly rows: string;
  /** Share of what may be used; `null` when unknown. */
  readonly loading: number | null;
  readonly target: number | null;
  readonly status: Mark | undefined;
}

/** The figures of the supply or branch that a heading stands for, or the sum of the rows that name none. */
export function groupFigures(model: GridModel, line: HeadingLine): GroupFigures {
  const rows = counted(line.members.length, 'row');
  if (line.id < 0) return figuresOfTheRest(model, line, rows);
  const { schedule } = model;
  const value = (key: string): CellValue => schedule.value(line.sheet, line.id, key);
  const status = value('status');
  return {
    title: String(value(SCHEMA[line.sheet].tag) ?? 'no tag'),
    purpose: line.sheet === 'supplies' ? String(value('purpose') ?? '') : '',
    ...(line.sheet === 'supplies' ? supplyFigures(model, line.id) : branchFigures(model, line.id)),
    rows,
    status: typeof status === 'string' && status in MARK_WORDS ? status as Mark : undefined,
  };
}

type Load = Pick<GroupFigures, 'sentence' | 'loading' | 'target'>;

function supplyFigures({ schedule, words }: GridModel, id: number): Load {
  const figure = (key: string): string => figureText(schedule, { sheet: 'supplies', id, key }, words);
  const number = (key: string): number | null => numberAt(schedule, { sheet: 'supplies', id, key });
  const loading = number('loading');
  const share = loading === null ? 'loading unknown' : figure('loading');
  return {
    sentence: `${figure('demand')} of ${figure('usable')}, ${share}, target ${figure('target')}`,
    loading, target: number('target'),
  };
}

function branchFigures({ schedule, words }: GridModel, id: number): Load {
  const figure = (key: string): string => figureText(schedule, { sheet: 'branches', id, key }, words);
  const number = (key: string): number | null => numberAt(schedule, { sheet: 'branches', id, key });
  const reserve = number('reserve') ?? 0;
  const kept = reserve > 0 ? `, ${figure('reserve')} kept free` : '';
  return {
    sentence: `${figure('points')} of ${figure('limit')} points, ${figure('used')}${kept}`,
    loading: number('used'), target: reserve > 0 ? 1 - reserve : null,
  };
}

function figuresOfTheRest({ schedule, words }: GridModel, line: HeadingLine, rows: string): GroupFigures {
  const key = line.sheet === 'supplies' ? 'demand' : 'points';
  const sum = line.members.reduce((total, id) => total + (numberAt(schedule, { sheet: 'devices', id, key }) ?? 0), 0);
  const total = key === 'demand' ? valueText('devices', key, sum, words) : `${formatCell(pointsColumn, sum, words, 'show')} points`;
  return {
    title: line.sheet === 'supplies' ? 'No known rail' : 'No known branch',
    purpose: '', sentence: `${total} on no ${line.sheet === 'supplies' ? 'supply' : 'branch'}`, rows, loading: null, target: null, status: undefined,
  };
}

const pointsColumn = SCHEMA.devices.columns.find(({ key }) => key === 'points')!;

/** A heading as one sentence, for the cell that stands behind the drawn heading. */
export function headingText(model: GridModel, line: HeadingLine): string {
  const { title, purpose, sentence, rows, status } = groupFigures(model, line);
  return [title, purpose, sentence, status === undefined ? '' : MARK_WORDS[status], rows].filter((part) => part !== '').join(', ');
}
