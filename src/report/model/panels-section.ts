import { panelNames, panelOf } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import type { SheetName } from '../../schedule/index.ts';
import { fixed } from '../../words/index.ts';
import { numberCell, textCell } from './cells.ts';
import type { ReportSection } from './report.ts';
import { filledRows } from './sheet-section.ts';

/** What each panel has and asks for, side by side; `undefined` where there are fewer than two. */
export function panelsSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  const panels = panelNames(schedule);
  if (panels.length < 2) return undefined;
  const titles = [
    words.say('Panel'), words.say('Number of devices'), words.say('Supply units'), words.say('Connected [W]'),
    words.say('Demand [W]'), words.say('Number of ways'), words.say('Number of branches'), words.say('Number of nodes'),
    words.say('Number of outputs'), words.say('Metres of pairs'),
  ];
  const rowOf = (panel: string | null) => {
    const ids = (sheet: SheetName) => filledRows(schedule, sheet)
      .filter(({ id }) => panelOf(schedule, sheet, id) === panel).map(({ id }) => id);
    const figures = [
      sumOf(schedule, 'devices', ids('devices'), ['qty']), sumOf(schedule, 'supplies', ids('supplies'), ['units']),
      sumOf(schedule, 'supplies', ids('supplies'), ['connected', 'voltage']),
      sumOf(schedule, 'supplies', ids('supplies'), ['demand', 'voltage']), String(ids('ways').length),
      String(ids('branches').length), sumOf(schedule, 'devices', ids('devices'), ['nodes']), String(ids('outputs').length),
      sumOf(schedule, 'runs', ids('runs'), ['length', 'pairs'], 'secondWay', ['secondLength', 'pairs']),
    ];
    return { cells: [textCell(panel ?? words.say('In no panel')), ...figures.map((text) => numberCell(text))] };
  };
  const isLeft = (['devices', 'supplies', 'ways', 'branches', 'outputs', 'runs'] as const)
    .some((sheet) => filledRows(schedule, sheet).some(({ id }) => panelOf(schedule, sheet, id) === null));
  return {
    name: 'panels', title: words.say('Panels'), sentences: [words.say(
      'A device belongs to the panel of its supply, else of its branch; a run to that of its way, else of its supply. Sums that lack a row are at least what is shown.'
    )],
    tables: [{
      columns: titles.map((title, index) => ({ title, kind: index === 0 ? 'text' : 'number' })),
      rows: [...panels, ...isLeft ? [null] : []].map(rowOf),
    }],
  };
}

/**
 * The sum of products of some figures of rows, with a sign where a row lacks one of them.
 * @param filled a cell with which other figures count besides
 */
function sumOf(
  schedule: LoadSchedule, sheet: SheetName, ids: readonly number[], keys: readonly string[], filled?: string,
  besides: readonly string[] = [],
): string {
  const products = ids.flatMap((id) => [
    { id, factors: keys },
    ...filled !== undefined && schedule.value(sheet, id, filled) !== null ? [{ id, factors: besides }] : [],
  ]);
  let isPartial = false;
  let sum = 0;
  for (const { id, factors } of products) {
    const values = factors.map((key) => schedule.value(sheet, id, key));
    isPartial ||= factors.some((key) => schedule.isPartial(sheet, id, key)) || values.includes(null);
    if (!values.includes(null)) sum += values.reduce<number>((product, value) => product * Number(value), 1);
  }
  const text = schedule.words.number(Number(fixed(sum, keys.length > 1 ? 1 : 0)));
  return isPartial ? `≥\u00a0${text}` : text;
}
