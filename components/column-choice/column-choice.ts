import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import {
  groupOf, SCHEMA, type Column, type ColumnGroup, type SheetLook, type SheetName,
} from '../../src/schedule/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import { LookEvent } from '../events/index.ts';
import { controls } from '../look/index.ts';

const GROUP_TITLES: Readonly<Record<ColumnGroup | 'further', string>> = {
  measured: message('Measured'), limits: message('Tolerances and limits'), heat: message('Heat and derating'),
  mains: message('Mains and inrush'), battery: message('Battery'), mounting: message('Mounting'),
  purchase: message('Purchase'), laying: message('How it lies'), progress: message('Progress'),
  second: message('Second way'), further: message('Further columns'),
};

/** Which columns of a sheet are in sight, and which stay there: groups of rare ones fold, others are put away. */
export class ColumnChoice extends LitElement {
  static override styles = [controls, css`
    :host { display: grid; gap: 10px; }
    fieldset { display: grid; gap: 1px; margin: 0; padding: 0; border: 0; }
    legend { padding: 0 0 2px; font-weight: 600; }
    .many { grid-template-columns: repeat(auto-fill, minmax(10em, 1fr)); gap: 1px 12px; }
    label { display: flex; align-items: center; gap: 0.5em; min-block-size: 24px; }
    .last { justify-content: space-between; }
    select { min-block-size: 26px; max-inline-size: 14em; }
  `];

  static override properties = { sheet: { attribute: false }, look: { attribute: false }, words: { attribute: false } };

  declare sheet: SheetName;
  declare look: SheetLook;
  declare words: Words;

  override render(): TemplateResult {
    const { look, words } = this;
    const columns = SCHEMA[this.sheet].columns.filter(({ rare }) => rare === undefined);
    const groups = [...new Set(SCHEMA[this.sheet].columns.filter(({ rare }) => rare !== undefined).map(groupOf))];
    return html`
      ${groups.length === 0 ? nothing : html`<fieldset><legend>${words.say('Groups of rare columns')}</legend>
        ${groups.map((group) => this.#group(group, groups))}</fieldset>`}
      <fieldset class="many"><legend>${words.say('Columns in sight')}</legend>
        ${columns.slice(1).map((column) => this.#column(column))}</fieldset>
      <label class="last">${words.say('Stays in view up to')}<select data-frozen @change=${this.#freeze}>
        ${columns.slice(0, 9).map(({ key, title }) =>
          html`<option value=${key} .selected=${key === (look.frozen ?? columns[0]!.key)}>${words.text(title)}</option>`)}
      </select></label>
      ${Object.keys(look.wide).length === 0 ? nothing : html`<button type="button" class="bordered" data-widths
        @click=${() => { this.#ask({ wide: {} }); }}>${words.say('Widths as at first')}</button>`}`;
  }

  #group(group: ColumnGroup | 'further', all: readonly (ColumnGroup | 'further')[]): TemplateResult {
    const { look, words } = this;
    const open = look.all ? all : look.groups;
    const columns = SCHEMA[this.sheet].columns
      .filter((column) => column.rare !== undefined && groupOf(column) === group);
    const press = () => {
      this.#ask({
        all: false, groups: open.includes(group) ? open.filter((each) => each !== group) : [...open, group],
      });
    };
    return html`<label title=${columns.map(({ title }) => words.text(title)).join(', ')}>
      <input type="checkbox" data-group=${group} .checked=${open.includes(group)} @change=${press}>
      ${words.say(GROUP_TITLES[group])} <span class="quiet">${columns.length}</span></label>`;
  }

  #column({ key, title }: Column): TemplateResult {
    const { hidden } = this.look;
    const press = () => {
      this.#ask({ hidden: hidden.includes(key) ? hidden.filter((each) => each !== key) : [...hidden, key] });
    };
    return html`<label><input type="checkbox" data-column=${key} .checked=${!hidden.includes(key)} @change=${press}>
      ${this.words.text(title)}</label>`;
  }

  readonly #freeze = (event: Event): void => {
    this.#ask({ frozen: (event.currentTarget as HTMLSelectElement).value });
  };

  #ask(changed: Partial<SheetLook>): void {
    this.dispatchEvent(new LookEvent(changed));
  }
}
