import { discriminates, feedTripMultiple, tripMultiple, type BreakerCurve, type WayKind } from '../../electrical/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, grouped, tagOf, titleWithUnit, type CellValue, type SheetName } from '../../schedule/index.ts';
import { message } from '../../words/index.ts';
import { numberCell, textCell } from './cells.ts';
import type { ReportRow, ReportSection } from './report.ts';
import { filledRows } from './sheet-section.ts';

const DISCRIMINATION = {
  yes: message('discriminates against the fuse of its supply'), no: message('does not discriminate'),
  unknown: message('not shown'), none: message('no fuse before it'), feed: message('not judged here'),
} as const;

/** The protections and their settings, as inspectors ask for them: feeds, fuses of supplies and ways. */
export function protectionsSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  const rows = [...feeds(schedule), ...fuses(schedule), ...ways(schedule)];
  if (rows.length === 0) return undefined;
  const heading = (key: string) => titleWithUnit(columnOf('ways', key), words);
  const column = (title: string, kind: 'text' | 'number' = 'text') => ({ title, kind });
  return {
    name: 'protections', title: words.say('Protections and settings'),
    sentences: [
      words.say('Trip is the current that makes it trip instantaneously, behind supplies on direct current, in mains feeds on alternating current. Discrimination is by rules for kinds; the tables of makers come first.'),
    ],
    tables: [{
      columns: [
        column(words.say('Protection')), column(heading('rail')), column(heading('kind')), column(heading('rated'), 'number'),
        column(words.say('Trip (A)'), 'number'), column(words.say('Protects')), column(words.say('Discrimination')),
      ],
      rows,
    }],
  };
}

interface Protection {
  readonly name: string;
  readonly rail: string;
  readonly kind: CellValue;
  readonly rated: CellValue;
  /** Multiple of its rating at which it acts at once. */
  readonly multiple: CellValue;
  readonly protects: string;
  readonly discrimination: keyof typeof DISCRIMINATION;
}

function line(
  { words }: LoadSchedule, { name, rail, kind, rated, multiple, protects, discrimination }: Protection,
): ReportRow {
  const amps = (value: number | null) => numberCell(value === null ? '' : words.number(Number(value.toPrecision(6))));
  const known = typeof rated === 'number' ? rated : null;
  return {
    cells: [
      textCell(name), textCell(rail), textCell(typeof kind === 'string' ? words.text(kind) : words.say('not known')),
      amps(known), amps(known === null || typeof multiple !== 'number' ? null : known * multiple),
      textCell(protects), textCell(words.say(DISCRIMINATION[discrimination])),
    ],
  };
}

function feeds(schedule: LoadSchedule): ReportRow[] {
  const fed = grouped((['supplies', 'outputs'] as const).flatMap((sheet) => filledRows(schedule, sheet)
    .map((row) => ({ feed: schedule.target(sheet, row.id, 'feed'), tag: tagOf(sheet, row) }))), ({ feed }) => feed);
  return filledRows(schedule, 'feeds').map((row) => {
    const [kind, rated] = ['curve', 'rated'].map((key) => schedule.value('feeds', row.id, key)) as [CellValue, CellValue];
    return line(schedule, {
      name: tagOf('feeds', row), rail: '', kind, rated, multiple: feedTripMultiple(kind as BreakerCurve | null),
      protects: (fed.get(row.id) ?? []).map(({ tag }) => tag).join(', '), discrimination: 'feed',
    });
  });
}

function fuses(schedule: LoadSchedule): ReportRow[] {
  return filledRows(schedule, 'supplies').flatMap((row): ReportRow[] => {
    const value = (key: string) => schedule.value('supplies', row.id, key);
    const [rated, kind] = [value('fuse'), value('fuseKind')];
    if (typeof rated !== 'number') return [];
    const rail = tagOf('supplies', row);
    return [line(schedule, {
      name: schedule.words.say('Fuse of {rail}', { rail }), rail, kind, rated,
      multiple: tripMultiple(kind as WayKind | null),
      protects: schedule.words.say('all of {rail}', { rail }), discrimination: 'none',
    })];
  });
}

function ways(schedule: LoadSchedule): ReportRow[] {
  const runs = new Map<number, string[]>();
  for (const row of filledRows(schedule, 'runs')) {
    const [run, ...ways] = [tagOf('runs', row), ...['way', 'secondWay'].map((by) => schedule.target('runs', row.id, by))];
    for (const way of ways) {
      const said = ways[1]! < 0 ? run : schedule.words.say('{run} (fed from two ways)', { run });
      runs.set(way, [...runs.get(way) ?? [], said]);
    }
  }
  return filledRows(schedule, 'ways').map((row) => {
    const value = (key: string) => schedule.value('ways', row.id, key);
    return line(schedule, {
      name: tagOf('ways', row), rail: String(value('rail') ?? ''), kind: value('kind'), rated: value('rated'),
      multiple: value('trip'), protects: (runs.get(row.id) ?? []).join(', '),
      discrimination: discrimination(schedule, row.id),
    });
  });
}

function discrimination(schedule: LoadSchedule, id: number): keyof typeof DISCRIMINATION {
  const rail = schedule.target('ways', id, 'rail');
  const of = (sheet: SheetName, row: number, key: string) => row < 0 ? null : schedule.value(sheet, row, key);
  const [fuse, fuseKind] = [of('supplies', rail, 'fuse'), of('supplies', rail, 'fuseKind')];
  if (fuse === null) return 'none';
  const [kind, rated] = ['kind', 'rated'].map((key) => of('ways', id, key));
  if (fuseKind === null || kind === null || typeof rated !== 'number') return 'unknown';
  const shown = discriminates({ kind: fuseKind as WayKind, ratedAmps: fuse as number },
    { kind: kind as WayKind, ratedAmps: rated }, schedule.mostInCases('ways', id, 'available'));
  return shown === null ? 'unknown' : shown ? 'yes' : 'no';
}
