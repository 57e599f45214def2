import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { message, type Words } from '../../src/words/index.ts';
import { controls, icon } from '../look/index.ts';
import type { DraftKeeper } from './draft-keeper.ts';
import type { DraftNotice } from './draft-notice.ts';
import type { DraftHead } from './draft-store.ts';
import { styles } from './draft-notices.styles.ts';
import { timeIn } from './time-in.ts';

const TEXTS = {
  restored: message('Draft of {time} restored: {name}.'),
  unchecked: message(
    'Draft of {time} restored: {name}. The file of this page could not be read, so it is not known whether it was changed since.'
  ),
  kept: message('There is another draft, of {time}: {name}.'),
  changed: message(
    'The schedule of this page was changed since the draft of {time} was begun: {name}. What is shown is the schedule of this page; the draft is kept.'
  ),
  other: message(
    'The draft of {time} is of another schedule: {name}. It is not shown here, and kept for the page of that schedule.'
  ),
  discarded: message('Draft of {time} discarded: {name}.'),
  saved: message(
    'Saved as a file at {time}. Whether the file was written is not known here, so the draft is kept until it is ended.'
  ),
  foreign: message(
    'The draft of {time} was written by another version of this software. It is kept as it is: save it as a file, or open this page with that version.'
  ),
  damaged: message(
    'The draft of {time} is damaged and cannot be shown. It is kept as it is: save it as a file, and open that file to restore what can be read of it.'
  ),
  elsewhere: message('The draft is open in another tab. What is entered here is kept as a draft of its own.'),
  taken: message(
    'The draft was changed elsewhere, as in another tab. What is shown here is kept as a draft of its own from now on.'
  ),
  unavailable: message(
    'This browser keeps no drafts here, as in a private window. Save the schedule as a file before leaving the page.'
  ),
  full: message('This browser has no space for the draft. Save the schedule as a file before leaving the page.'),
  failed: message('The draft could not be written. Save the schedule as a file before leaving the page.'),
} as const satisfies Record<DraftNotice['kind'], string>;

const TROUBLE: readonly DraftNotice['kind'][] = ['unavailable', 'full', 'failed'];

/** What a person is told about drafts, each with what can be done about it. */
export class DraftNotices extends LitElement {
  static override styles = [controls, styles];
  static override properties = {
    keeper: { attribute: false }, notices: { attribute: false }, words: { attribute: false }, compared: { state: true },
  };

  declare keeper: DraftKeeper;
  declare notices: readonly DraftNotice[];
  declare words: Words;
  /** The draft that is held against the page's schedule, and what is different. */
  declare protected compared: { readonly id: number; readonly differences: TemplateResult } | undefined;

  override render(): TemplateResult {
    const { compared } = this;
    const isTold = this.notices.some((notice) => notice.kind === 'changed' && notice.head.id === compared?.id);
    return html`<div role="status">${this.notices.length === 0 ? nothing
      : html`<ul>${this.notices.map((notice) => this.#line(notice))}</ul>`}</div>
      ${isTold ? html`<div class="changes">${compared?.differences}</div>` : nothing}`;
  }

  #line(notice: DraftNotice): TemplateResult {
    const { keeper, words } = this;
    const { kind } = notice;
    const away = words.say('Put this notice away');
    const tone = TROUBLE.includes(kind) ? 'trouble' : '';
    return html`<li data-kind=${kind}><span class="text ${tone}">${this.#text(notice)}</span>
      ${'head' in notice ? this.#offers(notice) : kind === 'saved'
        ? this.#button('end', words.say('End draft, keep what is shown'), () => keeper.confirmSaved()) : nothing}
      <button type="button" class="away" data-offer="dismiss" title=${away} aria-label=${away}
        @click=${() => { keeper.dismiss(notice); }}>${icon('close')}</button></li>`;
  }

  #text(notice: DraftNotice): string {
    const { words } = this;
    const message = TEXTS[notice.kind];
    if (!('head' in notice)) {
      return words.say<string>(message, 'at' in notice ? { time: timeIn(words, notice.at) } : {});
    }
    const { at, savedAt } = notice.head;
    const text = words.say<string>(message, { time: timeIn(words, at), name: this.#nameOf(notice.head) });
    if (savedAt === undefined) return text;
    return `${text} ${words.say('It was saved as a file at {time}.', { time: timeIn(words, savedAt) })}`;
  }

  /** Project, panel and file, as far as they are known. */
  #nameOf({ title = '', source = '' }: DraftHead): string {
    const known = [title, fileOf(source)].filter((text) => text !== '');
    return known.length > 0 ? known.join(', ') : this.words.say('a schedule without a name');
  }

  #offers({ kind, head: { id } }: Extract<DraftNotice, { head: DraftHead }>): (TemplateResult | typeof nothing)[] {
    const { keeper, words } = this;
    const isShowable = kind === 'kept' || kind === 'changed';
    const isShown = kind === 'restored' || kind === 'unchecked';
    const discard = isShown ? words.say('Discard draft, show the page’s schedule') : words.say('Discard draft');
    const isClosed = kind === 'foreign' || kind === 'damaged' || kind === 'other';
    return [
      kind === 'changed' ? this.#button('compare', words.say('Show differences'), () => this.#compare(id)) : nothing,
      isShowable ? this.#button('show', words.say('Show draft'), () => keeper.show(id)) : nothing,
      kind === 'discarded' ? this.#button('show', words.say('Restore draft'), () => keeper.show(id)) : nothing,
      isClosed ? this.#button('save', words.say('Save as a file'), () => keeper.saveAsFile(id)) : nothing,
      kind === 'discarded' ? nothing : this.#button('discard', discard, () => keeper.discard(id)),
    ];
  }

  #button(offer: string, title: string, take: () => unknown): TemplateResult {
    return html`<button type="button" class="link" data-offer=${offer} @click=${take}>${title}</button>`;
  }

  async #compare(id: number): Promise<void> {
    const differences = await this.keeper.compare(id);
    if (differences !== undefined) this.compared = { id, differences };
  }
}

/** Name of the file at an address; empty where it has none that a person would know. */
function fileOf(source: string): string {
  const name = /^(?:https?|file):[^?#]*\/([^/?#]*)/.exec(source)?.[1] ?? '';
  try {
    return decodeURIComponent(name);
  } catch {
    // It holds a percent sign of its own.
    return name;
  }
}
