import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { columnHelp, type ColumnHelp } from '../../src/report/column-help.ts';
import { findColumn, SCHEMA, SHEET_NAMES, type SheetName } from '../../src/schedule/index.ts';
import { controls, searchField, type Place } from '../look/index.ts';
import type { Words } from '../../src/words/index.ts';
import { commandButton } from '../schedule-toolbar/command-button.ts';
import { GLOSSARY } from './glossary.ts';

/** What each column means, and the words of the trade; a field finds both. */
export class HelpPane extends LitElement {
  static override styles = [controls, searchField, css`
    :host { display: grid; gap: 10px; }
    .first button { margin-inline-start: -0.6em; }
    .first { display: flex; flex-wrap: wrap; gap: 4px; }
    h3 { margin: 14px 0 6px; font-size: var(--elv-size-small); font-weight: 600; color: var(--elv-ink-default); }
    summary { min-block-size: 28px; line-height: 28px; font-weight: 600; cursor: pointer; }
    dl { display: grid; gap: 2px; margin: 0; }
    dt { font-weight: 600; }
    dt .quiet { font-weight: 400; }
    dd { margin: 0 0 7px; overflow-wrap: anywhere; }
    .facts { grid-template-columns: fit-content(11em) minmax(0, 1fr); gap: 2px 10px; margin-block-start: 3px; font-size: var(--elv-size-small); }
    .facts > * { margin: 0; font-weight: 400; color: var(--elv-ink-default); overflow-wrap: anywhere; }
    .here { padding: 8px 12px 4px; border-radius: var(--elv-radius); background: var(--elv-surface); }
  `];

  static override properties = {
    place: { attribute: false }, words: { attribute: false }, sought: { state: true }, open: { state: true },
  };

  /** The selected cell, whose column comes first. */
  declare place: Place;
  declare words: Words;
  /** What a person looks for. */
  declare protected sought: string;
  /** Sheets whose columns are listed. */
  declare protected open: ReadonlySet<SheetName>;

  constructor() {
    super();
    this.sought = '';
    this.open = new Set();
  }

  /** Begins anew, at the field that finds. */
  async begin(): Promise<void> {
    this.sought = '';
    await this.updateComplete;
    this.renderRoot.querySelector('input')!.focus();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('place')) this.open = new Set();
  }

  override render(): TemplateResult {
    const { words } = this;
    const find = words.say('Find a word or a column');
    return html`<div class="first">${commandButton('firstSteps', words)}</div>
      <input type="search" aria-label=${find} placeholder=${find} .value=${this.sought}
        @input=${({ currentTarget }: Event) => { this.sought = (currentTarget as HTMLInputElement).value; }}>
      <div class="found" aria-live="polite">${this.sought.trim() === '' ? this.#all() : this.#found()}</div>`;
  }

  #all(): TemplateResult {
    const { words, place: { sheet, key } } = this;
    const column = findColumn(sheet, key);
    return html`${column === undefined ? nothing : html`<dl class="here">${entry(columnHelp(sheet, column, words))}</dl>`}
      <h3>${words.say('Words')}</h3>
      <dl>${GLOSSARY.map((each) => this.#word(each))}</dl>
      <h3>${words.say('Columns')}</h3>
      ${SHEET_NAMES.map((name) => html`<details .open=${this.open.has(name)} @toggle=${(event: Event) => { this.#onToggle(name, event); }}>
        <summary>${words.text(SCHEMA[name].title)}</summary>
        ${this.open.has(name) ? html`<p class="quiet">${words.text(SCHEMA[name].help)}</p>
          <dl>${SCHEMA[name].columns.map((each) => entry(columnHelp(name, each, words)))}</dl>` : nothing}</details>`)}`;
  }

  #found(): TemplateResult {
    const { words } = this;
    const sought = this.sought.trim().toLowerCase();
    const holds = (...texts: readonly string[]) => texts.some((text) => text.toLowerCase().includes(sought));
    const said = GLOSSARY.filter(({ word, meaning }) => holds(words.say(word), words.say(meaning)));
    const columns = SHEET_NAMES.flatMap((name) => SCHEMA[name].columns
      .map((column) => ({ name, key: column.key, help: columnHelp(name, column, words) }))
      .filter(({ key, help: { title, help } }) => holds(key, title, help)));
    // What is called so comes before what only speaks of it.
    columns.sort((one, other) => Number(!holdsTitle(one.help, sought)) - Number(!holdsTitle(other.help, sought)));
    return said.length + columns.length === 0
      ? html`<p>${words.say('No word and no column holds “{text}”.', { text: this.sought.trim() })}</p>`
      : html`<dl>${said.map((each) => this.#word(each))}
        ${columns.map(({ name, help }) => entry(help, words.text(SCHEMA[name].title)))}</dl>`;
  }

  #word({ word, meaning }: (typeof GLOSSARY)[number]): TemplateResult {
    return html`<dt>${this.words.say(word)}</dt><dd>${this.words.say(meaning)}</dd>`;
  }

  #onToggle(name: SheetName, event: Event): void {
    const open = new Set(this.open);
    if ((event.currentTarget as HTMLDetailsElement).open) open.add(name);
    else open.delete(name);
    this.open = open;
  }
}

const holdsTitle = ({ title }: ColumnHelp, sought: string): boolean => title.toLowerCase().includes(sought);

/** A column with all that is known of it. */
function entry({ title, help, facts }: ColumnHelp, sheet = ''): TemplateResult {
  return html`<dt>${title}${sheet === '' ? nothing : html` <span class="quiet">${sheet}</span>`}</dt>
    <dd>${help}<dl class="facts">${facts.map(({ name, text }) => html`<dt>${name}</dt><dd>${text}</dd>`)}</dl></dd>`;
}
