import { css, html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { joinSchedules, joinSentences, throughout, type Join, type JoinChoice, type JoinConflict } from '../../src/exchange/join/index.ts';
import type { Content } from '../../src/schedule/index.ts';
import { CommandEvent } from '../events/index.ts';
import { readOlder } from '../load-table/older-schedule.ts';
import { controls } from '../look/index.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import { conflictTable } from './conflict-table.ts';

/** A schedule that was read from a file. */
interface ReadFile {
  readonly name: string;
  readonly content: Content;
}

type Part = 'theirs' | 'base';

/** Joins another schedule to the one that is shown: what came, and what both changed, before anything is done. */
export class ScheduleJoin extends WorkArea {
  static override styles = [controls, workAreaStyles, css`
    .files { display: flex; flex-wrap: wrap; align-items: center; gap: 6px 12px; margin-block: 12px 8px; }
    .problems { color: var(--elv-over); }
    td:not(:first-child) { max-inline-size: 18rem; }
  `];
  static override properties: PropertyDeclarations = {
    theirs: { state: true }, base: { state: true }, choices: { state: true }, problems: { state: true },
  };

  declare protected theirs: ReadFile | undefined;
  /** What both began with. */
  declare protected base: ReadFile | undefined;
  declare protected choices: Readonly<Record<string, JoinChoice>>;
  /** Why a file could not be read. */
  declare protected problems: readonly string[];
  #join: Join | undefined;
  /** What the file being chosen is. */
  #choosing: Part = 'theirs';

  constructor() {
    super();
    this.choices = {};
    this.problems = [];
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (['theirs', 'base'].some((key) => changed.has(key))) this.choices = {};
    if (['active', 'revision', 'schedule', 'theirs', 'base', 'choices'].some((key) => changed.has(key))) {
      this.#join = this.theirs === undefined || !this.active ? undefined
        : joinSchedules(this.schedule.content(), this.theirs.content, this.base?.content, this.choices);
    }
  }

  protected get heading(): string {
    return this.words.say('Join');
  }

  protected get about(): string {
    return this.words.say('Another schedule joined to this one: two people, two floors. Nothing of either is lost.');
  }

  protected body(): TemplateResult {
    const { words } = this;
    const join = this.#join;
    return html`${this.#file('theirs', this.theirs, words.say('Choose the other schedule'), words.say('or drop it here: a schedule (.json), or a load table saved as .html or .xlsx.'))}
      ${this.#file('base', this.base, words.say('Choose what both began with'), words.say('Where there is one, such as the load table of the last issue: then what either changed since, or removed, counts.'))}
      <input type="file" hidden aria-label=${words.say('File to open')} accept=".json,.html,.htm,.xlsx" @change=${this.#onFile}>
      ${this.problems.length === 0 ? nothing : html`<div class="problems" role="alert">${this.problems.map((text) => html`<p class="spoken">${text}</p>`)}</div>`}
      ${join === undefined ? nothing : html`<div role="status">${joinSentences(join, words).map((sentence) => html`<p class="spoken">${sentence}</p>`)}</div>
        ${join.conflicts.length === 0 ? nothing : html`<div class="options"><button type="button" class="bordered" data-do="allMine" @click=${() => { this.#all('mine'); }}>${words.say('Yours throughout')}</button>
          <button type="button" class="bordered" data-do="allTheirs" @click=${() => { this.#all('theirs'); }}>${words.say('Theirs throughout')}</button></div>
          ${conflictTable(join.conflicts, words, ({ name }, choice) => { this.choices = { ...this.choices, [name]: choice }; })}`}`}`;
  }

  protected foot(): TemplateResult {
    const { words } = this;
    return html`<span class="quiet spoken">${words.say('One action, which can be undone.')}</span>
      <button type="button" class="primary" data-do="join" ?disabled=${this.#join === undefined} @click=${this.#take}>${words.say('Join')}</button>`;
  }

  /** Reads the other schedule, or what both began with. */
  async open(file: File, part: Part = 'theirs'): Promise<void> {
    const read = await readOlder(file, this.words);
    if (!('schedule' in read)) {
      this.problems = [this.words.say('{name} cannot be joined.', { name: file.name }), ...read];
      return;
    }
    this.problems = read.edits;
    this[part] = { name: read.name, content: read.schedule.content() };
    read.schedule.dispose();
  }

  #file(part: Part, file: ReadFile | undefined, title: string, hint: string): TemplateResult {
    const choose = () => {
      this.#choosing = part;
      const field = this.renderRoot.querySelector<HTMLInputElement>('input[type=file]')!;
      field.value = '';
      field.click();
    };
    return html`<div class="files"><button type="button" class="bordered" data-do=${part} @click=${choose}>${title}</button>
      ${file === undefined ? html`<span class="quiet spoken">${hint}</span>` : html`<strong>${file.name}</strong>
        <button type="button" class="link" data-do="no-${part}" @click=${() => { this[part] = undefined; }}>${this.words.say('Without it')}</button>`}</div>`;
  }

  /** Decides all that is open yet, where it can be decided so. */
  #all(choice: 'mine' | 'theirs'): void {
    const open = this.#join!.conflicts.filter((each: JoinConflict) => each.choice === null);
    const decided = open.map((each) => [each.name, throughout(each, choice)] as const);
    this.choices = { ...this.choices, ...Object.fromEntries(decided) };
  }

  readonly #onFile = (event: Event): void => {
    const file = (event.currentTarget as HTMLInputElement).files?.[0];
    if (file !== undefined) void this.open(file, this.#choosing);
  };

  readonly #take = (): void => {
    const { words } = this;
    const join = this.#join!;
    const [theirs] = joinSentences(join, words);
    // Both were read, so that no formula of theirs or of these rows is one that cannot be.
    this.schedule.load(join.content, words.say('{file} joined. {what}', { file: this.theirs!.name, what: theirs! }));
    this.theirs = this.base = undefined;
    this.dispatchEvent(new CommandEvent('closeWork'));
  };
}
