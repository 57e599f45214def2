import { discriminates, type WayKind } from '../../electrical/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, formatCell, tagOf, titleWithUnit, type CellValue, type SheetName } from '../../schedule/index.ts';
import { message, type Words } from '../../words/index.ts';
import { numberCell, textCell } from './cells.ts';
import type { ReportRow, ReportSection } from './report.ts';
import { filledRows } from './sheet-section.ts';

const DISCRIMINATION = {
  yes: message('discriminates against the fuse of its supply'), no: message('does not discriminate'),
  unknown: message('not shown'), none: message('no fuse before it'),
} as const;

/** The protections and their settings, as inspectors ask for them: fuses of supplies, ways with what they protect. */
export function protectionsSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  const rows = [...fuses(schedule), ...ways(schedule)];
  if (rows.length === 0) return undefined;
  const heading = (key: string) => titleWithUnit(columnOf('ways', key), words);
  const column = (title: string, kind: 'text' | 'number' = 'text') => ({ title, kind });
  return {
    name: 'protections', title: words.say('Protections and settings'),
    sentences: [
      words.say('Trip is the current that makes it trip instantaneously on direct current. Discrimination is by rules for kinds; the tables of makers come first.'),
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

function fuses(schedule: LoadSchedule): ReportRow[] {
  const { words } = schedule;
  return filledRows(schedule, 'supplies').flatMap((row): ReportRow[] => {
    const value = (key: string) => schedule.value('supplies', row.id, key);
    const fuse = value('fuse');
    if (typeof fuse !== 'number') return [];
    const rail = tagOf('supplies', row);
    return [{
      cells: [
        textCell(words.say('Fuse of {rail}', { rail })), textCell(rail), kindCell(value('fuseKind'), words),
        numberCell(words.number(fuse)), numberCell(''), textCell(words.say('all of {rail}', { rail })), textCell(''),
      ],
    }];
  });
}

function ways(schedule: LoadSchedule): ReportRow[] {
  const { words } = schedule;
  const runs = new Map<number, string[]>();
  for (const row of filledRows(schedule, 'runs')) {
    const [run, ...ways] = [tagOf('runs', row), ...['way', 'secondWay'].map((by) => schedule.target('runs', row.id, by))];
    for (const way of ways) {
      const said = ways[1]! < 0 ? run : words.say('{run} (fed from two ways)', { run });
      runs.set(way, [...runs.get(way) ?? [], said]);
    }
  }
  return filledRows(schedule, 'ways').map(({ id, ...row }): ReportRow => {
    const text = (key: string) => formatCell(columnOf('ways', key), schedule.value('ways', id, key), words, 'show');
    const [rated, trip] = [schedule.value('ways', id, 'rated'), schedule.value('ways', id, 'trip')];
    const isKnown = typeof rated === 'number' && typeof trip === 'number';
    return {
      cells: [
        textCell(tagOf('ways', { id, ...row })), textCell(text('rail')), kindCell(schedule.value('ways', id, 'kind'), words),
        numberCell(text('rated')), numberCell(isKnown ? words.number(Number((rated * trip).toPrecision(6))) : ''),
        textCell((runs.get(id) ?? []).join(', ')), textCell(words.say(DISCRIMINATION[discrimination(schedule, id)])),
      ],
    };
  });
}

function kindCell(kind: CellValue, words: Words) {
  return textCell(typeof kind === 'string' ? words.text(kind) : words.say('not known'));
}

function discrimination(schedule: LoadSchedule, id: number): keyof typeof DISCRIMINATION {
  const rail = schedule.target('ways', id, 'rail');
  const of = (sheet: SheetName, row: number, key: string) => row < 0 ? null : schedule.value(sheet, row, key);
  const [fuse, fuseKind] = [of('supplies', rail, 'fuse'), of('supplies', rail, 'fuseKind')];
  if (fuse === null) return 'none';
  const [kind, rated, available] = ['kind', 'rated', 'available'].map((key) => of('ways', id, key));
  if (fuseKind === null || kind === null || typeof rated !== 'number') return 'unknown';
  const shown = discriminates({ kind: fuseKind as WayKind, ratedAmps: fuse as number },
    { kind: kind as WayKind, ratedAmps: rated }, available as number | null);
  return shown === null ? 'unknown' : shown ? 'yes' : 'no';
}
