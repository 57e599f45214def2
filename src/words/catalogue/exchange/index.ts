import type { Area } from '../translation.ts';
import { csv } from './csv.ts';
import { json } from './json.ts';
import { takeoff } from './takeoff.ts';
import { takeoffCommand } from './takeoff-command.ts';
import { takeoffReader } from './takeoff-reader.ts';
import { workbook } from './workbook.ts';

/** What is said of files and of takeoffs. */
export const exchange = { ...csv, ...json, ...workbook, ...takeoff, ...takeoffCommand, ...takeoffReader } satisfies Area;
