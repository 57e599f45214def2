import type { Area } from '../translation.ts';
import { cells } from './cells.ts';
import { explanations } from './explanations.ts';
import { formulas } from './formulas.ts';
import { lineHelps } from './line-helps.ts';
import { names } from './names.ts';
import { rules } from './rules.ts';
import { sources } from './sources.ts';
import { supplyHelps } from './supply-helps.ts';
import { titles } from './titles.ts';

/** What the schema says of sheets and columns, and what is said of cells, formulas and figures. */
export const schema = {
  ...titles, ...names, ...supplyHelps, ...lineHelps, ...rules, ...sources, ...cells, ...formulas, ...explanations,
} satisfies Area;
