import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import {
  factsOfNew, type NameDecision, type Takeoff, type TakeoffName, type TypeFacts,
} from '../../src/exchange/takeoff/index.ts';
import { columnOf, formatCell, titleWithUnit } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';

/** From here on the likest type may be taken for many names at once. */
const VERY_LIKE = 0.8;

export interface NameChoicesOptions {
  readonly takeoff: Takeoff;
  /** Tags of the types that there are. */
  readonly types: readonly string[];
  readonly decide: (decisions: Readonly<Record<string, NameDecision | undefined>>) => void;
  readonly words: Words;
}

/**
 * Names that are no tag and no alias of a type, those that are like one first, each with what it may mean. They keep
 * their places when they are decided on, so that nothing else comes under the pointer.
 */
export function nameChoices(options: NameChoicesOptions): TemplateResult | typeof nothing {
  const { takeoff, decide, words } = options;
  const isLike = ({ match }: TakeoffName) => match.candidates.length > 0;
  const names = takeoff.names.filter(({ state }) => state !== 'matched');
  if (names.length === 0) return nothing;
  const open = names.filter(({ state }) => state === 'undecided');
  const alike = open.filter(({ match: { candidates: [first, second] } }) =>
    first !== undefined && first.score >= VERY_LIKE && first.score > (second?.score ?? 0));
  const takeLikest = () => {
    decide(Object.fromEntries(alike.map(({ key, match }) => [key, { type: match.candidates[0]!.type }])));
  };
  const counts = countsOf(takeoff);
  const facts = factsOfNew(takeoff);
  const ordered = [...names.filter(isLike), ...names.filter((name) => !isLike(name))];
  return html`<section class="names" aria-labelledby="names-heading">
    <h3 id="names-heading">${open.length === 0 ? words.say('Names that are no type yet')
      : words.say('{count, plural, one {# name} other {# names}} to decide', { count: open.length })}</h3>
    <p class="quiet spoken">${words.say('What you choose is kept as an alias of the type, so that it is asked once.')}
      ${alike.length < 2 ? nothing : html`<button type="button" class="link" data-do="likest" @click=${takeLikest}>
        ${words.say('Take the likest type for the {count} that are {likeness} alike or more', { count: alike.length, likeness: VERY_LIKE })}</button>`}</p>
    <ul>${repeat(ordered, ({ key }) => key, (name) => nameLine(name, counts.get(name.key), facts.get(name.type ?? ''), options))}</ul>
  </section>`;
}

function nameLine(
  { key, texts, state, type, match }: TakeoffName, counted: { lines: number; qty: number } | undefined,
  facts: TypeFacts | undefined, { types, decide, words }: NameChoicesOptions,
): TemplateResult {
  const { candidates } = match;
  // Of types that are equally like it, none goes before the others.
  const likest = candidates.filter(({ score }) => score === candidates[0]!.score);
  const others = types.filter((each) => !candidates.some((candidate) => candidate.type === each));
  const chosen = state === 'undecided' ? '' : state === 'new' ? 'new' : state === 'left-out' ? 'leave-out' : `=${type}`;
  const option = (value: string, text: string) =>
    html`<option value=${value} ?selected=${value === chosen}>${text}</option>`;
  const choose = (event: Event) => {
    const { value } = event.currentTarget as HTMLSelectElement;
    const decision = value.startsWith('=') ? { type: value.slice(1) } : value as 'new' | 'leave-out';
    decide({ [key]: value === '' ? undefined : decision });
  };
  const { lines, qty } = counted ?? { lines: 0, qty: 0 };
  const name = texts.join(', ');
  return html`<li data-name=${key} data-state=${state}>
    <span class="name"><b>${name}</b> <span class="quiet">${words.say('{qty} on {lines, plural, one {# line} other {# lines}}', { qty, lines })}</span></span>
    <span class="choices"><select aria-label=${words.say('What {name} is', { name })} .value=${chosen} @change=${choose}>
      ${candidates.length > 0 ? option('', words.say('to be decided')) : nothing}
      ${candidates.length === 0 ? nothing : html`<optgroup label=${words.say('Like it')}>
        ${candidates.map((each) => option(`=${each.type}`,
          words.say('{type} (likeness {likeness})', { type: each.type, likeness: words.number(each.score, 2) })))}</optgroup>`}
      ${option('new', words.say('a new type'))}${option('leave-out', words.say('nothing to be counted'))}
      <optgroup label=${words.say('Other types')}>${others.map((each) => option(`=${each}`, each))}</optgroup></select>
    ${state !== 'undecided' ? nothing : likest.map((each) => html`<button type="button" class="bordered" data-do="confirm"
      @click=${() => { decide({ [key]: { type: each.type } }); }}>${words.say('Yes, {type}', { type: each.type })} <span class="quiet">${words.number(each.score, 2)}</span></button>`)}</span>
    ${state === 'new' ? html`<span class="facts quiet spoken">${factWords(facts, words)}</span>` : nothing}
  </li>`;
}

/** What the list says of a new type, and what it says in more than one way. */
function factWords({ cells, disagreeing }: TypeFacts = { cells: {}, disagreeing: [] }, words: Words): string {
  const title = (key: string) => titleWithUnit(columnOf('types', key), words);
  const known = Object.entries(cells).map(([key, value]) =>
    words.say('{title}: {value}', { title: title(key), value: formatCell(columnOf('types', key), value, words, 'copy') }));
  const said = known.length === 0 ? words.say('The list says nothing of its draw and nodes; they stay unknown.')
    : words.say('From the list: {facts}. What else is needed stays unknown.', { facts: known.join('; ') });
  return disagreeing.length === 0 ? said : `${said} ${words.say('Not taken, as its lines disagree: {titles}.', {
    titles: disagreeing.map((key) => words.text(columnOf('types', key).title)).join(', '),
  })}`;
}

function countsOf({ lines }: Takeoff): Map<string, { lines: number; qty: number }> {
  const counts = new Map<string, { lines: number; qty: number }>();
  for (const { nameKey, qty } of lines) {
    if (nameKey === undefined) continue;
    const counted = counts.get(nameKey) ?? { lines: 0, qty: 0 };
    counts.set(nameKey, { lines: counted.lines + 1, qty: Math.round((counted.qty + (qty ?? 0)) * 1000) / 1000 });
  }
  return counts;
}
