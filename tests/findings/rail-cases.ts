import type { Cells } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

const BOX = {
  enclosure: 'E1', height: 1000, width: 1000, depth: 1000, mounting: 'free', ambient: 30, otherLoss: 20, maxInside: 70,
};
/** Modules of some widths in an enclosure with three rails of 400 mm and a reserve of 20 %. */
const MODULES = (widths: readonly number[], enclosure: Cells = {}, on: Readonly<Record<number, number>> = {}) => ({
  enclosures: [{ ...BOX, rails: 3, railLength: 400, ...enclosure }],
  modules: widths.map((width, at): Cells => ({ module: `K${at + 1}`, enclosure: 'E1', width, ...at in on ? { mountedOn: on[at]! } : {} })),
});
/** A strip of terminals of 5 mm: with its two end brackets of 10 mm it takes 20 mm more. */
const STRIP = (count: number, enclosure: Cells) => ({
  enclosures: [{ ...BOX, rails: 1, railLength: 400, ...enclosure }],
  terminals: Array.from({ length: count }, (_terminal, at): Cells => ({ terminal: `X1:${at + 1}`, strip: 'X1', enclosure: 'E1', width: 5 })),
});
/** 31 parts of 25.1 mm and a bit more each: three to a rail of 100 mm, which no search of moderate length proves. */
const MANY = (rails: number) =>
  MODULES(Array.from({ length: 31 }, (_part, at) => 25.1 + at / 64), { rails, railLength: 100, reserve: 0 });

export const RAIL_CASES: readonly FindingCase[] = [
  {
    // 960 mm are what 3 × 400 mm less 20 % hold in sum; two of 250 mm share no rail, and beside one are 150 mm.
    rule: 'enclosure-rails-over', sheet: 'enclosures', sheets: MODULES([250, 250, 250, 210]), severity: 'over', key: 'rails',
    value: 960, limit: 1200, inStatus: true,
    message: 'Enclosure E1: 1 part finds no mounting rail: 960 mm of parts with end brackets are to stand on 1200 mm of rails, and no arrangement puts each part whole on one. Use longer rails or one more, or move parts out of it.',
    silent: [
      MODULES([250, 250, 250, 150]), MODULES([250, 250, 250, 210], { rails: 4 }),
      MODULES([250, 250, 250, 210], { railLength: 460 }),
      MODULES([500, 500, 500]), MODULES([250, 250, 250, 210], { rails: null }),
    ],
  },
  {
    rule: 'enclosure-rails-over', sheet: 'enclosures', sheets: MODULES([450, 100]), severity: 'over', key: 'rails',
    value: 450, limit: 400, inStatus: true,
    message: 'Enclosure E1: K1 takes 450 mm of a mounting rail with its end brackets, and none is longer than 400 mm. Use longer rails, or move it to another enclosure.',
    silent: [MODULES([400, 100])],
  },
  {
    // By hand 100 and 100 stand on two rails, where 350 finds none; 100 + 100 and 350 would do.
    rule: 'enclosure-rails-over', sheet: 'enclosures', severity: 'over', key: 'rails', value: 550, limit: 800, inStatus: true,
    sheets: MODULES([100, 100, 350], { rails: 2 }, { 0: 1, 1: 2 }),
    message: 'Enclosure E1: 1 part finds no mounting rail while others stand where they were put by hand; 550 mm of parts with end brackets stand on 800 mm of rails once all are placed anew. Let them be placed anew, or empty the mounting rail of some.',
    silent: [MODULES([100, 100, 350], { rails: 2 }), MODULES([100, 100, 350], { rails: 2 }, { 0: 2, 1: 2 })],
  },
  {
    rule: 'enclosure-rail-over', sheet: 'enclosures', sheets: MODULES([250, 160, 90], {}, { 0: 2, 1: 2 }), severity: 'over',
    key: 'railLength', value: 410, limit: 400, inStatus: true,
    message: 'Enclosure E1: mounting rail 2 is given 410 mm of parts with end brackets and partitions, and is 400 mm long: 10 mm too much. Give some of them another rail, or empty their mounting rail so that they find one.',
    silent: [MODULES([250, 150, 90], {}, { 0: 2, 1: 2 }), MODULES([250, 160], {}, { 0: 2, 1: 1 }), MODULES([250, 160])],
  },
  {
    // 60 × 5 mm and 20 mm are 320 mm, which is what 400 mm less 20 % hold; one more is into it.
    rule: 'enclosure-rails-near', sheet: 'enclosures', sheets: STRIP(61, {}), severity: 'near', key: 'reserve', value: 325,
    limit: 320, inStatus: true,
    message: 'Enclosure E1 holds 325 mm of parts with end brackets on 400 mm of mounting rails, 5 mm into its reserve. Use a larger enclosure, or give up part of the reserve.',
    silent: [STRIP(60, {}), STRIP(61, { reserve: 0.1 }), STRIP(66, {})],
  },
  {
    rule: 'enclosure-rails-unknown', sheet: 'enclosures', sheets: MANY(10), severity: 'incomplete', key: 'rails', value: null,
    inStatus: true,
    message: 'Enclosure E1: no arrangement of its parts on its mounting rails was found, and none is proven, as the search was cut short. Put parts on rails by hand, or use one more rail.',
    silent: [MANY(11), MANY(12)],
  },
  ...([
    ['supply', 'supplies', 'rail', 'Rail'], ['way', 'ways', 'way', 'Way'], ['branch', 'branches', 'branch', 'Branch'],
    ['module', 'modules', 'module', 'Module'], ['feed', 'feeds', 'feed', 'Feed'], ['terminal', 'terminals', 'terminal', 'Terminal'],
  ] as const).map(([one, sheet, tag, name]): FindingCase => {
    const part = (mountedOn: number | null, rails: number | null = 3) => ({
      enclosures: [{ ...BOX, rails, railLength: 400 }], [sheet]: [{ [tag]: 'P1', enclosure: 'E1', width: 20, mountedOn }],
    });
    return {
      rule: `${one}-rail-absent`, sheet, sheets: part(4), severity: 'over', key: 'mountedOn', value: 4, limit: 3, inStatus: false,
      message: `${name} P1 is given mounting rail 4, and its enclosure has 3 rails. Correct the number, or empty it so that it finds one.`,
      silent: [part(3), part(null), part(4, null)],
    };
  }),
];
