import type { PanelChoice } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { DETAIL_KEYS, isOfDocuments, type SheetName } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import { CAUTIONS } from '../cautions.ts';
import { changesSection, compareSchedules } from '../changes/index.ts';
import { scheduleDigest } from '../digest/index.ts';
import type { Paper } from '../paper.ts';
import { panelView } from '../panel-view.ts';
import { SOFTWARE } from '../software.ts';
import { assumptionsSection } from './assumptions-section.ts';
import { briefSection, type BriefSheet } from './brief-section.ts';
import { casesSection } from './cases-section.ts';
import { checklistSection } from './checklist-section.ts';
import { commissioningSection } from './commissioning-section.ts';
import { detailText, DETAIL_TITLES } from './detail-titles.ts';
import { devicesPerBranch, devicesPerRail } from './device-groups.ts';
import { drawingsSection } from './drawings-sections.ts';
import { explanationsSection } from './explanations-section.ts';
import {
  acceptedSection, briefAcceptedSection, findingsSection, notesSection, worstFindingsSection,
} from './findings-sections.ts';
import { formCaution, isIn, SECTION_NAMES, type Form, type SectionName } from './forms.ts';
import { panelsSection } from './panels-section.ts';
import { measuringSection } from './measuring-section.ts';
import { notJudgedSection } from './not-judged-section.ts';
import { runPicturesSection, summaryPictures } from './pictures.ts';
import { protectionsSection } from './protections-section.ts';
import type { Report, ReportSection } from './report.ts';
import { railsSection } from './rails-section.ts';
import { revisionsSection, stateDetail } from './revisions-section.ts';
import { sheetSection, usedSection } from './sheet-section.ts';
import { statusSection } from './status-section.ts';
import { cablesSection, insideSection, spareSection, wiringSection } from './wiring-sections.ts';

/** What a load table is made of. */
export interface LoadTableOptions {
  /** When the table was made, as it is to be printed. */
  readonly generated: string;
  /** The sheet that is printed, with the findings on it; the whole load table by default. */
  readonly sheet?: SheetName | undefined;
  /** The panel that is printed, `null` for what is in none; all of them by default. */
  readonly panel?: PanelChoice;
  /** The paper that drawings fit; without it they fit all that is usual. */
  readonly paper?: Paper | undefined;
  /** An older schedule; what has changed since becomes a section. */
  readonly since?: LoadSchedule | undefined;
  /** What the whole load table is for; `full` by default. */
  readonly form?: Form | undefined;
  /** Sections of the form that are left out; the load table says so. */
  readonly without?: readonly SectionName[] | undefined;
  /** Pictures of all runs, not only of those that are not within their limits. */
  readonly allPictures?: boolean | undefined;
}

/** The load table of a schedule in the language that it speaks, from which every form of it is made. */
export function buildReport(all: LoadSchedule, options: LoadTableOptions): Report {
  const { generated, sheet, panel } = options;
  const schedule = panelView(all, panel);
  const since = options.since && panelView(options.since, panel);
  const { words, document: { details } } = schedule;
  const { form = 'full', without = [], allPictures = false } = sheet === undefined ? options : {};
  const making: Making = { schedule, all, since, options, form };
  const leftOut = leftOutOf(making, without);
  const sections = sheet === undefined ? sectionsOf(making, without)
    : [
      findingsSection(schedule, sheet), acceptedSection(schedule, sheet), notesSection(schedule, sheet),
      sheetSection(schedule, sheet), explanationsSection(schedule, sheet),
    ];
  return {
    words,
    scope: {
      generated, sheet, panel, paper: options.paper, since: since !== undefined,
      ...form === 'full' ? {} : { form }, ...without.length === 0 ? {} : { without }, ...allPictures ? { allPictures } : {},
    },
    title: words.say('Load table'),
    subject: [details.project, panel === null ? words.say('In no panel') : panel ?? details.panel]
      .filter((part) => part !== undefined).join(' – '),
    details: [
      ...DETAIL_KEYS.filter((key) => details[key] !== undefined || !isOfDocuments(key)).map((key) => ({ key, title: words.say(DETAIL_TITLES[key]), text: detailText(key, details[key] ?? '', words) })),
      ...stateDetail(all),
    ],
    issue: { generated: words.date(generated), software: SOFTWARE, digest: scheduleDigest(schedule.content()) },
    cautions: [
      ...partOf(panel, words), ...formCaution(form, words), ...choiceCaution(leftOut, words),
      ...CAUTIONS.map((caution) => words.say(caution)),
    ],
    sections: sections.filter((section): section is ReportSection => section !== undefined),
    leftOut,
  };
}

/** What the sections of a load table are made of. */
interface Making {
  readonly schedule: LoadSchedule;
  /** The whole schedule, where `schedule` is that of a panel. */
  readonly all: LoadSchedule;
  readonly since: LoadSchedule | undefined;
  readonly options: LoadTableOptions;
  readonly form: Form;
}

/** What has changed since an older schedule. */
export const changesSince = (since: LoadSchedule, schedule: LoadSchedule): ReportSection =>
  changesSection(compareSchedules(since, schedule), nameOf(since, schedule.words), schedule.words);

/** How each section is made; `undefined` where there is nothing to tell. */
const MAKE: Readonly<Record<SectionName, (making: Making) => ReportSection | undefined>> = {
  revisions: ({ schedule }) => revisionsSection(schedule),
  changes: ({ schedule, since }) => since && changesSince(since, schedule),
  summary: ({ schedule, form }) =>
    ({ ...statusSection(schedule), ...form === 'full' ? { pictures: summaryPictures(schedule) } : {} }),
  panels: ({ schedule }) => panelsSection(schedule),
  findings: ({ schedule, form }) => form !== 'full' ? worstFindingsSection(schedule) : findingsSection(schedule),
  accepted: ({ schedule, form }) => form === 'short' ? briefAcceptedSection(schedule) : acceptedSection(schedule),
  'one-line': ({ all, options: { panel, paper } }) => drawingsSection(all, 'oneLine', panel, paper),
  supplies: (making) => sheetOrBrief(making, 'supplies'),
  ways: (making) => sheetOrBrief(making, 'ways'),
  protections: ({ schedule }) => protectionsSection(schedule),
  branches: (making) => sheetOrBrief(making, 'branches'),
  'branches-as-cabled': ({ all, options: { panel, paper } }) => drawingsSection(all, 'branches', panel, paper),
  runs: (making) => sheetOrBrief(making, 'runs'),
  'run-pictures': ({ schedule, options: { allPictures = false } }) => runPicturesSection(schedule, allPictures),
  modules: ({ schedule }) => sheetSection(schedule, 'modules'),
  outputs: (making) => sheetOrBrief(making, 'outputs'),
  feeds: (making) => sheetOrBrief(making, 'feeds'),
  enclosures: ({ schedule }) => sheetSection(schedule, 'enclosures'),
  rails: ({ schedule }) => railsSection(schedule),
  cases: ({ schedule, form }) => casesSection(schedule, form === 'short'),
  wiring: ({ schedule }) => wiringSection(schedule),
  inside: ({ schedule }) => insideSection(schedule),
  cables: ({ schedule }) => cablesSection(schedule),
  spare: ({ schedule }) => spareSection(schedule),
  'devices-per-rail': ({ schedule }) => devicesPerRail(schedule),
  'devices-per-branch': ({ schedule }) => devicesPerBranch(schedule),
  types: ({ schedule }) => usedSection(schedule, 'types'),
  conductors: ({ schedule }) => usedSection(schedule, 'conductors'),
  contacts: ({ schedule }) => usedSection(schedule, 'contacts'),
  notes: ({ schedule }) => notesSection(schedule),
  assumptions: ({ schedule }) => assumptionsSection(schedule),
  explanations: ({ schedule }) => explanationsSection(schedule),
  'not-judged': ({ schedule: { words }, form }) => notJudgedSection(words, form === 'short'),
  checklist: ({ schedule }) => checklistSection(schedule),
  measuring: ({ schedule }) => measuringSection(schedule),
  commissioning: ({ schedule }) => commissioningSection(schedule),
};

const sheetOrBrief = ({ schedule, form }: Making, sheet: BriefSheet): ReportSection | undefined =>
  form === 'full' ? sheetSection(schedule, sheet) : briefSection(schedule, sheet);

/** The sections of a form, apart from those that are left out by choice. */
function sectionsOf(making: Making, without: readonly SectionName[]): (ReportSection | undefined)[] {
  return SECTION_NAMES.filter((name) => isIn(making.form, name) && !without.includes(name))
    .map((name) => MAKE[name](making));
}

/** What a person left out, with the titles that it would have had; what would have been empty is not named. */
function leftOutOf(making: Making, without: readonly SectionName[]): Report['leftOut'] {
  return without.filter((name) => isIn(making.form, name)).flatMap((name) => {
    const section = MAKE[name](making);
    return section === undefined ? [] : [{ name, title: section.title }];
  });
}

function choiceCaution(leftOut: Report['leftOut'], words: Words): string[] {
  const titles = leftOut.map(({ title }) => title).join(', ');
  return titles === '' ? [] : [words.say('Left out of this print by choice: {titles}.', { titles })];
}

/** What a load table of one panel says of itself. */
function partOf(panel: PanelChoice, words: Words): string[] {
  if (panel === undefined) return [];
  return [panel === null
    ? words.say('Only what belongs to no panel is listed here; figures are those of the whole schedule.')
    : words.say('Only what belongs to panel {panel} is listed here; figures are those of the whole schedule.', { panel })];
}

/** An older schedule as a sentence names it. */
function nameOf({ document: { details: { revision = '–', date } } }: LoadSchedule, words: Words): string {
  return date === undefined
    ? words.say('revision {revision}', { revision })
    : words.say('revision {revision} of {date}', { revision, date: words.date(date) });
}
