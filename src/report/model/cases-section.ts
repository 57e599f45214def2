import {
  dayHours, HOURS_OF_DAY, loadingOf, profileFigures, sumOfProfiles, togetherFigures, type CaseLoading, type Profile,
} from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import {
  columnOf, formatCell, grouped, SCHEMA, tagOf, type Column, type SheetName,
} from '../../schedule/index.ts';
import { caseProfiles, type NamedProfile } from './case-profiles.ts';
import { numberCell, textCell, textColumns } from './cells.ts';
import type { ReportCell, ReportColumn, ReportRow, ReportSection, ReportTable } from './report.ts';
import { filledRows, printedColumns, rowsTable } from './sheet-section.ts';

/**
 * The cases: what each gives every group and who decided it, how supplies, ways and feeds are loaded in each, and what
 * they come to over a day. `undefined` for a schedule without cases.
 * @param isBrief leaves out notes, the loadings in each case and the day.
 */
export function casesSection(schedule: LoadSchedule, isBrief = false): ReportSection | undefined {
  const { words, document: { details } } = schedule;
  const rows = filledRows(schedule, 'cases');
  if (rows.length === 0) return undefined;
  const hours = rows.map(({ id }) => hoursOf(schedule, id));
  const { preparedBy = '' } = details;
  return {
    name: 'cases', title: words.say('Cases and factors'),
    sentences: [
      words.say('Every limit is held against every case, and against what rows ask for by their own diversity unless each case has a factor for all that is on them; the worst counts.'),
      ...preparedBy === '' ? [] : [words.say('Prepared by {name}; who decided a factor stands in the notes.', { name: preparedBy })],
      daySentence(schedule, hours),
      ...isBrief ? [words.say('How supplies, ways and feeds are loaded in each case, and over a day, is in the full form; the worst case stands with each of them.')] : [],
    ],
    tables: [
      factorTable(schedule), ...isBrief ? [] : [notesTable(schedule), loadingTable(schedule)],
      { title: words.say('Power and energy'), ...rowsTable(schedule, 'cases', rows, printedColumns(schedule, 'cases', rows)) },
      ...isBrief ? [] : dayTables(schedule, hours),
    ].filter((table): table is ReportTable => table !== undefined && table.rows.length > 0),
  };
}

/** Hours of a case [h]; `null` for one that is rare. */
function hoursOf(schedule: LoadSchedule, id: number): number | null {
  const value = schedule.value('cases', id, 'hours');
  return typeof value === 'number' ? value : null;
}

/** Whether the hours of the cases make a day, and what is not known where they do not. */
function daySentence(schedule: LoadSchedule, hours: readonly (number | null)[]): string {
  const { words, cases: { isCut } } = schedule;
  const { total, isDay } = dayHours(hours);
  const given = { total: words.number(Number(total.toFixed(3))), day: HOURS_OF_DAY };
  if (isDay && !isCut) return words.say('The hours come to a day. A year has 365 days that are alike.');
  if (total === 0) return words.say('No case has hours, so energy, average and load factor are not known.');
  if (isDay) return words.say('There are more cases than are calculated, so energy, average and load factor of a day are not known.');
  const difference = words.number(Number(Math.abs(total - HOURS_OF_DAY).toFixed(3)));
  return total < HOURS_OF_DAY
    ? words.say('The hours of the cases come to {total} of {day}: {difference} h are in no case, so energy, average and load factor of a day are not known.', { ...given, difference })
    : words.say('The hours of the cases come to {total}, {difference} h more than a day has, so energy, average and load factor of a day are not known.', { ...given, difference });
}

/** Groups that a factor names, or to which something on a sheet belongs, in the order in which they are met. */
function groupsOf(schedule: LoadSchedule): readonly number[] {
  const { cases } = schedule;
  const met = new Set([
    ...filledRows(schedule, 'factors').map(({ cells }) => cases.placeOf(cells.group ?? null)),
    ...(['devices', 'outputs'] as const).flatMap((sheet) =>
      filledRows(schedule, sheet).map(({ id }) => cases.groupOf(sheet)[id]!)),
  ]);
  return cases.groups.map((_name, place) => place).filter((place) => place > 0 && met.has(place));
}

/** More cases than these stand below one another, where groups are fewer. */
const MOST_ACROSS = 8;

/** What each case gives each group. */
function factorTable(schedule: LoadSchedule): ReportTable | undefined {
  const { words, cases } = schedule;
  const groups = groupsOf(schedule);
  const share = columnOf('factors', 'factor');
  const cellOf = (place: number, group: number): ReportCell => {
    const factor = cases.factor(place, group);
    if (factor === undefined) return numberCell(words.say('own diversity'));
    if (Number.isNaN(factor.share)) return numberCell(words.say('not known'));
    const text = formatCell(share, factor.share, words, 'show');
    return factor.ofDemand ? textCell(words.say('{share} of demand', { share: text })) : numberCell(text);
  };
  const title = words.say('What is on of each group');
  const column = (text: string): ReportColumn => ({ title: text, kind: 'number' });
  const places = cases.cases.map((_case, place) => place);
  const nameOf = (group: number) => cases.groups[group]!;
  return places.length > MOST_ACROSS && places.length > groups.length
    ? {
      title, heads: 1, columns: [...textColumns(words.text(columnOf('cases', 'case').title)), ...groups.map((group) => column(nameOf(group)))],
      rows: cases.cases.map(({ name }, place) =>
        ({ cells: [textCell(name), ...groups.map((group) => cellOf(place, group))] })),
    }
    : {
      title, heads: 1, columns: [...textColumns(words.text(columnOf('factors', 'group').title)), ...cases.cases.map(({ name }) => column(name))],
      rows: groups.map((group) =>
        ({ cells: [textCell(nameOf(group)), ...places.map((place) => cellOf(place, group))] })),
    };
}

/** Who decided factors, or why, each note once with what it is about. */
function notesTable(schedule: LoadSchedule): ReportTable | undefined {
  const { words } = schedule;
  const factors = filledRows(schedule, 'factors');
  const noted = factors.flatMap(({ cells: { note = null, case: of = null, group = null } }) =>
    note === null ? [] : [{ note: String(note), of: String(of ?? '–'), group: String(group ?? '–') }]);
  const rows = [...grouped(noted, ({ note }) => note)].map(([note, those]): ReportRow => {
    const about = those.length === factors.length ? words.say('all factors')
      : [...grouped(those, ({ of }) => of)].map(([title, some]) => words.say('{title}: {text}', {
        title, text: some.map(({ group }) => group).join(', '),
      })).join(words.say('; '));
    return { cells: [textCell(about), textCell(note)] };
  });
  return { title: words.say('Notes on factors'), columns: textColumns(words.say('Factors'), words.say('Note')), rows };
}

const JUDGED = ['supplies', 'ways', 'feeds'] as const;

/** How supplies, ways and feeds are loaded in each case. */
function loadingTable(schedule: LoadSchedule): ReportTable {
  const { words, cases } = schedule;
  const loadings = JUDGED.flatMap((sheet) => filledRows(schedule, sheet).map((row) =>
    ({ tag: tagOf(sheet, row), ...loadingOf(schedule.figures, sheet, row.id) })));
  const hasOwn = loadings.some(({ own }) => own !== undefined);
  const nameOf = ({ place, demand }: CaseLoading) => demand === null ? words.say('not known')
    : place < 0 ? words.say('own diversity') : cases.cases[place]!.name;
  return {
    title: words.say('Loading in each case'), heads: 3,
    columns: [
      ...textColumns(words.say('Sheet'), words.say('Tag'), words.text(columnOf('supplies', 'worstCase').title)),
      ...hasOwn ? [{ title: words.say('own diversity'), kind: 'number' as const }] : [],
      ...cases.cases.map(({ name }): ReportColumn => ({ title: name, kind: 'number' })),
    ],
    rows: loadings.map(({ sheet, id, tag, own, cases: each, worst }) => ({
      cells: [
        ...[words.text(SCHEMA[sheet].title), tag, nameOf(worst)].map(textCell),
        ...hasOwn ? [loadingCell(schedule, sheet, id, own)] : [],
        ...each.map((loading) => loadingCell(schedule, sheet, id, loading)),
      ],
    })),
  };
}

/** A loading with the sign of one that is partial; what is over or near says so by its shape too. */
function loadingCell(schedule: LoadSchedule, sheet: SheetName, id: number, of: CaseLoading | undefined): ReportCell {
  if (of === undefined) return numberCell('–');
  const { words } = schedule;
  if (of.loading === null) return numberCell(words.say('not known'));
  const text = formatCell(columnOf(sheet, 'loading'), of.loading, words, 'show');
  const cell = numberCell(schedule.partialSign(sheet, id, 'loading') + text);
  return of.state === 'over' || of.state === 'near' ? { ...cell, state: of.state } : cell;
}

/** What supplies, and groups of loads on them, come to over a day; nothing where the cases make none. */
function dayTables(schedule: LoadSchedule, hours: readonly (number | null)[]): ReportTable[] {
  const { words } = schedule;
  if (!dayHours(hours).isDay || schedule.cases.isCut) return [];
  const { supplies, groups, extra } = caseProfiles(schedule);
  const named = groups.map((group) => group.name === '' ? { ...group, name: words.say('In no group') } : group);
  const members = extra === undefined ? named : [...named, { ...extra, name: words.say('More that its runs draw') }];
  return [
    dayTable(schedule, words.say('Supplies over a day'), words.text(columnOf('supplies', 'rail').title), supplies, hours),
    dayTable(schedule, words.say('Groups over a day'), words.text(columnOf('factors', 'group').title), members, hours),
  ];
}

const figure = (kind: Column['kind'], decimals: number): Column =>
  ({ role: 'computed', key: '', title: '', help: '', kind, decimals });
const [WATTS, ENERGY, SHARE, RATIO] = [figure('number', 0), figure('number', 2), figure('ratio', 1), figure('number', 3)];

function dayTable(
  schedule: LoadSchedule, title: string, heading: string, profiles: readonly NamedProfile[],
  hours: readonly (number | null)[],
): ReportTable {
  const { words, cases } = schedule;
  const rowOf = (name: string, profile: Profile): ReportCell[] => {
    const { maximum, peak, average, loadFactor, day, year, isPartial } = profileFigures(profile, hours);
    const cell = (column: Column, value: number | null, sign = isPartial ? '≥' : '') =>
      numberCell(value === null ? words.say('not known') : sign + formatCell(column, value, words, 'show'));
    return [
      textCell(name), cell(WATTS, maximum), textCell(peak === null ? '–' : cases.cases[peak]!.name),
      cell(WATTS, average),
      maximum === 0 ? numberCell('–') : cell(SHARE, loadFactor, ''), cell(ENERGY, day), cell(ENERGY, year),
    ];
  };
  const { diversity, coincidence } = togetherFigures(profiles, hours);
  const column = (text: string): ReportColumn => ({ title: text, kind: 'number' });
  return {
    title,
    ...diversity === null || coincidence === null ? {} : {
      sentence: words.say('diversity factor {diversity}, coincidence factor {coincidence}', {
        diversity: formatCell(RATIO, diversity, words, 'show'), coincidence: formatCell(RATIO, coincidence, words, 'show'),
      }),
    },
    columns: [
      ...textColumns(heading), column(words.say('Maximum (W)')), ...textColumns(words.say('In case')),
      column(words.say('Average (W)')), column(words.say('Load factor')), column(words.say('Energy a day (kWh)')),
      column(words.say('Energy a year (kWh)')),
    ],
    rows: profiles.length === 0 ? [] : [
      ...profiles.map(({ name, ...profile }) => ({ cells: rowOf(name, profile) })),
      { cells: rowOf(words.say('All together'), sumOfProfiles(profiles, hours.length)), isTotal: true },
    ],
  };
}
