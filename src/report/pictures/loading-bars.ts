import { STATE_WORDS, type Standing } from '../../findings/index.ts';
import { path } from './path.ts';
import { picture } from './picture.ts';
import { label, line, shape, type Shape } from './shape.ts';
import { statusMark } from './status-mark.ts';
import { shortened, wrapped } from './words.ts';
import type { Words } from '../../words/index.ts';

/** How full something is. */
export interface LoadingBar {
  readonly name: string;
  /** What it is for; empty for nothing. */
  readonly about: string;
  /** Share of what may be used, 0 and above; `null` when unknown. */
  readonly loading: number | null;
  /** Share that the design aims to stay below; `null` for none. */
  readonly target: number | null;
  readonly status: Standing;
  /** The figures in words. */
  readonly sentence: string;
}

interface LoadingBars {
  readonly title: string;
  /** What the signs mean. */
  readonly key: string;
  /** What to say where there is no bar. */
  readonly none: string;
  readonly bars: readonly LoadingBar[];
  readonly words: Words;
}

const LEFT = 16;
/** Length of the bar of what may be used: 70 mm, so that 7 mm are 10 %. */
const FULL = 280;
/** What goes beyond this share is drawn up to here. */
const EDGE = 1.2;
const FIRST = 76;
const ROW = 42;
/** Lines of the key, and the signs that fit across. */
const LINE = 15;
const MOST_SIGNS = 112;

/**
 * Draws bars below one another, from 0 to 100 % of what may be used, with a tick at the target; what is beyond is
 * hatched.
 */
export function loadingBars({ title, key, none, bars, words }: LoadingBars): Shape {
  const bottom = FIRST + Math.max(1, bars.length) * ROW;
  const keyLines = wrapped(key, MOST_SIGNS);
  const said = bars.map(({ name, about, status, sentence }) => words.say('{name}: {figures}; {status}.', {
    name: about === '' ? name : `${name}, ${about}`, figures: sentence, status: words.say(STATE_WORDS[status]),
  }));
  return picture({
    title, description: bars.length === 0 ? none : said.join(' '), height: bottom + 11 + keyLines.length * LINE,
    children: [
      label('heading', LEFT, 24, title),
      ...(bars.length === 0 ? [label('quiet', LEFT, FIRST, none)] : axis(bottom, keyLines)),
      ...bars.flatMap((bar, index) => drawn(bar, FIRST + index * ROW, words)),
    ],
  });
}

function axis(bottom: number, keyLines: readonly string[]): Shape[] {
  return [
    ...[0, 0.5, 1].flatMap((share) => [
      line('grid', LEFT + share * FULL, FIRST - 22, LEFT + share * FULL, bottom - 8),
      label('quiet', LEFT + share * FULL, FIRST - 28, `${share * 100}\u202f%`, share === 0 ? 'start' : 'middle'),
    ]),
    ...keyLines.map((text, index) => label('quiet', LEFT, bottom + 10 + index * LINE, text)),
  ];
}

function drawn({ name, about, loading, target, status, sentence }: LoadingBar, y: number, words: Words): Shape[] {
  const top = y + 6;
  const width = (share: number) => Math.max(0, share) * FULL;
  const beyond = loading === null ? 0 : Math.min(loading, EDGE) - 1;
  const row = [
    shape('text', { class: 'strong haloed', x: LEFT, y }, shortened(name, 34),
      ...(about === '' ? [] : [shape('tspan', { class: 'quiet', dx: 8, 'font-weight': 400 }, shortened(about, 18))])),
    ...statusMark(status, LEFT + FULL * EDGE + 26, y, words),
    shape('rect', { class: loading === null ? 'frame unknown' : 'frame', x: LEFT, y: top, width: FULL, height: 11 }),
    ...(
      loading === null
        ? []
        : [shape('rect', { class: `fill ${status}`, x: LEFT, y: top, width: width(Math.min(loading, 1)), height: 11 })]
    ),
    ...(beyond > 0 ? [hatched(LEFT + FULL + 2, top, Math.max(4, width(beyond)))] : []),
    ...(
      target === null || target >= 1
        ? [] : [line('target', LEFT + width(target), top - 4, LEFT + width(target), top + 15)]
    ),
    label('quiet', LEFT + FULL * EDGE + 9, top + 10, sentence),
  ];
  return [
    shape(
      'g', { class: 'row' }, shape('title', {}, words.say('{title}: {text}', { title: name, text: sentence })), ...row
    ),
  ];
}

function hatched(x: number, y: number, width: number): Shape {
  const strokes = Array.from({ length: Math.floor(width / 4) }, (_, index) => x + index * 4)
    .map((left) => path([[left, y + 11], [left + 3, y]]));
  return shape('path', { class: 'hatch', d: strokes.join('') });
}
