import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { DETAIL_TITLES } from '../../src/report/model/detail-titles.ts';
import { DOCUMENT_DETAILS, withDetail } from '../../src/schedule/index.ts';

/** What stands in the title block of documents alone, to be written in; each change is one action. */
export function documentFields(schedule: LoadSchedule, readonly: boolean): TemplateResult {
  const { words, document } = schedule;
  return html`<div class="document">${DOCUMENT_DETAILS.map((key) => {
    const title = words.text(DETAIL_TITLES[key]);
    const take = ({ currentTarget }: Event) => {
      const details = withDetail(document.details, key, (currentTarget as HTMLInputElement).value);
      if (details !== undefined) schedule.act(words.say('{title} changed', { title }), [{ op: 'details', details }]);
    };
    return html`<label>${title}<input data-detail=${key} dir="auto" .value=${live(document.details[key] ?? '')} ?readonly=${readonly} placeholder="–"
      autocomplete="off" spellcheck="false" @change=${take}></label>`;
  })}</div>`;
}
