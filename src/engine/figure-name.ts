import { columnOf, tagOf, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import { message, type Words } from '../words/index.ts';

/** A figure of another row than the one that is explained. */
const OF_ROW: Readonly<Record<SheetName, string>> = {
  devices: message('{figure} of the device row {tag}'),
  types: message('{figure} of the device type {tag}'),
  supplies: message('{figure} of the supply {tag}'),
  ways: message('{figure} of the way {tag}'),
  branches: message('{figure} of the bus branch {tag}'),
  runs: message('{figure} of the run {tag}'),
  conductors: message('{figure} of the conductor {tag}'),
  modules: message('{figure} of the relay module {tag}'),
  outputs: message('{figure} of the relay output {tag}'),
  contacts: message('{figure} of the contact {tag}'),
  feeds: message('{figure} of the feed {tag}'),
  enclosures: message('{figure} of the enclosure {tag}'),
  terminals: message('{figure} of the terminal {tag}'),
  cases: message('{figure} of the case {tag}'),
  factors: message('{figure} of the group {tag}'),
};

/** A figure with the row that it belongs to: «Demand of the supply L1». */
export function figureOf(document: ScheduleDocument, sheet: SheetName, id: number, key: string, spoken: Words): string {
  const row = document.row(sheet, id);
  return ofRow(sheet, spoken.text(columnOf(sheet, key).title), row === undefined ? '' : tagOf(sheet, row), spoken);
}

/** A figure of the row with a tag; an empty one stands for any row. */
export function ofRow(sheet: SheetName, figure: string, tag: string, spoken: Words): string {
  return spoken.say(OF_ROW[sheet], { figure, tag }).trimEnd();
}
