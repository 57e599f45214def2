import { html, nothing, type TemplateResult } from 'lit';
import { askedRows, countOutcomes, type ListRevision, type RevisionOptions } from '../../src/exchange/revision/index.ts';
import { rowCount } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';

/** What a person chose; whatever is not chosen follows from list and schedule. */
export interface RevisedChoices extends Pick<RevisionOptions, 'lists' | 'by' | 'gone'> {
  /** The list takes the place of an earlier one, or its rows come behind those that are there. */
  readonly mode?: 'onto' | 'behind';
  /** What rows of the list are: ids of device rows by a key of the row, `null` for new ones. */
  readonly same: ReadonlyMap<string, number | null>;
}

export interface RevisionChoicesOptions {
  readonly revision: ListRevision;
  readonly chosen: RevisedChoices;
  readonly isOnto: boolean;
  readonly choose: (chosen: Partial<RevisedChoices>) => void;
  /** All rows that are asked about are new ones. */
  readonly allNew: () => void;
  readonly words: Words;
}

/** How a list is taken onto a schedule that was counted in an earlier one. */
export function revisionChoices(options: RevisionChoicesOptions): TemplateResult {
  const { revision, isOnto, choose, words } = options;
  return html`<section class="revision" aria-labelledby="revision-heading">
    <h3 id="revision-heading">${words.say('The schedule was counted in a list before')}</h3>
    ${pressed(words.say('How the list is taken'), isOnto ? 'onto' : 'behind', {
      onto: words.say('revise it'), behind: words.say('add behind it'),
    }, (mode) => { choose({ mode }); })}
    ${isOnto ? html`${listChoice(options)}${matchChoice(options)}${askedChoice(options)}${goneChoice(options)}
      <p class="quiet spoken">${summary(revision, words)}</p>`
      : html`<p class="quiet spoken">${words.say('All of the list comes behind the rows that are there, which stay as they are.')}</p>`}
  </section>`;
}

function summary(revision: ListRevision, words: Words): string {
  return words.say('{came} came, {changed} changed, {went} went, {kept} kept. What stays keeps its rail, branch, run and all that was entered.', countOutcomes(revision));
}

/** Of which lists it is a revision, where the schedule was counted in several or that is in doubt. */
function listChoice(
  { revision: { lists, isAsked, fresh }, choose, words }: RevisionChoicesOptions,
): TemplateResult | typeof nothing {
  if (lists.length < 2 && !isAsked) return nothing;
  const onChange = (event: Event) => {
    const boxes = (event.currentTarget as Element).querySelectorAll<HTMLInputElement>('input:checked');
    choose({ lists: [...boxes].map(({ value }) => value) });
  };
  const figures = ({ rows, matched }: (typeof lists)[number]) => isAsked
    ? words.say('{matched} of {rows, plural, one {# row} other {# rows}} in this list', { matched, rows }) : rowCount('devices', rows, words);
  return html`<fieldset class="lists" @change=${onChange}><legend>${isAsked ? html`<b>${words.say('It is in doubt which of these it revises. Choose, or add it behind')}</b>`
    : words.say('It revises')}</legend>
    ${lists.map((list) => html`<label><input type="checkbox" .value=${list.name} .checked=${list.isRevised && !(isAsked && lists.length === 1)}>
      ${list.name === '' ? words.say('rows that name no list') : list.name} <span class="quiet">${figures(list)}</span></label>`)}
    ${isAsked ? html`<p class="quiet">${words.say('{fresh, plural, one {# row} other {# rows}} of this list in none of them', { fresh })}</p>` : nothing}</fieldset>`;
}

/** What tells rows apart, asked only where ref and place disagree. */
function matchChoice({ revision: { by }, choose, words }: RevisionChoicesOptions): TemplateResult | typeof nothing {
  if (by === undefined) return nothing;
  return html`<p class="spoken">${words.say('Refs and places of the list name different rows, as when it was numbered anew.')}</p>
    ${pressed(words.say('What tells rows apart'), by, { ref: words.say('follow refs'), place: words.say('follow places') },
      (chosen) => { choose({ by: chosen }); })}`;
}

/** Rows that may be there already: each is decided on beside it, or all are new. */
function askedChoice({ revision, allNew, words }: RevisionChoicesOptions): TemplateResult | typeof nothing {
  const count = askedRows(revision).length;
  if (count === 0) return nothing;
  return html`<p class="spoken"><b>${words.say('{count, plural, one {# row of the list may be one that is there. Say beside it which it is.} other {# rows of the list may be some that are there. Say beside each which it is.}}', { count })}</b>
    <button type="button" class="bordered" data-do="all-new" @click=${allNew}>${words.say('{count, plural, one {It is new} other {All # are new}}', { count })}</button></p>`;
}

function goneChoice({ revision, chosen: { gone = 'mark' }, choose, words }: RevisionChoicesOptions): TemplateResult | typeof nothing {
  const { went } = countOutcomes(revision);
  if (went === 0) return nothing;
  return html`<p class="spoken">${words.say('{went, plural, one {# row is} other {# rows are}} no longer in the list.', { went })}</p>
    ${pressed(words.say('What becomes of rows that went'), gone, {
      mark: words.say('mark, still counting'), delete: words.say('delete'),
    }, (each) => { choose({ gone: each }); })}`;
}

/** Buttons of which one is pressed. */
function pressed<Key extends string>(
  label: string, present: Key, titles: Readonly<Record<Key, string>>, choose: (key: Key) => void,
): TemplateResult {
  return html`<div class="choice" role="group" aria-label=${label}>${(Object.keys(titles) as Key[]).map((key) =>
    html`<button type="button" data-revision=${key} aria-pressed=${key === present} @click=${() => { choose(key); }}>${titles[key]}</button>`)}</div>`;
}
