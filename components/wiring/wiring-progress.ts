import { html, LitElement, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import type { PanelChoice } from '../../src/engine/panel-of.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { progressSentence } from '../../src/report/model/progress-sentence.ts';
import { lastPart, shownTerminals } from '../../src/report/model/wiring-sections.ts';
import { panelView } from '../../src/report/panel-view.ts';
import { grouped, type Change } from '../../src/schedule/index.ts';
import {
  holdsNothing, isLeft, noteAt, progressOf, tickedBy, tickedFor, tickState, tickTerminal, TICK_NAMES, type TickName,
  type WiredTerminal,
} from '../../src/terminals/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import { controls, today } from '../look/index.ts';
import { workAreaStyles } from '../work-area/index.ts';
import { keepName, keptName } from './kept-name.ts';
import { progressStyles } from './wiring-progress.styles.ts';

/** What terminals stand together by. */
const GROUPINGS = { strip: message('By strip'), outside: message('By cable') } as const;
type Grouping = keyof typeof GROUPINGS;

/** Which terminals are shown. */
const SHOWN = {
  all: message('All terminals'), wired: message('Left to wire'), checked: message('Left to check'),
} as const;
type Shown = keyof typeof SHOWN;

/** With more terminals than this, all groups but the first are closed until a person opens them. */
const MOST_OPEN = 200;

/** Terminals that stand together. */
interface Group {
  readonly name: string;
  readonly terminals: readonly WiredTerminal[];
}

/** What was done last, or why something was not. */
interface Said {
  readonly text: string;
  readonly isRefused: boolean;
  /** What the action is called, so that it can be taken back from here while it is the last one. */
  readonly label?: string;
}

/** What is wired and checked, terminal by terminal: ticked at the panel, by thumb or by keys. */
export class WiringProgress extends LitElement {
  static override styles = [controls, workAreaStyles, progressStyles];
  static override properties: PropertyDeclarations = {
    schedule: { attribute: false }, revision: { attribute: false }, words: { attribute: false },
    readonly: { type: Boolean }, only: { attribute: false }, grouping: { state: true }, shown: { state: true },
    name: { state: true }, toggled: { state: true }, noting: { state: true }, said: { state: true },
  };

  declare schedule: LoadSchedule;
  /** Changes whenever the schedule did. */
  declare revision: number;
  declare words: Words;
  declare readonly: boolean;
  declare only: PanelChoice;
  declare protected grouping: Grouping;
  declare protected shown: Shown;
  /** Who ticks. */
  declare protected name: string;
  /** Groups that are open where they would be closed, or closed where they would be open. */
  declare protected toggled: ReadonlySet<string>;
  /** The terminal whose note is open. */
  declare protected noting: number | undefined;
  declare protected said: Said | undefined;
  #terminals: readonly WiredTerminal[] = [];
  #groups: readonly Group[] = [];
  /** Terminals that were ticked here since it was chosen what is shown: nothing vanishes under the hands. */
  readonly #stay = new Set<number>();

  constructor() {
    super();
    this.readonly = false;
    this.grouping = 'strip';
    this.shown = 'all';
    this.name = keptName();
    this.toggled = new Set();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!['schedule', 'revision', 'only', 'grouping'].some((key) => changed.has(key))) return;
    this.#terminals = shownTerminals(panelView(this.schedule, this.only));
    const groups = [...grouped(this.#terminals, (each) => each[this.grouping])]
      .map(([name, terminals]): Group => ({ name, terminals }));
    this.#groups = this.grouping === 'strip' ? groups
      : groups.sort((one, other) => Number(one.name === '') - Number(other.name === '')
        || one.name.localeCompare(other.name, 'en', { numeric: true }));
  }

  override render(): TemplateResult {
    const { words, said } = this;
    const groups = this.#groups.filter(({ terminals }) => this.#inSight(terminals).length > 0);
    return html`
      <div class="options">
        ${this.#choice(words.say('Group'), GROUPINGS, 'grouping')}
        ${this.#choice(words.say('Show'), SHOWN, 'shown')}
        ${this.readonly ? nothing : html`<label class="who">${words.say('Your name')}
          <input name="who" autocomplete="name" .value=${this.name} @input=${this.#onName}></label>`}
      </div>
      <p class="sum spoken" data-sum="all">${progressSentence(progressOf(this.#terminals.map(({ row }) => row.cells)), words)}</p>
      <div @keydown=${this.#onArrow}>
        ${groups.map((group, place) => this.#group(group, place === 0))}</div>
      ${groups.length > 0 ? nothing
        : html`<p class="spoken">${this.shown === 'checked' ? words.say('Nothing is left to check of what is wired.') : words.say('Nothing is left to wire.')}</p>`}
      <div class="said">
        <span role="status">${said === undefined || said.isRefused ? nothing : html`<p class="spoken">${said.text}</p>`}</span>
        <span role="alert">${said?.isRefused === true ? html`<p class="spoken refused">${said.text}</p>` : nothing}</span>
        ${said?.label !== undefined && this.schedule.undoLabel === said.label
          ? html`<button type="button" class="bordered" data-do="takeBack" @click=${this.#takeBack}>${words.say('Undo')}</button>` : nothing}
      </div>`;
  }

  #choice<Key extends string>(title: string, choices: Readonly<Record<Key, string>>, of: 'grouping' | 'shown'): TemplateResult {
    return html`<div class="choice" role="group" aria-label=${title}>${(Object.keys(choices) as Key[]).map((key) => html`<button type="button"
      data-choice=${key} aria-pressed=${this[of] === key} @click=${() => { this.#choose(of, key); }}>${this.words.say<string>(choices[key])}</button>`)}</div>`;
  }

  #choose(of: 'grouping' | 'shown', key: string): void {
    this.#stay.clear();
    this.said = undefined;
    if (of === 'grouping') this.grouping = key as Grouping;
    else this.shown = key as Shown;
  }

  #inSight(terminals: readonly WiredTerminal[]): readonly WiredTerminal[] {
    const { shown } = this;
    return shown === 'all' ? terminals : terminals.filter(({ row }) => isLeft(row.cells, shown) || this.#stay.has(row.id));
  }

  #group({ name, terminals }: Group, isFirst: boolean): TemplateResult {
    const { words } = this;
    const isOpen = this.toggled.has(name) !== (isFirst || this.#terminals.length <= MOST_OPEN);
    const toggle = () => {
      const toggled = new Set(this.toggled);
      if (!toggled.delete(name)) toggled.add(name);
      this.toggled = toggled;
    };
    const title = name !== '' ? name : this.grouping === 'strip' ? words.say('On no strip') : words.say('Without a cable');
    return html`<section class="group" data-group=${name}>
      <h3><button type="button" aria-expanded=${isOpen} @click=${toggle}><span aria-hidden="true">${isOpen ? '▾' : '▸'}</span>${title}</button>
        <span class="quiet spoken">${progressSentence(progressOf(terminals.map(({ row }) => row.cells)), words)}</span></h3>
      ${isOpen ? html`<ul>${repeat(this.#inSight(terminals), ({ row }) => row.id, (each) => this.#terminal(each))}</ul>` : nothing}
    </section>`;
  }

  #terminal(terminal: WiredTerminal): TemplateResult {
    const { words } = this;
    const { row: { id, cells }, strip, inside, outside, core, to, potential, bridgedWith } = terminal;
    const note = String(cells.note ?? '');
    const said = TICK_NAMES.flatMap((name) => this.#saidOf(terminal, name));
    const number = this.grouping === 'strip' ? lastPart(terminal.terminal, strip) : terminal.terminal;
    return html`<li class="terminal" data-terminal=${terminal.terminal}>
      <div class="wires spoken"><span>${number === '' ? '–' : number} <span class="quiet">${potential}</span></span>
        <span>${inside !== '' ? words.say('Inside: {end}', { end: inside })
          : bridgedWith.length > 0 ? words.say('Inside: bridged with {terminals}', { terminals: shortList(bridgedWith.map((each) => lastPart(each, strip))) })
            : holdsNothing(cells) ? words.say('Spare') : words.say('Inside: nothing')}</span>
        <span>${outside === '' ? nothing : core === '' ? words.say('Cable {cable}', { cable: outside }) : words.say('Cable {cable}, core {core}', { cable: outside, core })}</span>
        <span class="quiet">${to}</span></div>
      ${TICK_NAMES.map((name) => this.#tick(terminal, name))}
      <div class="more spoken">${said.map((text) => html`<span class="changed">${text}</span>`)}${this.#marks(terminal)}
        ${this.noting === id ? html`<input name="note" aria-label=${words.say('Note on {terminal}', { terminal: terminal.terminal })} .value=${note}
            @change=${(event: Event) => { this.#note(terminal, (event.currentTarget as HTMLInputElement).value); }}
            @keydown=${this.#onNoteKey} @blur=${() => { this.noting = undefined; }}>`
          : html`${note === '' ? nothing : html`<span class="fault">${note}</span>`}
            ${this.readonly ? nothing : html`<button type="button" class="link" data-note=${id}
              aria-label=${words.say('Note on {terminal}', { terminal: terminal.terminal })} @click=${() => { this.#openNote(id); }}>${note === '' ? words.say('Note a fault') : words.say('Edit')}</button>`}`}</div>
    </li>`;
  }

  #tick({ row: { id, cells }, terminal }: WiredTerminal, name: TickName): TemplateResult {
    const { words } = this;
    const state = tickState(cells, name);
    const title = name === 'wired' ? words.say('Wired') : words.say('Checked');
    return html`<label class="tick" data-state=${state}><input type="checkbox" name=${name} data-id=${id} .checked=${live(state === 'done')}
      .indeterminate=${live(state === 'otherwise')} ?disabled=${this.readonly || (holdsNothing(cells) && state === 'open')}
      aria-label=${words.say('{title}: {terminal}', { title, terminal })} @change=${() => { this.#onTick(id, name); }}>${title}</label>`;
  }

  /** Why a tick counts for nothing, or is not held against anything. */
  #saidOf({ row: { cells } }: WiredTerminal, name: TickName): string[] {
    const { words } = this;
    const before = tickedFor(cells, name);
    switch (tickState(cells, name)) {
      case 'open': return [];
      case 'done': return before !== '' ? [] : [name === 'wired' ? words.say('What it was wired as is not recorded.') : words.say('What it was checked as is not recorded.')];
      case 'otherwise': return [name === 'wired' ? words.say('Changed since: ticked as wired for {before}.', { before }) : words.say('Changed since: ticked as checked for {before}.', { before })];
    }
  }

  #marks({ row: { cells } }: WiredTerminal): (TemplateResult | typeof nothing)[] {
    const { words } = this;
    return TICK_NAMES.map((name) => {
      const { by, on } = tickedBy(cells, name);
      if (by === '' && on === '') return nothing;
      const who = [by, on === '' ? '' : words.date(on)].filter((each) => each !== '').join(', ');
      return html`<span>${name === 'wired' ? words.say('Wired: {who}', { who }) : words.say('Checked: {who}', { who })}</span>`;
    });
  }

  /** What the box shows follows from the schedule alone, whatever the press made of it. */
  #onTick(id: number, name: TickName): void {
    const { words, schedule } = this;
    const each = this.#terminals.find(({ row }) => row.id === id)!;
    const { terminal, row: { cells } } = each;
    const state = tickState(cells, name);
    const takesBack = state === 'done' || (state === 'otherwise' && holdsNothing(cells));
    if (takesBack) {
      const wasChecked = name === 'wired' && cells.checked === true;
      this.#act(id, words.say('Tick of {terminal} taken back', { terminal }), tickTerminal(schedule.document, id, name, null),
        wasChecked ? words.say('{terminal}: both ticks are taken back, as what is not wired is not checked.', { terminal })
          : words.say('{terminal}: the tick is taken back.', { terminal }));
      return;
    }
    if (name === 'checked' && tickState(cells, 'wired') !== 'done') {
      this.#refuse(words.say('{terminal} is not ticked as wired for what it is to join now. Whoever checks finds it wired first, and ticks that.', { terminal }));
      return;
    }
    const by = this.name.trim();
    if (by === '') {
      this.#refuse(words.say('Enter your name first: it is kept with each tick.'));
      this.renderRoot.querySelector<HTMLInputElement>('[name=who]')!.focus();
      return;
    }
    const isSame = name === 'checked' && tickedBy(cells, 'wired').by === by;
    this.#act(id, name === 'wired' ? words.say('{terminal} ticked as wired', { terminal }) : words.say('{terminal} ticked as checked', { terminal }),
      tickTerminal(schedule.document, id, name, { by, on: today() }),
      name === 'wired' ? words.say('{terminal} is ticked as wired.', { terminal })
        : isSame ? words.say('{terminal} is ticked as checked, by the one who wired it: somebody else sees more.', { terminal })
          : words.say('{terminal} is ticked as checked.', { terminal }));
  }

  #act(id: number, label: string, changes: readonly Change[], text: string): void {
    this.#stay.add(id);
    this.said = { text, isRefused: false, label };
    this.schedule.act(label, changes);
    this.requestUpdate();
  }

  #refuse(text: string): void {
    this.said = { text, isRefused: true };
    // The box shows again what is.
    this.requestUpdate();
  }

  #note({ row: { id }, terminal }: WiredTerminal, text: string): void {
    const { schedule, words } = this;
    const changes = noteAt(schedule.document, id, text);
    if (changes.length > 0) this.#act(id, words.say('Note on {terminal}', { terminal }), changes, words.say('The note on {terminal} is kept.', { terminal }));
  }

  #openNote(id: number): void {
    this.noting = id;
    void this.updateComplete.then(() => { this.renderRoot.querySelector<HTMLInputElement>('[name=note]')?.focus(); });
  }

  readonly #onNoteKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter' && event.key !== 'Escape') return;
    // Escape leaves the field, not the area, and the note as it was.
    event.stopPropagation();
    event.preventDefault();
    const field = event.currentTarget as HTMLInputElement;
    const id = this.noting!;
    if (event.key === 'Escape') field.value = String(this.schedule.document.row('terminals', id)!.cells.note ?? '');
    else this.#note(this.#terminals.find(({ row }) => row.id === id)!, field.value);
    this.noting = undefined;
    void this.updateComplete.then(() => { this.renderRoot.querySelector<HTMLElement>(`[data-note="${id}"]`)?.focus(); });
  };

  readonly #onName = ({ currentTarget }: Event): void => {
    this.name = (currentTarget as HTMLInputElement).value;
    keepName(this.name);
  };

  /** Up and down go to the same tick of the terminal before and behind, left and right to its other one. */
  readonly #onArrow = (event: KeyboardEvent): void => {
    const [from] = event.composedPath();
    if (!(from instanceof HTMLInputElement) || from.type !== 'checkbox') return;
    const isAcross = event.key === 'ArrowLeft' || event.key === 'ArrowRight';
    if (!isAcross && event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
    event.preventDefault();
    const boxes = [...this.renderRoot.querySelectorAll<HTMLInputElement>('.tick input')]
      .filter((box) => isAcross ? box.dataset.id === from.dataset.id : box.name === from.name && !box.disabled);
    const step = event.key === 'ArrowUp' || event.key === 'ArrowLeft' ? -1 : 1;
    boxes[boxes.indexOf(from) + step]?.focus();
  };

  readonly #takeBack = (): void => {
    const { words } = this;
    const label = this.schedule.undo();
    this.said = label === undefined ? undefined : { text: words.say('Undone: {action}.', { action: label }), isRefused: false };
  };
}

/** The first of many, so that a card stays low. */
const MOST_NAMED = 4;
const shortList = (texts: readonly string[]): string =>
  texts.length <= MOST_NAMED ? texts.join(', ') : `${texts.slice(0, MOST_NAMED).join(', ')}, …`;
