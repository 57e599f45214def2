import { html, LitElement, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { DETAIL_KEYS, isOfDocuments, withDetail, type Change, type DetailKey, type Details } from '../../src/schedule/index.ts';
import { detailText, DETAIL_TITLES } from '../../src/report/model/detail-titles.ts';
import { controls, showEntered } from '../look/index.ts';
import { styles } from './details-strip.styles.ts';

/** The title block of the schedule; what is typed in it is taken back and done again like any edit. */
export class DetailsStrip extends LitElement {
  static override styles = [controls, styles];
  static override properties = {
    schedule: { attribute: false }, revision: { attribute: false }, readonly: { type: Boolean },
  };

  declare schedule: LoadSchedule;
  /** Changes whenever the schedule, or its language, did. */
  declare revision: number;
  declare readonly: boolean;

  override render(): TemplateResult {
    return html`<div class="block" role="group" aria-label=${this.schedule.words.say('Details of the schedule')}>${DETAIL_KEYS.filter((key) => !isOfDocuments(key)).map((key) => this.#field(key))}</div>`;
  }

  #field(key: DetailKey): TemplateResult {
    const { words, document } = this.schedule;
    const text = document.details[key] ?? '';
    const shown = key === this.#typedIn?.dataset.key ? text : detailText(key, text, words);
    return html`<label class=${key}><span>${words.text(DETAIL_TITLES[key])}</span>
      <input dir="auto" .value=${live(shown)} ?readonly=${this.readonly} placeholder=${key === 'date' ? words.say('YYYY-MM-DD') : '–'} title=${shown}
        autocomplete="off" spellcheck="false" data-key=${key} @change=${this.#onChange} @focus=${this.#onFocus} @blur=${() => { this.requestUpdate(); }} @keydown=${this.#onKeydown}></label>`;
  }

  /** The changes that what is being typed would make. */
  changesTyped(): readonly Change[] {
    const field = this.#typedIn;
    const now = field === undefined ? undefined : this.#detailsWith(field);
    return now === undefined ? [] : [{ op: 'details', details: now }];
  }

  /** Takes over what is being typed. */
  finishTyping(): void {
    if (this.#typedIn !== undefined) this.#take(this.#typedIn);
  }

  get #typedIn(): HTMLInputElement | undefined {
    const { activeElement } = this.renderRoot as ShadowRoot;
    return activeElement instanceof HTMLInputElement ? activeElement : undefined;
  }

  /** The details with what stands in a field; `undefined` when that is nothing new. */
  #detailsWith({ dataset, value }: HTMLInputElement): Details | undefined {
    return withDetail(this.schedule.document.details, dataset.key as DetailKey, value);
  }

  #take(field: HTMLInputElement): void {
    const { schedule } = this;
    const details = this.#detailsWith(field);
    if (details === undefined) {
      this.requestUpdate();
      return;
    }
    const title = schedule.words.text(DETAIL_TITLES[field.dataset.key as DetailKey]);
    schedule.act(schedule.words.say('{title} changed', { title }), [{ op: 'details', details }]);
  }

  readonly #onChange = (event: Event): void => { this.#take(event.currentTarget as HTMLInputElement); };

  /** A date is typed as files have it, and shown as the language does. */
  readonly #onFocus = (event: Event): void => {
    const field = event.currentTarget as HTMLInputElement;
    if (field.dataset.key === 'date') showEntered(field, this.schedule.document.details.date ?? '');
  };

  readonly #onKeydown = (event: KeyboardEvent): void => {
    const field = event.currentTarget as HTMLInputElement;
    if (event.key === 'Enter') field.blur();
    if (event.key === 'Escape') {
      field.value = this.schedule.document.details[field.dataset.key as DetailKey] ?? '';
      field.select();
    }
  };
}
