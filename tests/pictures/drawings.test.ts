import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { drawing, sheetOn, type DrawingKind } from '../../src/report/drawings/index.ts';
import { textWidth } from '../../src/report/drawings/text-width.ts';
import { buildReport } from '../../src/report/model/index.ts';
import { PAPERS } from '../../src/report/paper.ts';
import type { Shape } from '../../src/report/pictures/index.ts';
import { isBlank } from '../../src/schedule/document.ts';
import { tagOf, type Content, type SheetName } from '../../src/schedule/index.ts';
import { panelNames, panelOf, type PanelChoice } from '../../src/engine/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { loadWords, type Words } from '../../src/words/index.ts';
import { someContent } from '../engine/random-actions.ts';
import { demoContent } from '../report/demo.ts';
import { scheduleOf, valueAt, idAt } from '../support/schedules.ts';
import { elements, measure, textIn, withClass } from './read-picture.ts';

const SIZES = [
  { width: 280, height: 900 }, { width: 340, height: 900 }, { width: 720, height: 640 }, { width: 1072, height: 640 },
  { width: 1072, height: Infinity },
];
const ONE_LINE: readonly SheetName[] = ['supplies', 'ways', 'runs', 'outputs', 'feeds'];
const BRANCHES: readonly SheetName[] = ['branches'];

const sheetsOf = (schedule: LoadSchedule, kind: DrawingKind, panel: PanelChoice, size = SIZES[2]!): Shape[] => {
  const drawn = drawing(schedule, kind, panel, size);
  return Array.from({ length: drawn.sheets }, (_each, index) => drawn.sheet(index));
};
const plainText = (shape: Shape) => textIn(shape).replaceAll(/[\u00a0\u202f]/g, ' ');

/** Tag and status of every row of a sheet that is drawn, in the order of the tags. */
const drawnRows = (sheets: readonly Shape[], name: SheetName) => sheets.flatMap((each) => withClass(each, name))
  .map(({ attributes }) => `${attributes['data-tag']!} ${attributes['data-status'] ?? '–'}`).sort();
const standing = (schedule: LoadSchedule, name: SheetName, isThere = (_id: number) => true) => schedule.rows(name)
  .filter((row) => !isBlank(row) && isThere(row.id))
  .map((row) => `${tagOf(name, row)} ${schedule.standing(name, row.id) ?? '–'}`).sort();

/** Texts of a sheet with the most that each takes, as `[text, left, right, top, bottom]`. */
function boxes(sheet: Shape): [string, number, number, number, number][] {
  return elements(sheet).filter(({ tag }) => tag === 'text').map((text) => {
    const parts = text.children.map((each) => typeof each === 'string' ? each : textIn(each));
    const isBold = ({ attributes }: Shape) => /strong|heading|over|near|incomplete/.test(attributes.class ?? '');
    const widths = text.children.map((each) =>
      typeof each === 'string' ? textWidth(each, isBold(text)) : textWidth(textIn(each), isBold(each)));
    const scale = text.attributes.class === 'heading' ? 1.25 : 1;
    const width = widths.reduce((sum, each) => sum + each, 0) * scale + 9 * (parts.length - 1);
    const anchor = text.attributes['text-anchor'];
    const left = measure(text, 'x') - (anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0);
    return [parts.join(' '), left, left + width, measure(text, 'y') - 9, measure(text, 'y') + 2];
  });
}

/** Texts that touch one another or go beyond the sheet. */
function touching(sheet: Shape, width: number): string[] {
  const texts = boxes(sheet).filter(([text]) => text !== '');
  const height = Number(sheet.attributes.viewBox!.split(' ')[3]);
  return texts.flatMap(([text, left, right, top, bottom], index) => [
    ...left < 0 || right > width || top < 0 || bottom > height ? [`${text}: beyond the sheet`] : [],
    ...texts.slice(index + 1).filter((other) => Math.min(right, other[2]) > Math.max(left, other[1]) + 0.5
      && Math.min(bottom, other[4]) > Math.max(top, other[3])).map(([other]) => `${text} | ${other}`),
  ]);
}

describe('of random schedules', () => {
  test('every supply, way, run, output and feed is drawn once, with the status that it has, and every branch', () => {
    fc.assert(fc.property(someContent, fc.constantFrom(...SIZES), (content, size) => {
      const schedule = scheduleOf(content.sheets);
      const [oneLine, branches] = [sheetsOf(schedule, 'oneLine', undefined, size), sheetsOf(schedule, 'branches', undefined, size)];
      for (const name of ONE_LINE) expect(drawnRows(oneLine, name), name).toEqual(standing(schedule, name));
      for (const name of BRANCHES) expect(drawnRows(branches, name), name).toEqual(standing(schedule, name));
    }), { numRuns: 150 });
  });

  test('the drawing of a panel has all of it once, and of others nothing but what it hangs on', () => {
    fc.assert(fc.property(someContent, (content) => {
      const schedule = scheduleOf(content.sheets);
      for (const panel of [...panelNames(schedule), null]) {
        const sheets = sheetsOf(schedule, 'oneLine', panel);
        for (const name of ['ways', 'runs', 'outputs', 'supplies'] as const) {
          const drawn = drawnRows(sheets, name);
          const own = standing(schedule, name, (id) => panelOf(schedule, name, id) === panel);
          const count = (rows: readonly string[], each: string) => rows.filter((row) => row === each).length;
          for (const each of own) expect(count(drawn, each)).toBe(count(own, each));
          if (name === 'runs' || name === 'outputs') expect(drawn).toEqual(own);
        }
      }
    }), { numRuns: 80 });
  });

  test('no text lies over another or beyond the sheet', () => {
    fc.assert(fc.property(someContent, fc.constantFrom(...SIZES), (content, size) => {
      const schedule = scheduleOf(content.sheets);
      for (const kind of ['oneLine', 'branches'] as const) {
        for (const sheet of sheetsOf(schedule, kind, undefined, size)) expect(touching(sheet, size.width)).toEqual([]);
      }
    }), { numRuns: 100 });
  });
});

describe('a panel by hand', () => {
  // 2 × 0.5 A on 30 m; what else is there is missing, lost, or on a rail that nobody entered.
  const content = (): Content['sheets'] => ({
    types: [{ type: 'Lamp', draw: 500, nodes: 1, minVoltage: 20 }], conductors: [{ conductor: '2.5 mm²', resistance: 7.41, maxCurrent: 20 }],
    feeds: [{ feed: 'F1', rated: 16, curve: 'C' }],
    supplies: [
      { rail: 'L1', rated: 10, units: 2, redundant: true, seriesDrop: 0.5, feed: 'F1', battery: 7, fuse: 10, fuseKind: 'gG' }, { rail: 'L2', feed: 'F9' },
    ],
    ways: [
      { way: 'A1', rail: 'L1', kind: 'B', rated: 4 }, { way: 'A2', rail: 'L1', kind: 'electronic', rated: 2.5 }, { way: 'A3', rail: 'L7', kind: 'gG' },
    ],
    runs: [
      { run: 'W1', way: 'A1', conductor: '2.5 mm²', length: 30 }, { run: 'W2', rail: 'L1', way: 'A9' }, { run: 'W3', rail: 'L1' },
      { run: 'W4', way: 'A1', secondWay: 'A2', conductor: '2.5 mm²', length: 10, secondLength: 10 },
    ],
    devices: [{ ref: 'D1', type: 'Lamp', qty: 2, run: 'W1', area: 'Hall' }, { ref: 'D2', type: 'Lamp', qty: 3, rail: 'L1', area: 'Attic' }],
    modules: [{ module: 'K1', common: 16 }, { module: 'K2' }],
    contacts: [{ contact: 'Ten', resistive: 10 }],
    outputs: [{ output: 'K1.1', module: 'K1', contact: 'Ten', kind: 'resistive', power: 460, voltage: 230, load: 'Heater', feed: 'F1' }],
  });
  const schedule = scheduleOf(content());
  const [sheet] = sheetsOf(schedule, 'oneLine', undefined, SIZES[4]);
  const node = (name: SheetName, tag: string) => withClass(sheet!, name).find(({ attributes }) => attributes['data-tag'] === tag)!;
  const said = (name: SheetName, tag: string) => plainText(node(name, tag).children[0] as Shape);

  test('says what each thing is, from the schedule', () => {
    expect(said('feeds', 'F1')).toMatch(/^feed F1: C 16 A, 230 V, /);
    expect(said('supplies', 'L1')).toContain('24 V, 2 × 10 A, one unit redundant');
    expect(said('supplies', 'L1')).toContain('fuse gG 10 A, battery 7.0 Ah');
    expect(said('ways', 'A1')).toContain('B 4 A');
    const end = valueAt(schedule, 'runs', 0, 'endVoltage') as number;
    expect(said('runs', 'W1')).toContain(`2.5 mm², 30.0 m, 1.00 A, ${end.toFixed(2)} V at its end`);
    // 460 W ÷ 230 V = 2 A of 10 A.
    expect(said('outputs', 'K1.1')).toContain('Ten, resistive, 2.00 A, 20 %');
  });

  test('has the symbol of what protects each way, and the mark of how it stands', () => {
    const parts = (tag: string) => withClass(node('ways', tag), 'part').map(({ tag: name }) => name).sort().join(' ');
    // A breaker is a contact with a cross, an electronic channel a box with I >, a fuse a body with its conductor.
    expect(['A1', 'A2', 'A3'].map(parts)).toEqual(['path path path', 'path path rect', 'rect']);
    for (const [name, tag, at] of [['ways', 'A1', 0], ['runs', 'W3', 2], ['supplies', 'L2', 1]] as const) {
      const [mark, ...others] = withClass(node(name, tag), 'mark');
      expect([mark!.attributes.class, others]).toEqual([`mark ${schedule.standing(name, idAt(schedule, name, at))!}`, []]);
    }
  });

  test('what is not entered is said to be not known, and nothing stands in its place', () => {
    expect(said('supplies', 'L2')).toContain('rating not known');
    expect(said('ways', 'A3')).toContain('gG rating not known');
    expect(said('runs', 'W3')).toContain('conductor not known, length not known');
  });

  test('what names a tag that is not there stands under it, marked', () => {
    const description = plainText(elements(sheet!).find(({ tag }) => tag === 'desc')!);
    for (const tag of ['F9', 'L7', 'A9']) expect(description).toContain(`${tag}: is not in the schedule; incomplete.`);
    expect(withClass(sheet!, 'loose').length).toBeGreaterThanOrEqual(3);
  });

  test('a run with two ways is drawn at the first and named at the second', () => {
    expect(said('runs', 'W4')).toContain('fed from A2 too');
    expect(plainText(sheet!)).toContain('is drawn at its first way');
  });

  test('devices are counted where they hang, modules without outputs are there', () => {
    const text = plainText(sheet!);
    expect(text).toContain('2 devices');
    expect(text).toContain('3 deviceson no run');
    expect(text).toContain('K2relay module');
  });

  test('is in words for who cannot see it, each node once', () => {
    const description = plainText(elements(sheet!).find(({ tag }) => tag === 'desc')!);
    for (const tag of ['F1', 'L1', 'L2', 'A1', 'A2', 'A3', 'W1', 'W2', 'W3', 'W4', 'K1.1']) {
      expect(description.split(new RegExp(`(?:feed|supply|way|run|relay output) ${tag.replace('.', '\\.')}: `)).length, tag).toBe(2);
    }
  });
});

describe('a branch', () => {
  const branch = (own: object, runs = 1) => scheduleOf({
    types: [{ type: 'T', nodes: 2 }], branches: [{ branch: 'B1', limit: 10, maxCable: 100, ...own }],
    runs: Array.from({ length: runs }, (_each, index) => ({ run: `W${index}`, branch: 'B1', length: 40 })),
    devices: [
      { ref: 'D-far', type: 'T', qty: 1, run: 'W0', branch: 'B1' }, { ref: 'D-20', type: 'T', qty: 1, run: 'W0', branch: 'B1', distance: 20 },
      { ref: 'D-05', type: 'T', qty: 2, run: 'W0', branch: 'B1', distance: 5 },
    ],
  });
  const look = (schedule: LoadSchedule) => {
    const [sheet] = sheetsOf(schedule, 'branches', undefined);
    const terminators = elements(sheet!).filter(({ tag, attributes }) => tag === 'rect' && attributes.width === '8');
    return {
      devices: withClass(sheet!, 'devices').map(({ attributes }) => attributes['data-tag']), text: plainText(sheet!),
      fitted: terminators.filter(({ attributes }) => attributes.class === 'part').length,
      missing: terminators.filter(({ attributes }) => attributes.class === 'part missing').length,
    };
  };

  test('has its devices in the order of their distances, those without one at the far end, nodes and cable against the limits', () => {
    const { devices, text } = look(branch({ terminators: 2 }));
    expect(devices).toEqual(['D-05', 'D-20', 'D-far']);
    expect(text).toContain('8 of 10 nodes, 80 %');
    expect(text).toContain('cable 40.0 m of 100 m');
  });

  test.each([
    [{ terminators: 2 }, 'terminated at both ends', 2, 0], [{ terminated: true }, 'terminated at both ends', 2, 0],
    [{ terminators: 1 }, '1 of 2 terminators', 0, 2], [{ terminators: 0 }, '0 of 2 terminators', 0, 2],
    [{ terminators: 3 }, '3 terminators, 1 too many', 2, 0], [{ terminated: false }, 'not terminated', 0, 2],
    [{}, 'terminators not known', 0, 2],
  ])('with %o says “%s”', (own, said, fitted, missing) => {
    const found = look(branch(own));
    expect(found.text).toContain(said);
    expect([found.fitted, found.missing]).toEqual([fitted, missing]);
  });

  test('of several cables shows no terminator at an end that is not known', () => {
    const { fitted, missing } = look(branch({ terminators: 2 }, 2));
    expect([fitted, missing]).toEqual([0, 0]);
  });
});

describe('a large panel', () => {
  const large = (tag: (index: number) => string) => scheduleOf({
    feeds: [{ feed: 'F1', rated: 16, curve: 'C' }], supplies: [{ rail: 'L1', rated: 40, feed: 'F1' }],
    ways: Array.from({ length: 40 }, (_each, index) => ({ way: `F-${tag(index)}`, rail: 'L1', kind: 'C', rated: 6 })),
    runs: Array.from({ length: 100 }, (_each, index) => ({ run: `W-${tag(index)}`, way: `F-${tag(index % 40)}`, conductor: '2.5 mm²', length: 20 })),
  });

  test.each(PAPERS)('is divided over sheets that fit %s, each with a reference to the other', (paper) => {
    const size = sheetOn(paper);
    const sheets = sheetsOf(large(String), 'oneLine', undefined, size);
    expect(sheets.length).toBeGreaterThan(3);
    // Within margins of 11 and 17 mm (`page-styles.ts`), four units to the millimetre.
    const [across, down] = { A4: [297, 210], A3: [420, 297] }[paper.slice(0, 2) as 'A4' | 'A3'];
    const room = paper.endsWith('landscape') ? [across! - 22, down! - 28] : [down! - 22, across! - 28];
    for (const [index, sheet] of sheets.entries()) {
      const [, , width, height] = sheet.attributes.viewBox!.split(' ').map(Number);
      expect(sheet.attributes.width).toBe(`${width! / 4}mm`);
      expect(width! / 4).toBeLessThanOrEqual(room[0]!);
      expect(height! / 4).toBeLessThanOrEqual(room[1]!);
      const text = plainText(sheet);
      expect(text).toContain(`Sheet ${index + 1} of ${sheets.length}`);
      if (index > 0) expect(text).toContain(`L1from sheet ${index}`);
      if (index < sheets.length - 1) expect(text).toContain(`continued on sheet ${index + 2}`);
    }
    expect(drawnRows(sheets, 'runs')).toHaveLength(100);
    expect(drawnRows(sheets, 'ways')).toHaveLength(40);
  });

  test('of more sheets than are asked for draws the first, and says that it is not whole', () => {
    const schedule = large(String);
    const whole = drawing(schedule, 'oneLine', undefined, SIZES[2]!);
    const part = drawing(schedule, 'oneLine', undefined, SIZES[2]!, 3);
    expect([whole.isWhole, part.isWhole, part.sheets]).toEqual([true, false, 3]);
    expect(textIn(part.sheet(1))).toContain('Sheet 2');
    expect(textIn(part.sheet(1))).not.toContain('Sheet 2 of');
    const devices = Array.from({ length: 6000 }, (_each, index) => ({ ref: `D${index}`, branch: `B${index % 60}`, qty: 1 }));
    const branches = Array.from({ length: 60 }, (_each, index) => ({ branch: `B${index}`, limit: 100 }));
    const { sections } = buildReport(scheduleOf({ branches, devices }), { generated: '2026-11-25' });
    const section = sections.find(({ name }) => name === 'branches-as-cabled')!;
    expect(section.drawings).toHaveLength(40);
    expect(section.sentences).toEqual([
      'Only the first 40 sheets are drawn here; the page shows all of them and saves them as SVG.',
    ]);
  });

  test('holds tags of two hundred signs, in every width, without text over text', () => {
    const schedule = large((index) => `${String(index)} ${'of a very long name in the attic '.repeat(6)}`);
    for (const size of SIZES) {
      for (const sheet of sheetsOf(schedule, 'oneLine', undefined, size)) expect(touching(sheet, size.width)).toEqual([]);
    }
    const wordless = large((index) => `${String(index)}${'W'.repeat(200)}`);
    for (const sheet of sheetsOf(wordless, 'oneLine', undefined, SIZES[0])) expect(touching(sheet, 280)).toEqual([]);
  });
});

describe.each(['en', 'de', 'fr'] as const)('in %s', (language) => {
  let words: Words;
  beforeAll(async () => { words = await loadWords(language); });

  test('no text of the demo lies over another', () => {
    const schedule = scheduleOf(demoContent().sheets);
    schedule.speak(words);
    for (const size of SIZES) {
      for (const panel of [...panelNames(schedule), null]) {
        for (const kind of ['oneLine', 'branches'] as const) {
          for (const sheet of sheetsOf(schedule, kind, panel, size)) expect(touching(sheet, size.width)).toEqual([]);
        }
      }
    }
  });
});

test('a schedule without rows has no sheets', () => {
  expect(drawing(scheduleOf({}), 'oneLine', undefined, SIZES[1]!).sheets).toBe(0);
  expect(drawing(scheduleOf({}), 'branches', undefined, SIZES[1]!).sheets).toBe(0);
});
