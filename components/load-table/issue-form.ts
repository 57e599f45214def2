import { css, html, LitElement, nothing, type PropertyDeclarations, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { issueSchedule } from '../../src/report/digest/index.ts';
import { ISSUE_STATE_TITLES } from '../../src/report/model/revisions-section.ts';
import { ISSUE_STATES, nextRevision, presentIssue, type IssueState } from '../../src/schedule/index.ts';
import { controls, remember, remembered, today } from '../look/index.ts';
import { workAreaStyles } from '../work-area/index.ts';

/** Asks for what a schedule is issued as, by whom and what is different, and issues it as one action. */
export class IssueForm extends LitElement {
  static override styles = [controls, workAreaStyles, css`
    form { display: flex; flex-wrap: wrap; align-items: end; gap: 6px 8px; max-inline-size: 76rem; margin-block: 12px; }
    h3 { flex-basis: 100%; margin: 0; font-size: var(--elv-size); }
    label { display: grid; min-inline-size: 0; font-size: var(--elv-size-small); color: var(--elv-ink-default); }
    .revision { inline-size: 5rem; }
    .name { flex: 1 1 9rem; }
    .text { flex: 3 1 16rem; }
    input { min-inline-size: 0; }
    input, select { min-block-size: 28px; }
    p { flex-basis: 100%; margin: 0; }
    .missing { color: var(--elv-over); }
  `];
  static override properties: PropertyDeclarations = {
    schedule: { attribute: false }, revision: { attribute: false }, missing: { state: true },
  };

  declare schedule: LoadSchedule;
  /** Changes whenever the schedule, or its language, did. */
  declare revision: number;
  /** What still has to be said. */
  declare protected missing: string;

  constructor() {
    super();
    this.missing = '';
  }

  override render(): TemplateResult {
    const { words, document } = this.schedule;
    if (presentIssue(document) !== undefined) return html`${nothing}`;
    const { details, revisions } = document;
    const open = this.schedule.findings.filter(({ accepted }) => accepted === undefined).length;
    const name = remembered('name', details.preparedBy ?? '');
    const issued = new Set(revisions.filter(({ digest }) => digest !== undefined).map((each) => each.revision));
    const { revision: present = '' } = details;
    const proposed = present === '' || issued.has(present) ? nextRevision(revisions) : present;
    return html`<form @submit=${this.#onSubmit} novalidate aria-label=${words.say('Issue of the schedule')}>
      <h3>${words.say('Issue it as it is now')}</h3>
      <p class="spoken">${words.say('An issue stays in the history as it is, with the SHA-256 of the schedule; the next edit begins the next revision. {open, plural, =0 {No finding is open.} one {# finding is open and is handed over with it.} other {# findings are open and are handed over with it.}}', { open })}</p>
      <label class="revision">${words.say('Revision')}<input name="revision" autocomplete="off" .value=${proposed}></label>
      <label>${words.say('Date')}<input name="date" type="date" .value=${/^\d{4}-\d\d-\d\d$/.test(details.date ?? '') ? details.date! : today()}></label>
      <label>${words.say('Issued')} <select name="state">${ISSUE_STATES.map((state) => html`<option value=${state}>${words.say(ISSUE_STATE_TITLES[state])}</option>`)}</select></label>
      <label class="name">${words.say('Issued by')}<input name="name" autocomplete="name" .value=${name}></label>
      <label class="text">${words.say('What is different')}<input name="text" autocomplete="off" .value=${revisions.find((each) => each.revision === proposed)?.text ?? ''}></label>
      <button class="bordered" data-do="issue">${words.say('Issue')}</button>
      ${this.missing === '' ? nothing : html`<p class="missing" role="alert">${this.missing}</p>`}
    </form>`;
  }

  readonly #onSubmit = (event: SubmitEvent): void => {
    event.preventDefault();
    const { schedule, schedule: { words, document: { revisions } } } = this;
    const fields = new FormData(event.currentTarget as HTMLFormElement);
    const [revision, date, name, text, state] = ['revision', 'date', 'name', 'text', 'state']
      .map((key) => (fields.get(key) as string).trim()) as [string, string, string, string, IssueState];
    const before = revisions.find((each) => each.revision === revision && each.digest !== undefined);
    this.missing = revision === '' ? words.say('Say which revision it is.')
      : before !== undefined ? words.say('Revision {revision} was issued on {date}. Give it another name.', { revision, date: words.date(before.date) })
      : date === '' ? words.say('Say on which date it is issued.')
      : name === '' ? words.say('Say who issues it.') : '';
    if (this.missing !== '') return;
    remember('name', name);
    schedule.act(words.say('Issue of revision {revision}', { revision }), issueSchedule(schedule.content(), { revision, date, name, text, state }));
  };
}
