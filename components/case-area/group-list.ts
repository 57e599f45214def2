import { css, html, LitElement, nothing, type PropertyDeclarations, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, parseCell, setCells, type InputColumn } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import { GoToEvent } from '../events/index.ts';
import { controls, rowName } from '../look/index.ts';
import { workAreaStyles } from '../work-area/index.ts';
import { caseStyles } from './case-area.styles.ts';
import { groupsOf, typesWithoutGroup } from './case-groups.ts';

/** Types listed at first, and with each press for more. */
const LISTED = 30;

/** Types whose devices belong to no group, each with a field for one. */
export class GroupList extends LitElement {
  static override styles = [controls, workAreaStyles, caseStyles, css`
    table { inline-size: auto; }
    .type { max-inline-size: 22em; overflow-wrap: anywhere; }
    input { inline-size: 12em; }
  `];
  static override properties: PropertyDeclarations = {
    schedule: { attribute: false }, revision: { attribute: false }, words: { attribute: false },
    readonly: { type: Boolean }, listed: { state: true },
  };

  declare schedule: LoadSchedule;
  declare revision: number;
  declare words: Words;
  declare readonly: boolean;
  declare protected listed: number;

  constructor() {
    super();
    this.readonly = false;
    this.listed = LISTED;
  }

  override render(): TemplateResult | typeof nothing {
    const { words, schedule, readonly } = this;
    const types = typesWithoutGroup(schedule);
    if (types.length === 0) return nothing;
    return html`<h3>${words.say('Types without a group')}</h3>
      <p class="quiet spoken">${words.say('Their devices count by their own diversity in every case. Give those that come on together one name, such as blinds.')}</p>
      <table><caption class="unseen">${words.say('Types without a group')}</caption><thead><tr><th scope="col">${words.text(columnOf('devices', 'type').title)}</th>
        <th scope="col" class="number">${words.say('Rows')}</th><th scope="col">${words.text(columnOf('types', 'group').title)}</th></tr></thead>
      <tbody>${types.slice(0, this.listed).map(({ id, rows }) => {
        const name = rowName(schedule, { sheet: 'types', id });
        return html`<tr><th scope="row" class="type"><button type="button" class="link" @click=${() => { this.dispatchEvent(new GoToEvent({ sheet: 'types', id, key: 'group' })); }}>${name}</button></th>
          <td class="number">${words.number(rows)}</td>
          <td><input list="groups" autocomplete="off" data-type=${name} aria-label=${words.say('Group of {type}', { type: name })} ?readonly=${readonly} .value=${''}
            @change=${(event: Event) => { this.#take(id, event); }} @keydown=${this.#onKey}></td></tr>`;
      })}</tbody></table>
      <datalist id="groups">${groupsOf(schedule).map((group) => html`<option value=${group.name}></option>`)}</datalist>
      ${types.length <= this.listed ? nothing : html`<button type="button" class="link" @click=${() => { this.listed += LISTED; }}>${words.say('Show {n} more of {all}', {
        n: Math.min(LISTED, types.length - this.listed), all: types.length,
      })}</button>`}`;
  }

  #take(id: number, event: Event): void {
    const { schedule, words } = this;
    const field = event.currentTarget as HTMLInputElement;
    const read = parseCell(columnOf('types', 'group') as InputColumn, field.value.trim(), { words });
    field.setCustomValidity(read.ok ? '' : read.problem);
    if (!read.ok) {
      field.reportValidity();
      return;
    }
    const label = words.say('Group of {type}', { type: rowName(schedule, { sheet: 'types', id }) });
    field.value = '';
    schedule.act(label, setCells(schedule.document, [{ sheet: 'types', id, key: 'group', value: read.value }]));
  }

  /** Enter takes what was typed and goes on: the next type comes to the same place. */
  readonly #onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    const field = event.currentTarget as HTMLInputElement;
    const place = [...this.renderRoot.querySelectorAll('input')].indexOf(field);
    field.blur();
    void this.updateComplete.then(() => {
      const fields = [...this.renderRoot.querySelectorAll('input')];
      (fields[place] ?? fields.at(-1))?.focus();
    });
  };
}
