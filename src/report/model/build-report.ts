import type { PanelChoice } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { DETAIL_KEYS, type SheetName } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import { CAUTIONS } from '../cautions.ts';
import { changesSection, compareSchedules } from '../changes/index.ts';
import { scheduleDigest } from '../digest/index.ts';
import type { Paper } from '../paper.ts';
import { panelView } from '../panel-view.ts';
import { SOFTWARE } from '../software.ts';
import { assumptionsSection } from './assumptions-section.ts';
import { casesSection } from './cases-section.ts';
import { checklistSection } from './checklist-section.ts';
import { commissioningSection } from './commissioning-section.ts';
import { detailText, DETAIL_TITLES } from './detail-titles.ts';
import { devicesPerBranch, devicesPerRail } from './device-groups.ts';
import { drawingsSection } from './drawings-sections.ts';
import { explanationsSection } from './explanations-section.ts';
import { acceptedSection, findingsSection, notesSection } from './findings-sections.ts';
import { panelsSection } from './panels-section.ts';
import { notJudgedSection } from './not-judged-section.ts';
import { runPicturesSection, summaryPictures } from './pictures.ts';
import { protectionsSection } from './protections-section.ts';
import type { Report, ReportSection } from './report.ts';
import { railsSection } from './rails-section.ts';
import { revisionsSection } from './revisions-section.ts';
import { sheetSection } from './sheet-section.ts';
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
}

/** The load table of a schedule in the language that it speaks, from which every form of it is made. */
export function buildReport(all: LoadSchedule, options: LoadTableOptions): Report {
  const { generated, sheet, panel } = options;
  const schedule = panelView(all, panel);
  const since = options.since && panelView(options.since, panel);
  const { words, document: { details } } = schedule;
  const sections = sheet === undefined ? wholeTable(schedule, since, all, options)
    : [
      findingsSection(schedule, sheet), acceptedSection(schedule, sheet), notesSection(schedule, sheet),
      sheetSection(schedule, sheet), explanationsSection(schedule, sheet),
    ];
  return {
    words, scope: { generated, sheet, panel, paper: options.paper, since: since !== undefined },
    title: words.say('Load table'),
    subject: [details.project, panel === null ? words.say('In no panel') : panel ?? details.panel]
      .filter((part) => part !== undefined).join(' – '),
    details: DETAIL_KEYS.map((key) => ({ key, title: words.say(DETAIL_TITLES[key]), text: detailText(key, details[key] ?? '', words) })),
    issue: { generated: words.date(generated), software: SOFTWARE, digest: scheduleDigest(schedule.content()) },
    cautions: [...partOf(panel, words), ...CAUTIONS.map((caution) => words.say(caution))],
    sections: sections.filter((section): section is ReportSection => section !== undefined),
  };
}

function wholeTable(
  schedule: LoadSchedule, since: LoadSchedule | undefined, all: LoadSchedule, { panel, paper }: LoadTableOptions,
): (ReportSection | undefined)[] {
  const { words } = schedule;
  const sheet = (name: SheetName) => sheetSection(schedule, name);
  return [
    revisionsSection(schedule),
    since && changesSection(compareSchedules(since, schedule), nameOf(since, words), words),
    { ...statusSection(schedule), pictures: summaryPictures(schedule) },
    panelsSection(schedule),
    findingsSection(schedule), acceptedSection(schedule),
    drawingsSection(all, 'oneLine', panel, paper),
    sheet('supplies'), sheet('ways'), protectionsSection(schedule), sheet('branches'),
    drawingsSection(all, 'branches', panel, paper), sheet('runs'),
    runPicturesSection(schedule), sheet('modules'), sheet('outputs'), sheet('feeds'), sheet('enclosures'),
    railsSection(schedule),
    casesSection(schedule),
    wiringSection(schedule), insideSection(schedule), cablesSection(schedule), spareSection(schedule),
    devicesPerRail(schedule),
    devicesPerBranch(schedule),
    sheet('types'), sheet('conductors'), sheet('contacts'),
    notesSection(schedule), assumptionsSection(schedule), explanationsSection(schedule),
    notJudgedSection(words),
    checklistSection(schedule),
    commissioningSection(schedule),
  ];
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
