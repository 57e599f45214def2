import { STATE_WORDS } from '../../../src/findings/index.ts';
import { SCHEMA, type CellValue } from '../../../src/schedule/index.ts';
import { figureText, numberAt, valueText, type Mark } from '../../look/index.ts';
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
  const { schedule, words } = model;
  const rows = words.say('{n, plural, one {# row} other {# rows}}', { n: line.members.length });
  if (line.id < 0) return figuresOfTheRest(model, line, rows);
  const value = (key: string): CellValue => schedule.value(line.sheet, line.id, key);
  const [tag, status] = [value(SCHEMA[line.sheet].tag), value('status')];
  const purpose = line.sheet === 'supplies' ? value('purpose') : null;
  return {
    title: tag === null ? words.say('no tag') : String(tag),
    purpose: typeof purpose === 'string' ? words.text(purpose) : '',
    ...(line.sheet === 'supplies' ? supplyFigures(model, line.id) : branchFigures(model, line.id)),
    rows,
    status: typeof status === 'string' && status in STATE_WORDS ? status as Mark : undefined,
  };
}

type Load = Pick<GroupFigures, 'sentence' | 'loading' | 'target'>;

function supplyFigures({ schedule, words }: GridModel, id: number): Load {
  const figure = (key: string): string => figureText(schedule, { sheet: 'supplies', id, key });
  const number = (key: string): number | null => numberAt(schedule, { sheet: 'supplies', id, key });
  const loading = number('loading');
  const figures = {
    amount: figure('demand'), most: figure('usable'), share: figure('loading'), target: figure('target'),
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

function figuresOfTheRest({ schedule, words }: GridModel, { sheet, members }: HeadingLine, rows: string): GroupFigures {
  const key = sheet === 'supplies' ? 'demand' : 'nodes';
  const sum = members.reduce((total, id) => total + (numberAt(schedule, { sheet: 'devices', id, key }) ?? 0), 0);
  const total = valueText('devices', key, sum, words);
  const said = sheet === 'supplies' ? {
    title: words.say('No known rail'), sentence: words.say('{current} on no supply', { current: total }),
  }
    : { title: words.say('No known branch'), sentence: words.say('{nodes} nodes on no branch', { nodes: total }) };
  return { ...said, purpose: '', rows, loading: null, target: null, status: undefined };
}

/** A heading as one sentence, for the cell that stands behind the drawn heading. */
export function headingText(model: GridModel, line: HeadingLine): string {
  const { title, purpose, sentence, rows, status } = groupFigures(model, line);
  return [title, purpose, sentence, status === undefined ? '' : model.words.say(STATE_WORDS[status]), rows]
    .filter((part) => part !== '').join(', ');
}
