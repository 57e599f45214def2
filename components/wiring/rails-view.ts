import { css, html, nothing, unsafeCSS, type TemplateResult } from 'lit';
import type { PanelChoice } from '../../src/engine/panel-of.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { MOUNTED_SHEETS, placeParts, placingChanges, type Placement } from '../../src/mounting/index.ts';
import { aboutRails, proposalsOf, railsTable, shownRails } from '../../src/report/model/rails-section.ts';
import { panelView } from '../../src/report/panel-view.ts';
import { PICTURE_STYLES, railsPicture } from '../../src/report/pictures/index.ts';
import { partName } from '../../src/report/rails/rail-figures.ts';
import type { Words } from '../../src/words/index.ts';
import { buildShape } from '../pictures/build-shape.ts';
import { reportTables } from './report-tables.ts';

/** What the area gives its view of the mounting rails. */
interface Area {
  readonly schedule: LoadSchedule;
  readonly words: Words;
  readonly readonly: boolean;
  readonly only: PanelChoice;
  requestUpdate(): void;
}

export const railsStyles = css`
  ${unsafeCSS(PICTURE_STYLES)}
  .rails { overflow-x: auto; scrollbar-width: thin; background: var(--elv-surface-raised); }
  .rails .picture { display: block; inline-size: 100%; min-inline-size: 520px; max-inline-size: 1080px; block-size: auto; direction: ltr; }
`;

/** Parts that would be placed, listed before a person asks for all. */
const LISTED = 20;

/** The mounting rails of each enclosure as a picture and a table, and placing parts on them by command. */
export class RailsView {
  readonly #area: Area;
  #anew = false;
  #isWhole = false;
  #done = '';
  /** What placing would come to, as it is shown. */
  #placement: Placement = { placed: [], left: [], parted: [] };

  constructor(area: Area) {
    this.#area = area;
  }

  body(): TemplateResult {
    const { words, schedule: all, only } = this.#area;
    const schedule = panelView(all, only);
    const panels = shownRails(schedule);
    const sentences = proposalsOf(schedule);
    this.#placement = placeParts(all.document, all.figures, { anew: this.#anew });
    const isByHand = MOUNTED_SHEETS
      .some((sheet) => all.rows(sheet).some(({ cells }) => (cells.mountedOn ?? null) !== null));
    return html`
      ${panels.length === 0 ? html`<p class="spoken">${words.say('No enclosure has the number and the length of its mounting rails entered.')}</p>`
        : html`<p class="quiet spoken">${aboutRails(schedule)}</p>`}
      ${sentences.map((text) => html`<p class="spoken" data-proposal>${text}</p>`)}
      ${panels.map((panel) => html`
        <div class="rails" tabindex="0" role="group" aria-label=${words.say('Picture')}>${buildShape(railsPicture(schedule, panel))}</div>
        ${reportTables({ name: 'rails', title: words.say('Mounting rails'), sentences: [], tables: [railsTable(schedule, panel)] })}`)}
      ${panels.length === 0 ? nothing : this.#preview(this.#placement, isByHand)}`;
  }

  foot(): TemplateResult {
    const { words, readonly } = this.#area;
    const { placed, parted } = this.#placement;
    const isNothing = placed.length + (this.#anew ? parted.length : 0) === 0;
    return html`<span class="quiet spoken" role="status">${this.#done === '' || !isNothing ? words.say('One action, which undo takes back. What stands by hand stays, unless all are placed anew.') : this.#done}</span>
      <button type="button" class="primary" data-do="place" ?disabled=${readonly || isNothing} @click=${this.#place}>${words.say('Place parts on rails')}</button>`;
  }

  #preview({ placed, left, parted }: Placement, isByHand: boolean): TemplateResult {
    const { words, schedule } = this.#area;
    const names = (parts: Placement['left']) => parts.map(({ enclosure, part }) => `${enclosure} ${partName(schedule, part)}`).join(', ');
    const shown = this.#isWhole ? placed : placed.slice(0, LISTED);
    return html`<h3>${words.say('What placing comes to')}</h3>
      ${isByHand ? html`<div class="options"><label><input type="checkbox" name="anew" .checked=${this.#anew} @change=${this.#onAnew}> ${words.say('Place all anew')}</label></div>` : nothing}
      <p class="sum spoken">${placed.length === 0 ? words.say('Every part that finds a mounting rail has its number.')
        : words.say('{n, plural, one {# part gets} other {# parts get}} the number of a mounting rail.', { n: placed.length })}</p>
      ${left.length === 0 ? nothing : html`<p class="spoken">${words.say('No mounting rail is found for {parts}.', { parts: names(left) })}</p>`}
      ${parted.length === 0 ? nothing : html`<p class="spoken">${words.say('Units come on several mounting rails, which one cell cannot say, so it stays empty: {parts}.', { parts: names(parted) })}</p>`}
      ${placed.length === 0 ? nothing : html`<div class="scroll"><table data-part="placed"><caption class="unseen">${words.say('What placing comes to')}</caption>
        <thead><tr>${[words.say('Enclosure'), words.say('Part'), words.say('Mounting rail')].map((title) => html`<th scope="col">${title}</th>`)}</tr></thead>
        <tbody>${shown.map(({ enclosure, part, rail }) => html`<tr><td class="nowrap">${enclosure}</td><td>${partName(schedule, part)}</td><td>${rail}</td></tr>`)}</tbody></table></div>`}
      ${shown.length === placed.length ? nothing : html`<button type="button" class="link" @click=${this.#onAll}>${words.say('Show all {all}', { all: placed.length })}</button>`}`;
  }

  readonly #onAnew = ({ currentTarget }: Event): void => {
    this.#anew = (currentTarget as HTMLInputElement).checked;
    this.#area.requestUpdate();
  };

  readonly #onAll = (): void => {
    this.#isWhole = true;
    this.#area.requestUpdate();
  };

  readonly #place = (): void => {
    const { schedule, words } = this.#area;
    const placement = this.#placement;
    this.#done = words.say('{n, plural, one {# part} other {# parts}} placed.', { n: placement.placed.length });
    this.#anew = false;
    schedule.act(words.say('Placing parts on rails'), placingChanges(schedule.document, placement));
    this.#area.requestUpdate();
  };
}
