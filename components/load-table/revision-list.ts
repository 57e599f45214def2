import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { setRevisions, type Revision } from '../../src/schedule/index.ts';
import { today } from '../look/index.ts';

const TITLES = { revision: 'Revision', date: 'Date', name: 'Issued by', text: 'What is different' } as const;
type Key = keyof typeof TITLES;
const KEYS = Object.keys(TITLES) as Key[];

/** The issues of the schedule, to be written in; each change is one action. */
export function revisionList(schedule: LoadSchedule, readonly: boolean): TemplateResult {
  const { revisions } = schedule.document;
  const act = (label: string, now: readonly Revision[]) => {
    const changes = setRevisions(schedule.document, now);
    if (changes.length > 0) schedule.act(label, changes);
  };
  const change = (index: number, key: Key, value: string) => act(`Revision ${nameOf(revisions[index]!, index)}: ${TITLES[key].toLowerCase()} changed`,
    revisions.map((each, place) => place === index ? { ...each, [key]: value } : each));
  const field = (index: number, key: Key) => html`<td class=${key}><input data-key=${key} .value=${live(revisions[index]![key])} ?readonly=${readonly}
    aria-label="${TITLES[key]}, line ${index + 1}" placeholder=${key === 'date' ? 'YYYY-MM-DD' : '–'} autocomplete="off"
    @change=${(event: Event) => { change(index, key, (event.currentTarget as HTMLInputElement).value); }}></td>`;
  return html`<p class="english">The issues of this schedule, the first one first; they open the load table.
      The present one is that of the details at the top. Undo takes back each change.</p>
    ${revisions.length === 0 ? html`<p class="quiet english">No revision is listed yet.</p>` : html`<table class="revisions">
      <caption class="unseen">Revisions</caption>
      <thead><tr>${KEYS.map((key) => html`<th scope="col">${TITLES[key]}</th>`)}<th scope="col"><span class="unseen">Delete</span></th></tr></thead>
      <tbody>${revisions.map((each, index) => html`<tr>${KEYS.map((key) => field(index, key))}
        <td><button type="button" ?disabled=${readonly} aria-label="Delete revision ${nameOf(each, index)}"
          @click=${() => { act(`Revision ${nameOf(each, index)} deleted`, revisions.filter((_each, place) => place !== index)); }}>Delete</button></td></tr>`)}</tbody>
    </table>`}
    <p><button type="button" class="bordered" data-do="addRevision" ?disabled=${readonly}
      @click=${() => { act('Revision added', [...revisions, nextRevision(schedule)]); }}>Add a revision</button></p>`;
}

function nameOf({ revision }: Revision, index: number): string {
  return revision === '' ? `in line ${index + 1}` : revision;
}

/** What a new line begins with: the present issue while it is not listed, else nothing but today and who prepares it. */
function nextRevision({ document: { details, revisions } }: LoadSchedule): Revision {
  const name = details.preparedBy ?? '';
  const { revision = '' } = details;
  return revision === '' || revisions.some((each) => each.revision === revision) ? { revision: '', date: today(), name, text: '' }
    : { revision, date: details.date ?? today(), name, text: '' };
}
