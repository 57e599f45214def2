import demo from '../../../data/demo.schedule.json?raw';
import { readSchedule } from '../../../src/exchange/index.ts';
import type { Content } from '../../../src/schedule/index.ts';

/** The content of the demo. */
export function demoContent(): Content {
  const read = readSchedule(demo);
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return read.content;
}
