import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { targetsOf, type Target } from '../../src/editing/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Words } from '../../src/words/index.ts';
import { CommandEvent, GoToEvent, SheetChooseEvent } from '../events/index.ts';
import { controls, icon, type Place } from '../look/index.ts';
import { styles } from './find-bar.styles.ts';

/** Leads to a sheet, to a row by its tag, or to a cell by letter and number. */
export class GoToBar extends LitElement {
  static override styles = [controls, styles];
  static override properties = {
    schedule: { attribute: false }, words: { attribute: false }, text: { state: true }, at: { state: true },
  };

  declare schedule: LoadSchedule;
  declare words: Words;
  /** The cell that a person is at; its sheet alone where no row is selected. */
  declare here: () => Place;
  declare protected text: string;
  /** Place of the target that Enter leads to. */
  declare protected at: number;
  #targets: readonly Target[] = [];

  constructor() {
    super();
    this.text = '';
    this.at = 0;
  }

  /** Gives the field the focus. @param typed what was typed before it was there: typing goes on behind it. */
  focusField(typed = ''): void {
    const field = this.renderRoot.querySelector('input');
    field?.focus();
    if (typed === '') field?.select();
    else {
      field?.setRangeText(typed, 0, field.value.length, 'end');
      field?.dispatchEvent(new Event('input'));
    }
  }

  protected override willUpdate(): void {
    this.#targets = targetsOf(this.schedule, this.text, this.here().sheet);
  }

  protected override firstUpdated(): void {
    this.focusField();
  }

  protected override updated(): void {
    this.renderRoot.querySelector('[aria-selected=true]')?.scrollIntoView({ block: 'nearest' });
  }

  override render(): TemplateResult {
    const { words } = this;
    const targets = this.#targets;
    return html`<section class="bar" aria-label=${words.say('Go to')} @keydown=${this.#onKeydown}>
      <form @submit=${(event: Event) => { event.preventDefault(); }}>
        <label>${words.say('Go to a tag, a sheet or a cell')} <input type="text" role="combobox" aria-expanded="true" aria-controls="targets" aria-autocomplete="list"
          aria-activedescendant=${targets.length === 0 ? nothing : `target-${this.at}`} .value=${this.text} autocomplete="off" spellcheck="false" @input=${this.#onInput}></label>
        <span class="count" role="status">${targets.length === 0 ? words.say('nothing found') : nothing}</span>
        <button type="button" class="close" title=${words.say('Close (Esc)')} aria-label=${words.say('Close')} @click=${this.#close}>${icon('close')}</button>
      </form>
      <ul id="targets" role="listbox" aria-label=${words.say('Where it leads')}>${targets.map((target, place) => html`<li role="option" id="target-${place}" class="target" aria-selected=${place === this.at}
        @click=${() => { this.#go(target); }}><span class="text">${target.name}</span><span class="place">${target.about}</span></li>`)}</ul>
    </section>`;
  }

  #go({ sheet, id, key }: Target): void {
    this.#close();
    this.dispatchEvent(id < 0 ? new SheetChooseEvent(sheet) : new GoToEvent({ sheet, id, key }));
  }

  readonly #close = (): void => { this.dispatchEvent(new CommandEvent('closeFind')); };

  readonly #onInput = (event: Event): void => {
    this.text = (event.currentTarget as HTMLInputElement).value;
    this.at = 0;
  };

  readonly #onKeydown = (event: KeyboardEvent): void => {
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    const target = this.#targets[this.at];
    if (step !== 0) this.at = Math.min(this.#targets.length - 1, Math.max(0, this.at + step));
    else if (event.key === 'Escape') this.#close();
    else if (event.key === 'Enter' && target !== undefined) this.#go(target);
    else return;
    event.preventDefault();
  };
}
