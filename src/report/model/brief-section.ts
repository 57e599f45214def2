import { STANDINGS, type Standing } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, SCHEMA, type Row, type SheetName } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import type { ReportSection } from './report.ts';
import { filledRows, rowsTable } from './sheet-section.ts';
import { STATE_WORDS } from './state-words.ts';

/** What the short form tells of a row, as far as a row has it. */
const KEYS = {
  supplies: [
    'rail', 'purpose', 'voltage', 'rated', 'usable', 'connected', 'demand', 'worstCase', 'loading', 'enclosure', 'status',
  ],
  ways: ['way', 'rail', 'kind', 'rated', 'demand', 'worstCase', 'loading', 'largest', 'available', 'status'],
  branches: ['branch', 'limit', 'nodes', 'free', 'cableLength', 'terminated', 'terminators', 'enclosure', 'status'],
  runs: ['run', 'rail', 'way', 'conductor', 'length', 'secondLength', 'current', 'drop', 'endVoltage', 'minVoltage', 'status'],
  outputs: ['output', 'load', 'area', 'current', 'rating', 'headroom', 'inrushHeadroom', 'status'],
  feeds: ['feed', 'voltage', 'rated', 'curve', 'demand', 'worstCase', 'loading', 'inrush', 'status'],
} as const satisfies Partial<Record<SheetName, readonly string[]>>;

/** Sheets that the short form tells of in few columns. */
export type BriefSheet = keyof typeof KEYS;

/** More rows of a sheet than these make the short form long. */
export const MOST_ROWS = 100;

/** How a row stands, worst first; one without a status comes last. */
const ORDER: readonly (Standing | null)[] = [...STANDINGS, null];

/**
 * A sheet in few columns; of a long one the rows that are not within their limits, then others up to a bound, in the
 * order of the sheet, and how many more there are and how they stand.
 */
export function briefSection(schedule: LoadSchedule, sheet: BriefSheet): ReportSection | undefined {
  const { words } = schedule;
  const rows = filledRows(schedule, sheet);
  if (rows.length === 0) return undefined;
  const worstFirst = [...rows].sort((a, b) => place(schedule, sheet, a) - place(schedule, sheet, b));
  const chosen = new Set(worstFirst.slice(0, MOST_ROWS));
  const columns = KEYS[sheet].map((key) => columnOf(sheet, key))
    .filter(({ key }) => rows.some(({ id }) => schedule.value(sheet, id, key) !== null));
  return {
    name: sheet, title: words.text(SCHEMA[sheet].title),
    sentences: unlisted(schedule, sheet, rows.filter((row) => !chosen.has(row)), words),
    tables: [rowsTable(schedule, sheet, rows.filter((row) => chosen.has(row)), columns, false)],
  };
}

const place = (schedule: LoadSchedule, sheet: SheetName, { id }: Row): number =>
  ORDER.indexOf(schedule.standing(sheet, id));

/** How many rows are not listed, and how they stand; nothing where all are. */
function unlisted(schedule: LoadSchedule, sheet: SheetName, rows: readonly Row[], words: Words): string[] {
  if (rows.length === 0) return [];
  const count = (standing: Standing | null) =>
    rows.filter(({ id }) => schedule.standing(sheet, id) === standing).length;
  const counts = ORDER.map((standing) => [standing, count(standing)] as const).filter(([, n]) => n > 0)
    .map(([standing, n]) => standing === null ? words.say('{n} without a status', { n })
      : words.say('{n} {state}', { n, state: words.say(STATE_WORDS[standing]) }));
  return [words.say('{n, plural, one {# row is not listed here} other {# rows are not listed here}} ({counts}); the full form lists all of them.', {
    n: rows.length, counts: counts.join(', '),
  })];
}
