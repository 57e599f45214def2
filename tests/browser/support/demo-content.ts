import demo from '../../../data/demo.schedule.json?raw';
import { readSchedule } from '../../../src/exchange/index.ts';
import type { Content } from '../../../src/schedule/index.ts';

/** The content of the demo with a terminal, of which it has none: a row on every sheet. */
export function demoWithTerminal(): Content {
  const { sheets, ...demo } = demoContent();
  const terminal = {
    terminal: '+KP-1-X2:1', strip: '+KP-1-X2', potential: 'L1-F1 L+', inside: 'L1-F1:2', outside: 'L1-W1', core: '1', size: 4,
  };
  return { ...demo, sheets: { ...sheets, terminals: [terminal] } };
}

/** The content of the demo. */
export function demoContent(): Content {
  const read = readSchedule(demo);
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return read.content;
}
