import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { message, type Words } from '../../src/words/index.ts';
import { controls, icon } from '../look/index.ts';
import type { DraftKeeper } from './draft-keeper.ts';
import type { DraftNotice } from './draft-notice.ts';
import { styles } from './draft-notices.styles.ts';
import { timeIn } from './time-in.ts';

const TEXTS = {
  restored: message('Draft of {time} restored.'),
  kept: message('There is another draft, of {time}.'),
  discarded: message('Draft of {time} discarded.'),
  foreign: message('The draft of {time} was written by another version of this software. It is kept as it is: save it as a file, or open this page with that version.'),
  damaged: message('The draft of {time} is damaged and cannot be shown. It is kept as it is: save it as a file, and open that file to restore what can be read of it.'),
  elsewhere: message('The draft is open in another tab. What is entered here is kept as a draft of its own.'),
  taken: message('The draft was changed elsewhere, as in another tab. What is shown here is kept as a draft of its own from now on.'),
  unavailable: message('This browser keeps no drafts here, as in a private window. Save the schedule as a file before leaving the page.'),
  full: message('This browser has no room for the draft. Save the schedule as a file before leaving the page.'),
  failed: message('The draft could not be written. Save the schedule as a file before leaving the page.'),
} as const satisfies Record<DraftNotice['kind'], string>;

const TROUBLE: readonly DraftNotice['kind'][] = ['unavailable', 'full', 'failed'];

/** What a person is told about drafts, each with what can be done about it. */
export class DraftNotices extends LitElement {
  static override styles = [controls, styles];
  static override properties = { keeper: { attribute: false }, notices: { attribute: false }, words: { attribute: false } };

  declare keeper: DraftKeeper;
  declare notices: readonly DraftNotice[];
  declare words: Words;

  override render(): TemplateResult {
    return html`<div role="status">${this.notices.length === 0 ? nothing
      : html`<ul>${this.notices.map((notice) => this.#line(notice))}</ul>`}</div>`;
  }

  #line(notice: DraftNotice): TemplateResult {
    const { keeper, words } = this;
    const { kind } = notice;
    const text = words.say<string>(TEXTS[kind], 'at' in notice ? { time: timeIn(words, notice.at) } : {});
    const away = words.say('Put this notice away');
    return html`<li data-kind=${kind}><span class="text ${TROUBLE.includes(kind) ? 'trouble' : ''}">${text}</span>
      ${'id' in notice ? this.#offers(notice) : nothing}
      <button type="button" class="away" data-offer="dismiss" title=${away} aria-label=${away}
        @click=${() => { keeper.dismiss(notice); }}>${icon('close')}</button></li>`;
  }

  #offers({ kind, id }: DraftNotice & { readonly id: number }): (TemplateResult | typeof nothing)[] {
    const { keeper, words } = this;
    const button = (offer: string, title: string, take: () => unknown) => html`<button type="button" class="link" data-offer=${offer}
      @click=${take}>${title}</button>`;
    return [
      kind === 'kept' ? button('show', words.say('Show draft'), () => keeper.show(id)) : nothing,
      kind === 'discarded' ? button('show', words.say('Restore draft'), () => keeper.show(id)) : nothing,
      kind === 'foreign' || kind === 'damaged' ? button('save', words.say('Save as a file'), () => keeper.saveAsFile(id)) : nothing,
      kind === 'discarded' ? nothing : button('discard', words.say('Discard draft'), () => keeper.discard(id)),
    ];
  }
}
