import type { LoadSchedule } from '../../load-schedule.ts';
import { END_BRACKET, PARTITION, panelRails, type PanelRails } from '../../mounting/index.ts';
import { pictureText } from '../pictures/picture-text.ts';
import { railsPictures } from '../pictures/rails-picture.ts';
import { proposalSentences } from '../rails/proposal-sentences.ts';
import { heatText, partName, shownWidth, standingOfRail, widthText } from '../rails/rail-figures.ts';
import { numberCell, stateCell, textCell, textColumns } from './cells.ts';
import type { ReportSection, ReportTable } from './report.ts';
import { filledRows } from './sheet-section.ts';

/** The mounting rails of each enclosure with what stands on them; `undefined` where nothing is mounted. */
export function railsSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  const panels = shownRails(schedule);
  const proposals = proposalsOf(schedule);
  const isMounted = ({ rails, unplaced }: PanelRails) =>
    unplaced.length > 0 || rails.some(({ parts }) => parts.length > 0);
  if (!panels.some(isMounted)) return undefined;
  return {
    name: 'rails', title: words.say('Mounting rails'), sentences: [aboutRails(schedule), ...proposals],
    tables: panels.map((panel) => railsTable(schedule, panel)),
    pictures: panels.flatMap((panel) => railsPictures(schedule, panel)).map((picture) => pictureText(picture)),
  };
}

/** Rails of the enclosures that are in sight. */
export function shownRails(schedule: LoadSchedule): PanelRails[] {
  const shown = new Set(filledRows(schedule, 'enclosures').map(({ id }) => id));
  return panelRails(schedule.document, schedule.figures).filter(({ id }) => shown.has(id));
}

/** What each enclosure in sight needs. */
export function proposalsOf(schedule: LoadSchedule): string[] {
  return proposalSentences(schedule, filledRows(schedule, 'enclosures').map(({ id }) => id));
}

/** What is counted on a rail. */
export function aboutRails(schedule: LoadSchedule): string {
  return schedule.words.say(
    'Parts stand whole on a rail, mains and extra-low voltage on rails of their own where that goes. Widths hold the clearance that a part asks for; each strip has two end brackets of {bracket}, and a partition takes {partition}.',
    { bracket: widthText(schedule, END_BRACKET), partition: widthText(schedule, PARTITION) }
  );
}

/** A line for each rail of an enclosure. */
export function railsTable(schedule: LoadSchedule, panel: PanelRails): ReportTable {
  const { words } = schedule;
  const names = (parts: PanelRails['unplaced']) => parts.map((part) => partName(schedule, part)).join(', ');
  return {
    title: words.say('Mounting rails of {enclosure}', { enclosure: panel.enclosure }), heads: 1,
    columns: [
      ...textColumns(words.say('Mounting rail'), words.say('Parts from the left')),
      ...[words.say('Used (mm)'), words.say('Free (mm)'), words.say('Heat of supplies')].map((title) => ({ title, kind: 'number' as const })),
      ...textColumns(words.say('Status')),
    ],
    rows: [
      ...panel.rails.map((rail) => ({
        cells: [
          textCell(String(rail.number)), textCell(rail.parts.length === 0 ? '–' : names(rail.parts)),
          numberCell(words.number(shownWidth(rail.used))),
          numberCell(words.number(shownWidth(panel.length - rail.used, 'down'))),
          numberCell(heatText(schedule, rail)),
          stateCell(standingOfRail(panel, rail), words),
        ],
      })),
      ...panel.unplaced.length === 0 ? [] : [{
        cells: [
          textCell('–'), textCell(names(panel.unplaced)),
          numberCell(words.number(shownWidth(panel.unplaced.reduce((sum, { width }) => sum + width, 0)))),
          numberCell(''), numberCell(''), stateCell('over', words),
        ],
      }],
    ],
  };
}
