import { panelNames, panelOf, type PanelChoice } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import type { SheetName } from '../../schedule/index.ts';
import { message } from '../../words/index.ts';
import { drawing, sheetOn, type DrawingKind } from '../drawings/index.ts';
import type { Paper } from '../paper.ts';
import { pictureText } from '../pictures/index.ts';
import type { ReportSection } from './report.ts';
import { filledRows } from './sheet-section.ts';

/** Sheets that a section holds; a drawing of more is looked at, and saved, on the page. */
const MOST_SHEETS = 40;

const SECTIONS: Readonly<Record<DrawingKind, { name: string; title: string; sheets: readonly SheetName[] }>> = {
  oneLine: {
    name: 'one-line', title: message('One-line drawing'), sheets: ['supplies', 'ways', 'runs', 'outputs', 'modules'],
  },
  branches: { name: 'branches-as-cabled', title: message('Bus branches as cabled'), sheets: ['branches'] },
};

/**
 * The drawings of all panels, or of one; `undefined` where there is nothing to draw.
 * @param all the whole schedule
 */
export function drawingsSection(
  all: LoadSchedule, kind: DrawingKind, panel: PanelChoice, paper: Paper | undefined,
): ReportSection | undefined {
  const { words } = all;
  const { name, title, sheets: kinds } = SECTIONS[kind];
  const names = panelNames(all);
  const isLeft = kinds.some((sheet) => filledRows(all, sheet).some(({ id }) => panelOf(all, sheet, id) === null));
  const each: readonly PanelChoice[] = names.length < 2 ? [undefined] : [...names, ...isLeft ? [null] : []];
  const panels = panel === undefined ? each : [panel];
  const drawings: string[] = [];
  let isWhole = true;
  for (const of of panels) {
    const drawn = drawing(all, kind, of, sheetOn(paper), MOST_SHEETS - drawings.length);
    for (let index = 0; index < drawn.sheets; index += 1) drawings.push(pictureText(drawn.sheet(index)));
    isWhole &&= drawn.isWhole;
  }
  if (drawings.length === 0) return undefined;
  return {
    name, title: words.say(title), tables: [], drawings, sentences: isWhole ? [] : [words.say(
      'Only the first {most} sheets are drawn here; the page shows all of them and saves them as SVG.', { most: MOST_SHEETS })],
  };
}
