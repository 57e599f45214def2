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
const MOST_SHEETS = 60;

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
  const drawn = panels.map((of) => drawing(all, kind, of, sheetOn(paper)));
  const sheets = drawn.flatMap((of) => Array.from({ length: of.sheets }, (_sheet, index) => ({ of, index })));
  if (sheets.length === 0) return undefined;
  const left = sheets.length - MOST_SHEETS;
  return {
    name, title: words.say(title), tables: [], sentences: left <= 0 ? [] : [words.say(
      'The first {most} of {sheets} sheets; the page shows the others and saves them as SVG.', { most: MOST_SHEETS, sheets: sheets.length })],
    drawings: sheets.slice(0, MOST_SHEETS).map((sheet) => pictureText(sheet.of.sheet(sheet.index))),
  };
}
