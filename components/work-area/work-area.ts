import { html, LitElement, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { CommandEvent } from '../events/index.ts';
import { icon } from '../look/index.ts';
import type { Words } from '../../src/words/index.ts';

/**
 * A job on the whole schedule that takes the place of the sheets while it is done: heading, body, foot with what it
 * offers.
 */
export abstract class WorkArea extends LitElement {
  static override properties: PropertyDeclarations = {
    schedule: { attribute: false }, revision: { attribute: false }, words: { attribute: false },
    active: { attribute: false },
  };

  declare schedule: LoadSchedule;
  /** Changes whenever the schedule did. */
  declare revision: number;
  declare words: Words;
  /** Whether it is the one that is shown; otherwise it only keeps where it was. */
  declare active: boolean;

  /** What is done here, in two or three words of the language of the page. */
  protected abstract get heading(): string;
  /** One sentence about it. */
  protected abstract get about(): string;
  protected abstract body(): TemplateResult;
  protected abstract foot(): TemplateResult;

  override render(): TemplateResult {
    return html`<section class="area" aria-labelledby="heading" @keydown=${this.#onKeydown}>
      <header><h2 id="heading" tabindex="-1">${this.heading}</h2><p class="about quiet spoken" title=${this.about}>${this.about}</p>
        <button type="button" class="back" title=${this.words.say('Back to the sheets (Esc)')} @click=${this.#back}>${icon('close')}${this.words.say('Close')}</button></header>
      <div class="body">${this.body()}</div>
      <footer>${this.foot()}</footer>
    </section>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    // Where the work begins, also for a screen reader.
    if (changed.has('active') && this.active) this.renderRoot.querySelector<HTMLElement>('h2')!.focus();
  }

  readonly #back = (): void => {
    this.dispatchEvent(new CommandEvent('closeWork'));
  };

  /** Presses what carries the job out; what is being typed counts first, as when a person leaves the field. */
  async #carryOut(): Promise<void> {
    const { activeElement: field } = this.renderRoot as ShadowRoot;
    if (field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement) {
      field.blur();
      await this.updateComplete;
      field.focus();
    }
    this.renderRoot.querySelector<HTMLElement>('footer .primary')?.click();
  }

  readonly #onKeydown = (event: KeyboardEvent): void => {
    // Decisions move the focus on: a key that is held down must not go through all of them.
    if (event.key === 'Enter' && event.repeat) event.preventDefault();
    else if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      void this.#carryOut();
    }
    if (event.key !== 'Escape') return;
    event.preventDefault();
    this.#back();
  };
}
