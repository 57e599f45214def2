import type { PanelChoice } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import type { Paper } from '../paper.ts';
import { panelView } from '../panel-view.ts';
import { PER_MM, picture } from '../pictures/picture.ts';
import { label, line, type Shape } from '../pictures/shape.ts';
import { statusMark } from '../pictures/status-mark.ts';
import { STATE_WORDS } from '../../findings/index.ts';
import { branchTree } from './branch-tree.ts';
import { drawNode, legendOf, titleOf } from './draw-sheet.ts';
import { flowText, GAP, LINE } from './flow-text.ts';
import { layOut, MARGIN, MARK, type Laid, type SheetSize } from './lay-out.ts';
import { oneLineTree } from './one-line-tree.ts';
import { splitSheets } from './split-sheets.ts';
import { textWidth } from './text-width.ts';

/** What is drawn: what a panel feeds, or its bus branches as they are cabled. */
export type DrawingKind = 'oneLine' | 'branches';

/** A drawing on one or several sheets, each of which is drawn when it is asked for. */
export interface Drawing {
  readonly title: string;
  /** How many sheets there are; 0 where there is nothing to draw. */
  readonly sheets: number;
  /** Whether nothing is left out. */
  readonly isWhole: boolean;
  /** @param index of the sheet, counted from 0 */
  sheet(index: number): Shape;
}

/**
 * Sheets for paper, within its margins and below a heading, so that type keeps its size [mm]; where the paper is not
 * known they fit all of it.
 */
const ON_PAPER: Readonly<Record<Paper | 'any', readonly [width: number, height: number]>> = {
  'A4-landscape': [268, 160], 'A4-portrait': [180, 245], 'A3-landscape': [268, 245], 'A3-portrait': [268, 245],
  'any': [180, 160],
};

/** The size of a sheet on paper; without one on any of it. */
export function sheetOn(paper: Paper | undefined): SheetSize {
  const [width, height] = ON_PAPER[paper ?? 'any'];
  return { width: width * PER_MM, height: height * PER_MM };
}

/** Height of a line of the heading, what lies between it and the drawing, and what the foot takes [units]. */
const HEADING = 19;
const BELOW_HEADING = 25;
const FOOT = 20;
/** How much larger the heading is, and what the number of the sheet takes beside it. */
const LARGER = 1.25;
const NUMBER = 110;

/**
 * Draws a schedule as it is in one panel.
 * @param panel tag of an enclosure; without it everything is drawn
 * @param most sheets; what goes beyond is left out
 */
export function drawing(
  all: LoadSchedule, kind: DrawingKind, panel: PanelChoice, size: SheetSize, most = Infinity,
): Drawing {
  const schedule = panelView(all, panel);
  const { words } = schedule;
  const name = panel === null ? words.say('In no panel') : panel ?? '';
  const title = kind === 'oneLine'
    ? name === '' ? words.say('One-line drawing') : words.say('One-line drawing: {panel}', { panel: name })
    : name === '' ? words.say('Bus branches as cabled') : words.say('Bus branches as cabled: {panel}', { panel: name });
  const tree = kind === 'oneLine' ? oneLineTree(schedule, panel) : branchTree(schedule, panel);
  const roots: Laid[] = [];
  let height = 0;
  for (const node of tree) {
    if (height > most * size.height) break;
    const laid = layOut(node, MARGIN, size);
    roots.push(laid);
    height += laid.height;
  }
  const key = flowText([{
    text: kind === 'oneLine'
      ? words.say('Symbols of IEC 60617; one line stands for all conductors of a circuit, the figure at a stroke for their number. Drawn from the schedule, not to scale.')
      : words.say('Symbols of IEC 60617; distances along the cable from the panel. Cables of a branch all begin at its port here: which follows which is not entered. Drawn from the schedule, not to scale; broken lines and ? stand for what is not known.'),
  }], size.width - 2 * MARGIN, Infinity);
  const titleLines = flowText([{ text: title, look: 'strong' }], (size.width - 2 * MARGIN - NUMBER) / LARGER);
  const head = titleLines.length * HEADING + BELOW_HEADING;
  const divided = splitSheets(roots, size.height - head - FOOT - (key.length + 2) * LINE, words);
  const sheets = divided.slice(0, most);
  const isWhole = sheets.length === divided.length && height <= most * size.height;
  const count = roots.length === 0 ? 0 : sheets.length;
  return { title, sheets: count, isWhole, sheet: (index) => drawSheet(sheets[index]!, index) };

  function drawSheet(nodes: readonly Laid[], index: number): Shape {
    let y = head;
    const shapes = nodes.flatMap((laid) => {
      const drawn = drawNode(laid, y, schedule);
      y += laid.height;
      return drawn;
    });
    const flat = everyNode(nodes);
    const on = !isWhole ? words.say('Sheet {sheet}', { sheet: index + 1 })
      : count === 1 ? '' : words.say('Sheet {sheet} of {sheets}', { sheet: index + 1, sheets: count });
    const further = nodes.some(({ goesOn }) => goesOn !== undefined) ? words.say('continued on sheet {sheet}', { sheet: index + 2 }) : '';
    const marks = marksOf(flat, y + FOOT, further === '' ? 0 : textWidth(further) + GAP);
    return picture({
      title: on === '' ? title : words.say('{title}: {text}', { title, text: on }), width: size.width,
      description: flat.map((laid) => titleOf(laid, schedule)).filter((text) => text !== '').join(' '),
      height: y + FOOT + (marks.lines + key.length) * LINE + 6,
      children: [
        ...heading(on), ...shapes,
        ...further === '' ? [] : [label('quiet', size.width - MARGIN, y + FOOT + 2, further, 'end')], ...marks.shapes,
        ...key.map((pieces, place) => label('quiet', MARGIN, y + FOOT + (marks.lines + place) * LINE + 2, pieces[0]!.text)),
      ],
    });
  }

  function heading(on: string): Shape[] {
    const foot = head - 12;
    return [
      ...titleLines.map(([piece], index) => label('heading', MARGIN, 24 + index * HEADING, piece!.text)),
      label('quiet', size.width - MARGIN, 24, on, 'end'), line('grid', MARGIN, foot, size.width - MARGIN, foot),
    ];
  }

  /** What the marks on a sheet mean, in lines. @param taken room at the end of the first of them [units] */
  function marksOf(nodes: readonly Laid[], top: number, taken: number): { shapes: Shape[]; lines: number } {
    const standings = legendOf(new Set(nodes.flatMap(({ node }) => node.standing ?? [])));
    let [left, x, lines] = [size.width - MARGIN - taken, MARGIN, standings.length + taken === 0 ? 0 : 1];
    const shapes = standings.flatMap((standing) => {
      const width = MARK + textWidth(words.say(STATE_WORDS[standing]), true);
      if (x + width > left && (x > MARGIN || lines === 1)) {
        [left, x, lines] = [size.width - MARGIN, MARGIN, lines + 1];
      }
      const drawn = statusMark(standing, x + MARK, top + (lines - 1) * LINE + 2, words);
      x += width + GAP;
      return drawn;
    });
    return { shapes, lines };
  }
}

const everyNode = (nodes: readonly Laid[]): Laid[] => nodes.flatMap((laid) => [laid, ...everyNode(laid.children)]);
