import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { firstDigits, ISSUE_STATE_TITLES, issueSentence } from '../../src/report/model/revisions-section.ts';
import { setRevisions, type Revision } from '../../src/schedule/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import { showEntered, today } from '../look/index.ts';

const TITLES = {
  revision: message('Revision'), date: message('Date'), name: message('Issued by'), text: message('What is different'),
} as const;
type Key = keyof typeof TITLES;
const KEYS = Object.keys(TITLES) as Key[];

/**
 * The issues of the schedule, to be written in, and issued; each change is one action.
 * @param actions changes whenever the schedule did.
 */
export function revisionList(schedule: LoadSchedule, readonly: boolean, actions: number): TemplateResult {
  const { words, document: { revisions } } = schedule;
  const act = (label: string, now: readonly Revision[]) => {
    const changes = setRevisions(schedule.document, now);
    if (changes.length > 0) schedule.act(label, changes);
  };
  const change = (index: number, key: Key, value: string) => act(changeLabel(revisions[index]!, index, key, words),
    revisions.map((each, place) => place === index ? { ...each, [key]: value } : each));
  const remove = (index: number) =>
    act(revisions[index]!.revision === '' ? words.say('Revision in line {line} removed', { line: index + 1 })
    : words.say(
      'Revision {name} removed', { name: revisions[index]!.revision }
    ), revisions.filter((_each, place) => place !== index));
  const field = (index: number, key: Key) => revisions[index]!.digest !== undefined ? html`<td class="${key} issued">${key === 'date' ? words.date(revisions[index]!.date) : revisions[index]![key]}</td>`
    : html`<td class=${key}><input data-key=${key} .value=${live(key === 'date' ? words.date(revisions[index]!.date) : revisions[index]![key])} ?readonly=${readonly}
    aria-label=${words.say('{column}, line {line}', { column: words.say(TITLES[key]), line: index + 1 })}
    placeholder=${key === 'date' ? words.say('YYYY-MM-DD') : '–'} autocomplete="off"
    @focus=${key === 'date' ? (event: Event) => { showEntered(event.currentTarget as HTMLInputElement, revisions[index]!.date); } : nothing}
    @keydown=${(event: KeyboardEvent) => { if (key === 'date' && event.key === 'Enter') (event.currentTarget as HTMLElement).blur(); }}
    @blur=${({ currentTarget }: Event) => { const field = currentTarget as HTMLInputElement; if (key === 'date') field.value = words.date(field.value); }}
    @change=${(event: Event) => { change(index, key, (event.currentTarget as HTMLInputElement).value); }}></td>`;
  return html`<p class="spoken">${words.say('The issues of this schedule, the first one first; they open the load table. The present one is that of the details at the top. Undo takes back each change.')} ${issueSentence(schedule, words)}</p>
    ${revisions.length === 0 ? html`<p class="quiet spoken">${words.say('No revision is listed yet.')}</p>` : html`<table class="revisions">
      <caption class="unseen">${words.say('Revisions')}</caption>
      <thead><tr>${KEYS.map((key) => html`<th scope="col">${words.say(TITLES[key])}</th>`)}<th scope="col">${words.say('Issued')}</th></tr></thead>
      <tbody>${revisions.map(({ revision, state, digest }, index) => html`<tr>${KEYS.map((key) => field(index, key))}
        <td class=${digest === undefined ? '' : 'issued'}>${digest !== undefined ? html`${state === undefined ? '' : words.say(ISSUE_STATE_TITLES[state])} <span class="quiet digits" title=${digest}>${firstDigits(digest)}</span>` : html`<button type="button" ?disabled=${readonly}
          aria-label=${revision === '' ? words.say('Remove revision in line {line}', { line: index + 1 }) : words.say('Remove revision {name}', { name: revision })}
          @click=${() => { remove(index); }}>${words.say('Remove')}</button>`}</td></tr>`)}</tbody>
    </table>`}
    <p><button type="button" class="bordered" data-do="addRevision" ?disabled=${readonly}
      @click=${() => { act(words.say('Revision added'), [...revisions, nextRevision(schedule)]); }}>${words.say('Add a revision')}</button></p>
    ${readonly ? nothing : html`<elv-issue-form .schedule=${schedule} .revision=${actions}></elv-issue-form>`}`;
}

function changeLabel({ revision }: Revision, index: number, key: Key, words: Words): string {
  const column = words.within(TITLES[key]);
  return revision === '' ? words.say('Revision in line {line}: {column} changed', { line: index + 1, column })
    : words.say('Revision {name}: {column} changed', { name: revision, column });
}

/**
 * What a new line begins with: the present issue while it is not listed, else nothing but today and who prepares it.
 */
function nextRevision({ document: { details, revisions } }: LoadSchedule): Revision {
  const name = details.preparedBy ?? '';
  const { revision = '' } = details;
  return revision === ''
    || revisions.some((each) => each.revision === revision) ? { revision: '', date: today(), name, text: '' }
    : { revision, date: details.date ?? today(), name, text: '' };
}
