import { STATE_WORDS } from '../../../src/findings/index.ts';
import { isBlank, SCHEMA, type CellValue } from '../../../src/schedule/index.ts';
import { figureText, numberAt, valueText, type Mark } from '../../look/index.ts';
import { message } from '../../../src/words/index.ts';
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

/**
 * The figures of what a heading stands for, or the sum of the rows that have nothing in common but that they name
 * none.
 */
export function groupFigures(model: GridModel, line: HeadingLine): GroupFigures {
  const { schedule, words } = model;
  const { length: n } = line.members;
  const rows = n === line.all ? words.say('{n, plural, one {# row} other {# rows}}', { n })
    : words.say('{n} of {all, plural, one {# row} other {# rows}}', { n, all: line.all });
  if (line.by === 'area' && line.text !== '') {
    return { title: line.text, purpose: '', ...demandOf(model, line), rows, status: undefined };
  }
  if (line.id < 0) return figuresOfTheRest(model, line, rows);
  const value = (key: string): CellValue => schedule.value(line.sheet, line.id, key);
  const tag = value(SCHEMA[line.sheet].tag);
  const purpose = line.sheet === 'supplies' ? value('purpose') : null;
  return {
    title: tag === null ? words.say('no tag') : String(tag),
    purpose: typeof purpose === 'string' ? words.text(purpose) : '',
    ...figuresOf(model, line),
    rows,
    status: schedule.standing(line.sheet, line.id) ?? undefined,
  };
}

type Load = Pick<GroupFigures, 'sentence' | 'loading' | 'target'>;

function figuresOf(model: GridModel, line: HeadingLine): Load {
  switch (line.by) {
    case 'rail': return loadFigures(model, line, 'usable');
    case 'way': return loadFigures(model, line, 'rated');
    case 'branch': return branchFigures(model, line.id);
    default: return demandOf(model, line);
  }
}

/** What the rows in sight ask for together. */
function demandOf(model: GridModel, line: HeadingLine): Load {
  const sentence = model.words.say('demand {current}', { current: sumText(model, line, 'demand') });
  return { sentence, loading: null, target: null };
}

/** The sum of the rows in sight; at least that where one of them is not wholly known. */
function sumText({ schedule, words }: GridModel, { members }: HeadingLine, key: string): string {
  const figures = members.filter((id) => !isBlank(schedule.document.row('devices', id)!))
    .map((id) => ({ value: numberAt(schedule, { sheet: 'devices', id, key }), sign: schedule.partialSign('devices', id, key) }));
  const isPartial = figures.some(({ value, sign }) => value === null || sign !== '');
  const sum = figures.reduce((total, { value }) => total + (value ?? 0), 0);
  return `${isPartial ? '≥\u202f' : ''}${valueText('devices', key, sum, words)}`;
}

function loadFigures({ schedule, words }: GridModel, { sheet, id }: HeadingLine, most: string): Load {
  const figure = (key: string): string => figureText(schedule, { sheet, id, key });
  const number = (key: string): number | null => numberAt(schedule, { sheet, id, key });
  const loading = number('loading');
  const figures = {
    amount: figure('demand'), most: figure(most), share: figure('loading'), target: figure('target'),
  };
  const sentence = loading === null ? words.say('{amount} of {most}, loading unknown, target {target}', figures)
    : words.say('{amount} of {most}, {share}, target {target}', figures);
  return { sentence, loading, target: number('target') };
}

function branchFigures({ schedule, words }: GridModel, id: number): Load {
  const figure = (key: string): string => figureText(schedule, { sheet: 'branches', id, key });
  const number = (key: string): number | null => numberAt(schedule, { sheet: 'branches', id, key });
  const reserve = number('reserve') ?? 0;
  const figures = { nodes: figure('nodes'), limit: figure('limit'), share: figure('used'), reserve: figure('reserve') };
  const sentence = number('limit') === null ? words.say('{nodes} nodes, limit not known', figures)
    : reserve > 0 ? words.say('{nodes} of {limit} nodes, {share}, {reserve} kept free', figures)
    : words.say('{nodes} of {limit} nodes, {share}', figures);
  return { sentence, loading: number('used'), target: reserve > 0 ? 1 - reserve : null };
}

const REST: Readonly<Record<HeadingLine['by'], string>> = {
  rail: message('No known rail'), branch: message('No known branch'), way: message('No known way'),
  run: message('No known run'), type: message('No known type'), area: message('No area'),
};

function figuresOfTheRest(model: GridModel, line: HeadingLine, rows: string): GroupFigures {
  const { words } = model;
  const sum = (key: string) => sumText(model, line, key);
  const load = line.by === 'rail' ? { sentence: words.say('{current} on no supply', { current: sum('demand') }) }
    : line.by === 'branch' ? { sentence: words.say('{nodes} nodes on no branch', { nodes: sum('nodes') }) }
    : demandOf(model, line);
  return { title: words.say(REST[line.by]), purpose: '', loading: null, target: null, ...load, rows, status: undefined };
}

/** A heading as one sentence, for the cell that stands behind the drawn heading. */
export function headingText(model: GridModel, line: HeadingLine): string {
  const { title, purpose, sentence, rows, status } = groupFigures(model, line);
  return [title, purpose, sentence, status === undefined ? '' : model.words.say(STATE_WORDS[status]), rows]
    .filter((part) => part !== '').join(', ');
}
