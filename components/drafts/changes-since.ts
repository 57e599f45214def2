import { html, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { changesSection, compareSchedules } from '../../src/report/changes/index.ts';
import { sectionTables } from '../load-table/section-tables.ts';
import type { DraftBody } from './draft-store.ts';
import { readDraft } from './read-draft.ts';

/**
 * What became of the page's schedule since a draft began, and what the draft does to it.
 * @param body what the store gave, of whatever shape.
 * @returns `undefined` when it is damaged.
 */
export function changesSince(body: DraftBody, page: LoadSchedule): TemplateResult | undefined {
  const { words } = page;
  const [began, draft] = [readDraft({ base: body.base, actions: [] }), readDraft(body)];
  for (const schedule of [began, draft]) schedule?.speak(words);
  const since = words.say('the schedule with which the draft began');
  const part = (title: string, now: LoadSchedule) => html`<h2>${title}</h2>
    ${sectionTables(changesSection(compareSchedules(began!, now), since, words), words)}`;
  try {
    if (began === undefined || draft === undefined) return undefined;
    const titles = [words.say('Changed in the schedule of this page'), words.say('Changed in the draft')] as const;
    return html`${part(titles[0], page)}${part(titles[1], draft)}`;
  } finally {
    began?.dispose();
    draft?.dispose();
  }
}
