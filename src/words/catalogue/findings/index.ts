import { cells } from './cells.ts';
import { limits } from './limits.ts';
import { rows } from './rows.ts';
import { runs } from './runs.ts';
import type { Area } from '../translation.ts';

export const findings: Area = { ...rows, ...cells, ...limits, ...runs };
