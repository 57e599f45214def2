import { readFileSync } from 'node:fs';
import { readSchedule } from '../../src/exchange/index.ts';
import type { Content } from '../../src/schedule/index.ts';

/** The demo schedule as a file holds it. */
export function demoContent(): Content {
  const read = readSchedule(readFileSync(new URL('../../data/demo.schedule.json', import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return read.content;
}
