import { STATE_WORDS } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { END_BRACKET, PARTITION, type MountedPart, type PanelRail, type PanelRails } from '../../mounting/index.ts';
import { heatText, partName, standingOfRail, widthText } from '../rails/rail-figures.ts';
import { picture, WIDTH } from './picture.ts';
import { scaleFor } from './scale.ts';
import { label, line, shape, type Shape } from './shape.ts';
import { statusMark } from './status-mark.ts';
import { shortened, wrapped } from './words.ts';

const LEFT = 16;
const ROOM = WIDTH - 2 * LEFT;
const FIRST = 58;
/** From one rail to the next, height of a part, and of the mounting rail behind it. */
const ROW = 126;
const HEIGHT = 64;
const RAIL = 14;
/** Room that a sign takes, along and across a line. */
const SIGN = 7;
/** Least width that an upright name has room in. */
const UPRIGHT = 9;
const LINE = 15;
/** Where the word of a status begins, the longest of which has 22 signs. */
const STATUS = WIDTH - LEFT - 148;
const MOST_SIGNS = 108;

/** What of an enclosure is drawn; its scale is that of all of it. */
type Shown = Pick<PanelRails, 'rails' | 'unplaced'>;

/** Rails that are drawn in one picture where it has to stand on a page: A4 across has room for 180 mm. */
const ON_PAGE = 4;

/** The pictures of an enclosure, each low enough for a page. */
export function railsPictures(schedule: LoadSchedule, panel: PanelRails): Shape[] {
  return Array.from({ length: Math.ceil(panel.rails.length / ON_PAGE) }, (_picture, at) => {
    const end = (at + 1) * ON_PAGE;
    const unplaced = end >= panel.rails.length ? panel.unplaced : [];
    return railsPicture(schedule, panel, { rails: panel.rails.slice(at * ON_PAGE, end), unplaced });
  });
}

/** Draws the mounting rails of an enclosure, true to scale along them, with every part, what is used, and its heat. */
export function railsPicture(schedule: LoadSchedule, panel: PanelRails, shown: Shown = panel): Shape {
  const { words } = schedule;
  const { at, perCentimetre } = scaleFor(0, Math.max(panel.length, ...panel.rails.map(({ used }) => used)), ROOM, 44);
  const title = words.say('Mounting rails of {enclosure}', { enclosure: panel.enclosure });
  const left = rowsOf(shown.unplaced, at);
  const bottom = FIRST + (shown.rails.length + left.length) * ROW;
  const key = wrapped(words.say(
    'True to scale along the rails: on paper at full size 10 mm are {n} mm. A bar above a part: mains; half a bar: mains and extra-low voltage; none: extra-low voltage. Grey ends are end brackets. Heat is that of the supplies.',
    { n: words.number(perCentimetre) }
  ), MOST_SIGNS);
  return picture({
    title, height: bottom + key.length * LINE + 4,
    description: [
      ...shown.rails.map((rail) => railSentence(schedule, panel, rail)),
      ...shown.unplaced.length === 0 ? []
        : [words.say('Without a mounting rail: {parts}.', { parts: shown.unplaced.map((part) => partName(schedule, part)).join(', ') })],
    ].join(' '),
    children: [
      label('heading', LEFT, 24, title),
      ...shown.rails.flatMap((rail, place) => drawnRail(schedule, panel, rail, FIRST + place * ROW, at)),
      ...left.flatMap((parts, place) => [
        label('strong', LEFT, FIRST + (shown.rails.length + place) * ROW, words.say('Without a mounting rail')),
        ...statusMark('over', STATUS, FIRST + (shown.rails.length + place) * ROW, words),
        ...drawnParts(schedule, parts, FIRST + (shown.rails.length + place) * ROW + 12, at),
      ]),
      ...key.map((text, place) => label('quiet', LEFT, bottom + place * LINE - 8, text)),
    ],
  });
}

/** What a rail holds, in words and figures. */
function railSentence(schedule: LoadSchedule, panel: PanelRails, rail: PanelRail): string {
  const { words } = schedule;
  return words.say('Mounting rail {rail}: {parts}; {figures}; {status}.', {
    rail: rail.number, parts: rail.parts.length === 0 ? words.say('nothing') : rail.parts.map((part) => partName(schedule, part)).join(', '),
    figures: figuresOf(schedule, panel, rail), status: words.say(STATE_WORDS[standingOfRail(panel, rail)]),
  });
}

function figuresOf(schedule: LoadSchedule, { length }: PanelRails, rail: PanelRail): string {
  const { words } = schedule;
  const values = { used: widthText(schedule, rail.used), length: widthText(schedule, length) };
  const width = rail.isOver ? words.say('{used} of {length}, {over} too much', { ...values, over: widthText(schedule, rail.used - length) })
    : words.say('{used} of {length}, {free} free', { ...values, free: widthText(schedule, length - rail.used, 'down') });
  return [width, heatText(schedule, rail)].filter((text) => text !== '').join(', ');
}

type At = (millimetres: number) => number;

function drawnRail(schedule: LoadSchedule, panel: PanelRails, rail: PanelRail, y: number, at: At): Shape[] {
  const { words } = schedule;
  const [top, end] = [y + 12, LEFT + at(panel.length)];
  const bottom = top + HEIGHT + 12;
  const used = LEFT + at(rail.used);
  const dimension = (from: number, to: number, text: string): Shape[] => to - from < 1 ? [] : [
    line('axis', from, bottom, to, bottom), ...[from, to].map((x) => line('axis', x, bottom - 4, x, bottom + 4)),
    ...to - from < text.length * SIGN ? [] : [label('quiet', (from + to) / 2, bottom + 14, text, 'middle')],
  ];
  return [
    label('strong', LEFT, y, words.say('Mounting rail {rail}', { rail: rail.number })),
    label('quiet', LEFT + 140, y, figuresOf(schedule, panel, rail)),
    ...statusMark(standingOfRail(panel, rail), STATUS, y, words),
    shape('rect', { class: 'frame', x: LEFT, y: top + (HEIGHT - RAIL) / 2, width: at(panel.length), height: RAIL }),
    ...drawnParts(schedule, rail.parts, top, at),
    line('end', end, top - 4, end, bottom + 4),
    ...dimension(LEFT, used, widthText(schedule, rail.used)),
    ...rail.isOver ? [] : dimension(used, end, widthText(schedule, panel.length - rail.used, 'down')),
  ];
}

/** Parts side by side, extra-low voltage behind a partition where mains stand before it. */
function drawnParts(schedule: LoadSchedule, parts: readonly MountedPart[], top: number, at: At): Shape[] {
  const hasMains = parts.some(({ band }) => band === 'mains');
  let from = 0;
  let isParted = !hasMains;
  return parts.flatMap((part) => {
    const partition: Shape[] = [];
    if (part.band === 'elv' && !isParted) {
      isParted = true;
      partition.push(shape('rect', { class: 'partition', x: LEFT + at(from), y: top - 4, width: at(PARTITION), height: HEIGHT + 8 }));
      from += PARTITION;
    }
    const drawn = drawnPart(schedule, part, LEFT + at(from), top, at);
    from += part.width;
    return [...partition, drawn];
  });
}

function drawnPart(schedule: LoadSchedule, part: MountedPart, x: number, top: number, at: At): Shape {
  const name = partName(schedule, part);
  const width = at(part.width);
  const said = schedule.words.say('{title}: {text}', { title: name, text: widthText(schedule, part.width) });
  const bar = part.band === 'elv' ? [] : [shape('rect', { class: 'bar', x, y: top, width: part.band === 'mains' ? width : width / 2, height: 5 })];
  const brackets = part.sheet !== 'terminals' ? []
    : [x, x + width - at(END_BRACKET)].map((place) => shape('rect', { class: 'bracket', x: place, y: top, width: at(END_BRACKET), height: HEIGHT }));
  return shape('g', { class: 'row' }, shape('title', {}, said),
    shape('rect', { class: 'part', x, y: top, width, height: HEIGHT }), ...brackets, ...bar, ...labelled(schedule, part, name, x, top, width));
}

/** Its name along the rail where there is room, else upright; what has room for neither is named in the table. */
function labelled(
  schedule: LoadSchedule, part: MountedPart, name: string, x: number, top: number, width: number,
): Shape[] {
  const [middle, centre] = [x + width / 2, top + HEIGHT / 2];
  const size = widthText(schedule, part.width);
  if (name.length * SIGN + 8 <= width) {
    return [
      label('strong haloed', middle, centre + 1, name, 'middle'),
      ...size.length * SIGN + 6 > width ? [] : [label('quiet haloed', middle, centre + 17, size, 'middle')],
    ];
  }
  if (width < UPRIGHT) return [];
  return [shape('text', {
    class: 'strong', x: middle, y: centre, 'text-anchor': 'middle', dy: 4, transform: `rotate(-90 ${middle.toFixed(1)} ${centre})`,
  }, shortened(name, Math.floor((HEIGHT - 10) / SIGN)))];
}

/** Parts in lines as long as the picture. */
function rowsOf(parts: readonly MountedPart[], at: At): MountedPart[][] {
  const rows: MountedPart[][] = [];
  let used = Infinity;
  for (const part of parts) {
    if (at(used + part.width + PARTITION) > ROOM) {
      rows.push([]);
      used = 0;
    }
    rows.at(-1)!.push(part);
    used += part.width;
  }
  return rows;
}
