import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { SCHEMA, type SheetLook, type SheetName } from '../../src/schedule/index.ts';
import { GroupingEvent, SightEvent, type Grouping } from '../events/index.ts';
import type { RowsOnly } from '../grid/lines/sight-type.ts';
import { controls, icon, placeBelow } from '../look/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import { commandButton } from './command-button.ts';
import { ROW_COMMANDS } from './commands.ts';
import { styles } from './schedule-toolbar.styles.ts';

const GROUPINGS: Readonly<Record<Grouping, string>> = {
  entered: message('Entry order'), rail: message('Per rail'), branch: message('Per branch'), way: message('Per way'),
  run: message('Per run'), area: message('Per area'), type: message('Per type'),
};
const ROWS: Readonly<Record<RowsOnly | '', string>> = {
  '': message('All rows'), over: message('Only over'), near: message('Over or near limit'),
  incomplete: message('Only incomplete'), own: message('With own values'),
};

/** What can be done with the sheet that is shown. */
export class ScheduleToolbar extends LitElement {
  static override styles = [controls, styles];
  static override properties = {
    sheet: { attribute: false }, grouping: { attribute: false }, readonly: { type: Boolean },
    rowsReady: { type: Boolean }, only: { attribute: false }, look: { attribute: false }, words: { attribute: false },
  };

  declare sheet: SheetName;
  declare grouping: Grouping;
  declare readonly: boolean;
  /** Whether there is a grid whose rows can be acted on. */
  declare rowsReady: boolean;
  /** The state of the rows in sight, where they are picked by it. */
  declare only: RowsOnly | undefined;
  /** How the sheet is looked at. */
  declare look: SheetLook;
  declare words: Words;

  override render(): TemplateResult {
    const { readonly, words } = this;
    return html`<div class="tools" role="toolbar" aria-label=${words.say('Tools of the sheet {sheet}', { sheet: words.text(SCHEMA[this.sheet].title) })}>
      <div class="group" role="group" aria-label=${words.say('Rows')}>
        ${ROW_COMMANDS.map((name, index) => html`${index === 3 ? html`<span class="gap"></span>` : nothing}
          ${commandButton(name, words, { disabled: readonly || !this.rowsReady, small: index > 2 })}`)}
      </div>
      <div class="group wordy">${this.#columns()}</div>
      ${this.#choice(words.say('Rows'), 'rows', ROWS, this.only ?? '', (only) => new SightEvent({ only: only === '' ? undefined : only }))}
      ${this.sheet !== 'devices' ? nothing : html`<div class="group">
        ${this.#choice(words.say('Group'), 'groupings', GROUPINGS, this.grouping, (grouping) => new GroupingEvent(grouping))}
        ${this.grouping === 'entered' ? nothing : commandButton('foldGroups', words, { disabled: !this.rowsReady, small: true })}</div>`}
      <div class="group end" role="group" aria-label=${words.say('CSV of this sheet')}>
        ${commandButton('csvIn', words, { disabled: readonly })}${commandButton('csvOut', words)}
      </div>
    </div>`;
  }

  /** What opens the choice of columns, which is fetched when it is asked for. */
  #columns(): TemplateResult {
    const { words, look } = this;
    return html`<button type="button" popovertarget="columns" ?disabled=${!this.rowsReady} title=${words.say('Which columns are in sight')}>
        ${icon('moreColumns')}<span class="word">${words.say('Columns')}</span></button>
      <div popover id="columns" class="floating" role="region" aria-label=${words.say('Columns')} @beforetoggle=${this.#onColumns}>
        ${SCHEMA[this.sheet].columns.some(({ rare }) => rare !== undefined) ? commandButton('moreColumns', words, { pressed: look.all }) : nothing}
        <elv-column-choice .sheet=${this.sheet} .look=${look} .words=${words}></elv-column-choice></div>`;
  }

  /** A choice that asks for something as soon as it is made. */
  #choice<Name extends string>(
    title: string, name: string, choices: Readonly<Record<Name, string>>, chosen: Name, ask: (name: Name) => Event,
  ): TemplateResult {
    const choose = ({ currentTarget }: Event) => {
      this.dispatchEvent(ask((currentTarget as HTMLSelectElement).value as Name));
    };
    return html`<select class="choice" aria-label=${title} title=${title} data-choice=${name} ?disabled=${!this.rowsReady} @change=${choose}>
      ${Object.entries<string>(choices).map(([each, text]) => html`<option value=${each} .selected=${each === chosen}>${this.words.say(text)}</option>`)}
    </select>`;
  }

  readonly #onColumns = (event: ToggleEvent): void => {
    if (event.newState !== 'open') return;
    placeBelow(event);
    import('../column-choice/column-choice.define.ts').catch(reportError);
  };
}
