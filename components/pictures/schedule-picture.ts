import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import {
  branchesPicture, pictureText, runPicture, suppliesPicture, type Shape,
} from '../../src/report/pictures/index.ts';
import { tagOf } from '../../src/schedule/index.ts';
import { inFileName, saveFile } from '../load-schedule/files.ts';
import { controls, icon } from '../look/index.ts';
import { buildShape } from './build-shape.ts';
import { styles } from './schedule-picture.styles.ts';
import { ENGLISH, type Words } from '../../src/words/index.ts';

/** Which picture is shown. */
export type PictureKind = 'run' | 'supplies' | 'branches';

/**
 * A picture of a schedule: the voltage along a run, the loading of the supplies, or how full the branches are. It
 * follows the schedule by itself, at most once in a frame, and can be saved as an SVG file.
 */
export class SchedulePicture extends LitElement {
  static override styles = [controls, styles];
  static override properties = {
    schedule: { attribute: false }, kind: { reflect: true }, run: { attribute: false }, words: { attribute: false },
  };

  declare schedule: LoadSchedule | undefined;
  declare kind: PictureKind;
  /** Id of the run, for a picture of one. */
  declare run: number;
  /** The language that the schedule speaks; another one has the picture drawn anew. */
  declare words: Words;
  #unsubscribe: (() => void) | undefined;
  #frame = 0;

  constructor() {
    super();
    this.kind = 'supplies';
    this.run = -1;
    this.words = ENGLISH;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#follow();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#leave();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('schedule')) this.#follow();
  }

  override render(): TemplateResult | typeof nothing {
    const picture = this.#picture();
    if (this.schedule === undefined || picture === undefined) return nothing;
    const { words } = this.schedule;
    return html`<div class="tools"><button type="button" class="save" @click=${() => this.save()}>
        ${icon('save')} ${words.say('Save picture')}</button></div>
      <div class="sheet" tabindex="0" role="group" aria-label=${words.say('Picture')}>${buildShape(picture)}</div>`;
  }

  /** Hands the picture to the person as an SVG file. */
  save(): void {
    const picture = this.#picture();
    if (picture === undefined) return;
    saveFile({ name: this.#fileName(), text: pictureText(picture, { standalone: true }) }, 'image/svg+xml');
  }

  #picture(): Shape | undefined {
    const { schedule, kind, run } = this;
    if (schedule === undefined) return undefined;
    switch (kind) {
      case 'supplies': return suppliesPicture(schedule);
      case 'branches': return branchesPicture(schedule);
      case 'run': return schedule.document.row('runs', run) === undefined ? undefined : runPicture(schedule, run);
    }
  }

  #fileName(): string {
    const row = this.kind === 'run' ? this.schedule?.document.row('runs', this.run) : undefined;
    const tag = row === undefined ? '' : tagOf('runs', row);
    return `${inFileName([this.kind, tag].filter((part) => part !== '').join('-'))}.svg`;
  }

  #follow(): void {
    this.#leave();
    if (!this.isConnected) return;
    this.#unsubscribe = this.schedule?.subscribe(() => {
      this.#frame ||= requestAnimationFrame(() => {
        this.#frame = 0;
        this.requestUpdate();
      });
    });
  }

  #leave(): void {
    this.#unsubscribe?.();
    this.#unsubscribe = undefined;
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
  }
}
