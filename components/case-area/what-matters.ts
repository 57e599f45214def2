import { css, html, LitElement, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import {
  caseLoadings, contributionsTo, isInSight, LOADED_SHEETS, whatMatters, type CaseLoading, type Contributions,
  type FactorLimit, type GroupMatter, type GroupPart, type PanelChoice, type RowLoading,
} from '../../src/engine/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { SCHEMA, setFactors, type SheetName } from '../../src/schedule/index.ts';
import { amps, fixed, percent, roundedDown, roundedUp, type Words } from '../../src/words/index.ts';
import { GoToEvent } from '../events/index.ts';
import { controls, rowName, statusMark, statusMarkStyles } from '../look/index.ts';
import { workAreaStyles } from '../work-area/index.ts';
import { caseStyles } from './case-area.styles.ts';
import type { CasePlace } from './case-place.ts';
import { caseText, groupText, loadingText, quantityText, rowLoadingText, shareText } from './case-texts.ts';

/** Types and rows listed at first, and with each press for more. */
const LISTED = 10;

/** A type or row of loads with what it contributes [A]. */
interface Contributor {
  readonly sheet: SheetName;
  readonly id: number;
  readonly amps: number;
}

/** What of a supply, way, feed or run in a case comes from where, and which factor puts it right. */
export class WhatMatters extends LitElement {
  static override styles = [controls, workAreaStyles, statusMarkStyles, caseStyles, css`
    .groups .bar { inline-size: 100%; min-inline-size: 9em; }
    .bar { position: relative; display: block; block-size: 14px; forced-color-adjust: none; }
    .bar i { position: absolute; inset-block: 2px; border-radius: 2px; }
    .reach { background: color-mix(in srgb, var(--elv-ink) 12%, transparent); inset-inline-start: 0; }
    .fill { background: color-mix(in srgb, var(--elv-ink) 55%, var(--elv-surface)); inset-inline-start: 0; }
    .bar i.limit, .bar i.target { inset-block: -1px; inline-size: 3px; margin-inline-start: -1px; border-radius: 0; box-shadow: 0 0 0 1px var(--elv-surface-raised); background: var(--elv-over); }
    .bar i.target { inline-size: 0; border-inline-start: 3px dotted var(--elv-near); background: none; box-shadow: none; }
    .legend { display: flex; flex-wrap: wrap; gap: 2px 18px; margin-block: 6px; font-size: var(--elv-size-small); color: var(--elv-ink-default); }
    .legend span { display: inline-flex; align-items: center; gap: 0.5em; }
    .legend .bar { inline-size: 22px; flex: none; }
    .legend .bar i { inset-inline-start: 0; inline-size: 22px; }
    .legend .bar i.limit, .legend .bar i.target { inset-inline-start: 10px; inline-size: 3px; }
    .sentence { font-size: var(--elv-size-large); }
    .least { font-weight: 600; }
    .groups td, .groups tbody th { padding-block: 4px; }
    .groups thead th { white-space: normal; max-inline-size: 9em; }
    .lists { display: flex; flex-wrap: wrap; gap: 0 40px; }
    .lists section { min-inline-size: min(22rem, 100%); }
    .lists td:first-child { overflow-wrap: anywhere; }
    @media (forced-colors: active) {
      .reach { background: none; outline: 1px solid CanvasText; }
      .fill { background: Highlight; }
      .bar i.limit { background: CanvasText; }
      .bar i.target { border-color: CanvasText; }
    }
  `];
  static override properties: PropertyDeclarations = {
    schedule: { attribute: false }, revision: { attribute: false }, words: { attribute: false },
    readonly: { type: Boolean }, only: { attribute: false }, chosen: { attribute: false }, look: { attribute: false },
    matters: { state: true }, isDone: { state: true }, listed: { state: true },
  };

  declare schedule: LoadSchedule;
  declare revision: number;
  declare words: Words;
  declare readonly: boolean;
  declare only: PanelChoice;
  /** What is looked at; the worst of all where nothing was chosen, or it is gone. */
  declare chosen: CasePlace | undefined;
  declare look: (place: CasePlace) => void;
  declare protected matters: readonly GroupMatter[];
  /** All groups were worked out. */
  declare protected isDone: boolean;
  declare protected listed: { readonly types: number; readonly rows: number };
  #rows: readonly RowLoading[] = [];
  #at: CasePlace | undefined;
  #run = 0;

  constructor() {
    super();
    this.readonly = false;
    this.matters = [];
    this.isDone = false;
    this.listed = { types: LISTED, rows: LISTED };
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#run += 1;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!(['schedule', 'revision', 'only', 'chosen', 'words'] as const).some((key) => changed.has(key))) return;
    const { schedule } = this;
    this.#rows = caseLoadings(schedule.document, schedule.figures)
      .filter(({ sheet, id }) => isInSight(schedule, sheet, id, this.only));
    const { chosen } = this;
    const row = this.#rows.find(({ sheet, id }) => sheet === chosen?.sheet && id === chosen.id) ?? this.#rows[0];
    const isChosen = row !== undefined && row.sheet === chosen?.sheet && row.id === chosen.id
      && loadingIn(row, chosen.place) !== undefined;
    this.#at = row && { sheet: row.sheet, id: row.id, place: isChosen ? chosen.place : row.worst.place };
    void this.#work();
  }

  /** Works the groups out one by one, so that the page goes on meanwhile. */
  async #work(): Promise<void> {
    const run = this.#run += 1;
    [this.matters, this.isDone] = [[], false];
    const [at, { schedule }] = [this.#at, this];
    if (at === undefined) return;
    const nextTask = () => new Promise((resolve) => { setTimeout(resolve); });
    await nextTask();
    if (run !== this.#run) return;
    for (const matter of whatMatters(schedule.document, schedule.figures, at.sheet, at.id, at.place)) {
      this.matters = [...this.matters, matter];
      await nextTask();
      if (run !== this.#run) return;
    }
    this.isDone = true;
  }

  override render(): TemplateResult {
    const { words, schedule } = this;
    const at = this.#at;
    const row = this.#rows.find(({ sheet, id }) => sheet === at?.sheet && id === at.id);
    if (at === undefined || row === undefined) {
      return html`<p class="spoken">${words.say('There is nothing to compare yet: no supply, way or feed, and no run that is calculated by its demand.')}</p>`;
    }
    const loading = loadingIn(row, at.place)!;
    const parts = contributionsTo(schedule.document, schedule.figures, at.sheet, at.id, at.place);
    return html`${this.#choices(row, at)}
      <p class="sentence spoken">${this.#sentence(row, loading)} ${statusMark(loading.state, words)}</p>
      <div role="status">${this.#least(row, loading)}</div>
      ${this.#groups(row, loading, parts)}
      <div class="lists">${this.#list('types', words.say('Types by what they contribute'), typesOf(schedule, parts), loading)}
        ${this.#list('rows', words.say('Rows by what they contribute'), rowsOf(parts), loading)}</div>`;
  }

  #choices(row: RowLoading, at: CasePlace): TemplateResult {
    const { words, schedule } = this;
    const onRow = ({ currentTarget }: Event) => {
      const found = this.#rows[Number((currentTarget as HTMLSelectElement).value)]!;
      this.look({ sheet: found.sheet, id: found.id, place: found.worst.place });
    };
    const onCase = ({ currentTarget }: Event) => {
      this.look({ ...at, place: Number((currentTarget as HTMLSelectElement).value) });
    };
    const places = [...row.cases.map(({ place }) => place), ...row.own === undefined ? [] : [-1]];
    return html`<div class="options"><label>${words.say('For')} <select data-option="row" @change=${onRow}>${LOADED_SHEETS.map((sheet) => {
      const of = this.#rows.flatMap((each, index) => each.sheet === sheet ? [{ each, index }] : []);
      return of.length === 0 ? nothing : html`<optgroup label=${words.text(SCHEMA[sheet].title)}>${of.map(({ each, index }) =>
        html`<option value=${index} .selected=${each === row}>${words.say('{tag}: {loading}', { tag: rowName(schedule, each), loading: rowLoadingText(each, each.worst, words) })}</option>`)}</optgroup>`;
    })}</select></label>
      <label>${words.say('In the case')} <select data-option="case" @change=${onCase}>${places.map((place) => html`<option value=${place} .selected=${place === at.place}>${place === row.worst.place
        ? words.say('{case} (worst)', { case: caseText(schedule, place, words) }) : caseText(schedule, place, words)}</option>`)}</select></label>
      <button type="button" class="link" data-do="row" @click=${() => { this.dispatchEvent(new GoToEvent({ sheet: row.sheet, id: row.id, key: SCHEMA[row.sheet].tag })); }}>${words.say('Go to the row')}</button></div>`;
  }

  #sentence(row: RowLoading, { demand, loading, place }: CaseLoading): string {
    const { words, schedule } = this;
    const tag = rowName(schedule, row);
    const values = { tag, case: caseText(schedule, place, words) };
    const more = row.isPartial ? ` ${words.say('Some of it is not known, so that it may be more.')}` : '';
    if (demand === null) return words.say('{tag}: in “{case}” it is not known what is asked of it.', values);
    if (row.limit === null) return words.say('{tag}: in “{case}” its demand is {demand}; the usable current is not known.', { ...values, demand: amps(demand) }) + more;
    return words.say('{tag}: in “{case}” its demand is {demand} of {limit}, {loading}.', {
      ...values, demand: amps(demand, row.limit), limit: roundedDown(amps(row.limit, demand)),
      loading: rowLoadingText(row, { loading }, words),
    }) + more;
  }

  /** The least change of one factor that puts it right. */
  #least(row: RowLoading, { state, demand, place }: CaseLoading): TemplateResult | typeof nothing {
    const { words } = this;
    if (!this.isDone) return html`<p class="quiet">${words.say('Calculating …')}</p>`;
    if ((state !== 'over' && state !== 'near') || demand === null) return nothing;
    const goals = [...state === 'over' ? ['limit' as const] : [], ...row.target === null ? [] : ['target' as const]];
    return html`${goals.map((goal) => {
      const least = this.matters.flatMap((matter) => {
        const found = matter[goal];
        return found?.kind === 'factor' && matter.now !== null && found.factor < matter.now
          ? [{ matter, factor: found.factor }] : [];
      }).sort((one, other) => (one.matter.now! - one.factor) - (other.matter.now! - other.factor))[0];
      const needed = goal === 'limit' ? demand : demand / row.target!;
      if (least === undefined) {
        const values = { needed: roundedUp(amps(needed)) };
        return html`<p class="spoken">${goal === 'limit' ? words.say('No factor of one group alone brings it within its limit. It would need at least {needed}.', values)
          : words.say('No factor of one group alone brings it to its target. It would need at least {needed}.', values)}</p>`;
      }
      const values = {
        group: least.matter.group, now: percent(least.matter.now!, least.factor),
        factor: shareText(least.factor, words, 'down'), needed: roundedUp(amps(needed)),
      };
      return html`<p class="spoken least" data-goal=${goal}>${goal === 'limit'
        ? words.say('The least change within its limit: {group} from {now} to at most {factor}. Or it would need at least {needed}.', values)
        : words.say('The least change that meets its target: {group} from {now} to at most {factor}. Or it would need at least {needed}.', values)}
        ${place < 0 || this.readonly ? nothing : this.#setter(least.matter.group, least.factor, place)}</p>`;
    })}`;
  }

  /** Gives the group the factor, rounded to the safe side, as one action. */
  #setter(group: string, factor: number, place: number): TemplateResult {
    const { words, schedule } = this;
    const value = Number(fixed(factor, 3, 'down'));
    const name = schedule.cases.cases[place]!.name;
    const take = () => {
      schedule.act(words.say('Factor of {group} in “{case}”', { group, case: name }), setFactors(schedule.document, [{ case: name, group, value }]));
      // The button goes with what it put right.
      this.renderRoot.querySelector<HTMLElement>('[data-option=row]')!.focus();
    };
    return html`<button type="button" class="link" data-set=${group} ?disabled=${name === ''} @click=${take}>${words.say('Set {group} to {factor}', { group, factor: shareText(value, words) })}</button>`;
  }

  #groups(row: RowLoading, loading: CaseLoading, { groups, extra }: Contributions): TemplateResult {
    const { words } = this;
    const reach = Math.max(...groups.map(reachOf), 0);
    const matterOf = new Map(this.matters.map((matter) => [matter.group, matter]));
    const hasTarget = row.target !== null;
    return html`<h3>${words.say('Groups by what they contribute')}</h3>
      <div class="legend" aria-hidden="true"><span><i class="bar"><i class="fill"></i></i>${words.say('what it contributes')}</span><span><i class="bar"><i class="reach"></i></i>${words.say('all of it')}</span>
        <span><i class="bar"><i class="limit"></i></i>${words.say('up to the limit')}</span>${hasTarget ? html`<span><i class="bar"><i class="target"></i></i>${words.say('up to the target')}</span>` : nothing}</div>
      <div class="scroll"><table class="groups"><caption class="unseen">${words.say('Groups by what they contribute')}</caption><thead><tr><th scope="col" class="first">${words.say('Load group')}</th>
        <th scope="col" class="number">${words.say('Contributes')}</th><th scope="col" class="number">${words.say('Of the demand')}</th><td></td><th scope="col" class="number">${words.say('Factor')}</th>
        <th scope="col" class="number" title=${words.say('By how much the loading moves when the factor moves by 0.1')}>${words.say('Loading for 0.1')}</th>
        <th scope="col" class="number">${words.say('With all of it')}</th><th scope="col">${words.say('Limit met up to')}</th>${hasTarget ? html`<th scope="col">${words.say('Target met up to')}</th>` : nothing}</tr></thead>
      <tbody>${groups.map((part) => {
        const matter = matterOf.get(part.group);
        return html`<tr data-group=${part.group}><th scope="row" class="first"><span class="name">${groupText(part.group, words)}</span></th><td class="number">${quantityText(amps(part.amps), words)}</td>
          <td class="number">${ofDemand(part.amps, loading, words)}</td><td>${barOf(part, matter, reach)}</td>
          <td class="number">${factorText(part, matter, words)}</td><td class="number">${stepText(matter?.step ?? null, words)}</td>
          <td class="number">${matter === undefined || part.group === '' ? '–' : loadingText(matter.all, words)}</td><td>${limitText(part, matter?.limit, words)}</td>
          ${hasTarget ? html`<td>${limitText(part, matter?.target, words)}</td>` : nothing}</tr>`;
      })}${extra > 1e-9 ? html`<tr><th scope="row" class="first">${words.say('Extra of runs')}</th><td class="number">${quantityText(amps(extra), words)}</td><td class="number">${ofDemand(extra, loading, words)}</td><td colspan=${hasTarget ? 6 : 5}></td></tr>` : nothing}</tbody></table></div>`;
  }

  #list(name: 'types' | 'rows', title: string, all: readonly Contributor[], loading: CaseLoading): TemplateResult | typeof nothing {
    const { words, schedule } = this;
    if (all.length === 0) return nothing;
    const shown = this.listed[name];
    return html`<section><h3>${title}</h3><table data-list=${name}><caption class="unseen">${title}</caption><thead><tr><th scope="col">${name === 'types' ? words.text(SCHEMA.types.title) : words.say('Row')}</th>
      <th scope="col" class="number">${words.say('Contributes')}</th><th scope="col" class="number">${words.say('Of the demand')}</th></tr></thead>
      <tbody>${all.slice(0, shown).map((each) => html`<tr><td>${each.id < 0 ? words.say('no type') : html`<button type="button" class="link"
        @click=${() => { this.dispatchEvent(new GoToEvent({ sheet: each.sheet, id: each.id, key: SCHEMA[each.sheet].tag })); }}>${rowName(schedule, each)}</button>`}</td>
        <td class="number">${quantityText(amps(each.amps), words)}</td><td class="number">${ofDemand(each.amps, loading, words)}</td></tr>`)}</tbody></table>
      ${all.length <= shown ? nothing : html`<button type="button" class="link" @click=${() => { this.listed = { ...this.listed, [name]: shown + LISTED }; }}>${words.say('Show {n} more of {all}', {
        n: Math.min(LISTED, all.length - shown), all: all.length,
      })}</button>`}</section>`;
  }
}

const loadingIn = (row: RowLoading, place: number): CaseLoading | undefined => place < 0 ? row.own : row.cases[place];

/** What a group asks for with a factor of 1 [A]. */
const reachOf = ({ factor, own, connected }: GroupPart): number => factor?.ofDemand === true ? own : connected;

const known = (value: number) => Number.isFinite(value) ? value : 0;

function rowsOf({ groups }: Contributions): Contributor[] {
  const rows = new Map<string, Contributor>();
  for (const { sheet, id, amps: each } of groups.flatMap(({ loads }) => loads)) {
    // Behind a feed a row may count by two ways.
    const key = `${sheet} ${id}`;
    rows.set(key, { sheet, id, amps: (rows.get(key)?.amps ?? 0) + known(each) });
  }
  return ranked(rows.values());
}

function typesOf(schedule: LoadSchedule, { groups }: Contributions): Contributor[] {
  const types = new Map<number, Contributor>();
  for (const { sheet, id, amps: each } of groups.flatMap(({ loads }) => loads)) {
    if (sheet !== 'devices') continue;
    const type = schedule.target('devices', id, 'type');
    types.set(type, { sheet: 'types', id: type, amps: (types.get(type)?.amps ?? 0) + known(each) });
  }
  return ranked(types.values());
}

const ranked = (all: Iterable<Contributor>): Contributor[] =>
  [...all].filter((each) => each.amps > 0).sort((one, other) => other.amps - one.amps);

function ofDemand(part: number, { demand }: CaseLoading, words: Words): string {
  return demand === null || demand <= 0 ? '–' : quantityText(percent(part / demand), words);
}

/** What a group contributes, all of it, and how much of it limit and target leave, to one scale. */
function barOf(part: GroupPart, matter: GroupMatter | undefined, reach: number): TemplateResult {
  const all = reachOf(part);
  const share = (value: number) => `${reach <= 0 ? 0 : value / reach * 100}%`;
  const tick = (name: 'limit' | 'target') => {
    const found = matter?.[name];
    return found?.kind !== 'factor' ? nothing : html`<i class=${name} .style=${`inset-inline-start: ${share(found.factor * all)}`}></i>`;
  };
  // Through the property, as a strict security policy refuses the attribute.
  return html`<span class="bar" aria-hidden="true"><i class="reach" .style=${`inline-size: ${share(all)}`}></i><i class="fill" .style=${`inline-size: ${share(part.amps)}`}></i>${tick('limit')}${tick('target')}</span>`;
}

function factorText({ group, factor }: GroupPart, matter: GroupMatter | undefined, words: Words): string {
  if (group === '' || (factor === undefined && matter === undefined)) return words.say('own');
  if (factor === undefined) return matter!.now === null ? words.say('own') : words.say('own, {share}', { share: shareText(matter!.now, words) });
  return Number.isNaN(factor.share) ? words.say('unknown') : shareText(factor.share, words);
}

function stepText(step: number | null, words: Words): string {
  return step === null ? '–'
    : `${step > 0 ? '+' : ''}${quantityText({ value: step * 100, decimals: 1, unit: '%' }, words)}`;
}

function limitText({ group }: GroupPart, limit: FactorLimit | undefined, words: Words): string {
  if (group === '' || limit === undefined) return '–';
  switch (limit.kind) {
    case 'factor': return shareText(limit.factor, words, 'down');
    case 'always': return words.say('all of it');
    case 'never': return words.say('not by it alone');
    case 'unknown': return words.say('unknown');
  }
}
