import { expect, it } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { panelRails } from '../../src/mounting/index.ts';
import { railsSection } from '../../src/report/model/rails-section.ts';
import { railsPicture, type Shape } from '../../src/report/pictures/index.ts';
import type { Cells, Content } from '../../src/schedule/index.ts';

const open = (sheets: Content['sheets']) => new LoadSchedule({ details: {}, sheets });
const pictureOf = (schedule: LoadSchedule) =>
  railsPicture(schedule, panelRails(schedule.document, schedule.figures)[0]!);
const shapesOf = (shape: Shape): Shape[] => [shape, ...shape.children.flatMap((child) => typeof child === 'string' ? [] : shapesOf(child))];
const ofClass = (shape: Shape, name: string) => shapesOf(shape).filter(({ attributes }) => attributes.class === name);
const number = ({ attributes }: Shape, key: string) => Number(attributes[key]);

const PANEL = (enclosure: Cells = {}): Content['sheets'] => ({
  enclosures: [{ enclosure: 'E1', rails: 2, railLength: 300, maxInside: 50, ...enclosure }],
  feeds: [{ feed: 'F1', enclosure: 'E1', width: 18 }],
  supplies: [{ rail: 'L1', enclosure: 'E1', width: 60, rated: 10, efficiency: 0.8, units: 2 }],
  types: [{ type: 'T', draw: 1000 }], devices: [{ ref: 'D1', rail: 'L1', type: 'T', qty: 5 }],
  ways: [{ way: 'W1', rail: 'L1', width: 12 }, { way: 'W2', rail: 'L1', width: 200 }],
});

it('is true to scale: each part is as wide to its rail as in millimetres, and stands where the one before it ends', () => {
  const picture = pictureOf(open(PANEL()));
  const [frame] = ofClass(picture, 'frame');
  const scale = number(frame!, 'width') / 300;
  const parts = ofClass(picture, 'part');
  expect(parts.map((part) => Math.round(number(part, 'width') / scale))).toEqual([18, 60, 60, 12, 200]);
  expect(parts.map((part) => Math.round((number(part, 'x') - number(frame!, 'x')) / scale))).toEqual([0, 18, 78, 0, 12]);
});

it('says in words what each rail holds, is free and gives off; parts of one rail stand behind a partition', () => {
  // 5 A at 24 V and 80 %: 120 × 0.25 = 30 W, on one rail with both units.
  const said = (schedule: LoadSchedule) => ((pictureOf(schedule).children[1] as Shape).children[0] as string).replace(/\s/gu, ' ');
  expect(said(open(PANEL()))).toBe(
    'Mounting rail 1: F1, L1 1/2, L1 2/2; 138 mm of 300 mm, 162 mm free, 30.0 W; within limits. Mounting rail 2: W1, W2; 212 mm of 300 mm, 88 mm free; within limits.');
  const mixed = open(PANEL({ rails: 1, railLength: 353 }));
  expect(ofClass(pictureOf(mixed), 'partition')).toHaveLength(1);
  expect(said(mixed)).toContain('353 mm of 353 mm, 0 mm free');
});

it('draws what finds no rail apart; the section of the load table has a line for each rail and what is needed', () => {
  const schedule = open({ ...PANEL({ rails: 1 }), terminals: [] });
  expect(pictureOf(schedule).children.length).toBeGreaterThan(4);
  const section = railsSection(schedule)!;
  expect(section.tables[0]!.rows.map(({ cells }) => cells.map(({ text }) => text.replace(/\s/gu, ' ')))).toEqual([
    ['1', 'F1, L1 1/2, L1 2/2, W1', '153', '147', '30.0 W', 'within limits'], ['–', 'W2', '200', '', '', 'over limit'],
  ]);
  expect(section.sentences.map((text) => text.replace(/\s/gu, ' ')).slice(1)).toEqual([
    'E1: with its reserve of 20 %, everything is put whole on 2 rails of 300 mm, 3 rails of 216 mm (12 modules), 2 rails of 324 mm (18 modules), 2 rails of 432 mm (24 modules), 1 rail of 648 mm (36 modules).',
    // 30 W and 20 W of the rest at 20 K: 50 × 1.3 ÷ (5.5 × 20) = 0.591 m².
    'E1: its heat of 50.0 W needs a cooling surface of 0.60 m², so that its top stays below 50.0 °C with 30.0 °C around it.',
  ]);
  expect(section.pictures).toHaveLength(1);
  expect(railsSection(open(PANEL({ rails: 9 })))!.pictures).toHaveLength(3);
  expect(railsSection(open({ enclosures: [{ enclosure: 'E1', rails: 1, railLength: 300 }] }))).toBeUndefined();
});
