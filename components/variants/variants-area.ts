import { css, html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { throughout, type Join, type JoinChoice } from '../../src/exchange/join/index.ts';
import { joinVariant, keepVariant, variantOf } from '../../src/exchange/variants/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { compareOutcomes, type RowComparison } from '../../src/report/changes/compare-outcomes.ts';
import type { Variant } from '../../src/schedule/index.ts';
import { CommandEvent, TryEvent } from '../events/index.ts';
import { controls, statusMarkStyles } from '../look/index.ts';
import { conflictTable } from '../schedule-join/conflict-table.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import { comparisonTable, shownRows } from './comparison-table.ts';
import { drop, takeOver, Trial } from './trial.ts';
import { VARIANT_CONFLICTS } from './variant-conflicts.ts';

/** Stands for the schedule itself where something is chosen to compare with; no variant has an empty name. */
const SCHEDULE = '';

/** Variants that are kept beside the schedule: begun, compared, taken over or dropped. */
export class Variants extends WorkArea {
  static override styles = [controls, statusMarkStyles, workAreaStyles, css`
    .compared label, .about-it label { display: grid; justify-items: start; gap: 3px; max-inline-size: 100%; }
    .compared, .about-it { align-items: end; }
    .about-it .note { flex: 1 1 16rem; }
    .about-it .note input { inline-size: 100%; }
    select { max-inline-size: min(18rem, 100%); }
    .problem { color: var(--elv-over); }
    .scroll { overflow: auto; scrollbar-width: thin; }
    .comparison { inline-size: auto; min-inline-size: min(60rem, 100%); }
    .comparison tbody th { border-block-end: 1px solid var(--elv-line); color: var(--elv-ink); font-weight: 400; text-align: start; vertical-align: top; overflow-wrap: anywhere; }
    .comparison tbody th b { margin-inline-end: 0.4em; }
    .comparison td:first-child { padding-inline-start: 10px; }
    .moved { display: inline-flex; flex-wrap: wrap; gap: 0 0.4em; }
    .sum { margin-block-start: 14px; }
  `];
  static override properties: PropertyDeclarations = {
    trial: { attribute: false }, readonly: { type: Boolean },
    against: { state: true }, chosen: { state: true }, all: { state: true }, choices: { state: true },
    isTaken: { state: true },
  };

  /** What is tried out just now. */
  declare trial: Trial | undefined;
  declare readonly: boolean;
  /** Names of the variants that are held against each other, or `SCHEDULE`. */
  declare protected chosen: string;
  declare protected against: string;
  /** Whether rows that do not differ are shown too. */
  declare protected all: boolean;
  declare protected choices: Readonly<Record<string, JoinChoice>>;
  /** Whether the name that stands in the field cannot be given. */
  declare protected isTaken: boolean;
  #join: Join | undefined;
  #rows: readonly RowComparison[] = [];

  constructor() {
    super();
    this.readonly = this.all = this.isTaken = false;
    this.against = this.chosen = SCHEDULE;
    this.choices = {};
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    // What was tried out last is what a person wants to see.
    const tried = this.trial ?? changed.get('trial');
    if (tried !== undefined && (changed.has('trial') || changed.has('active'))) this.chosen = tried.name;
    const { document } = this.schedule;
    const isThere = (name: string) => variantOf(document, name) !== undefined;
    if (!isThere(this.chosen)) this.chosen = document.variants.at(-1)?.name ?? SCHEDULE;
    if (!isThere(this.against) || this.against === this.chosen) this.against = SCHEDULE;
    const { chosen: before = this.chosen } = Object.fromEntries(changed) as { readonly chosen?: string };
    if (before !== this.chosen) {
      this.choices = {};
      this.isTaken = false;
    }
    const keys = ['active', 'revision', 'schedule', 'against', 'chosen', 'choices'];
    if (this.active && keys.some((key) => (changed as PropertyValues).has(key))) this.#compare();
  }

  #compare(): void {
    const { schedule } = this;
    const chosen = this.#variant;
    this.#join = chosen && joinVariant(schedule.content(), chosen, this.choices);
    const made: LoadSchedule[] = [];
    const scheduleOf = (name: string): LoadSchedule => {
      const variant = variantOf(schedule.document, name);
      if (variant === undefined) return schedule;
      const { content } = name === this.chosen ? this.#join! : joinVariant(schedule.content(), variant);
      const copy = new LoadSchedule(content, { words: this.words });
      made.push(copy);
      return copy;
    };
    try {
      this.#rows = this.against === this.chosen ? []
        : compareOutcomes(scheduleOf(this.against), scheduleOf(this.chosen));
    } finally {
      for (const each of made) each.dispose();
    }
  }

  /** The variant that is held against the other one, and can be taken over. */
  get #variant(): Variant | undefined {
    return variantOf(this.schedule.document, this.chosen);
  }

  protected get heading(): string {
    return this.words.say('Variants');
  }

  protected get about(): string {
    return this.words.say('Other ways to do it, tried out beside the schedule. Nothing of them counts before you take one over.');
  }

  protected body(): TemplateResult {
    // What is out of sight is not worked out.
    if (!this.active) return html``;
    const { words } = this;
    const { variants } = this.schedule.document;
    const begin = this.readonly || this.trial !== undefined ? nothing
      : html`<div class="options"><button type="button" class="bordered" data-do="begin" @click=${this.#begin}>${words.say('Try something out')}</button>
        <span class="quiet spoken">${words.say('Change factors, ratings, types or rows in the sheets; it is kept as a variant as you go.')}</span></div>`;
    if (variants.length === 0) return html`${begin}<p class="spoken">${words.say('No variant is kept yet.')}</p>`;
    const chosen = this.#variant;
    return html`${begin}${this.#choice()}${chosen === undefined ? nothing : this.#aboutIt(chosen)}
      ${this.#join === undefined || this.#join.conflicts.length === 0 ? nothing : this.#conflicts(this.#join)}${this.#comparison()}`;
  }

  #choice(): TemplateResult {
    const { words } = this;
    const names = [SCHEDULE, ...this.schedule.document.variants.map(({ name }) => name)];
    const select = (part: 'chosen' | 'against', title: string, others: readonly string[]) => html`<label>${title}<select data-part=${part}
      @change=${(event: Event) => { this[part] = (event.currentTarget as HTMLSelectElement).value; }}>${others.map((name) =>
        html`<option value=${name} .selected=${name === this[part]}>${this.#titleOf(name)}</option>`)}</select></label>`;
    return html`<div class="options compared">${select('chosen', words.say('Compare'), names.slice(1))}
      ${select('against', words.say('Compared with'), names.filter((name) => name !== this.chosen))}
      <label class="all"><span><input type="checkbox" .checked=${this.all} @change=${(event: Event) => { this.all = (event.currentTarget as HTMLInputElement).checked; }}>
        ${words.say('Rows that do not differ, too')}</span></label></div>`;
  }

  #titleOf(name: string): string {
    return name === SCHEDULE ? this.words.say('The schedule') : name;
  }

  /** Its name and note, and what can be done with it. */
  #aboutIt(variant: Variant): TemplateResult {
    const { words, readonly, trial } = this;
    const { name, note = '', date = '' } = variant;
    const isTried = trial?.name === name;
    const field = (part: 'name' | 'note', title: string, value: string) => html`<label class=${part}>${title}<input data-part=${part} .value=${value} ?disabled=${readonly}
      aria-invalid=${part === 'name' && this.isTaken} @change=${(event: Event) => { this.#call(variant, part, (event.currentTarget as HTMLInputElement).value); }}></label>`;
    return html`<div class="options about-it">${field('name', words.say('Name'), name)}${field('note', words.say('Note'), note)}
      <button type="button" class="bordered" data-do="goOn" ?disabled=${readonly || (!isTried && this.#isOpen)} @click=${() => { this.#goOn(variant); }}>${words.say('Go on trying out')}</button>
      <button type="button" class="bordered" data-do="drop" ?disabled=${readonly} @click=${() => { this.#drop(name); }}>${words.say('Drop')}</button></div>
      ${this.isTaken ? html`<p class="problem spoken" role="alert">${words.say('Another variant has this name, or there is none: write another one.')}</p>` : nothing}
      <p class="quiet spoken">${[...date === '' ? [] : [words.say('Kept on {date}.', { date: words.date(date) })], ...this.#doing()].join(' ')}</p>`;
  }

  /** What taking it over would do to the rows, in a sentence or two. */
  #doing(): string[] {
    const { words } = this;
    const { added, changed, removed, moved, conflicts } = this.#join!;
    return [
      words.say('Taken over, {added, plural, one {# row} other {# rows}} would come, {changed} change, {removed} go.',
        { added: added.length, changed: changed.length, removed: removed.length }),
      ...moved.length === 0 ? [] : [words.say('Rows stay in the order that they have in the schedule by now.')],
      ...conflicts.length === 0 ? [] : [words.say(
        '{open, plural, =0 {All that both changed is decided.} one {One value has to be decided first: schedule and variant both changed it.} other {# values have to be decided first: schedule and variant both changed them.}}',
        { open: conflicts.filter(({ choice }) => choice === null).length })],
    ];
  }

  #conflicts({ conflicts }: Join): TemplateResult {
    const { words } = this;
    const all = (side: 'mine' | 'theirs', title: string) => html`<button type="button" class="bordered" data-do=${side} @click=${() => {
      const open = conflicts.filter(({ choice }) => choice === null);
      const decided = open.map((each) => [each.name, throughout(each, side)] as const);
      this.choices = { ...this.choices, ...Object.fromEntries(decided) };
    }}>${title}</button>`;
    return html`<div class="options">${all('mine', words.say('The schedule throughout'))}${all('theirs', words.say('The variant throughout'))}</div>
      ${conflictTable(conflicts, words, ({ name }, choice) => { this.choices = { ...this.choices, [name]: choice }; }, VARIANT_CONFLICTS)}`;
  }

  #comparison(): TemplateResult | typeof nothing {
    if (this.against === this.chosen) return nothing;
    const { words } = this;
    const shown = shownRows(this.#rows, this.all, words);
    const unknown = this.#rows.filter(({ before, after, figures }) => before === 'incomplete' || after === 'incomplete'
      || figures.some(({ signs }) => signs.some((sign) => sign !== ''))).length;
    const differ = this.all ? shownRows(this.#rows, false, words).length : shown.length;
    return html`<p class="sum spoken" role="status">${words.say(
      '{differ, plural, =0 {No row differs in status or in the figures that are compared} one {# row differs in status or figures} other {# rows differ in status or figures}} (of {all}).',
      { differ, all: this.#rows.length })}${unknown === 0 ? '' : ` ${words.say(
        '{n, plural, one {Of # row not everything is known: more of it may differ.} other {Of # rows not everything is known: more of them may differ.}}', { n: unknown })}`}
      ${this.#isOpen ? words.say('Where nothing is decided yet, the value of the schedule is in these figures.') : nothing}</p>
      ${shown.length === 0 ? nothing : comparisonTable(shown, [this.#titleOf(this.against), this.#titleOf(this.chosen)], words)}`;
  }

  protected foot(): TemplateResult {
    const { words } = this;
    return html`<span class="quiet spoken">${words.say('Taken over as one action, which can be undone; what was changed in the schedule since stays.')}</span>
      <button type="button" class="primary" data-do="takeOver" ?disabled=${this.readonly || this.#variant === undefined || this.#isOpen}
        @click=${this.#takeOver}>${words.say('Take over')}</button>`;
  }

  /** Whether something has to be decided first. */
  get #isOpen(): boolean {
    return this.#join?.conflicts.some(({ choice }) => choice === null) ?? false;
  }

  readonly #begin = (): void => { this.dispatchEvent(new TryEvent(Trial.begin(this.schedule))); };

  #goOn(variant: Variant): void {
    if (this.trial?.name === variant.name) this.dispatchEvent(new CommandEvent('closeWork'));
    else this.dispatchEvent(new TryEvent(Trial.goOn(this.schedule, variant, this.#join!.content)));
  }

  #drop(name: string): void {
    if (this.trial?.name === name) {
      this.trial.drop();
      this.dispatchEvent(new TryEvent());
    } else drop(this.schedule, name);
  }

  #call(variant: Variant, part: 'name' | 'note', text: string): void {
    const { schedule, trial } = this;
    const { note, ...others } = variant;
    const now = { ...others, ...(note === undefined ? {} : { note }), [part]: text.trim() };
    if (now.note === '') delete (now as { note?: string }).note;
    const { name } = now;
    this.isTaken = name === '' || (name !== variant.name && variantOf(schedule.document, name) !== undefined);
    if (this.isTaken) return;
    this.chosen = name;
    if (trial?.name === variant.name) trial.call(name, now.note ?? '');
    else schedule.act(this.words.say('Variant “{name}” kept', { name }), keepVariant(schedule.document, now, variant.name));
  }

  readonly #takeOver = (): void => {
    const chosen = this.#variant!;
    if (takeOver(this.schedule, chosen, this.#join!)) this.dispatchEvent(new CommandEvent('closeWork'));
  };
}
