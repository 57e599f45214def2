import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { Finding } from '../../src/findings/finding.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { controls, remember, remembered, today } from '../look/index.ts';

/**
 * Asks who accepts a finding, why and when, and accepts it as one action.
 * @fires close when it has been accepted or the person has thought better of it
 */
export class AcceptanceForm extends LitElement {
  static override styles = [controls, css`
    form { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); gap: 5px 8px; padding: 4px 0 6px; }
    label { display: grid; min-inline-size: 0; font-size: var(--elv-size-small); color: var(--elv-ink-default); }
    .reason, .end { grid-column: 1 / -1; }
    input {
      min-inline-size: 0;
      min-block-size: 28px;
      padding: 0 6px;
      border: 1px solid var(--elv-line-strong);
      border-radius: var(--elv-radius);
      background: var(--elv-surface-raised);
      color: var(--elv-ink);
      font-size: var(--elv-size);
    }
    .end { display: flex; align-items: center; gap: 6px; }
    .missing { margin: 0; color: var(--elv-over); font-size: var(--elv-size-small); }
    @container (inline-size >= 620px) {
      form { grid-template-columns: minmax(12em, 1fr) minmax(8em, 14em) 10em auto; align-items: end; }
      .reason { grid-column: auto; }
      .end { grid-column: auto; }
      .missing { grid-column: 1 / -1; }
    }
  `, css`:host { container-type: inline-size; }`];
  static override properties = {
    schedule: { attribute: false }, finding: { attribute: false }, missing: { state: true },
  };

  declare schedule: LoadSchedule;
  declare finding: Finding;
  /** What still has to be said. */
  declare protected missing: string;

  constructor() {
    super();
    this.missing = '';
  }

  override render(): TemplateResult {
    const { words, document: { details: { preparedBy = '' } } } = this.schedule;
    const name = remembered('name', preparedBy);
    return html`<form @submit=${this.#onSubmit} @keydown=${this.#onKeydown} novalidate aria-label=${words.say('Acceptance of the finding')}>
      <label class="reason">${words.say('Why it is accepted')}<input name="reason" autocomplete="off"></label>
      <label>${words.say('By')}<input name="name" autocomplete="name" value=${name}></label>
      <label>${words.say('On')}<input name="date" type="date" value=${today()}></label>
      <div class="end"><button class="bordered">${words.say('Accept')}</button><button type="button" @click=${this.#close}>${words.say('Cancel')}</button></div>
      ${this.missing === '' ? nothing : html`<p class="missing" role="alert">${this.missing}</p>`}
    </form>`;
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector('input')!.focus({ preventScroll: true });
    this.scrollIntoView({ block: 'nearest' });
  }

  readonly #onSubmit = (event: SubmitEvent): void => {
    event.preventDefault();
    const fields = new FormData(event.currentTarget as HTMLFormElement);
    const [reason, name, date] = ['reason', 'name', 'date']
      .map((key) => (fields.get(key) as string).trim()) as [string, string, string];
    const { words } = this.schedule;
    const missing = [
      ...(reason === '' ? [words.say('why')] : []), ...(name === '' ? [words.say('by whom')] : []), ...(
        date === '' ? [words.say('on which date')] : []
      ),
    ];
    if (missing.length > 0) {
      const all = missing.reduce((one, other) => words.say('{one} and {other}', { one, other }));
      this.missing = words.say('Say {missing} it is accepted.', { missing: all });
      return;
    }
    remember('name', name);
    this.schedule.accept(this.finding, { reason, name, date });
    this.#close();
  };

  readonly #onKeydown = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    this.#close();
  };

  readonly #close = (): void => { this.dispatchEvent(new Event('close')); };
}
