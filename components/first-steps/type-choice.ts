import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { controls, searchField, UNFETCHED } from '../look/index.ts';
import { addGeneralTypes, generalTypes } from './general-types.ts';

/** Chooses general device types by name, and takes them as one action. */
export class TypeChoice extends LitElement {
  static override styles = [controls, searchField, css`
    :host { display: grid; gap: 8px; }
    input[type=checkbox] { flex: none; inline-size: 1.1em; block-size: 1.1em; accent-color: var(--elv-accent); }
    ul { max-block-size: min(22em, 45vb); margin: 0; padding: 0; overflow-y: auto; list-style: none; scrollbar-width: thin; }
    label { display: flex; align-items: center; gap: 0.6em; min-block-size: 28px; padding-block: 2px; }
    label .quiet { display: block; font-size: var(--elv-size-small); }
    p { display: flex; flex-wrap: wrap; gap: 6px; margin: 0; }
  `];

  static override properties = {
    schedule: { attribute: false }, revision: { attribute: false }, types: { state: true }, sought: { state: true },
    chosen: { state: true }, unfetched: { state: true },
  };

  declare schedule: LoadSchedule;
  /** Changes whenever the schedule, or its language, did. */
  declare revision: number;
  declare protected types: readonly Cells[];
  declare protected sought: string;
  /** Names of those that are to be taken. */
  declare protected chosen: ReadonlySet<string>;
  /** There are none to choose from, since they could not be fetched. */
  declare protected unfetched: boolean;

  constructor() {
    super();
    this.types = [];
    this.sought = '';
    this.chosen = new Set();
    this.unfetched = false;
  }

  /** Begins anew, at the field that finds. */
  async begin(): Promise<void> {
    this.sought = '';
    this.chosen = new Set();
    this.unfetched = false;
    try {
      this.types = await generalTypes();
    } catch {
      this.unfetched = true;
    }
    await this.updateComplete;
    this.renderRoot.querySelector('input')!.focus();
  }

  override render(): TemplateResult {
    const { words } = this.schedule;
    const find = words.say('Find a type by any of its names');
    const shown = this.#shown;
    const n = this.chosen.size;
    return html`<input type="search" aria-label=${find} placeholder=${find} .value=${this.sought}
        @input=${({ currentTarget }: Event) => { this.sought = (currentTarget as HTMLInputElement).value; }}>
      ${this.unfetched ? html`<p role="alert">${words.say(UNFETCHED)}</p>` : nothing}
      <ul>${shown.map((each) => this.#line(each))}</ul>
      <p><button type="button" class="bordered" data-do="all" ?disabled=${shown.length === 0}
          @click=${() => { this.chosen = new Set([...this.chosen, ...shown.map(nameOf)]); }}>${words.say('Choose all {n}', { n: shown.length })}</button>
        <button type="button" class="bordered" data-do="take" ?disabled=${n === 0} @click=${this.#take}>${words.say('Take {n, plural, one {# type} other {# types}}', { n })}</button></p>`;
  }

  /** Those that the schedule does not have yet and whose names hold what is looked for. */
  get #shown(): readonly Cells[] {
    const own = new Set(this.schedule.rows('types').map(({ cells }) => cells.type));
    const sought = this.sought.trim().toLowerCase();
    return this.types.filter(({ type, aliases, description }) => !own.has(type)
      && [type, aliases, description].some((text) => String(text ?? '').toLowerCase().includes(sought)));
  }

  #line(cells: Cells): TemplateResult {
    const name = nameOf(cells);
    const press = () => {
      const chosen = new Set(this.chosen);
      if (!chosen.delete(name)) chosen.add(name);
      this.chosen = chosen;
    };
    return html`<li><label><input type="checkbox" .checked=${this.chosen.has(name)} @change=${press}>
      <span>${name}<span class="quiet">${cells.aliases ?? cells.description}</span></span></label></li>`;
  }

  readonly #take = (): void => {
    addGeneralTypes(this.schedule, this.types.filter((each) => this.chosen.has(nameOf(each))));
    this.dispatchEvent(new Event('close'));
  };
}

const nameOf = ({ type }: Cells): string => String(type);
