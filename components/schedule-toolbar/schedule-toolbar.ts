import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { SCHEMA, type SheetName } from '../../src/schedule/index.ts';
import { GroupingEvent, type Grouping } from '../events/index.ts';
import { controls } from '../look/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import { commandButton } from './command-button.ts';
import { ROW_COMMANDS } from './commands.ts';
import { styles } from './schedule-toolbar.styles.ts';

const GROUPINGS: readonly (readonly [Grouping, string])[] = [
  ['entered', message('As entered')], ['rail', message('Per rail')], ['branch', message('Per branch')],
];

/** What can be done with the sheet that is shown. */
export class ScheduleToolbar extends LitElement {
  static override styles = [controls, styles];
  static override properties = {
    sheet: { attribute: false }, grouping: { attribute: false }, readonly: { type: Boolean },
    rowsReady: { type: Boolean }, rare: { type: Boolean }, words: { attribute: false },
  };

  declare sheet: SheetName;
  declare grouping: Grouping;
  declare readonly: boolean;
  /** Whether there is a grid whose rows can be acted on. */
  declare rowsReady: boolean;
  /** Whether rare columns are shown although nothing stands in them. */
  declare rare: boolean;
  declare words: Words;

  override render(): TemplateResult {
    const { readonly, words } = this;
    return html`<div class="tools" role="toolbar" aria-label=${words.say('Tools of the sheet {sheet}', { sheet: words.text(SCHEMA[this.sheet].title) })}>
      <div class="group" role="group" aria-label=${words.say('Rows')}>
        ${ROW_COMMANDS.map((name, index) => html`${index === 3 ? html`<span class="gap"></span>` : nothing}
          ${commandButton(name, words, { disabled: readonly || !this.rowsReady, small: index > 2 })}`)}
      </div>
      ${SCHEMA[this.sheet].columns.some((column) => column.rare) ? html`<div class="group">
        ${commandButton('moreColumns', words, { disabled: !this.rowsReady, pressed: this.rare })}</div>` : nothing}
      ${this.sheet === 'devices' ? this.#groupings() : nothing}
      <div class="group end" role="group" aria-label=${words.say('CSV of this sheet')}>
        ${commandButton('csvIn', words, { disabled: readonly })}${commandButton('csvOut', words)}
      </div>
    </div>`;
  }

  #groupings(): TemplateResult {
    return html`<div class="choice" role="radiogroup" aria-label=${this.words.say('Show the devices')} @keydown=${this.#onKeydown}>
      ${GROUPINGS.map(([name, title]) => html`<button type="button" role="radio" data-grouping=${name}
        aria-checked=${name === this.grouping} tabindex=${name === this.grouping ? 0 : -1}
        @click=${() => this.#choose(name)}>${this.words.say(title)}</button>`)}
    </div>`;
  }

  #choose(name: Grouping): void {
    if (name !== this.grouping) this.dispatchEvent(new GroupingEvent(name));
  }

  readonly #onKeydown = (event: KeyboardEvent): void => {
    const back = getComputedStyle(this).direction === 'rtl' ? 'ArrowRight' : 'ArrowLeft';
    const step = event.key === back || event.key === 'ArrowUp' ? -1 : event.key.startsWith('Arrow') ? 1 : 0;
    if (step === 0) return;
    event.preventDefault();
    const at = GROUPINGS.findIndex(([name]) => name === this.grouping);
    const [name] = GROUPINGS[(at + step + GROUPINGS.length) % GROUPINGS.length]!;
    this.renderRoot.querySelector<HTMLElement>(`[data-grouping=${name}]`)?.focus();
    this.#choose(name);
  };
}
